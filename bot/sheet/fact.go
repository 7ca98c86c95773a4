package sheet

import (
	"math"
	"regexp"
	"slices"
	"strings"

	"heft/bot"
	"heft/calc/unit"
)

// Place is a channel of a workspace, where one job is done.
type Place struct{ Workspace, Channel string }

// fact is a question of the day and what there is to know of it.
type fact struct {
	bot.Asked
	place   Place
	reading string
	was     *bot.Entry // asked before in its place: edited, completed, seen another way
	next    *bot.Entry // took its place
}

// facts are the day's questions, in the order given.
func facts(entries []bot.Entry) []fact {
	out := make([]fact, 0, len(entries))
	for _, a := range bot.Flagged(entries) {
		f := fact{Asked: a, place: Place{a.Workspace, a.Channel}, reading: a.Reading(bot.VoiceOf(""))}
		for i := range slices.Backward(out) {
			if !a.View && !out[i].View && out[i].next == nil && replaces(a.Entry, out[i].Entry) {
				f.was, out[i].next = &out[i].Entry, &f.Entry
				break
			}
		}
		out = append(out, f)
	}
	return out
}

// replaces says whether an entry took an earlier one's place: its message was
// edited, or its answer gave way.
func replaces(e, earlier bot.Entry) bool {
	same := func(a, b string) bool { return a != "" && a == b }
	return e.Workspace == earlier.Workspace && e.Channel == earlier.Channel &&
		(same(e.Message, earlier.Message) || same(e.Posted, earlier.Posted))
}

// id is what a platform calls people and channels by.
var id = regexp.MustCompile(`[A-Z][A-Z0-9]{7,}`)

// named puts names for the ids in a text, as far as they are known.
func (d Day) named(text string) string {
	return id.ReplaceAllStringFunc(text, func(s string) string {
		if name := d.Names[s]; name != "" {
			return name
		}
		return s
	})
}

// metric says whether a place speaks metric units first: as its job asks, or
// else as the question was asked.
func (d Day) metric(f fact) bool {
	if metric, asked := d.Jobs[f.place].Metric(); asked {
		return metric
	}
	return f.Metric()
}

// weight is a plan weight as the crew read it, in the place's units first;
// empty where there is none.
func weight(kg float64, metric bool) string {
	if !(kg > 0) || math.IsInf(kg, 0) {
		return ""
	}
	return bot.VoiceIn(metric).Pick(unit.Mass(kg))
}

// outcome is what became of a question, in words.
func outcome(e bot.Entry) string {
	said := string(e.Status)
	if e.Status == bot.Needs {
		said = "asked back"
	}
	if e.Delivered == nil {
		said += ", not delivered"
	}
	return said
}

// flagWords are the reasons to look at an answer again.
var flagWords = map[bot.Flag]string{
	bot.Over: "OVER LIMIT", bot.Unconfirmed: "NOT CONFIRMED", bot.Unfinished: "NEVER COMPLETED",
}

// flagged are the reasons, in words.
func (f fact) flagged() []string {
	out := make([]string, len(f.Flags))
	for i, flag := range f.Flags {
		out[i] = flagWords[flag]
	}
	return out
}

// marked is what became of a question and the reasons to look at it again, on
// one line.
func (f fact) marked() string {
	return strings.Join(append([]string{outcome(f.Entry)}, f.flagged()...), ", ")
}

// changed says what was asked before in the place of a question, and when.
func (d Day) changed(f fact) string {
	switch {
	case f.was == nil:
		return ""
	case f.Message != "" && f.was.Message == f.Message:
		return "Edited. At " + d.clock(f.was.Asked) + " it was: " + d.named(plain(f.was.Words))
	}
	return "Took the place of what was asked at " + d.clock(f.was.Asked) + ": " + d.named(plain(f.was.Words))
}

// confirmed says who stands by an answer.
func (d Day) confirmed(e bot.Entry) string {
	c := e.Confirmed
	if c == nil {
		return ""
	}
	said := "Confirmed on site by " + d.named(plain(c.User)) + " at " + d.clock(c.At)
	if c.Note != "" {
		said += ": " + d.named(plain(c.Note))
	}
	return said
}

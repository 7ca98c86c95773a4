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
	was     *bot.Entry // asked before in its place: edited, completed
	next    *bot.Entry // took its place
	viewOf  string     // it asked nothing, and showed the answer with this id in another way
}

// facts are the day's questions, in the order given, as they are read in a
// language.
func facts(entries []bot.Entry, v bot.Voice) []fact {
	out := make([]fact, 0, len(entries))
	for _, a := range bot.Flagged(entries) {
		f := fact{Asked: a, place: Place{a.Workspace, a.Channel}, reading: a.Reading(v)}
		for i := range slices.Backward(out) {
			if out[i].next == nil && replaces(a.Entry, out[i].Entry) {
				f.was, out[i].next = &out[i].Entry, &f.Entry
				break
			}
		}
		out = append(out, f)
	}
	return out
}

// logged is all that was logged of the day's questions, oldest first, for
// scripts: in their language, which is English, and with the other ways that
// an answer was seen.
func logged(entries []bot.Entry) []fact {
	english := bot.VoiceOf("")
	var out []fact
	for _, f := range facts(entries, english) {
		out = append(out, f)
		for _, e := range f.Views {
			out = append(out, fact{Asked: bot.Asked{Entry: e}, place: f.place, reading: e.Reading(english), viewOf: f.ID})
		}
	}
	slices.SortStableFunc(out, func(a, b fact) int { return a.Asked.Asked.Compare(b.Asked.Asked) })
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

// outcomes are what can become of a question, in words.
var outcomes = map[bot.Status]string{bot.Answered: "answered", bot.Needs: "asked back", bot.Refused: "refused"}

// outcome is what became of a question, in words.
func (d Day) outcome(e bot.Entry) string {
	said := string(e.Status)
	if known := outcomes[e.Status]; known != "" {
		said = d.Voice.Word(outcomes[e.Status])
	}
	if e.Delivered == nil {
		said += ", " + d.Voice.Word("not delivered")
	}
	return said
}

// flagWords are the reasons to look at an answer again.
var flagWords = map[bot.Flag]string{
	bot.Over: "OVER LIMIT", bot.Unconfirmed: "NOT CONFIRMED", bot.Unfinished: "NEVER COMPLETED",
}

// flagged are the reasons, in words.
func (d Day) flagged(f fact) []string {
	out := make([]string, len(f.Flags))
	for i, flag := range f.Flags {
		out[i] = d.Voice.Word(flagWords[flag])
	}
	return out
}

// marked is what became of a question and the reasons to look at it again, on
// one line.
func (d Day) marked(f fact) string {
	return strings.Join(append([]string{d.outcome(f.Entry)}, d.flagged(f)...), ", ")
}

// changed says what was asked before in the place of a question, and when.
func (d Day) changed(f fact) string {
	if f.was == nil {
		return ""
	}
	at, words := d.clock(f.was.Asked), d.named(plain(f.was.Words))
	if f.Message != "" && f.was.Message == f.Message {
		return d.Voice.Say("Edited. At %s it was: %s", at, words)
	}
	return d.Voice.Say("Took the place of what was asked at %s: %s", at, words)
}

// confirmed says who stands by an answer.
func (d Day) confirmed(e bot.Entry) string {
	c := e.Confirmed
	if c == nil {
		return ""
	}
	by, at := d.named(plain(c.User)), d.clock(c.At)
	if c.Note != "" {
		return d.Voice.Say("Confirmed on site by %s at %s: %s", by, at, d.named(plain(c.Note)))
	}
	return d.Voice.Say("Confirmed on site by %s at %s", by, at)
}

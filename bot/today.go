package bot

import (
	"cmp"
	"context"
	"slices"

	"heft/calc/unit"
	"heft/parser"
)

// Notes of the word file: which part of which day is asked about.
const (
	noteYesterday = "log-yesterday"
	noteHeaviest  = "log-heaviest"
	noteTotal     = "log-total"
)

var noteFlags = map[string]Flag{"log-over": Over, parser.LogUnconfirmed: Unconfirmed, "log-unfinished": Unfinished}

// mostTold is how many questions of a day a message lists.
const mostTold = 8

// dayFor is the day that an event asks about: where a supervisor asks the bot
// alone. It is nil for everything and everybody else, and where the journal
// cannot be read.
func (c *Clerk) dayFor(ctx context.Context, ev Event, e Entry) *Day {
	if e.Intent != string(parser.AskLog) || e.Status != Answered || !ev.Direct || !c.Supervises(ev.User) {
		return nil
	}
	q, _ := c.Desk.reader.Read(ev.Text)
	look := Look{Flag: flagAsked(q)}
	if slices.Contains(q.Notes, noteYesterday) {
		look.Day = ev.At.AddDate(0, 0, -1).Format(dateForm)
	}
	d, err := c.day(ctx, ev.Workspace, look, ev.At)
	if err != nil {
		c.Log.ErrorContext(ctx, "the day was not read", KeyEvent, ev.ID, KeyErr, err)
		return nil
	}
	return &d
}

// flagAsked is what a question about the log looks for, "" for everything.
func flagAsked(q parser.Question) Flag {
	for _, n := range q.Notes {
		if f, ok := noteFlags[n]; ok {
			return f
		}
	}
	return ""
}

// tellLog reads out a day to whoever may see it, and says to all others where
// the log is: it holds the questions of everybody.
func (a *answer) tellLog(d *Day) {
	if !a.question.Empty() {
		a.refuse(a.voice.word("The log or the piece? Ask for one a message."))
		return
	}
	a.status = Answered
	if d != nil {
		a.lines = append(a.summed(*d), Voice{a.voice}.told(*d)...)
		return
	}
	a.lines = []string{a.voice.word("The log is with the supervisor: on their home tab in the workspace, or “heft log” on the machine."),
		a.voice.word("I do not show one person's questions to another.")}
}

// summed answers what is asked of the day as a whole. A piece that was asked
// about twice stands there twice, so nothing is added up.
func (a *answer) summed(d Day) []string {
	notes := a.question.Notes
	if len(d.Asked) == 0 || !slices.Contains(notes, noteHeaviest) && !slices.Contains(notes, noteTotal) {
		return nil
	}
	out := []string{a.voice.word("This is what was asked about, not what came down.")}
	most := slices.MaxFunc(d.Asked, func(x, y Asked) int { return cmp.Compare(x.PlanKg, y.PlanKg) })
	if slices.Contains(notes, noteHeaviest) && most.PlanKg > 0 {
		out = slices.Insert(out, 0, a.voice.say("Heaviest that was asked about: plan on %s.", a.voice.heavy(unit.Mass(most.PlanKg))),
			Voice{a.voice}.AskedLine(most, d.From.Location()))
	}
	return out
}

// told reads a day out: the sum, and the newest questions of it.
func (v Voice) told(d Day) []string {
	title := v.DayTitle(d)
	if d.Look.Flag != "" {
		title = v.s.say("%s, %s: %s.", d.From.Format(dateForm), v.s.word(flagWords[d.Look.Flag]), count(len(d.Asked)))
	}
	if len(d.Asked) == 0 {
		return []string{title}
	}
	var all Group
	for _, g := range d.Channels {
		all.add(g)
	}
	out := []string{title, v.GroupLine(all)}
	ofWork := slices.DeleteFunc(slices.Clone(d.Asked), func(a Asked) bool { return a.Intent == string(parser.AskLog) })
	for i, asked := range ofWork {
		if i == mostTold {
			out = append(out, v.More(len(ofWork)-mostTold))
			break
		}
		line := v.AskedLine(asked, d.From.Location())
		if flags := v.FlagLine(asked); flags != "" {
			line += "\n" + flags
		}
		out = append(out, line)
	}
	return out
}

// add counts another group's questions in.
func (g *Group) add(o Group) {
	g.Questions += o.Questions
	g.Heaviest = max(g.Heaviest, o.Heaviest)
	if g.Flagged == nil {
		g.Flagged = map[Flag]int{}
	}
	for f, n := range o.Flagged {
		g.Flagged[f] += n
	}
}

package bot

import (
	"slices"
	"strings"

	"heft/parser"
)

// A crew that said which units its job is in says no unit where only two are
// left: "limit 800" is in pounds in a yard of feet and pounds. Nor does a talk in which
// all was told in feet and inches, for what something may carry: pounds are the smaller,
// and one that tells metres means kilograms.

// inJobUnits answers a message with the job's or the talk's unit behind its bare number,
// and says so; false where neither has units, or the number more than these two.
func (d *Desk) inJobUnits(a *answer, ev Event, before Turn, text string, ask *parser.Ask) (answer, Turn, bool) {
	if ask.Kind != parser.NoUnit || ask.Start >= ask.End || ask.End > len(text) {
		return answer{}, Turn{}, false
	}
	units, reason := unitsSaid(a.question, ev.Job), "Read %s as %s: the units of this job."
	if units == "" && carries(ask) {
		units, reason = oneSystem(slices.Concat(before.question.Quantities, a.question.Quantities)), "Read %s as %s: the units of this talk."
	}
	if units == "" && carries(ask) {
		units, reason = oneSystem(ev.Job.facts.Quantities), "Read %s as %s: the units of this job."
	}
	read := ofSystem(a.likely(ask), units)
	if read == "" {
		return answer{}, Turn{}, false
	}
	ev.Text = text[:ask.Start] + read + text[ask.End:]
	out, turn := d.consider(ev, before)
	out.lines = append(out.lines, out.voice.say(reason, quote(ask.Words), read))
	return out, turn, true
}

// unitsSaid are the units that a message says all is in, or its job: "limit 600, pounds and
// feet please"; "" where neither does.
func unitsSaid(q parser.Question, job Job) parser.System {
	switch {
	case q.SaysUnits:
		return q.Units
	case job.facts.SaysUnits:
		return job.facts.Units
	}
	return ""
}

// carries says whether a number can only be what something may carry or pull: a limit, the
// strength of gear, a winch's pull.
func carries(ask *parser.Ask) bool {
	of := func(f parser.Field) bool {
		return f == parser.Limit || f == parser.Payload || f == parser.WinchPull || partOf(f) != ""
	}
	return len(ask.Fields) > 0 && !slices.ContainsFunc(ask.Fields, func(f parser.Field) bool { return !of(f) })
}

// oneSystem is the system that all quantities were told in, "" where it was both or none.
func oneSystem(told []parser.Quantity) (all parser.System) {
	for _, x := range told {
		switch {
		case x.System == "" || x.System == all:
		case all == "":
			all = x.System
		default:
			return ""
		}
	}
	return all
}

// ofSystem is the one of two choices that is of a system: pounds or kilograms,
// feet or metres; "" where they are others.
func ofSystem(choices []Choice, s parser.System) string {
	if len(choices) != 2 {
		return ""
	}
	imperial, metric := choices[0].Message, choices[1].Message
	pounds := strings.HasSuffix(imperial, " lb") && strings.HasSuffix(metric, " kg")
	feet := strings.HasSuffix(imperial, " ft") && strings.HasSuffix(metric, " m")
	switch {
	case !pounds && !feet || s == "":
		return ""
	case s == parser.Metric:
		return metric
	}
	return imperial
}

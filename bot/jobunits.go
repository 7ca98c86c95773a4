package bot

import (
	"strings"

	"heft/parser"
)

// A crew that said which units its job is in says no unit where only two are
// left: "limit 800" is in pounds in a yard of feet and pounds.

// inJobUnits answers a message with the job's unit behind its bare number, and
// says so; false where the job has no units, or the number more than these two.
func (d *Desk) inJobUnits(a *answer, ev Event, before Turn, text string, ask *parser.Ask) (answer, Turn, bool) {
	facts := ev.Job.facts
	if a.question.SaysUnits {
		facts = a.question // "limit 600, pounds and feet please"
	}
	if ask.Kind != parser.NoUnit || !facts.SaysUnits || ask.Start >= ask.End || ask.End > len(text) {
		return answer{}, Turn{}, false
	}
	read := ofSystem(a.likely(ask), facts.Units)
	if read == "" {
		return answer{}, Turn{}, false
	}
	ev.Text = text[:ask.Start] + read + text[ask.End:]
	out, turn := d.consider(ev, before)
	out.lines = append(out.lines, out.voice.say("Read %s as %s: the units of this job.", quote(ask.Words), read))
	return out, turn, true
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
	case !pounds && !feet:
		return ""
	case s == parser.Metric:
		return metric
	}
	return imperial
}

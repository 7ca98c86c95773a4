package sheet

import (
	"slices"
	"strconv"
	"strings"

	"heft/bot"
)

// nothing is what an empty day says.
const nothing = "Nothing was asked on this day."

// totals sum a day up.
type totals struct {
	questions, answered, askedBack, refused, undelivered int

	over, unconfirmed, unfinished, confirmed, changed int

	heaviest float64 // plan weight, kg
	metric   bool    // it is said in metric units first
}

func sum(day Day, list []fact) totals {
	t := totals{questions: len(list)}
	count := func(n *int, holds bool) {
		if holds {
			*n++
		}
	}
	for _, f := range list {
		count(&t.answered, f.Status == bot.Answered)
		count(&t.askedBack, f.Status == bot.Needs)
		count(&t.refused, f.Status == bot.Refused)
		count(&t.undelivered, f.Delivered == nil)
		count(&t.over, slices.Contains(f.Flags, bot.Over))
		count(&t.unconfirmed, slices.Contains(f.Flags, bot.Unconfirmed))
		count(&t.unfinished, slices.Contains(f.Flags, bot.Unfinished))
		count(&t.confirmed, f.Confirmed != nil)
		count(&t.changed, f.was != nil)
		if f.PlanKg > t.heaviest {
			t.heaviest, t.metric = f.PlanKg, day.metric(f)
		}
	}
	return t
}

// said is the totals in one line.
func (t totals) said(v bot.Voice) string {
	if t.questions == 0 {
		return v.Word(nothing)
	}
	n := strconv.Itoa
	asked := v.Say("%s questions: %s answered, %s asked back, %s refused.", n(t.questions), n(t.answered), n(t.askedBack), n(t.refused))
	if t.questions == 1 {
		asked = v.Say("1 question: %s answered, %s asked back, %s refused.", n(t.answered), n(t.askedBack), n(t.refused))
	}
	heaviest := v.Word("No plan weight given.")
	if t.heaviest > 0 {
		heaviest = v.Say("Heaviest pick %s.", weight(t.heaviest, t.metric))
	}
	return strings.Join([]string{asked, heaviest, v.Say("%s not delivered.", n(t.undelivered)),
		v.Say("%s over the limit, %s not confirmed, %s never completed; %s confirmed on site, %s changed after being asked.",
			n(t.over), n(t.unconfirmed), n(t.unfinished), n(t.confirmed), n(t.changed))}, " ")
}

// tally is one number of the day, as the page shows it.
type tally struct {
	What, Count string
	Alarm       bool // somebody should look
}

// tallies are the totals, one by one.
func (t totals) tallies(v bot.Voice) []tally {
	heaviest := weight(t.heaviest, t.metric)
	if heaviest == "" {
		heaviest = v.Word("none")
	}
	number := func(what string, n int) tally { return tally{What: what, Count: strconv.Itoa(n)} }
	alarm := func(what string, n int) tally { return tally{What: what, Count: strconv.Itoa(n), Alarm: n > 0} }
	out := []tally{
		number(v.Word("questions"), t.questions), {What: v.Word("heaviest pick"), Count: heaviest},
		alarm(v.Word("over the limit"), t.over), alarm(v.Word("not confirmed"), t.unconfirmed), alarm(v.Word("never completed"), t.unfinished),
		number(v.Word("refused"), t.refused), number(v.Word("confirmed on site"), t.confirmed), number(v.Word("changed after"), t.changed),
	}
	if t.undelivered > 0 {
		out = append(out, alarm(v.Word("not delivered"), t.undelivered))
	}
	return out
}

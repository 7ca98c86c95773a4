package sheet

import (
	"fmt"
	"slices"
	"strconv"

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
	list = slices.DeleteFunc(slices.Clone(list), func(f fact) bool { return f.View })
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

// String is the totals in one line.
func (t totals) String() string {
	if t.questions == 0 {
		return nothing
	}
	noun := "questions"
	if t.questions == 1 {
		noun = "question"
	}
	heaviest := "No plan weight given."
	if t.heaviest > 0 {
		heaviest = "Heaviest pick " + weight(t.heaviest, t.metric) + "."
	}
	return fmt.Sprintf("%d %s: %d answered, %d asked back, %d refused. %s %d not delivered. "+
		"%d over the limit, %d not confirmed, %d never completed; %d confirmed on site, %d changed after being asked.",
		t.questions, noun, t.answered, t.askedBack, t.refused, heaviest, t.undelivered,
		t.over, t.unconfirmed, t.unfinished, t.confirmed, t.changed)
}

// tally is one number of the day, as the page shows it.
type tally struct {
	What, Count string
	Alarm       bool // somebody should look
}

// tallies are the totals, one by one.
func (t totals) tallies() []tally {
	heaviest := weight(t.heaviest, t.metric)
	if heaviest == "" {
		heaviest = "none"
	}
	out := []tally{{What: "questions", Count: strconv.Itoa(t.questions)}, {What: "heaviest pick", Count: heaviest}}
	for _, x := range []struct {
		what string
		n    int
		look bool
	}{
		{"over the limit", t.over, true}, {"not confirmed", t.unconfirmed, true}, {"never completed", t.unfinished, true},
		{"refused", t.refused, false}, {"confirmed on site", t.confirmed, false}, {"changed after", t.changed, false},
		{"not delivered", t.undelivered, true},
	} {
		if x.n == 0 && x.what == "not delivered" {
			continue
		}
		out = append(out, tally{What: x.what, Count: strconv.Itoa(x.n), Alarm: x.look && x.n > 0})
	}
	return out
}

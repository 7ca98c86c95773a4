package sheet

import (
	"fmt"
	"math"

	"github.com/dustin/go-humanize"

	"heft/bot"
	"heft/calc/unit"
)

// nothing is what an empty day says.
const nothing = "Nothing was asked on this day."

// totals sum a day up.
type totals struct {
	questions, answered, askedBack, refused, undelivered int

	heaviest float64 // plan weight, kg
}

func sum(entries []bot.Entry) totals {
	t := totals{questions: len(entries)}
	for _, e := range entries {
		switch e.Status {
		case bot.Answered:
			t.answered++
		case bot.Needs:
			t.askedBack++
		case bot.Refused:
			t.refused++
		}
		if e.Delivered == nil {
			t.undelivered++
		}
		t.heaviest = max(t.heaviest, e.PlanKg)
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
		heaviest = "Heaviest plan weight " + weight(t.heaviest) + "."
	}
	return fmt.Sprintf("%d %s: %d answered, %d asked back, %d refused. %s %d not delivered.",
		t.questions, noun, t.answered, t.askedBack, t.refused, heaviest, t.undelivered)
}

// weight prints a plan weight in both systems, empty where there is none.
func weight(kg float64) string {
	if kg <= 0 {
		return ""
	}
	return humanize.Comma(up(kg)) + " kg (" + humanize.Comma(pounds(kg)) + " lb)"
}

func pounds(kg float64) int64 { return up(unit.Mass(kg).Pounds()) }

// up rounds to the next whole unit above: a plan weight is never shown
// lighter than it is. What is closer to a whole than any weighing is whole.
func up(x float64) int64 { return int64(math.Ceil(x - 1e-6)) }

// outcome is what became of a question, in words.
func outcome(e bot.Entry) string {
	said := string(e.Status)
	if e.Status == bot.Needs {
		said = "asked back"
	}
	if e.Delivered == nil {
		said += ", not delivered"
	}
	if e.OverLimit() {
		said += ", over limit"
	}
	switch {
	case e.Confirmed != nil:
		said += ", confirmed"
	case e.ToConfirm():
		said += ", not confirmed"
	}
	return said
}

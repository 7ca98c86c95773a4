package bot

import (
	"slices"

	"heft/calc/unit"
	"heft/parser"
)

// mostParts is how many parts of line one more part may make.
const mostParts = 6

// variations are the questions next to the one that was answered, each whole
// in itself: a button that stands for one needs no memory of the talk.
func (a *answer) variations(said parser.Question, explained string) []Choice {
	if a.status != Answered || methods[said.Intent] == nil {
		return nil
	}
	var out []Choice
	add := func(label string, q parser.Question) { out = append(out, Choice{label, q.Words()}) }
	if explained == "" {
		why := said
		why.Explain = parser.ExplainNumbers
		add(a.voice.word("Show the working"), why)
	}
	said.Explain = ""
	if explained != "" {
		add(a.voice.word("Back to the answer"), said)
	}
	other := said
	other.SaysUnits, other.Units = true, parser.Metric
	if a.voice.metric {
		other.Units = parser.Imperial
	}
	add(a.voice.word(otherUnits[other.Units]), other)
	if thicker, at, ok := a.thicker(said); ok {
		add(a.voice.say("If it is %s", at), thicker)
	}
	if n := said.Count(parser.Parts); (said.Intent == parser.AskLift || said.Intent == parser.AskRaise) && n > 0 && n < mostParts {
		add(a.voice.word("One more part of line"), with(said, parser.Parts, func(x *parser.Quantity) { x.Low, x.High = n+1, n+1 }))
	}
	return out
}

var otherUnits = map[parser.System]string{parser.Metric: "In metric", parser.Imperial: "In feet and pounds"}

// thicker is the question with all thicknesses two inches, or five
// centimetres, larger, and the thickest of them.
func (a *answer) thicker(q parser.Question) (parser.Question, string, bool) {
	step := a.voice.step()
	thickest := unit.Length(0)
	for _, f := range acrossFields {
		q = with(q, f, func(x *parser.Quantity) {
			x.Low, x.High = x.Low+float64(step), x.High+float64(step)
			thickest = max(thickest, unit.Length(x.High))
		})
	}
	return q, a.voice.across(unit.Exactly(thickest)), thickest > 0
}

// with changes one quantity of a question, where it was said.
func with(q parser.Question, f parser.Field, change func(*parser.Quantity)) parser.Question {
	q.Quantities = slices.Clone(q.Quantities)
	for i := range q.Quantities {
		if q.Quantities[i].Field == f {
			change(&q.Quantities[i])
		}
	}
	return q
}

package bot

import (
	"slices"

	"heft/calc/unit"
	"heft/parser"
)

// tellGentler says what a block sees at the lesser of two turns that were told, "180 vs
// 90": the head of the answer has the greater one.
func (a *answer) tellGentler() {
	q, v := a.question, a.voice
	x, ok := q.Get(parser.Turn)
	if !ok || x.Low >= x.High {
		return
	}
	q.Quantities = slices.Clone(q.Quantities)
	for i := range q.Quantities {
		if q.Quantities[i].Field == parser.Turn {
			q.Quantities[i].High = q.Quantities[i].Low
		}
	}
	p, err := pathOf(q, a.result.Weight.High.Weight())
	if err != nil || len(p.still) != 1 {
		return
	}
	a.lines = append(a.lines, v.say("Turned only %s: %s held.", degrees(unit.Angle(x.Low)*unit.Degree), v.load(p.still[0].Force)))
}

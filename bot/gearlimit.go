package bot

import (
	"heft/calc/unit"
	"heft/parser"
)

// Where the strength of the gear is told, and no limit, the weakest of it sets how heavy a
// piece may be: the block sees both legs of the rope, about twice the piece.

// cutLimit is what a piece may weigh: the limit told, or what the weakest of the gear lets
// the line carry.
func (a *answer) cutLimit() (unit.Mass, error) {
	q, v := a.question, a.voice
	if !q.LimitedByGear() {
		return q.Mass(parser.Limit).Low, nil
	}
	all, err := a.rated(factorOf(q))
	if err != nil {
		return 0, err
	}
	weakest, line, err := weakestOf(all)
	if err != nil {
		return 0, err
	}
	r := all[weakest]
	a.problems = append(a.problems, v.say("Limit by the %s: it may carry %s and sees %s times the piece, lowered steady. Snubbed or dropped: smaller pieces.",
		a.partName(r.part), v.pullHad(r.limit), trimmed(r.carries, 2)))
	return line.Held(), nil
}

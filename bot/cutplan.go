package bot

import (
	"heft/calc/cutplan"
	"heft/parser"
)

// workCutPlan answers how long a piece stays under the limit, and how a stick
// of known length is divided.
func (a *answer) workCutPlan() error {
	q := a.question
	limit := q.Mass(parser.Limit).Low
	stick := pieceOf(q)
	cut, err := cutplan.Longest(stick, cutplan.Butt, limit)
	if err != nil {
		return err
	}
	if q.Has(parser.Length) {
		res, err := a.weighed()
		if err != nil {
			return err
		}
		a.result = &res
	}
	a.status = Answered
	o := &cutPlanObject{Longest: float64(cut.Length)}
	a.figures = func(all *object) { all.CutPlan = o }
	a.tellLongest(cut)
	if a.result != nil && !cut.Uncut {
		return a.tellPieces(o)
	}
	a.tellCutting()
	return nil
}

// cutPlanObject is a cut plan as scripts read it.
type cutPlanObject struct {
	Longest float64     `json:"max_length_m"`
	Pieces  []cutObject `json:"pieces,omitempty"`
}

type cutObject struct {
	Length  float64 `json:"length_m"`
	High    float64 `json:"high_kg"`
	Balance float64 `json:"balance_m"`
}

func (a *answer) tellLongest(cut cutplan.Cut) {
	v, piece := a.voice, capital(a.piece())
	limit := v.atMost(a.question.Mass(parser.Limit).Low)
	switch {
	case cut.Uncut && a.result != nil:
		a.lines = []string{v.say("%s: all of it stays under %s, plan on %s.", piece, limit, v.heavy(cut.Heavy))}
	default:
		a.lines = []string{v.say("%s: %s at most to stay under %s, plan on %s.", piece, v.alongDown(cut.Length), limit, v.heavy(cut.Heavy))}
	}
}

// tellPieces says the pieces of a stick from the butt to the tip.
func (a *answer) tellPieces(o *cutPlanObject) error {
	plan, err := cutplan.Pieces(pieceOf(a.question), a.question.Mass(parser.Limit).Low)
	if err != nil {
		return err
	}
	v := a.voice
	a.lines = append(a.lines, v.say("%s pieces, %s cuts, from the butt:", count(len(plan.Pieces)), count(plan.Cuts)))
	for i, p := range plan.Pieces {
		o.Pieces = append(o.Pieces, cutObject{float64(p.Length), float64(p.Heavy), float64(p.Balance)})
		if i < mostPieces {
			a.lines = append(a.lines, numbered(i, v.say("%s, plan on %s, balances %s from its thick end",
				v.alongDown(p.Length), v.heavy(p.Heavy), v.alongDown(p.Balance))))
		}
	}
	if n := len(plan.Pieces); n > mostPieces {
		a.lines = append(a.lines, v.say("… and %s more.", count(n-mostPieces)))
	}
	a.tellCutting()
	return nil
}

// mostPieces is how many pieces of a plan fit on a phone.
const mostPieces = 6

func (a *answer) tellCutting() {
	v := a.voice
	a.lines = append(a.lines, v.word("By the heavy end of the weight. More cuts, less load on the tree; fewer cuts, less time aloft."))
	a.cautions = append(a.cautions, v.word("A fork or a swelling weighs more: cut shorter there."))
}

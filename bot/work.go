package bot

import (
	"errors"

	"heft/calc"
	"heft/calc/limits"
	"heft/calc/piece"
	"heft/calc/rope"
	"heft/calc/unit"
	"heft/calc/wood"
	"heft/parser"
)

// worked are the intents that the desk has an answer to.
var worked = map[parser.Intent]bool{
	parser.AskWeight: true, parser.AskLower: true, parser.AskBlockLoad: true, parser.AskRope: true,
}

// work has the calculator answer the question.
func (a *answer) work() {
	q := a.question
	if !worked[q.Intent] {
		a.notYet()
		return
	}
	if p := senseless(q); p != "" {
		a.refuse(p)
		return
	}
	if q.Intent == parser.AskRope && !q.Has(parser.Weight) && q.Species == nil {
		a.workRope()
		return
	}
	res, err := calc.Work(jobOf(q))
	if m, ok := errors.AsType[*limits.Missing](err); ok {
		a.status, a.needs = Needs, []parser.Field{parser.Field(m.Quantity)}
		a.askMissing()
		return
	}
	if err != nil {
		a.refuse(a.voice.problem(err))
		return
	}
	a.status, a.result = Answered, &res
	a.tell()
}

// workRope answers how much rope a hitch takes, with no piece on it.
func (a *answer) workRope() {
	hitch := a.question.Length(parser.HitchHeight)
	need, err := rope.Needed(hitch.High, max(1, int(a.question.Count(parser.Parts))))
	if err != nil {
		a.refuse(a.voice.problem(err))
		return
	}
	a.status, a.result = Answered, &calc.Result{Rope: need}
	a.lines = []string{a.ropeHead(need)}
	a.tellRope()
}

// jobOf hands the calculator what was said; what was not stays zero.
func jobOf(q parser.Question) calc.Job {
	j := calc.Job{
		Given:  q.Mass(parser.Weight),
		Hitch:  q.Length(parser.HitchHeight),
		People: int(q.Count(parser.People)),
		Parts:  int(q.Count(parser.Parts)),
		Wraps:  q.Count(parser.Wraps),
		Lower:  q.Intent != parser.AskWeight,
	}
	if x, ok := q.Get(parser.BlockAngle); ok {
		between := unit.Angle(x.Low) * unit.Degree // the smaller angle loads the block more
		j.Between = &between
	}
	if q.Species != nil && q.Has(parser.Length) && q.Has(acrossFields...) {
		p := pieceOf(q)
		j.Piece = &p
	}
	return j
}

func pieceOf(q parser.Question) piece.Piece {
	row, _ := wood.Find(q.Species.Value.Scientific)
	p := piece.Piece{
		Wood:     row,
		Diameter: q.Length(parser.Diameter),
		Butt:     q.Length(parser.ButtDiameter),
		Mid:      q.Length(parser.MidDiameter),
		Tip:      q.Length(parser.TipDiameter),
		Length:   q.Length(parser.Length),
	}
	if q.Shape != nil {
		p.Shape = map[parser.Shape]piece.Shape{parser.Log: piece.Log, parser.Limb: piece.Limb}[q.Shape.Value]
	}
	if q.Condition != nil && q.Condition.Value == parser.Dead {
		p.Condition = piece.Dead
	}
	return p
}

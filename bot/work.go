package bot

import (
	"errors"
	"slices"

	"heft/calc"
	"heft/calc/limits"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/calc/wood"
	"heft/parser"
)

// methods are the questions that the desk can answer, and how.
var methods = map[parser.Intent]func(*answer) error{
	parser.AskWeight:    (*answer).workLower,
	parser.AskLower:     (*answer).workLower,
	parser.AskBlockLoad: (*answer).workBlockLoad,
	parser.AskRope:      (*answer).workRope,
	parser.AskLift:      (*answer).workLift,
	parser.AskRaise:     (*answer).workRaise,
	parser.AskNotch:     (*answer).workNotch,
	parser.AskCutPlan:   (*answer).workCutPlan,
	parser.AskDrop:      (*answer).workDrop,
	parser.AskGear:      (*answer).workGear,
	parser.AskSwing:     (*answer).workSwing,
	parser.AskBalance:   (*answer).workBalance,
	parser.AskAnchor:    (*answer).workAnchor,
	parser.AskTree:      (*answer).workTree,
}

// byLabel are the answers that rest on the strength on a rope's label.
var byLabel = map[parser.Intent]bool{parser.AskGear: true, parser.AskDrop: true}

// work has the calculator answer the question.
func (a *answer) work() {
	work := methods[a.question.Intent]
	if a.question.OfVolume() {
		work = (*answer).workVolume
	}
	if work == nil {
		a.notYet()
		return
	}
	if p := a.voice.senseless(a.question); p != "" {
		a.refuse(p)
		return
	}
	if byLabel[a.question.Intent] && slices.Contains(a.question.Notes, wornGear) {
		a.refuse(a.voice.word("Used, old or unlabelled gear: no figure. Somebody qualified has to look at it; go by new gear with a label you can read."))
		return
	}
	err := weightless(a.question)
	if err == nil {
		err = work(a)
	}
	if err == nil {
		err = a.tellGear()
	}
	if m, ok := errors.AsType[*limits.Missing](err); ok {
		a.status, a.needs = Needs, []parser.Field{parser.Field(m.Quantity)}
		a.askMissing()
		return
	}
	if err != nil {
		a.refuse(a.problem(err))
		return
	}
	a.tellUnused()
	if moves[a.question.Intent] {
		a.tellCounted()
	}
	if a.status == Answered {
		a.tellPastLimit()
		a.cautions = append(a.inDoubt(), a.cautions...)
		a.clearOut()
	}
}

// weightless is the reason why a piece of that tree is not weighed, whatever its sizes:
// none is asked for them in vain.
func weightless(q parser.Question) error {
	if q.Species == nil || q.Has(parser.Weight) || q.Intent != parser.AskWeight && q.Intent != parser.AskLift && q.Intent != parser.AskCutPlan && !lowers[q.Intent] {
		return nil
	}
	row, _ := wood.Find(q.Species.Value.Scientific)
	return row.Weighable()
}

// clearOut says before all else but the figure that somebody stands below.
func (a *answer) clearOut() {
	if slices.Contains(a.question.Notes, notePeopleBelow) {
		out := a.voice.word("Somebody is under it: nothing moves until everybody is out.")
		a.problems = slices.Insert(a.problems, 0, out)
	}
}

// moves are the questions whose answer sets a piece moving.
var moves = map[parser.Intent]bool{
	parser.AskLower: true, parser.AskDrop: true, parser.AskLift: true, parser.AskRaise: true, parser.AskSwing: true,
}

// clearFirst stops where somebody is said to stand below and a piece would be
// moved, or more would be asked: nothing is talked over until they are out. What
// a piece weighs may be told.
func clearFirst(q parser.Question, ask *parser.Ask) *parser.Ask {
	graver := ask != nil && ask.Final() && ask.Kind != parser.Nonsense
	if graver || !slices.Contains(q.Notes, notePeopleBelow) || q.Intent == parser.AskJob || q.Intent == parser.AskLog {
		return ask
	}
	if ask == nil && !moves[q.Intent] && missing(q) == nil {
		return nil
	}
	return &parser.Ask{Kind: parser.Below}
}

// notePeopleBelow is the note of the word file for somebody under the piece.
const notePeopleBelow = "people-below"

// weighed is the weight alone: for the questions that are not about lowering,
// whose people, wraps and hitch mean something else.
func (a *answer) weighed() (calc.Result, error) {
	all := jobOf(a.question)
	return calc.Work(calc.Job{Piece: all.Piece, Given: all.Given})
}

// lowers are the questions whose answer is about lowering.
var lowers = map[parser.Intent]bool{parser.AskLower: true, parser.AskBlockLoad: true, parser.AskRope: true}

// jobOf hands the calculator what was said; what was not stays zero.
func jobOf(q parser.Question) calc.Job {
	j := calc.Job{
		Given:   q.Mass(parser.Weight),
		Hitch:   q.Length(parser.HitchHeight),
		People:  int(q.Count(parser.People)),
		Each:    handsOf(q).Each,
		Parts:   int(q.Count(parser.Parts)),
		Wraps:   q.Count(parser.Wraps),
		Lower:   lowers[q.Intent],
		Slipped: q.Slipped(),
		Laid:    layoutOf(q),
	}
	if x, ok := q.Get(parser.BlockAngle); ok {
		between := unit.Angle(x.Low) * unit.Degree // the smaller angle loads the block more
		j.Between = &between
	}
	for _, x := range q.Quantities {
		if j.Between == nil && atTop(x) {
			between := unit.Angle(180-x.High) * unit.Degree
			j.Between = &between
		}
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
	p.Shape = shapeOf(q)
	if q.Condition != nil && q.Condition.Value == parser.Dead {
		p.Condition = piece.Dead
	}
	return p
}

func shapeOf(q parser.Question) piece.Shape {
	if q.Shape == nil {
		return piece.Unsaid
	}
	return map[parser.Shape]piece.Shape{parser.Log: piece.Log, parser.Limb: piece.Limb}[q.Shape.Value]
}

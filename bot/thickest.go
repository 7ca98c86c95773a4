package bot

import (
	"math"

	"heft/calc/cutplan"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/parser"
)

// How thick a piece of a length may be is the other side of how long one of a thickness may
// be: the answer is rounded down to the step of a tape, and its weight is that of the
// thickness said.

// workThickest answers how thick a piece of the length told stays under the limit.
func (a *answer) workThickest(limit unit.Mass) error {
	v, stick := a.voice, pieceOf(a.question)
	said, err := a.byTape(limit)
	if err != nil {
		return err
	}
	a.status = Answered
	a.figures = func(all *object) { all.CutPlan = &cutPlanObject{Across: float64(said.Across)} }
	if said.Any {
		a.lines = []string{v.say("%s: as thick as I can weigh it, %s, it stays under %s.", capital(a.piece()), v.across(unit.Exactly(said.Across)), v.heavy(limit))}
		return nil
	}
	heavy, most := a.inLimitsUnits(said.Heavy, limit).within(said.Heavy, limit)
	a.lines = []string{
		v.say("%s: %s thick at most to stay under %s, plan on %s.", capital(a.piece()), v.across(unit.Exactly(said.Across)), most, heavy),
		v.say("Across at its thickest place, bark and all, by the heavy end of the weight."),
	}
	if stick.Shape == piece.Limb {
		a.lines = append(a.lines, v.say("For a limb with its brush: only small branches were ever weighed."))
	}
	more := said.Across + v.tapeAcross()
	if over, err := cutplan.Across(stick, more); err == nil {
		a.lines = append(a.lines, v.say("At %s: plan on %s.", v.across(unit.Exactly(more)), v.heavy(over.Heavy)))
	}
	a.cautions = append(a.cautions, v.say("A fork or a swelling weighs more: cut shorter there."))
	return nil
}

// byTape is how thick the piece may be, rounded down to what a tape reads.
func (a *answer) byTape(limit unit.Mass) (cutplan.Thick, error) {
	const slack = 1e-6
	stick := pieceOf(a.question)
	exact, err := cutplan.Thickest(stick, limit)
	if err != nil {
		return exact, err
	}
	step := a.voice.tapeAcross()
	down := step * unit.Length(math.Floor(float64(exact.Across/step)+slack))
	if down <= 0 {
		return exact, nil // thinner than the tape reads
	}
	said, err := cutplan.Across(stick, down)
	said.Any = exact.Any
	return said, err
}

// thickestWith says how thick a piece of that choice of tree may be, "" where that is not what
// is asked, or cannot be told yet.
func (a *answer) thickestWith(c parser.Choice) string {
	one := answer{question: a.question, voice: a.voice}
	one.question.Species = chosenTree(c, "")
	if q := one.question; q.Intent != parser.AskCutPlan || !q.Noted(parser.ThickWanted) || len(q.Missing()) > 0 {
		return ""
	}
	limit, err := one.cutLimit()
	if err != nil {
		return ""
	}
	said, err := one.byTape(limit)
	if err != nil || said.Any {
		return ""
	}
	return a.voice.across(unit.Exactly(said.Across))
}

// tapeAcross is the step that a thickness is read by.
func (s speaker) tapeAcross() unit.Length {
	if s.metric {
		return unit.Centimetre
	}
	return unit.Inch
}

package bot

import (
	"heft/calc/hinge"
	"heft/calc/unit"
	"heft/parser"
)

// workLowest answers how high the top block must be to stand a limb up: for the
// tie that was told, or the nearest that is clear of the balance point. It is
// rounded up, so that the blocks stay apart with it there.
func (a *answer) workLowest() error {
	l := layoutOfRaise(a.question)
	l.Offset = a.question.Length(parser.BlockBehind).Low // nearer the limb it has to stand higher
	least, err := hinge.Lowest(l)
	if err != nil {
		return err
	}
	l.Height = a.voice.heightAbove(least)
	f, err := hinge.Fit(l)
	if err != nil {
		return err
	}
	a.status = Answered
	a.figures = func(o *object) {
		o.Raise = fitOf(l, f)
		o.Lowest = float64(l.Height)
	}
	switch {
	case f.TurnsOver:
		a.refuseSetup(nil, f.Window)
	case l.Tie == 0 && f.Window.Ties.High == 0:
		a.refuseAnyTie(f)
	default:
		a.tellLowest(l, f)
	}
	return nil
}

// tellLowest says how high, and for which tie.
func (a *answer) tellLowest(l hinge.Layout, f hinge.Fitting) {
	v, piece, high := a.voice, capital(a.piece()), a.voice.along(unit.Exactly(l.Height))
	if l.Tie > 0 {
		a.lines = []string{v.say("%s, stood up, tied %s from the cut: top block %s above the cut or higher.", piece, v.along(a.question.Length(parser.Tie)), high)}
	} else {
		a.lines = []string{v.say("%s, stood up: top block %s above the cut or higher, tied %s from the cut.", piece, high, v.alongUp(f.Window.Ties.Low))}
	}
	a.lines = append(a.lines, v.word("Higher leaves more room between the blocks, and the limb starts easier."))
	a.tellNoForces(parser.LimbAngle, parser.Parts)
	a.tellUnchecked(f)
	if l.Tie > 0 && f.Window.Near != hinge.ByNothing {
		a.tellOtherTies(f)
	}
	a.tellFitAssumed(l)
	a.cautions = append(a.cautions, v.word("Haul tight before the hinge parts. Nobody under it, climber clear of its swing."))
}

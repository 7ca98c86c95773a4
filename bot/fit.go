package bot

import (
	"slices"

	"heft/calc/hinge"
	"heft/calc/unit"
	"heft/parser"
)

// workFit answers a raise of which no weight is known: whether the blocks meet,
// and where a tie keeps them apart.
func (a *answer) workFit() error {
	l := layoutOfRaise(a.question)
	f, err := worstFit(&l, a.question)
	if err != nil {
		return err
	}
	a.status = Answered
	a.figures = func(o *object) { o.Raise = fitOf(l, f); o.Rope = float64(f.Rope) }
	scene := fitScene(a.voice, a.pictured(), l, f)
	switch {
	case f.TwoBlocks != nil || f.TurnsOver:
		a.refuseSetup(f.TwoBlocks, f.Window)
		a.tellUnchecked(f)
	case l.Tie == 0 && f.Window.Ties.High == 0:
		a.refuseAnyTie(f)
	default:
		a.tellFit(l, f)
		a.shown = a.fitWorking(l, f)
	}
	if l.Tie > 0 { // without a tie there is nothing to draw
		a.scene = scene
	}
	return nil
}

// layoutOfRaise is where the limb and its blocks are, as it was told.
func layoutOfRaise(q parser.Question) hinge.Layout {
	length := q.Length(parser.Length).High
	l := hinge.Layout{
		Length: length, Balance: length / 2, // no stick that tapers balances further out
		Tie: q.Length(parser.Tie).High, Height: q.Length(parser.BlockHeight).Low,
		Hitch: q.Length(parser.HitchHeight).High, Parts: int(q.Count(parser.Parts)), Closed: q.Length(parser.Closed).High,
	}
	if x, ok := q.Get(parser.LimbAngle); ok {
		angle := unit.Angle(x.Low) * unit.Degree // from lower the blocks close further
		l.Angle = &angle
	}
	return l
}

// worstFit works a layout out at both ends of how far the block stands behind
// the hinge and of where it is tied, and keeps one that must be refused, or
// else the one with the least room. No tie in its window lies past the shorter
// end of the limb.
func worstFit(l *hinge.Layout, q parser.Question) (hinge.Fitting, error) {
	var worst hinge.Fitting
	var found bool
	tie, behind, at := q.Length(parser.Tie), q.Length(parser.BlockBehind), *l
	for _, offset := range []unit.Length{behind.Low, behind.High} {
		for _, tied := range []unit.Length{tie.High, tie.Low} {
			at.Offset, at.Tie = offset, tied
			f, err := hinge.Fit(at)
			if err != nil {
				return hinge.Fitting{}, err
			}
			if !found || worse(f, worst) {
				worst, found, *l = f, true, at
			}
		}
	}
	if short := q.Length(parser.Length).Low; short > 0 && short < worst.Window.Ties.High {
		worst.Window.Ties.High, worst.Window.Far = short, hinge.ByTip
		if short < worst.Window.Ties.Low {
			worst.Window.Ties = unit.Range[unit.Length]{}
		}
	}
	return worst, nil
}

// worse says whether a layout is to be refused where another is not, or leaves
// less room.
func worse(f, than hinge.Fitting) bool {
	bad := func(f hinge.Fitting) bool { return f.TwoBlocks != nil || f.TurnsOver }
	switch {
	case bad(f) != bad(than):
		return bad(f)
	case f.TwoBlocks != nil && than.TwoBlocks != nil:
		return f.TwoBlocks.RaiseBy > than.TwoBlocks.RaiseBy
	case f.Window.Ties.High != than.Window.Ties.High:
		return f.Window.Ties.High < than.Window.Ties.High
	}
	return f.Apart < than.Apart
}

// fitOf is a layout as scripts read it: what hangs on a weight is absent.
func fitOf(l hinge.Layout, f hinge.Fitting) *raiseObject {
	o := &raiseObject{TieMax: float64(f.Window.Ties.High)}
	if f.Window.Near != hinge.ByNothing {
		o.TieMin = float64(f.Window.Ties.Low)
	}
	if l.Tie > 0 {
		two := f.TwoBlocks != nil
		o.TwoBlocks = &two
	}
	if f.TwoBlocks == nil && !f.TurnsOver {
		o.Travel = float64(f.Travel)
	}
	return o
}

// refuseAnyTie refuses a top block under which no tie will do.
func (a *answer) refuseAnyTie(f hinge.Fitting) {
	v := a.voice
	if f.Lower > 0 {
		a.refuse(v.say("DO NOT: no tie is clear of the balance point and keeps the blocks apart. Raise the top block %s at least.", v.alongUp(f.Lower)))
	} else {
		a.refuse(v.word("DO NOT: the limb is too short for a tie that is clear of its balance point."))
	}
	a.lines = append(a.lines, v.word("Blocks that meet stop the lift: the piece drops and swings back toward the climber."))
}

// tellFit says that the blocks stay apart, or where a tie keeps them so.
func (a *answer) tellFit(l hinge.Layout, f hinge.Fitting) {
	v, w, piece := a.voice, f.Window, capital(a.piece())
	checked := w.Near != hinge.ByNothing
	switch {
	case l.Tie > 0:
		a.lines = []string{v.say("%s, stood up: the blocks stay apart, %s between their ties upright.", piece, v.alongDown(f.Apart))}
	case checked:
		a.lines = []string{v.say("%s, stood up: tie between %s and %s from the cut. Farther out the blocks meet, nearer it may turn over.",
			piece, v.alongUp(w.Ties.Low), v.alongDown(w.Ties.High))}
	default:
		a.lines = []string{v.say("%s, stood up: tie no farther than %s from the cut, or the blocks meet.", piece, v.alongDown(w.Ties.High))}
	}
	if a.pullsAtTies() {
		a.tellPullAtTies(l, f)
	} else {
		a.tellNoForces(parser.LimbAngle, parser.Parts, parser.Tie)
	}
	a.tellUnchecked(f)
	a.tellLayout(l)
	if l.Tie > 0 {
		a.tellOtherTies(f)
	}
	a.tellClosing(f)
	a.tellFitAssumed(l)
	a.cautions = append(a.cautions, v.word("Haul tight before the hinge parts. Nobody under it, climber clear of its swing."))
}

// tellNoForces says that no force is known, and what to tell for them.
func (a *answer) tellNoForces(more ...parser.Field) {
	v, fields := a.voice, a.question.MissingPiece()
	for _, f := range more {
		if !a.question.Has(f) {
			fields = append(fields, f)
		}
	}
	if len(a.question.MissingPiece()) == 0 {
		a.lines = append(a.lines, v.say("NO FORCES yet: for the pull tell me %s.", v.and(nouns(v, fields))))
		return
	}
	a.lines = append(a.lines, v.say("NO FORCES: no weight is known. For the pull tell me %s; a weight serves for tree and diameter.", v.and(nouns(v, fields))))
}

// pullsAtTies says whether all is told that the pull hangs on but the tie.
func (a *answer) pullsAtTies() bool {
	q := a.question
	return !q.Has(parser.Tie) && !q.LowestWanted() && q.Has(parser.Length) && q.Has(parser.LimbAngle) && q.Has(parser.Parts) && len(q.MissingPiece()) == 0
}

// tellPullAtTies says what it takes at the ends of where the limb may be tied.
func (a *answer) tellPullAtTies(l hinge.Layout, f hinge.Fitting) {
	q := a.question
	res, err := a.weighed()
	if err != nil {
		return
	}
	a.result = &res
	a.tellWeight()
	v := a.voice
	for _, end := range []struct {
		tie  unit.Length
		said string
	}{{f.Window.Ties.High, v.alongDown(f.Window.Ties.High)}, {f.Window.Ties.Low, v.alongUp(f.Window.Ties.Low)}} {
		s := setupOf(q, res.Weight.High)
		s.Tie, s.Offset = end.tie, l.Offset
		if r, err := hinge.Raise(s); err == nil {
			a.lines = append(a.lines, v.say("Tied %s from the cut: %s.", end.said, a.verdict(r.Lift)))
		}
	}
}

// tellUnchecked says that the tie may turn the limb over, where its length was
// not told.
func (a *answer) tellUnchecked(f hinge.Fitting) {
	if f.Window.Near == hinge.ByNothing {
		a.problems = append(a.problems, a.voice.word("NOT CHECKED: the tie must be beyond the balance point, or the limb turns over when the hinge parts. Tell me its length."))
	}
}

// tellLayout says back where the limb and its blocks were taken to be.
func (a *answer) tellLayout(l hinge.Layout) {
	v, block := a.voice, a.voice.along(unit.Exactly(l.Height))
	tie := v.along(unit.Exactly(l.Tie))
	switch {
	case l.Tie > 0 && l.Angle != nil:
		a.lines = append(a.lines, v.say("Read as: tied %s from the cut, block %s above it, limb %s.", tie, block, v.lying(*l.Angle)))
	case l.Tie > 0:
		a.lines = append(a.lines, v.say("Read as: tied %s from the cut, block %s above it.", tie, block))
	default:
		a.lines = append(a.lines, v.say("Read as: block %s above the cut.", block))
	}
}

// tellOtherTies says where else it may be tied.
func (a *answer) tellOtherTies(f hinge.Fitting) {
	v, w := a.voice, f.Window.Ties
	switch {
	case f.Window.Near == hinge.ByNothing:
		a.lines = append(a.lines, v.say("Farthest tie that keeps the blocks apart: %s from the cut.", v.alongDown(w.High)))
	case w.High > 0:
		a.lines = append(a.lines, v.say("Good ties: %s to %s from the cut. Farther out is easier to start, but lifts farther and runs out of height.",
			v.alongUp(w.Low), v.alongDown(w.High)))
	case f.Lower > 0:
		a.problems = append(a.problems, v.say("Too near the balance point to trust: with the top block %s higher there is room for a good tie.", v.alongUp(f.Lower)))
	}
}

// tellClosing says how much rope comes in, as far as that is known.
func (a *answer) tellClosing(f hinge.Fitting) {
	v := a.voice
	switch {
	case f.Travel > 0:
		a.lines = append(a.lines, v.say("Haul in %s to upright.", v.ropeNeeded(f.Travel)))
	case f.Closes > 0:
		a.lines = append(a.lines, v.say("The blocks close by %s to upright: haul in that much for every part of line.", v.alongUp(f.Closes)))
	}
	if f.Rope > 0 {
		a.lines = append(a.lines, v.say("Rope %s end to end, tail in it.", v.ropeNeeded(f.Rope)))
	}
}

// tellFitAssumed says what was taken for granted.
func (a *answer) tellFitAssumed(l hinge.Layout) {
	v := a.voice
	var taken []string
	if l.Offset <= 0 {
		taken = append(taken, v.word("top block straight above the hinge"))
	} else {
		a.cautions = append(a.cautions, v.say("Block %s behind the hinge: when the hinge parts, the limb swings that far back to hang under it. Keep the climber out of there.",
			v.along(unit.Exactly(l.Offset))))
	}
	if l.Balance > 0 {
		taken = append(taken, v.word("balance at half length at most"))
	}
	taken = append(taken, v.say("%s between the ties for blocks and slings", v.alongUp(hinge.Clear(l.Closed))))
	a.lines = append(a.lines, v.say("Assumed: %s.", v.and(taken)))
}

// fitWorking shows what the farthest tie comes from.
func (a *answer) fitWorking(l hinge.Layout, f hinge.Fitting) []string {
	if l.Offset > 0 || f.Window.Far != hinge.ByClearance {
		return nil
	}
	v := a.voice
	return []string{v.say("Farthest tie: block %s above the cut, less %s between the ties: %s.", v.along(unit.Exactly(l.Height)), v.alongUp(hinge.Clear(l.Closed)), v.alongDown(f.Window.Ties.High))}
}

// forces are the facts that only a pull hangs on.
var forces = []parser.Field{parser.People, parser.WinchPull, parser.PersonPull, parser.Efficiency, parser.Turn, parser.Redirects, parser.Limit}

// idleForce says whether a fact was told of a pull that the answer does not
// know.
func (a *answer) idleForce(f parser.Field) bool {
	return (a.question.OfPlaces() && !a.pullsAtTies() || a.question.OfTravel()) && slices.Contains(forces, f)
}

package bot

import (
	"heft/calc/swing"
	"heft/calc/unit"
	"heft/parser"
)

// workSweep answers where a piece goes that is cut free beside its block, of
// which no weight is known.
func (a *answer) workSweep() error {
	if a.question.OnlyReach() {
		return a.workAcross()
	}
	s, err := a.swung()
	if err != nil {
		return err
	}
	w, err := swing.Sweep(s)
	if err != nil {
		return err
	}
	a.status = Answered
	a.figures = func(o *object) { o.Swing = swingFigures(w) }
	a.tellSweep(s, w)
	a.shown = a.sweepWorking(s, w)
	a.pictureSwing(s, w)
	return nil
}

// tellSweep says how far, how fast and how low it comes, and what it clears.
func (a *answer) tellSweep(s swing.Setup, w swing.Swing) {
	v := a.voice
	a.tellReach(s, w)
	a.lines = append(a.lines, v.say("It passes plumb at %s.", v.speed(w.Speed)))
	switch {
	case w.Lowest == nil:
		a.lines = append(a.lines, v.word("Tell me the hitch height and I say how low it comes."))
	case s.Hung == 0:
		a.lines = append(a.lines, v.say("Its tie passes %s above the ground.", v.alongDown(*w.Lowest)))
	default:
		a.lines = append(a.lines, v.say("Its low end passes %s above the ground.", v.alongDown(*w.Lowest)))
	}
	if w.Gap != nil {
		a.tellObstacle(s)
	}
	if line := a.reachMovedBy(s, w); line != "" {
		a.lines = append(a.lines, line)
	}
	a.tellLine(s)
	a.cautions = append(a.cautions, v.word("Keep everybody, and the climber, out of the whole arc. A tag line, or a block nearer above it, takes the swing away."))
}

// tellReach says how far it comes past the block, or whether it clears what stands there,
// and what besides the piece its pull hangs on.
func (a *answer) tellReach(s swing.Setup, w swing.Swing, forForce ...parser.Field) {
	v := a.voice
	a.lines = []string{v.say("%s, swings: comes %s past the block's plumb line.", capital(a.piece()), v.alongUp(w.Reach))}
	if s.Hung == 0 {
		a.lines[0] = v.say("%s, swings: comes %s PLUS ITS LENGTH below the tie past the block's plumb line.", capital(a.piece()), v.alongUp(w.Reach))
	}
	if w.Gap != nil {
		a.lines[0] = a.clearance(s, w, a.piece())
		if s.Hung == 0 {
			a.lines = append(a.lines, v.say("Its tie comes %s past the block's plumb line.", v.alongUp(w.Reach)))
		} else {
			a.lines = append(a.lines, v.say("It comes %s past the block's plumb line.", v.alongUp(w.Reach)))
		}
	}
	a.tellNoForces(forForce...)
	a.tellTiedSomewhere(s.Hung)
	if s.Hung == 0 {
		a.problems = append(a.problems, v.word("Planned as a point: what hangs below the tie reaches further, hangs lower and goes faster. Tell me its length."))
	}
}

// pictureSwing draws it, but where what may be struck stands on the side that it starts
// from: a picture has that on the far side.
func (a *answer) pictureSwing(s swing.Setup, w swing.Swing) {
	if !a.question.Noted(parser.NoteStartSide) {
		a.scene = swingScene(a.voice, a.pictured(), s, w)
	}
}

// reachMovedBy says how far it comes where it hangs a slip of the eye further
// to the side: what moves the reach most. It is empty where the line does not
// reach that far.
func (a *answer) reachMovedBy(s swing.Setup, w swing.Swing) string {
	v, aside := a.voice, a.question.Length(parser.Sideways).High
	if aside == 0 {
		return ""
	}
	out := v.further(aside)
	var err error
	if s.Start, err = swing.Start(out, s.Line); err != nil {
		return ""
	}
	further, err := swing.Sweep(s)
	if err != nil || further.Reach <= w.Reach {
		return ""
	}
	return v.say("If %s to the side, not %s: it comes %s further.", v.along(unit.Exactly(out)), v.along(unit.Exactly(aside)), v.alongUp(further.Reach-w.Reach))
}

// sweepWorking shows what the reach comes from.
func (a *answer) sweepWorking(s swing.Setup, w swing.Swing) []string {
	v, line, start := a.voice, a.voice.along(unit.Exactly(s.Line)), trimmed(s.Start.Degrees(), 1)
	if s.Hung == 0 {
		return []string{v.say("Reach, as a point: %s × sin %s° = %s.", line, start, v.alongUp(w.Reach))}
	}
	return []string{v.say("Reach: %s × sin %s° + %s = %s.", line, start, v.along(unit.Exactly(s.Hung)), v.alongUp(w.Reach))}
}

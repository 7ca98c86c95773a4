package bot

import (
	"math"

	"heft/calc/swing"
	"heft/calc/unit"
	"heft/parser"
)

// swingObject is a swing as scripts read it. A clearance below nought is how
// deep the piece may reach into the obstacle.
type swingObject struct {
	Bottom    float64  `json:"bottom_force_n,omitempty"` // 0 where no weight is known
	Speed     float64  `json:"speed_m_s"`
	Reach     float64  `json:"reach_m"`
	Lowest    *float64 `json:"lowest_m,omitempty"`
	Clears    *bool    `json:"clears,omitempty"`
	Clearance *float64 `json:"clearance_m,omitempty"`
}

func swingFigures(w swing.Swing) *swingObject {
	o := &swingObject{Bottom: float64(w.Bottom.Line), Speed: float64(w.Speed), Reach: float64(w.Reach)}
	if w.Lowest != nil {
		lowest := tidy(float64(*w.Lowest))
		o.Lowest = &lowest
	}
	if w.Gap != nil {
		clears, clearance := *w.Gap > 0, tidy(float64(*w.Gap))
		o.Clears, o.Clearance = &clears, &clearance
	}
	return o
}

// tellSwing plans on the worst: a piece tied at its end that hangs plumb as it
// comes free jerks the line harder than one that stays in line with it.
func (a *answer) tellSwing(s swing.Setup, w swing.Swing) {
	v := a.voice
	most := w.Bottom
	if w.Askew.Line > most.Line {
		most = w.Askew
	}
	a.lines = []string{v.say("%s, swings: line up to %s, comes %s past the block's plumb line.",
		capital(a.piece()), v.load(most.Line), v.alongUp(w.Reach))}
	if w.Gap != nil {
		a.lines[0] = a.clearance(s, w, v.say("%s, line up to %s", a.piece(), v.load(most.Line)))
	}
	a.tellWeight()
	a.lines = append(a.lines, v.say("Top block sees up to %s. It passes plumb at %s.", v.load(most.Block), v.speed(w.Speed)))
	a.tellRod(s, w, most)
	a.tellTiedSomewhere(s.Hung)
	switch {
	case w.Lowest == nil && w.Gap == nil:
		a.lines = append(a.lines, v.word("Tell me the hitch height and I say how low it comes."))
	case w.Lowest == nil && s.Hung == 0:
		a.lines = append(a.lines, v.say("Its tie comes %s past the block's plumb line.", v.alongUp(w.Reach)))
		a.tellObstacle(s)
	case w.Lowest == nil:
		a.lines = append(a.lines, v.say("It comes %s past the block's plumb line.", v.alongUp(w.Reach)))
		a.tellObstacle(s)
	case w.Gap == nil:
		a.lines = append(a.lines, v.say("Its low end passes %s above the ground.", v.alongDown(*w.Lowest)))
	default:
		a.lines = append(a.lines, v.say("It comes %s past the block's plumb line; its low end passes %s above the ground.",
			v.alongUp(w.Reach), v.alongDown(*w.Lowest)))
		a.tellObstacle(s)
	}
	if line := a.swingMovedBy(s, most.Line); line != "" {
		a.lines = append(a.lines, line)
	}
	a.tellLine(s)
	a.cautions = append(a.cautions, v.word("Keep everybody, and the climber, out of the whole arc. A tag line, or a block nearer above it, takes the swing away."))
}

// tellTiedSomewhere says that a swing is planned alike wherever the piece is tied.
func (a *answer) tellTiedSomewhere(hung unit.Length) {
	if hung > 0 && a.question.Has(parser.Tie, parser.TieAlong) {
		a.lines = append(a.lines, a.voice.word("Wherever it is tied: planned with all of its length below the tie."))
	}
}

// tellRod says what kind of piece was planned on: one that hangs a length
// below its tie, or a point, which reaches less far.
func (a *answer) tellRod(s swing.Setup, w swing.Swing, most swing.Pull) {
	v := a.voice
	switch {
	case s.Hung == 0:
		a.lines = append(a.lines, v.word("Planned as a point: what hangs below the tie reaches further and jerks harder. Tell me its length."))
	case most != w.Bottom:
		a.lines = append(a.lines, v.say("Planned as a rod, all of %s hung at its end. As a point it pulls %s at the bottom; hanging plumb as it comes free it jerks harder.",
			v.along(unit.Exactly(s.Hung)), v.load(w.Bottom.Line)))
	}
}

// tooNear is a gap that an eye's slip in the sizes takes away (common practice,
// no source).
const tooNear unit.Length = 3 * unit.Foot

// clearance says first whether the piece clears the obstacle. A piece without a
// length clears it by so much less as it reaches past its tie.
func (a *answer) clearance(s swing.Setup, w swing.Swing, swung string) string {
	v, gap, what := a.voice, *w.Gap, a.obstacleName()
	switch {
	case gap <= 0:
		a.problems = append(a.problems, v.word("It may strike: shorten the line, move the block nearer above the piece, or hold it on a tag line."))
		return v.say("HITS the %s, by up to %s: %s.", what, v.alongUp(max(0, -gap)), swung)
	case s.Hung == 0:
		return v.say("CLEARS BY %s LESS ITS LENGTH below the tie (%s): %s.", v.alongDown(gap), what, swung)
	case gap < tooNear:
		a.problems = append(a.problems, v.word("Too close to trust: a slip of the eye takes that away."))
		return v.say("CLEARS BY ONLY %s (%s): %s.", v.alongDown(gap), what, swung)
	}
	return v.say("CLEARS BY %s (%s): %s.", v.alongDown(gap), what, swung)
}

// obstacleName is what the crew called the obstacle.
func (a *answer) obstacleName() string {
	switch o := a.question.Obstacle; {
	case o == nil:
		return a.voice.word("obstacle")
	case o.Value == parser.Person:
		return a.voice.word("climber")
	default:
		return trimQuote(o.Words)
	}
}

// tellObstacle says where the obstacle was taken to be.
func (a *answer) tellObstacle(s swing.Setup) {
	v, o := a.voice, a.question.Obstacle
	out, top := v.alongDown(s.Obstacle.Distance), v.alongUp(s.Obstacle.Top)
	var untold []parser.Field
	for _, f := range []parser.Field{parser.ObstacleHeight, parser.HitchHeight} {
		if !a.question.Has(f) && !(f == parser.HitchHeight && s.Hitch > 0) {
			untold = append(untold, f)
		}
	}
	switch {
	case a.question.Noted(parser.NoteStartSide):
		a.lines = append(a.lines, v.say("The %s: nearest part %s from the block's plumb line, on the side it starts from. It comes back no further than it started, and its length below the tie.", a.obstacleName(), out))
	case len(untold) > 0 && (o == nil || o.Value != parser.Standing):
		a.lines = append(a.lines, v.say("The %s: nearest part %s from the block's plumb line, on the far side, taken to be as tall as the block. Tell me %s and I check whether the piece passes over it.",
			a.obstacleName(), out, v.and(nouns(v, untold))))
	case o != nil && o.Value == parser.Standing:
		a.lines = append(a.lines, v.say("The %s: %s from the block's plumb line, on the far side, as tall as the block.", a.obstacleName(), out))
	case o != nil && o.Value == parser.Person:
		a.lines = append(a.lines, v.say("The %s: %s from the block's plumb line, on the far side, planned to reach %s up.", a.obstacleName(), out, top))
	default:
		a.lines = append(a.lines, v.say("The %s: near face %s from the block's plumb line, on the far side, %s high.", a.obstacleName(), out, top))
	}
}

// speed says how fast a piece passes, rounded up.
func (s speaker) speed(f swing.Speed) string {
	if s.metric {
		return trimmed(math.Ceil(float64(f)*10-1e-9)/10, 1) + " m/s"
	}
	return trimmed(upTo(float64(f)/float64(unit.Foot)), 0) + " ft/s"
}

// swingWorking shows the pull of a point on its line, and what a piece that
// hangs a length below its tie adds to it.
func (a *answer) swingWorking(s swing.Setup, w swing.Swing) []string {
	v, start := a.voice, trimmed(s.Start.Degrees(), 1)
	point, err := swing.Tension(s.Heavy, s.Start)
	if err != nil {
		return nil
	}
	out := []string{v.say("Line, as a point: %s × (3 − 2 × cos %s°) = %s.", v.exact(s.Heavy), start, v.exact(point.Held()))}
	if w.Askew.Line > 0 {
		out = append(out, v.say("Hung plumb, at most × (1 + 6 × (1 − cos %s°)), no more than 3.5: %s.", start, v.exact(w.Askew.Line.Held())))
	}
	return append(out, v.say("Top block, rope legs side by side: 2 × the line."))
}

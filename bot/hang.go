package bot

import (
	"heft/calc/swing"
	"heft/calc/unit"
	"heft/parser"
)

// hangObject is a piece that hangs over what stands there, as scripts read it. A
// clearance below nought is how far it hangs below the top.
type hangObject struct {
	Lowest    float64 `json:"lowest_m"`
	Clears    bool    `json:"clears"`
	Clearance float64 `json:"clearance_m"`
}

// workHang answers whether a piece clears what stands there by its height alone: it
// comes no lower than it hangs plumb, however far it swings.
func (a *answer) workHang() error {
	q := a.question
	s := swing.Setup{Line: q.Length(parser.LineOut).High, Hung: q.Length(parser.Length).High, Hitch: q.Length(parser.HitchHeight).Low}
	lowest, err := swing.Hang(s)
	if err != nil {
		return err
	}
	gap := lowest - q.Length(parser.ObstacleHeight).High
	a.status = Answered
	a.figures = func(o *object) {
		o.Hang = &hangObject{Lowest: tidy(float64(lowest)), Clears: gap > 0, Clearance: tidy(float64(gap))}
	}
	a.tellHang(s, lowest, gap)
	return nil
}

// tellHang says by how much it clears, or how far it hangs below the top.
func (a *answer) tellHang(s swing.Setup, lowest, gap unit.Length) {
	v := a.voice
	hung := v.say("%s, its low end %s above the ground", a.piece(), v.alongDown(lowest))
	if gap > 0 {
		a.lines = []string{a.clearance(s, swing.Swing{Gap: &gap}, hung)}
	} else {
		a.lines = []string{v.say("HANGS %s BELOW the top of the %s: %s.", v.alongUp(-gap), a.obstacleName(), hung)}
		a.problems = append(a.problems, v.word("It strikes what stands under it: a shorter line, a higher block or a shorter piece."))
	}
	a.tellNoForces(parser.Sideways)
	a.lines = append(a.lines, v.say("Assumed: block %s up, %s of line, all of the piece below its tie, the %s %s high. Nothing is taken off for stretch, a drop, or line that runs.",
		v.along(unit.Exactly(s.Hitch)), v.along(unit.Exactly(s.Line)), a.obstacleName(), v.along(a.question.Length(parser.ObstacleHeight))))
	if gap <= 0 {
		a.lines = append(a.lines, v.say("Where it stands off to the side, tell me %s and I check the swing.", v.and(nouns(v, []parser.Field{parser.Sideways, parser.ObstacleOut}))))
	}
	a.cautions = append(a.cautions, v.word("Keep everybody, and the climber, out of the whole arc. A tag line, or a block nearer above it, takes the swing away."))
}

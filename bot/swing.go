package bot

import (
	"heft/calc/swing"
	"heft/calc/unit"
	"heft/parser"
)

// workSwing answers what a piece does that is cut free beside its block.
func (a *answer) workSwing() error {
	q := a.question
	res, err := a.weighed()
	if err != nil {
		return err
	}
	s := swing.Setup{
		Heavy: res.Weight.High, Line: q.Length(parser.LineOut).High,
		Hung: q.Length(parser.Length).High, Hitch: q.Length(parser.HitchHeight).Low,
	}
	if x, ok := q.Get(parser.StartAngle); ok {
		s.Start = unit.Angle(x.High) * unit.Degree
	} else if s.Start, err = swing.Start(q.Length(parser.Sideways).High, s.Line); err != nil {
		return err
	}
	w, err := swing.Plan(s)
	if err != nil {
		return err
	}
	a.status, a.result = Answered, &res
	a.figures = func(o *object) {
		o.Swing = &swingObject{Bottom: float64(w.Bottom.Line), Reach: float64(w.Reach)}
		if w.Lowest != nil {
			lowest := tidy(float64(*w.Lowest))
			o.Swing.Lowest = &lowest
		}
		o.BlockLoad = float64(max(w.Bottom.Block, w.Askew.Block))
	}
	a.strain = &strain{line: max(w.Bottom.Line, w.Askew.Line), block: max(w.Bottom.Block, w.Askew.Block)}
	a.tellSwing(s, w)
	a.scene = swingScene(a.voice, a.pictured(), s, w)
	return nil
}

// swingObject is a swing as scripts read it.
type swingObject struct {
	Bottom float64  `json:"bottom_force_n"`
	Reach  float64  `json:"reach_m"`
	Lowest *float64 `json:"lowest_m,omitempty"`
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
	a.tellWeight()
	a.lines = append(a.lines, v.say("Top block sees up to %s.", v.load(most.Block)))
	if most != w.Bottom {
		a.lines = append(a.lines, v.say("In line with its rope it pulls %s at the bottom; hanging plumb as it comes free it jerks harder.", v.load(w.Bottom.Line)))
	}
	if w.Lowest != nil {
		a.lines = append(a.lines, v.say("Its low end passes %s above the ground.", v.alongDown(*w.Lowest)))
	} else {
		a.lines = append(a.lines, v.word("Tell me the hitch height and I say how low it comes."))
	}
	a.lines = append(a.lines,
		v.say("Assumed: %s of line, %s° from plumb at the start, nothing lost to air or rope.", v.along(unit.Exactly(s.Line)), trimmed(s.Start.Degrees(), 0)))
	a.cautions = append(a.cautions, v.word("Keep everybody, and the climber, out of the whole arc. A tag line, or a block nearer above it, takes the swing away."))
}

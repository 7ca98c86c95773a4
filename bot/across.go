package bot

import (
	"heft/calc/swing"
	"heft/calc/unit"
	"heft/parser"
)

// workAcross answers how far a piece comes of which it is told how far to the side it
// starts, and not on how much line: that hangs on the side alone.
func (a *answer) workAcross() error {
	q := a.question
	s := swing.Setup{Hung: q.Length(parser.Length).High, Hitch: q.BlockUp().Low}
	s.Obstacle = a.obstacle(s.Hitch)
	w, shortest, err := swing.Across(q.Length(parser.Sideways).High, s.Hung, s.Obstacle)
	if err != nil {
		return err
	}
	a.status = Answered
	a.figures = func(o *object) { o.Swing = swingFigures(w) }
	a.tellReach(s, w, parser.LineOut)
	if w.Gap != nil {
		a.tellObstacle(s)
	}
	v := a.voice
	a.lines = append(a.lines, v.say("On any line of %s or more. Tell me how much is out and I say how fast and how low it comes.", v.alongUp(shortest)))
	aside := q.Length(parser.Sideways).High
	out := v.further(aside)
	a.lines = append(a.lines, v.say("If %s to the side, not %s: it comes %s further.", v.along(unit.Exactly(out)), v.along(unit.Exactly(aside)), v.alongUp(out-aside)))
	a.tellOverTrunk()
	a.cautions = append(a.cautions, v.word("Keep everybody, and the climber, out of the whole arc. A tag line, or a block nearer above it, takes the swing away."))
	return nil
}

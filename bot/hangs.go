package bot

import (
	"heft/calc/swing"
	"heft/calc/unit"
	"heft/parser"
)

// workHangs answers how high the low end of a piece hangs; of a line that is not told,
// how much of it may be out over what stands there.
func (a *answer) workHangs() error {
	q, v := a.question, a.voice
	s := swing.Setup{Line: q.Length(parser.LineOut).High, Hung: q.Length(parser.Length).High, Hitch: q.Length(parser.HitchHeight).Low}
	if !q.Has(parser.LineOut) {
		return a.workMostLine(s)
	}
	lowest, err := swing.Hang(s)
	if err != nil {
		return err
	}
	a.status = Answered
	a.figures = func(o *object) { o.Hang = &hangObject{Lowest: tidy(float64(lowest))} }
	a.lines = []string{v.say("%s: its low end hangs %s above the ground.", capital(a.piece()), v.alongDown(lowest))}
	a.tellNoForces(parser.Sideways)
	a.lines = append(a.lines, v.say("Assumed: block %s up, %s of line, all of the piece below its tie. Nothing is taken off for stretch, a drop, or line that runs.",
		v.along(unit.Exactly(s.Hitch)), v.along(unit.Exactly(s.Line))))
	a.cautions = append(a.cautions, v.word("Let line run and it hangs as much lower. Nobody under it."))
	return nil
}

// workMostLine answers how much line may be out before the piece touches what stands
// under it.
func (a *answer) workMostLine(s swing.Setup) error {
	q, v := a.question, a.voice
	top := q.Length(parser.ObstacleHeight)
	most, err := swing.MostLine(s, top.High)
	if err != nil {
		return err
	}
	a.status = Answered
	what, under := a.obstacleName(), v.along(top)
	if most <= 0 {
		a.lines = []string{v.say("%s TOUCHES the %s on any line: block to top of the %s is no more than its length.", capital(a.piece()), what, what)}
	} else {
		a.lines = []string{v.say("%s comes down as far as you let it run: clear of the %s with LESS THAN %s of line, block to tie.", capital(a.piece()), what, v.alongDown(most))}
	}
	a.lines = append(a.lines, v.say("Assumed: block %s up, %s of piece below its tie, the %s %s high. Nothing is taken off for stretch or a drop.",
		v.along(unit.Exactly(s.Hitch)), v.along(unit.Exactly(s.Hung)), what, under))
	a.cautions = append(a.cautions, v.word("Let line run and it hangs as much lower. Nobody under it."))
	return nil
}

package bot

import (
	"heft/calc/swing"
	"heft/calc/unit"
	"heft/parser"
)

// workSwing answers what a piece does that is cut free beside its block.
func (a *answer) workSwing() error {
	if a.question.ByHeight() {
		return a.workHang()
	}
	if a.question.HangsAsked() {
		return a.workHangs()
	}
	if a.question.OfPlaces() {
		return a.workSweep()
	}
	res, err := a.weighed()
	if err != nil {
		return err
	}
	s, err := a.swung()
	if err != nil {
		return err
	}
	s.Heavy = res.Weight.High
	w, err := swing.Plan(s)
	if err != nil {
		return err
	}
	a.status, a.result = Answered, &res
	a.figures = func(o *object) {
		o.Swing = swingFigures(w)
		o.BlockLoad = float64(max(w.Bottom.Block, w.Askew.Block))
	}
	a.strain = &strain{line: max(w.Bottom.Line, w.Askew.Line), block: max(w.Bottom.Block, w.Askew.Block)}
	a.tellSwing(s, w)
	a.shown = a.swingWorking(s, w)
	a.pictureSwing(s, w)
	return nil
}

// swung is the swing as it was told, at its worse ends, but for the weight.
func (a *answer) swung() (swing.Setup, error) {
	q := a.question
	line := a.lineOut()
	s := swing.Setup{
		Line: line.High,
		Hung: q.Length(parser.Length).High, Hitch: q.BlockUp().Low,
	}
	s.Obstacle = a.obstacle(s.Hitch)
	if x, ok := q.Get(parser.StartAngle); ok {
		s.Start = unit.Angle(x.High) * unit.Degree
		return s, nil
	}
	var err error
	s.Start, err = swing.Start(q.Length(parser.Sideways).High, line.Low)
	return s, err
}

// lineOut is the line from the block to the tie, as it was told, or by how far the
// block is above the piece and to its side.
func (a *answer) lineOut() unit.Range[unit.Length] {
	q := a.question
	if !q.LineBySides() {
		return q.Length(parser.LineOut)
	}
	aside, above := q.Length(parser.Sideways), q.OverPiece()
	return unit.Range[unit.Length]{Low: swing.Line(aside.High, above.Low), High: swing.Line(aside.High, above.High)}
}

// tellLine says what the swing was worked out with, and where its line comes from.
func (a *answer) tellLine(s swing.Setup) {
	v, q := a.voice, a.question
	a.lines = append(a.lines, v.say("Assumed: %s of line, %s° from plumb at the start, nothing lost to air or rope.",
		v.along(unit.Exactly(s.Line)), trimmed(s.Start.Degrees(), 0)))
	if q.LineBySides() {
		a.lines = append(a.lines, v.say("That line runs to a block %s above the piece and %s to its side.",
			v.along(q.OverPiece()), v.along(q.Length(parser.Sideways))))
	}
	a.tellOverTrunk()
}

// tellOverTrunk says where a block was taken to hang that the piece is told from the trunk of.
func (a *answer) tellOverTrunk() {
	v := a.voice
	if a.question.Noted(parser.OverTrunk) {
		a.lines = append(a.lines, v.word("Taken: the block hangs on the trunk. If not, tell me how far it is to the side of the piece."))
	}
}

// headroom is how far above his place a climber is planned to reach (common
// practice, no source).
const headroom unit.Length = 2

// obstacle is what the swing may strike, nil where nothing was said: nearest
// and highest of what was said. A trunk is as tall as the block, and so is
// whatever of whose top nothing was said.
func (a *answer) obstacle(block unit.Length) *swing.Obstacle {
	q := a.question
	if !q.Has(parser.ObstacleOut) {
		return nil
	}
	o := &swing.Obstacle{Distance: q.Length(parser.ObstacleOut).Low, Top: q.Length(parser.ObstacleHeight).High}
	switch {
	case !q.Has(parser.ObstacleHeight):
		o.Top = block
	case q.Obstacle == nil:
	case q.Obstacle.Value == parser.Standing:
		o.Top = max(o.Top, block)
	case q.Obstacle.Value == parser.Person:
		o.Top = min(o.Top+headroom, swing.ObstacleTops.High)
	}
	return o
}

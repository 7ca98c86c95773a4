package swing

import (
	"heft/calc/block"
	"heft/calc/limits"
	"heft/calc/rope"
	"heft/calc/unit"
)

// Setup is a piece about to be cut free. Zero was not said, but for Start and
// Between, where it is an angle like any other.
type Setup struct {
	Heavy    unit.Mass   // the heavy end of its weight
	Line     unit.Length // from the block to the tie
	Start    unit.Angle  // of the line, from the vertical
	Hung     unit.Length // how far the piece reaches below its tie
	Hitch    unit.Length // height of the block above the ground
	Between  unit.Angle  // the legs of the line at the block, 0 parallel
	Obstacle *Obstacle
}

// Obstacle stands on the far side of the block: a roof, a fence, a wall.
type Obstacle struct {
	Distance unit.Length // of its near face from the block's plumb line
	Top      unit.Length // above the ground
}

// Pull is the tension of the line and what it loads the block with.
type Pull struct{ Line, Block unit.Force }

// Swing is what the piece will do.
type Swing struct {
	Bottom Pull         // at the bottom of the swing: Tension
	InLine Pull         // at least, if it stays in line; of a piece with a length
	Askew  Pull         // at most, tied at its end and hanging plumb; of a piece with a length
	Speed  Speed        // at the bottom, of the piece's middle, at most
	Reach  unit.Length  // past the block's plumb line, of the outer end of the piece
	Lowest *unit.Length // of the piece, above the ground; nil where the hitch is not known
	Gap    *unit.Length // to the obstacle; below nought it may be struck
}

// Plan works a swing out, on the heavy end, undamped. The tie comes as far
// out as it started, and the piece may be flung out level from it:
//
//	reach  = L·sin θ₀ + l
//	lowest = H − L − l
//
// in m, with L the line, l what hangs below the tie and H the height of the
// block. The gap to an obstacle is the larger of what lies beyond the reach
// and what lies beyond L + l from the block. The block carries both legs of
// the line: see block.Load.
//
// An obstacle past a block whose height is not known is taken to stand as tall
// as the block, which brings it nearest.
//
// It holds within the ranges of Tension, InLine and rope.Hitches. The error
// is an *limits.OutOfRange or an *limits.Contradiction, the latter too where
// the piece would strike the ground.
//
// Errors: as Tension. Nothing within L + l of the block is safe from a line
// that is let run, or from a second pass.
//
// Source: geometry; the reach of a piece that turns on its tie was found by
// integration to stay within it on the first pass.
func Plan(s Setup) (Swing, error) {
	if err := check(s.Heavy, s.Start); err != nil {
		return Swing{}, err
	}
	w, err := Sweep(s)
	if err != nil {
		return Swing{}, err
	}
	if err := s.pulls(&w); err != nil {
		return Swing{}, err
	}
	return w, nil
}

// Sweep works out where a swing goes and how fast, as Plan does: nothing of it
// hangs on the weight, and the pulls stay nought.
//
// It holds within Starts, Lines, Hangs, Obstacles, ObstacleTops and
// rope.Hitches. The error is a *limits.OutOfRange or a *limits.Contradiction.
//
// Errors: as Plan.
//
// Source: geometry and energy.
func Sweep(s Setup) (Swing, error) {
	if err := s.checkPath(); err != nil {
		return Swing{}, err
	}
	w := Swing{Speed: fall(s.Line+s.Hung/2, s.Start), Reach: reach(s.Line, s.Hung, s.Start)}
	if s.Hitch != 0 {
		lowest := max(0, s.Hitch-s.Line-s.Hung) // the last bits of a conversion may lie below nought
		w.Lowest = &lowest
	}
	if s.Obstacle != nil {
		gap := s.gap(w.Reach)
		w.Gap = &gap
	}
	return w, nil
}

func (s *Setup) checkPath() error {
	if err := Starts.Check(limits.Angle, s.Start.Degrees()); err != nil {
		return err
	}
	if err := checkRod(s.Line, s.Hung); err != nil {
		return err
	}
	if err := s.checkHeights(); err != nil || s.Obstacle == nil {
		return err
	}
	if err := Obstacles.Check(limits.Obstacle, s.Obstacle.Distance); err != nil {
		return err
	}
	return ObstacleTops.Check(limits.ObstacleTop, s.Obstacle.Top)
}

func (s *Setup) checkHeights() error {
	if s.Hitch == 0 {
		return nil
	}
	if err := rope.Hitches.Check(limits.HitchHeight, s.Hitch); err != nil {
		return err
	}
	if limits.Above(s.Line+s.Hung, s.Hitch) {
		return &limits.Contradiction{First: limits.LineLength, Second: limits.HitchHeight,
			Got: float64(s.Line + s.Hung), Limit: float64(s.Hitch),
			Why: "line and piece together are longer: the piece would strike the ground"}
	}
	return nil
}

// pulls finds the tensions and the loads on the block.
func (s *Setup) pulls(w *Swing) error {
	over := func(p *Pull, tension unit.Force, err error) error {
		if err != nil {
			return err
		}
		p.Line = tension
		p.Block, err = block.Load(tension, s.Between)
		return err
	}
	bottom, err := Tension(s.Heavy, s.Start)
	if err := over(&w.Bottom, bottom, err); err != nil || s.Hung == 0 {
		return err
	}
	inLine, err := InLine(s.Heavy, s.Start, s.Line, s.Hung)
	if err := over(&w.InLine, inLine, err); err != nil {
		return err
	}
	askew, err := Askew(s.Heavy, s.Start)
	return over(&w.Askew, askew, err)
}

// Domains lists the ranges of validity.
func Domains() []limits.Domain {
	const method = "swing"
	return []limits.Domain{
		Starts.Domain(method, limits.Angle),
		Lines.Domain(method, limits.LineLength),
		Hangs.Domain(method, limits.Length),
		Obstacles.Domain(method, limits.Obstacle),
		ObstacleTops.Domain(method, limits.ObstacleTop),
	}
}

package hinge

import (
	"heft/calc/limits"
	"heft/calc/rope"
	"heft/calc/tackle"
	"heft/calc/unit"
)

// Raising is a limb stood up. With TurnsOver or TwoBlocks the set-up is to be
// refused, whatever the other figures.
type Raising struct {
	Start     unit.Force    // on the moving block now, the most of the way to upright
	Line      unit.Force    // the larger of Start and the whole weight
	Lift      tackle.Result // what it takes to pull Line; Tree is at most that
	Travel    unit.Length   // rope hauled from now to upright
	Rope      unit.Length   // from end to end; 0 where the height above the ground was not said
	Window    Window
	TurnsOver bool // the tie is not beyond the balance point
	TwoBlocks *TwoBlocks
}

// Raise works out how a limb is stood up:
//
//	Line   = max(F(now), W)
//	Travel = n·(s(now) − s(upright))
//	Rope   = max((n + 1)·H, n·s(now) + H) + Tail
//
// in N and m, with F, W and s those of Force, n the parts of line and H the
// height of the top block above the ground; the rope is to let the limb down
// to the ground too. It holds within Domains and those of package tackle.
//
// The error is a *limits.OutOfRange or a *limits.Contradiction. A set-up that
// must not be used for the other two reasons has them in the result.
//
// Errors: those of Force and tackle.Plan. Where the line is not hauled tight
// to the whole weight before the hinge parts, that weight comes onto it
// suddenly: up to twice W. A hinge that parts early, or a top block behind
// the hinge, lets the limb swing to hang below the block. A line out of the
// plane of the hinge tears it.
//
// Source: statics and geometry.
func Raise(s Setup) (Raising, error) {
	if err := s.check(); err != nil {
		return Raising{}, err
	}
	r := Raising{Start: s.pull(s.Angle)}
	r.Line = max(r.Start, s.Weight.Weight())
	var err error
	if r.Lift, err = tackle.Pull(r.Line, s.Tackle, s.Power); err != nil {
		return Raising{}, err
	}
	r.Travel = unit.Length(s.Parts) * s.closes()
	if r.Rope, err = s.rope(); err != nil {
		return Raising{}, err
	}
	r.TurnsOver = !limits.Above(s.Tie, s.Balance)
	r.TwoBlocks = s.twoBlocks()
	r.Window = s.window(r.Lift)
	return r, nil
}

// closes is how much nearer the blocks come from now to upright.
func (s *Setup) closes() unit.Length {
	return unit.Length(s.distance(s.Angle) - s.distance(upright))
}

// rope is the rope from end to end, 0 where the height of the top block above
// the ground was not said.
func (s *Setup) rope() (unit.Length, error) {
	if s.Hitch == 0 {
		return 0, nil
	}
	down, err := rope.Needed(s.Hitch, s.Parts)
	if err != nil {
		return 0, err
	}
	return max(down, unit.Length(s.Parts)*unit.Length(s.distance(s.Angle))+s.Hitch+rope.Tail), nil
}

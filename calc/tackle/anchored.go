package tackle

import (
	"heft/calc/block"
	"heft/calc/limits"
	"heft/calc/rope"
	"heft/calc/unit"
)

// Strain is what a pull puts on a tackle at the most.
type Strain struct {
	Load     unit.Force // on the moving end: what the tackle holds on to
	Fixed    unit.Force // on the fixed end, block and dead end together
	Redirect unit.Force // on a block that turns the haul right back
}

// Strained is the most that a pull F at the hands puts on the two ends of a tackle,
// whatever hangs on it, or is stuck:
//
//	load      W = n·F
//	fixed     P = (n + 1)·F, with the haul led from the fixed block
//	fixed     P = (n − 1)·F, with the haul led from the moving block
//	redirect  R = 2·F
//
// in N, with n the parts of line. It holds within rope.PartsOfLine and Winches.
//
// Errors: friction takes from the load and from the fixed end while the rope is pulled
// in, so that this is the upper bound. A load that drops onto the rope pulls more.
//
// Source: statics.
func Strained(t Tackle, pull unit.Force) (Strain, error) {
	if err := rope.PartsOfLine.Check(limits.Parts, float64(t.Parts)); err != nil {
		return Strain{}, err
	}
	if err := Winches.Check(limits.Winch, pull); err != nil {
		return Strain{}, err
	}
	n := unit.Force(t.Parts)
	s := Strain{Load: n * pull, Fixed: (n + 1) * pull, Redirect: 2 * pull}
	if t.Upward {
		s.Fixed = (n - 1) * pull
	}
	return s, block.Tensions.Check(limits.Tension, s.Load)
}

package hinge

import (
	"math"

	"heft/calc/limits"
	"heft/calc/unit"
)

// upright is where the limb is when its hinge parts.
const upright unit.Angle = math.Pi / 2

// distance is that between the two blocks when the limb is at an angle.
func (s *Setup) distance(at unit.Angle) float64 {
	sin, cos := math.Sincos(float64(at))
	return math.Hypot(float64(s.Tie)*cos+float64(s.Offset), float64(s.Height)-float64(s.Tie)*sin)
}

// headroom is how far the top block stands above the line of the limb,
// carried back behind the hinge.
func (s *Setup) headroom(at unit.Angle) float64 {
	return float64(s.Height) + float64(s.Offset)*math.Tan(float64(at))
}

// pull is the force on the moving block, the limb at rest at an angle.
func (s *Setup) pull(at unit.Angle) unit.Force {
	lever := float64(s.Tie) * s.headroom(at) / s.distance(at)
	return s.Weight.Weight() * unit.Force(float64(s.Balance)/lever)
}

// Force is the pull on the moving block that holds the limb at an angle, the
// moment balance about the hinge:
//
//	F·p = W·x·cos φ
//	p   = a·(h·cos φ + d·sin φ)/s
//	s²  = (a·cos φ + d)² + (h − a·sin φ)²
//
// in N, with W the weight, x the balance point, a the tie, h the top block
// above the hinge and d behind it, all in m, φ the angle, p the lever arm of
// the line and s the distance between the blocks. Straight above the hinge
// that is F = W·(x/a)·(s/h). It holds within Domains, from the angle now to
// upright, for a limb raised steadily in the plane of hinge and line.
//
// On that way h + d·tan φ grows and s shrinks, so that F only falls: the most
// is at the start, the least distance between the blocks at upright.
//
// The error is a *limits.OutOfRange or a *limits.Contradiction.
//
// Errors: the wood of the hinge, which has to be bent, wind, and brush that
// is caught come on top. F goes with x as it does with W: a tenth further
// out is a tenth more.
//
// Source: statics.
func (s Setup) Force(at unit.Angle) (unit.Force, error) {
	if err := s.check(); err != nil {
		return 0, err
	}
	way := limits.Range[float64]{Low: s.Angle.Degrees(), High: upright.Degrees(),
		Why: "the limb goes from where it is to upright"}
	if err := way.Check(limits.LimbAngle, at.Degrees()); err != nil {
		return 0, err
	}
	return s.pull(min(at, upright)), nil
}

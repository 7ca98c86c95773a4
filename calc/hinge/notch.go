package hinge

import (
	"math"

	"heft/calc/limits"
	"heft/calc/unit"
)

// Turns are the angles of a limb before and after it turns on its hinge, in
// degrees above the horizontal.
var Turns = limits.Range[float64]{Low: -90, High: 90,
	Why: "a limb stands between straight down and upright"}

// Notch is the opening of the notch, the angle through which the limb turns
// before the hinge must break:
//
//	opening = |to − from|
//
// from and to above the horizontal; to upright that is 90° − from. It holds
// within Turns, up or down in one plane.
//
// The error is a *limits.OutOfRange, or a *limits.Contradiction where the limb
// does not turn.
//
// Errors: a notch that closes early breaks the hinge early; the angle of the
// limb is that of its wood at the cut, not of the line from cut to tip.
//
// Source: geometry.
func Notch(from, to unit.Angle) (unit.Angle, error) {
	for _, a := range [...]unit.Angle{from, to} {
		if err := Turns.Check(limits.Angle, a.Degrees()); err != nil {
			return 0, err
		}
	}
	opening := unit.Angle(math.Abs(float64(to - from)))
	if opening.Degrees() < 1 {
		return 0, &limits.Contradiction{First: limits.Angle, Second: limits.LimbAngle,
			Got: to.Degrees(), Limit: from.Degrees(), Why: "the limb does not turn"}
	}
	return opening, nil
}

package piece_test

import (
	"math"
	"testing"

	"heft/calc/piece"
	"heft/calc/unit"
)

// centre integrates the distance from the cut to the centre of gravity of a
// piece whose thickness runs evenly from butt to tip, in slices.
func centre(butt, tip, length float64) float64 {
	const slices = 100000
	moment, volume := 0.0, 0.0
	for i := range slices {
		x := (float64(i) + 0.5) / slices
		d := butt + (tip-butt)*x
		moment += d * d * x * length
		volume += d * d
	}
	return moment / volume
}

func TestBalanceLiesBetweenConeAndCylinder(t *testing.T) {
	const length = 6.0
	for name, test := range map[string]struct {
		shape     piece.Shape
		tapered   bool
		likely    float64
		low, high float64
	}{
		"a limb is a cone or a cylinder, or between": {piece.Limb, false, 2.13, centre(1, 0, length), centre(1, 1, length)},
		"so is a piece of no said shape":             {piece.Unsaid, false, 3, centre(1, 0, length), centre(1, 1, length)},
		"a log tapers to half at the most":           {piece.Log, false, 3, centre(1, 0.5, length), centre(1, 1, length)},
		"a measured log is as measured":              {piece.Log, true, 2.5, 2.5 - 0.3, 2.5 + 0.3},
	} {
		at := piece.BalancePoints(test.shape, test.tapered, unit.Length(test.likely), length)
		if math.Abs(float64(at.Low)-test.low) > 0.02 || math.Abs(float64(at.High)-test.high) > 0.001 {
			t.Errorf("%s: %v, want %v to %v", name, at, test.low, test.high)
		}
	}
}

package swing_test

import (
	"math"
	"testing"

	"heft/calc/swing"
	"heft/calc/unit"
)

// TestLineIsTheLongSideOfTheTriangle checks a 3-4-5 triangle, and that the start
// angle of such a line is that of the two sides.
func TestLineIsTheLongSideOfTheTriangle(t *testing.T) {
	if got := swing.Line(3, 4); math.Abs(float64(got)-5) > 1e-12 {
		t.Errorf("line by 3 m aside and 4 m above: %v m, not 5", got)
	}
	for _, above := range []unit.Length{1, 6, 30} {
		got, err := swing.Start(2, swing.Line(2, above))
		if want := math.Atan(float64(2 / above)); err != nil || math.Abs(float64(got)-want) > 1e-12 {
			t.Errorf("start 2 m aside under a block %v m above: %v, %v; not %v", above, got, err, want)
		}
	}
}

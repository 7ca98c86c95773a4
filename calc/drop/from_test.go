package drop_test

import (
	"math"
	"testing"

	"heft/calc/drop"
	"heft/calc/unit"
)

// TestFromBlockFollowsTheBalancePoint follows the balance point of a log that
// turns over about its tie, wherever that is below the balance point.
func TestFromBlockFollowsTheBalancePoint(t *testing.T) {
	const long, below = 1.8, 0.4
	for _, tie := range []float64{0, 0.3, 0.9} { // above the cut
		before := long / 2
		line := below + tie
		after := -below - line - (long/2 - tie)
		if got := float64(drop.FromBlock(unit.Length(long), unit.Length(below))); math.Abs(got-(before-after)) > 1e-9 {
			t.Errorf("tied %v m up: %v m, followed %v m", tie, got, before-after)
		}
	}
}

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

// TestTheHitchFallsTwiceItsHeight: a hitch 2 ft above its block hangs 2 ft below it once
// the line is tight, and the middle of a piece never falls less than that.
func TestTheHitchFallsTwiceItsHeight(t *testing.T) {
	if got := drop.OfHitch(2 * unit.Foot); got != 4*unit.Foot {
		t.Errorf("a hitch 2 ft above its block falls %v, want 4 ft", got)
	}
	for _, long := range []unit.Length{0.5, 2, 6} {
		for _, above := range []unit.Length{0, 0.1, 0.25} { // below the middle of each
			if below := unit.Length(0.4); drop.FromBlock(long, below) < drop.OfHitch(above+below) {
				t.Errorf("the middle of %v m falls less than its hitch", long)
			}
		}
	}
}

// TestTheMiddleFallsTwiceItsHeight: the middle of a log of length l, tied at its butt b
// above the block, is l/2 + b above it and falls as the log does.
func TestTheMiddleFallsTwiceItsHeight(t *testing.T) {
	const long, below unit.Length = 1.8, 0.4
	if got, want := drop.OfMiddle(long/2+below), drop.FromBlock(long, below); math.Abs(float64(got-want)) > 1e-9 {
		t.Errorf("the middle falls %v, the log %v", got, want)
	}
}

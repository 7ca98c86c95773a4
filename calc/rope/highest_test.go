package rope_test

import (
	"math"
	"testing"

	"heft/calc/rope"
	"heft/calc/unit"
)

// TestHighest: worked by hand. 50 m less 6 m of tail, up and down: 44/2 = 22 m.
// On two parts three times the height, 5 m out to the drum, a dead end round
// 0.5 m, which is 1.571 m: (50 − 6 − 5 − 1.571)/3 = 12.476 m. Four wraps of a
// 0.2 m drum are 2.513 m: (50 − 6 − 2.513)/2 = 20.743 m.
func TestHighest(t *testing.T) {
	for _, c := range []struct {
		l    rope.Layout
		want float64
	}{
		{rope.Layout{Parts: 1}, 22},
		{rope.Layout{Parts: 2, Away: 5, Trunk: 0.5}, 12.476},
		{rope.Layout{Parts: 1, Drum: 0.2, Wraps: 4}, 20.743},
	} {
		got, err := c.l.Highest(50)
		if err != nil || math.Abs(float64(got)-c.want) > 0.001 {
			t.Errorf("%+v: %v m, %v; want %v", c.l, float64(got), err, c.want)
		}
	}
}

// TestHighestIsNeededBackwards: the highest block needs just that rope, one
// that is a hundredth higher needs more, and more rope never reaches less high.
func TestHighestIsNeededBackwards(t *testing.T) {
	for parts := 1; parts <= 6; parts++ {
		var before unit.Length
		for have := unit.Length(30); have <= 100; have += 0.7 {
			l := rope.Layout{Parts: parts, Away: 7, Trunk: 0.6, Drum: 0.15, Wraps: 3}
			h, err := l.Highest(have)
			if err != nil || h < before {
				t.Fatalf("%d parts, %v m: %v m after %v m, %v", parts, float64(have), float64(h), float64(before), err)
			}
			before, l.Hitch = h, h
			if need, err := l.Needed(); err != nil || need > have+1e-9 {
				t.Errorf("%d parts, %v m: the plan takes %v m, %v", parts, float64(have), float64(need), err)
			}
			l.Hitch = h * 1.01
			if need, err := l.Needed(); err != nil || need <= have {
				t.Errorf("%d parts, %v m: a hundredth higher takes %v m, %v", parts, float64(have), float64(need), err)
			}
		}
	}
}

func TestHighestRefuses(t *testing.T) {
	for _, c := range []struct {
		l    rope.Layout
		have unit.Length
	}{
		{rope.Layout{Parts: 1}, 6.9}, {rope.Layout{Parts: 1}, unit.Length(math.NaN())}, {rope.Layout{}, 50},
		{rope.Layout{Parts: 1, Away: -1}, 50}, {rope.Layout{Parts: 1, Away: 45}, 50},
	} {
		if got, err := c.l.Highest(c.have); err == nil || got != 0 {
			t.Errorf("%+v, %v m: %v m, %v", c.l, float64(c.have), float64(got), err)
		}
	}
	if got, err := (rope.Layout{Parts: 1}).Highest(500); err != nil || got != rope.Hitches.High {
		t.Errorf("500 m: %v m, %v; want no higher than the method holds", float64(got), err)
	}
}

package swing_test

import (
	"math"
	"testing"

	"heft/calc/swing"
	"heft/calc/unit"
)

// TestHangIsWhatTheSweepComesDownTo: a block at 38 ft, 8 ft of line and 12 ft of piece
// leave 18 ft, and so does every swing on that line at its lowest.
func TestHangIsWhatTheSweepComesDownTo(t *testing.T) {
	s := swing.Setup{Hitch: 38 * unit.Foot, Line: 8 * unit.Foot, Hung: 12 * unit.Foot}
	got, err := swing.Hang(s)
	if err != nil || math.Abs(float64(got-18*unit.Foot)) > 1e-9 {
		t.Fatalf("hangs %v m above the ground, %v; not 18 ft", got, err)
	}
	for _, degrees := range []unit.Angle{10, 30, 60} {
		s.Start = degrees * unit.Degree
		w, err := swing.Sweep(s)
		if err != nil || w.Lowest == nil || *w.Lowest < got-1e-9 {
			t.Errorf("from %v° it comes lower: %v, %v", degrees, w.Lowest, err)
		}
	}
	long := swing.Setup{Hitch: 38 * unit.Foot, Line: 6 * unit.Foot, Hung: 14 * unit.Foot} // it tumbles, and comes no lower
	if got, err := swing.Hang(long); err != nil || math.Abs(float64(got-18*unit.Foot)) > 1e-9 {
		t.Errorf("hangs %v m above the ground, %v; not 18 ft", got, err)
	}
	if _, err := swing.Hang(swing.Setup{Hitch: 5, Line: 3, Hung: 3}); err == nil {
		t.Error("6 m of line and piece hang from a block at 5 m")
	}
}

// TestMostLineTouches: a block at 12 m over a roof of 3 m leaves 9 m, a piece of 1.5 m takes
// its own length of it; on that line it hangs just at the top.
func TestMostLineTouches(t *testing.T) {
	s := swing.Setup{Hitch: 12, Hung: 1.5}
	most, err := swing.MostLine(s, 3)
	if err != nil || math.Abs(float64(most)-7.5) > 1e-9 {
		t.Fatalf("%v m of line, %v; not 7.5 m", most, err)
	}
	s.Line = most
	if low, err := swing.Hang(s); err != nil || math.Abs(float64(low)-3) > 1e-9 {
		t.Errorf("on it it hangs %v m up, %v; not 3 m", low, err)
	}
	if most, err := swing.MostLine(swing.Setup{Hitch: 6, Hung: 4}, 3); err != nil || most > 0 {
		t.Errorf("4 m of piece clear a 3 m roof from 6 m: %v m of line, %v", most, err)
	}
}

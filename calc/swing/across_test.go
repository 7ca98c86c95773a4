package swing_test

import (
	"errors"
	"math"
	"testing"

	"heft/calc/limits"
	"heft/calc/swing"
	"heft/calc/unit"
)

// TestAcrossIsWhatEveryLineSweeps compares with the sweep on lines from the shortest on.
func TestAcrossIsWhatEveryLineSweeps(t *testing.T) {
	for _, hung := range []unit.Length{0, 2, 9} {
		wall := &swing.Obstacle{Distance: 12}
		got, shortest, err := swing.Across(3, hung, wall)
		if err != nil {
			t.Fatal(err)
		}
		for _, more := range []unit.Length{1e-9, 0.5, 5, 20} {
			line := shortest + more
			start, err := swing.Start(3, line)
			if err != nil {
				t.Fatal(err)
			}
			w, err := swing.Sweep(swing.Setup{Line: line, Start: start, Hung: hung, Obstacle: wall})
			if err != nil || math.Abs(float64(w.Reach-got.Reach)) > 1e-9 {
				t.Errorf("%v m of line, %v m below it: reach %v, %v; not %v", line, hung, w.Reach, err, got.Reach)
			}
			if w.Gap != nil && *w.Gap < *got.Gap-1e-9 {
				t.Errorf("%v m of line, %v m below it: gap %v, less than %v", line, hung, *w.Gap, *got.Gap)
			}
		}
		start, err := swing.Start(3, 0.98*shortest)
		if err == nil {
			_, err = swing.Sweep(swing.Setup{Line: 0.98 * shortest, Start: start, Hung: hung})
		}
		if err == nil {
			t.Errorf("%v m below it: a line shorter than %v m holds as well", hung, shortest)
		}
	}
}

func TestAcrossRefusals(t *testing.T) {
	for q, try := range map[limits.Quantity][3]unit.Length{
		limits.Offset: {61, 2, 5}, limits.Length: {3, 31, 5}, limits.Obstacle: {3, 2, 101},
	} {
		_, _, err := swing.Across(try[0], try[1], &swing.Obstacle{Distance: try[2]})
		if out, ok := errors.AsType[*limits.OutOfRange](err); !ok || out.Quantity != q {
			t.Errorf("%v: %v, want %s", try, err, q)
		}
	}
}

package rope_test

import (
	"math"
	"testing"

	"heft/calc/rope"
	"heft/calc/unit"
)

// TestMost: a textbook's capstan, µ·β with 3 turns at µ 0.14 is 2.639, and
// e^2.639 is 14.0; two people hold 400 N, so 5,598 N, 571 kg. Worked by hand
// from the capstan equation.
func TestMost(t *testing.T) {
	got, err := rope.Most(3, rope.Gloved(2))
	if err != nil || math.Abs(float64(got)-571) > 1 {
		t.Errorf("%v kg, %v; want 571", float64(got), err)
	}
	if got, err := rope.Most(8, rope.Gloved(4)); err != nil || got != rope.Loads.High {
		t.Errorf("eight wraps and four people: %v kg, %v; want no more than by hand at all", float64(got), err)
	}
}

// TestMostIsPlanBackwards: the most that wraps hold wants those wraps, and
// what is heavier wants more.
func TestMostIsPlanBackwards(t *testing.T) {
	for people := 1; people <= 4; people++ {
		for wraps := rope.Wraps(1); wraps <= 3; wraps += 0.5 {
			most, err := rope.Most(wraps, rope.Gloved(people))
			if err != nil {
				t.Fatal(err)
			}
			just, err := rope.Plan(most*0.999, most*0.999, rope.Gloved(people))
			if err != nil || just.Start != wraps {
				t.Errorf("%v wraps, %d people: plans %v for just less, %v", wraps, people, just.Start, err)
			}
			over, err := rope.Plan(most*1.001, most*1.001, rope.Gloved(people))
			if err != nil || over.Start != wraps+0.5 {
				t.Errorf("%v wraps, %d people: plans %v for just more, %v", wraps, people, over.Start, err)
			}
		}
	}
}

func TestMostRefuses(t *testing.T) {
	for _, c := range []struct {
		wraps  rope.Wraps
		people int
	}{{-1, 1}, {9, 1}, {3, 0}, {3, 5}, {rope.Wraps(math.NaN()), 1}} {
		if got, err := rope.Most(c.wraps, rope.Gloved(c.people)); err == nil || got != unit.Mass(0) {
			t.Errorf("%+v: %v kg, %v", c, float64(got), err)
		}
	}
}

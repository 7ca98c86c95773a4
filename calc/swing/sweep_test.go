package swing_test

import (
	"testing"

	"pgregory.net/rapid"

	"heft/calc/swing"
	"heft/calc/unit"
)

// Where it goes is the same whatever it weighs.
func TestSweepIsThatOfEveryWeight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		metres := func(low, high float64, name string) unit.Length {
			return unit.Length(rapid.Float64Range(low, high).Draw(t, name))
		}
		s := swing.Setup{
			Heavy: unit.Mass(rapid.Float64Range(1, 2900).Draw(t, "heavy")), Line: metres(0.5, 20, "line"),
			Start: degrees(rapid.Float64Range(0, 90).Draw(t, "start")), Hitch: 60,
		}
		s.Hung = metres(0, min(30, 2*float64(s.Line)), "hung")
		if rapid.Bool().Draw(t, "past something") {
			s.Obstacle = &swing.Obstacle{Distance: metres(0, 40, "distance"), Top: metres(0, 60, "top")}
		}
		with, err := swing.Plan(s)
		if err != nil {
			t.Fatal(err)
		}
		s.Heavy = 0
		without, err := swing.Sweep(s)
		if err != nil {
			t.Fatal(err)
		}
		if without.Speed != with.Speed || without.Reach != with.Reach || *without.Lowest != *with.Lowest {
			t.Fatalf("%+v, %+v", without, with)
		}
		if (without.Gap == nil) != (with.Gap == nil) || with.Gap != nil && *without.Gap != *with.Gap {
			t.Fatalf("gap %v, %v", without.Gap, with.Gap)
		}
		if without.Bottom.Line != 0 || without.Askew.Line != 0 || without.InLine.Line != 0 {
			t.Fatalf("pulls of no weight: %+v", without)
		}
	})
}

// Past a block of which no height is known, an obstacle is never taken for
// further off than with the heights.
func TestUnknownHeightsBringItNearest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := usual()
		s.Obstacle = &swing.Obstacle{Distance: unit.Length(rapid.Float64Range(0, 20).Draw(t, "distance")),
			Top: unit.Length(rapid.Float64Range(0, 20).Draw(t, "top"))}
		s.Start = degrees(rapid.Float64Range(0, 90).Draw(t, "start"))
		known, err := swing.Sweep(s)
		if err != nil {
			t.Fatal(err)
		}
		s.Hitch = 0
		unknown, err := swing.Sweep(s)
		if err != nil {
			t.Fatal(err)
		}
		if *unknown.Gap > *known.Gap || unknown.Lowest != nil {
			t.Fatalf("gap %v with, %v without heights", *known.Gap, *unknown.Gap)
		}
	})
}

func TestUnknownHeightsByHand(t *testing.T) {
	// 6 m of line at 30° hang 3 m to the side; with 2 m below the tie 5 m.
	s := usual()
	s.Hitch, s.Obstacle = 0, &swing.Obstacle{Distance: 5.5}
	if w, err := swing.Sweep(s); err != nil || !near(float64(*w.Gap), 0.5) || !near(float64(w.Reach), 5) {
		t.Fatalf("%+v, %v", w, err)
	}
}

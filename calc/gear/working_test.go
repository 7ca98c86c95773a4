package gear_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/gear"
	"heft/calc/unit"
)

func near(got, want float64) bool { return math.Abs(got-want) <= 1e-9*max(1, math.Abs(want)) }

func TestDesignFactors(t *testing.T) {
	// At least 5:1 for rigging: Ontario arborist safe-work practice ASWP06;
	// DOE-STD-1090-96, 11.3.1.3. From 5:1 to 12:1, more where loads are not
	// accurately known: Cordage Institute CI 1401.
	if gear.Rigging != 5 || gear.Planning < 5 || gear.Planning > 12 {
		t.Errorf("%v and %v", gear.Rigging, gear.Planning)
	}
	// OSHA's fibre slings come out at about 9:1 (from memory).
	if gear.Planning < 9 {
		t.Errorf("planning on %v", gear.Planning)
	}
	for _, test := range []struct{ breaking, factor, want float64 }{
		{50e3, gear.Rigging, 10e3}, {50e3, gear.Planning, 5e3}, {60e3, 12, 5e3}, {60e3, 15, 4e3},
	} {
		got, err := gear.WorkingLoad(unit.Force(test.breaking), test.factor)
		if err != nil || !near(float64(got), test.want) {
			t.Errorf("%v N at %v: %v N, %v; want %v", test.breaking, test.factor, float64(got), err, test.want)
		}
	}
}

func TestUsed(t *testing.T) {
	for _, test := range []struct{ load, working, want float64 }{{2e3, 8e3, 0.25}, {8e3, 8e3, 1}, {12e3, 8e3, 1.5}, {0, 8e3, 0}} {
		got, err := gear.Used(unit.Force(test.load), unit.Force(test.working))
		if err != nil || !near(got, test.want) {
			t.Errorf("%v of %v N: %v, %v; want %v", test.load, test.working, got, err, test.want)
		}
	}
}

func TestKnots(t *testing.T) {
	// Percent kept. The first figure is from the cordage table of 1946, quoted
	// in an outdoor knot book, the others from climbing notes.
	for knot, printed := range map[gear.Knot][]float64{
		gear.Bowline:        {60, 70, 75},
		gear.CloveHitch:     {75, 60, 65},
		gear.TimberHitch:    {70},
		gear.TwoHalfHitches: {75},
		gear.EyeSplice:      {95},
		gear.SquareKnot:     {45},
		gear.OverhandKnot:   {45},
		gear.FigureEight:    {48, 75, 80},
		// A knot may cut the strength by up to 50 % (Cordage Institute CI
		// 1401), by 20 to 50 % (Pettigrew); the table has 45.
		gear.AnyOtherKnot: {50, 80, 45},
	} {
		least, most := printed[0], printed[0]
		for _, p := range printed {
			least, most = min(least, p), max(most, p)
		}
		r := gear.Keeps(knot)
		if r.Knot != knot || !near(r.Kept.Low, least/100) || !near(r.Kept.High, most/100) || r.Source == "" {
			t.Errorf("%s: %+v, printed %v", knot, r, printed)
		}
	}
	if len(gear.Knots()) != 9 {
		t.Errorf("%d knots, want 9", len(gear.Knots()))
	}
	if r := gear.Keeps(gear.None); r.Kept != unit.Exactly(1.0) {
		t.Errorf("no knot: %+v", r)
	}
	for _, k := range gear.Knots() {
		if other := gear.Keeps("granny"); other.Kept.Low > k.Kept.Low {
			t.Errorf("a knot nobody published keeps %v, a %s %v", other.Kept.Low, k.Knot, k.Kept.Low)
		}
	}
	gear.Knots()[0].Kept.Low = 1
	if gear.Keeps(gear.Bowline).Kept.Low == 1 {
		t.Error("a caller can change the table")
	}
}

func TestMoreFactorNeverCarriesMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		breaking := unit.Force(rapid.Float64Range(1e3, 4e5).Draw(t, "break"))
		factor := rapid.Float64Range(5, 15).Draw(t, "factor")
		load := unit.Force(rapid.Float64Range(0, 1e5).Draw(t, "load"))
		must := func(v unit.Force, err error) unit.Force {
			if err != nil {
				t.Fatal(err)
			}
			return v
		}
		base := must(gear.WorkingLoad(breaking, factor))
		if must(gear.WorkingLoad(breaking, rapid.Float64Range(factor, 15).Draw(t, "more"))) > base {
			t.Fatal("a larger design factor carries more")
		}
		if must(gear.WorkingLoad(breaking*2, factor)) < base {
			t.Fatal("a stronger rope carries less")
		}
		used, errUsed := gear.Used(load, base)
		heavier, errHeavier := gear.Used(load*2, base)
		weaker, errWeaker := gear.Used(load, base/2)
		if err := errors.Join(errUsed, errHeavier, errWeaker); err != nil || heavier < used || weaker < used {
			t.Fatalf("used %v, heavier %v, weaker %v, %v", used, heavier, weaker, err)
		}
	})
}

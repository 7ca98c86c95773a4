package tackle_test

import (
	"math"
	"testing"

	"heft/calc/tackle"
	"heft/calc/unit"
)

func degrees(d float64) unit.Angle { return unit.Angle(d) * unit.Degree }

func at(t testing.TB, s tackle.Sheave, turn unit.Angle) float64 {
	t.Helper()
	e, err := s.At(turn)
	if err != nil {
		t.Fatal(err)
	}
	return e
}

func TestKindsAgreeWithTheirSources(t *testing.T) {
	for _, test := range []struct {
		name            string
		want, tolerance float64
	}{
		// Published redirect test: 0.100 kN hanging, 0.188 and 0.12 to pull.
		{"carabiner", 0.100 / 0.188, 0.005},
		{"small pulley", 0.100 / 0.12, 0.005},
		// Delaney, Physics for Roping Technicians (2022), p. 88, half a turn:
		// friction 0.36 and 0.37 on wood; 0.14 to 0.18 on 60 mm anodised
		// aluminium, of which a ring is planned on the worst.
		{"natural crotch", math.Exp(-0.37 * math.Pi), 0.005},
		{"rigging ring", math.Exp(-0.18 * math.Pi), 0.005},
		// US Navy Builder training manual: about 10 % a sheave.
		{"sheave in ordinary order", 0.90, 0},
	} {
		if got := kind(t, test.name).Efficiency; math.Abs(got-test.want) > test.tolerance {
			t.Errorf("%s: %v, want %.3f", test.name, got, test.want)
		}
	}
	last := 1.0
	for _, k := range tackle.Kinds() {
		if k.Source == "" || k.Efficiency > last || at(t, k.Sheave, math.Pi) <= 0 {
			t.Errorf("%+v", k)
		}
		last = k.Efficiency
	}
}

func TestHalfATurnIsTheEfficiency(t *testing.T) {
	for _, k := range tackle.Kinds() {
		if got := at(t, k.Sheave, math.Pi); math.Abs(got-k.Efficiency) > 1e-12 {
			t.Errorf("%s: half a turn %v, want %v", k.Name, got, k.Efficiency)
		}
		if got := at(t, k.Sheave, 0); got != 1 {
			t.Errorf("%s: straight on %v", k.Name, got)
		}
	}
}

func TestSlidingAgreesWithTheRopeInSmallSteps(t *testing.T) {
	// Each small step of the turn takes μ·dφ of the pull, in the midst of it.
	for _, e := range []float64{0.31, 0.53, 0.9} {
		mu := -math.Log(e) / math.Pi
		for turn := 15.0; turn <= 180; turn += 15 {
			const steps = 20000
			pull, d := 1.0, turn*math.Pi/180/steps
			for range steps {
				pull *= (1 - mu*d/2) / (1 + mu*d/2)
			}
			if got := at(t, tackle.Sheave{Efficiency: e, Slides: true}, degrees(turn)); math.Abs(got-pull) > 1e-8 {
				t.Errorf("%v at %v degrees: %.9f, in steps %.9f", e, turn, got, pull)
			}
		}
	}
}

func TestPinAgreesWithTheMomentAboutIt(t *testing.T) {
	// The loss over a turning sheave is a share of the load across its pin,
	// the same share at every turn. Searched: the pull behind for which it is.
	across := func(behind, turn float64) float64 {
		return math.Hypot(1-behind*math.Cos(turn), behind*math.Sin(turn))
	}
	for _, e := range []float64{0.5, 0.83, 0.9, 0.981} {
		share := (1 - e) / across(e, math.Pi)
		for turn := 5.0; turn <= 180; turn += 5 {
			low, high := e*(1-1e-9), 1.0
			for range 60 {
				if mid := (low + high) / 2; 1-mid > share*across(mid, turn*math.Pi/180) {
					low = mid
				} else {
					high = mid
				}
			}
			if got := at(t, tackle.Sheave{Efficiency: e}, degrees(turn)); math.Abs(got-high) > 1e-8 {
				t.Errorf("%v at %v degrees: %.9f, searched %.9f", e, turn, got, high)
			}
		}
	}
}

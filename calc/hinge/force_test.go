package hinge_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/hinge"
	"heft/calc/limits"
	"heft/calc/tackle"
	"heft/calc/unit"
)

func degrees(d float64) unit.Angle { return unit.Angle(d) * unit.Degree }

// leaning is a limb of 200 kg at 30 degrees, its top block straight above.
func leaning() hinge.Setup {
	return hinge.Setup{Weight: 200, Balance: 2.5, Length: 7, Angle: degrees(30), Tie: 4, Height: 6,
		Tackle: tackle.Tackle{Parts: 2, Efficiency: 0.90}, Power: tackle.Power{PerPerson: 200}}
}

// drawSetup draws a limb and its gear; the tie may be anywhere below the
// height of the top block.
func drawSetup(t *rapid.T) hinge.Setup {
	metres := func(low, high float64, name string) unit.Length {
		return unit.Length(rapid.Float64Range(low, high).Draw(t, name))
	}
	s := leaning()
	s.Weight = unit.Mass(rapid.Float64Range(5, 3000).Draw(t, "weight"))
	s.Length = 0
	s.Balance, s.Height = metres(0.3, 9, "balance"), metres(1, 15, "height")
	s.Tie = metres(0.3, float64(s.Height), "tie")
	s.Parts = rapid.IntRange(1, 6).Draw(t, "parts")
	s.Closed = rapid.SampledFrom([]unit.Length{0, 0.4, 0.9}).Draw(t, "closed")
	if rapid.Bool().Draw(t, "behind") {
		s.Offset = metres(0, 4, "offset")
	}
	// The block has to stand above the line of the limb carried back.
	lowest := -44.0
	if s.Offset > 0 {
		lowest = max(lowest, -math.Atan(float64((s.Height-0.4)/s.Offset))*180/math.Pi)
	}
	s.Angle = degrees(rapid.Float64Range(lowest, 84).Draw(t, "angle"))
	// No rope holds a meganewton; leave room to grow.
	if f := byWork(s, float64(s.Angle)); f > 2e5 {
		s.Weight *= unit.Mass(2e5 / f)
	}
	return s
}

// apart is the distance between two points: the block of the setup and the
// tie, each from its own coordinates.
func apart(s hinge.Setup, at float64) float64 {
	tieX, tieY := float64(s.Tie)*math.Cos(at), float64(s.Tie)*math.Sin(at)
	blockX, blockY := -float64(s.Offset), float64(s.Height)
	return math.Sqrt((tieX-blockX)*(tieX-blockX) + (tieY-blockY)*(tieY-blockY))
}

// byWork is the pull by virtual work: the weight gains what the line gives.
func byWork(s hinge.Setup, at float64) float64 {
	const step = 1e-5
	rise := float64(s.Balance) * (math.Sin(at+step) - math.Sin(at-step))
	return float64(s.Weight) * 9.80665 * rise / (apart(s, at-step) - apart(s, at+step))
}

func force(t interface {
	Helper()
	Fatal(...any)
}, s hinge.Setup, at unit.Angle) unit.Force {
	t.Helper()
	f, err := s.Force(at)
	if err != nil {
		t.Fatal(err)
	}
	return f
}

func TestStraightAboveTheHinge(t *testing.T) {
	// Statics: F = W·(x/a)·(s/h). A 3-4-5 triangle by hand: tie 4 m out on a
	// level limb, block 3 m above, so 5 m apart; half way to the tie balances
	// 120 kg: 1176.8·(2/4)·(5/3) = 980.7 N.
	s := leaning()
	s.Weight, s.Angle, s.Balance, s.Tie, s.Height = 120, 0, 2, 4, 3
	if got := force(t, s, 0); math.Abs(float64(got)-980.665) > 1e-6 {
		t.Errorf("%v N, want 980.665", got)
	}
	rapid.Check(t, func(t *rapid.T) {
		s := drawSetup(t)
		s.Offset = 0
		at := rapid.Float64Range(s.Angle.Degrees(), 90).Draw(t, "at") * math.Pi / 180
		want := float64(s.Weight) * 9.80665 * float64(s.Balance/s.Tie) * apart(s, at) / float64(s.Height)
		if got := float64(force(t, s, max(s.Angle, unit.Angle(at)))); math.Abs(got-want) > 1e-9*want {
			t.Fatalf("%v N, want %v", got, want)
		}
	})
}

func TestForceIsTheWorkOfTheLine(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSetup(t)
		at := rapid.Float64Range(s.Angle.Degrees(), 89).Draw(t, "at") * math.Pi / 180
		if float64(s.Tie) > 0.99*float64(s.Height) && s.Offset < 0.1 && at > 1.5 {
			return // the blocks touch, and the distance has a kink
		}
		want := byWork(s, at)
		if got := float64(force(t, s, max(s.Angle, unit.Angle(at)))); math.Abs(got-want) > 2e-5*want {
			t.Fatalf("%v N, by virtual work %v", got, want)
		}
	})
}

func TestTheMostIsAtTheStart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSetup(t)
		r, err := hinge.Raise(s)
		if err != nil {
			t.Fatal(err)
		}
		const steps = 400
		from, last := float64(s.Angle), math.Inf(1)
		for i := range steps {
			at := from + (math.Pi/2-0.01-from)*float64(i)/steps
			f := byWork(s, at)
			if f > float64(r.Start)*(1+2e-5) || f > last*(1+2e-5) {
				t.Fatalf("%v N at %v degrees, %v at the start, %v before", f, at*180/math.Pi, r.Start, last)
			}
			last = f
		}
	})
}

func TestTyingFartherOutNeverRaisesTheForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSetup(t)
		near := force(t, s, s.Angle)
		s.Tie = unit.Length(rapid.Float64Range(float64(s.Tie), float64(s.Height)).Draw(t, "farther"))
		if far := force(t, s, s.Angle); far > near*(1+1e-12) {
			t.Fatalf("%v N nearer, %v farther out", near, far)
		}
	})
}

func TestHeavierAndFartherBalancedNeverTakesLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSetup(t)
		s.Weight = min(s.Weight, 2000)
		light := force(t, s, s.Angle)
		s.Weight *= unit.Mass(rapid.Float64Range(1, 2).Draw(t, "heavier"))
		s.Balance *= unit.Length(rapid.Float64Range(1, 2).Draw(t, "out"))
		if heavy := force(t, s, s.Angle); heavy < light {
			t.Fatalf("%v N lighter, %v heavier", light, heavy)
		}
	})
}

func TestNotch(t *testing.T) {
	// Upright from φ above the horizontal turns through 90 − φ.
	for _, test := range []struct{ from, to, want float64 }{
		{30, 90, 60}, {0, 90, 90}, {-20, 90, 110}, {85, 90, 5}, {45, -30, 75}, {-90, 90, 180},
	} {
		got, err := hinge.Notch(degrees(test.from), degrees(test.to))
		if err != nil || math.Abs(got.Degrees()-test.want) > 1e-9 {
			t.Errorf("from %v to %v: got %v, %v; want %v", test.from, test.to, got.Degrees(), err, test.want)
		}
	}
	if _, err := hinge.Notch(degrees(40), degrees(40)); err == nil {
		t.Error("a limb that does not turn has a notch")
	} else if _, ok := errors.AsType[*limits.Contradiction](err); !ok {
		t.Errorf("got %v", err)
	}
}

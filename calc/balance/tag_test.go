package balance_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/balance"
	"heft/calc/unit"
)

func tag(t interface {
	Helper()
	Fatal(...any)
}, weight unit.Mass, line, sideways unit.Length, below unit.Angle) balance.Tag {
	t.Helper()
	got, err := balance.TagLine(weight, line, sideways, below)
	if err != nil {
		t.Fatal(err)
	}
	return got
}

func TestLevelTagLine(t *testing.T) {
	// A 3-4-5 triangle by hand: 5 m of rope and 3 m aside; a level line pulls
	// 3/4 of the weight and the rope 5/4.
	got := tag(t, 100, 5, 3, 0)
	if !near(got.Pull, 735.499, 0.001) || !near(got.Line, 1225.831, 0.001) {
		t.Errorf("%+v", got)
	}
	if got := tag(t, 100, 5, 0, degrees(30)); got.Pull != 0 || !near(got.Line, 980.665, 1e-6) {
		t.Errorf("plumb: %+v", got)
	}
	rapid.Check(t, func(t *rapid.T) {
		l := rapid.Float64Range(0.5, 60).Draw(t, "line")
		x := rapid.Float64Range(0, 0.96*l).Draw(t, "sideways")
		got, want := tag(t, 250, unit.Length(l), unit.Length(x), 0), 250*9.80665*x/math.Sqrt(l*l-x*x)
		if !near(got.Pull, want, 1e-9*(1+want)) {
			t.Fatalf("%v N, want %v", got.Pull, want)
		}
	})
}

// settled searches where a load on a rope comes to rest under a steady pull:
// the least of its height's work less the pull's, by golden section.
func settled(weight, pull, below, line float64) (sideways float64) {
	work := func(out float64) float64 {
		x, down := line*math.Sin(out), line*math.Cos(out)
		return -weight*down - pull*(x*math.Cos(below)+down*math.Sin(below))
	}
	low, high := 0.0, math.Pi/2
	shrink := (math.Sqrt(5) - 1) / 2
	for range 90 {
		a, b := high-shrink*(high-low), low+shrink*(high-low)
		if work(a) < work(b) {
			high = b
		} else {
			low = a
		}
	}
	return line * math.Sin((low+high)/2)
}

func drawTag(t *rapid.T) (weight unit.Mass, line, sideways unit.Length, below unit.Angle) {
	weight = unit.Mass(rapid.Float64Range(1, 3000).Draw(t, "weight"))
	line = unit.Length(rapid.Float64Range(0.5, 50).Draw(t, "line"))
	deg := rapid.Float64Range(-60, 60).Draw(t, "below")
	out := rapid.Float64Range(0, min(74, 74-deg)).Draw(t, "out of plumb")
	return weight, line, line * unit.Length(math.Sin(out*math.Pi/180)), degrees(deg)
}

func TestTagLineSettlesWhereSaid(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		weight, line, sideways, below := drawTag(t)
		got := tag(t, weight, line, sideways, below)
		at := settled(float64(weight.Weight()), float64(got.Pull), float64(below), float64(line))
		// A golden section finds a least value to about the root of the last bit.
		if math.Abs(at-float64(sideways)) > 1e-6*float64(line) {
			t.Fatalf("settles at %v m, want %v; %+v", at, sideways, got)
		}
		// Pulls up and down balance as well.
		out := math.Asin(float64(sideways / line))
		up := float64(got.Line)*math.Cos(out) - float64(got.Pull)*math.Sin(float64(below))
		if w := float64(weight.Weight()); math.Abs(up-w) > 1e-9*w {
			t.Fatalf("up %v of %v N", up, w)
		}
	})
}

func TestHeavierOrFurtherNeverPullsLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		weight, line, sideways, below := drawTag(t)
		little := tag(t, weight, line, sideways*unit.Length(rapid.Float64Range(0, 1).Draw(t, "less far")), below)
		much := tag(t, weight*unit.Mass(rapid.Float64Range(1, 2).Draw(t, "heavier")), line, sideways, below)
		if much.Pull < little.Pull*(1-1e-12) || much.Pull > 4*2*weight.Weight() {
			t.Fatalf("%+v, less %+v", much, little)
		}
	})
}

package drop_test

import (
	"math"
	"testing"

	"heft/calc/drop"
)

// TestClassesStretchAsPublished holds the classes against what is published:
// how much of its length a line stretches at a share of its break strength.
func TestClassesStretchAsPublished(t *testing.T) {
	for name, test := range map[string]struct {
		m, load, stretch float64
	}{
		// Cordage Institute: static under 6 %, low-stretch 6 to 10 %, at a tenth.
		"static, softest":      {drop.Static.Soft, 0.10, 0.06},
		"low-stretch, softest": {drop.LowStretch.Soft, 0.10, 0.10},
		// A rope history text: a polyester double braid 3.5 to 5 % at 30 %.
		"double braid, softest": {drop.DoubleBraid.Soft, 0.30, 0.05},
		// Makers' sheets, from memory: 1.7 % at 20 %.
		"double braid, stiffest": {drop.DoubleBraid.Stiff, 0.20, 0.017},
		// Softer than any double braid.
		"stretchy, stiffest": {drop.Stretchy.Stiff, 0.30, 0.05},
	} {
		if got := test.load / test.m; math.Abs(got-test.stretch) > 1e-9 {
			t.Errorf("%s: stretches %v, published %v", name, got, test.stretch)
		}
	}
}

// TestPlansOnTheStiffer wants no class but the stretchy to be planned below a
// line of which nothing was said, and two classes to be planned on the worse.
func TestPlansOnTheStiffer(t *testing.T) {
	plan := func(c drop.Class) drop.Fall {
		t.Helper()
		s := usual()
		s.Class = c
		f, err := drop.Plan(s)
		if err != nil {
			t.Fatal(err)
		}
		return f
	}
	unsaid := plan(drop.Class{})
	for name, c := range map[string]drop.Class{
		"any": drop.Any, "static": drop.Static, "low-stretch": drop.LowStretch, "double braid": drop.DoubleBraid,
		"three-strand": drop.ThreeStrand, "kernmantle": drop.Kernmantle,
	} {
		f := plan(c)
		if f.Peak.High != unsaid.Peak.High || f.Peak.Low < unsaid.Peak.Low {
			t.Errorf("%s: %v, unsaid %v", name, f.Peak, unsaid.Peak)
		}
		if both := plan(drop.Stretchy.With(c)); both.Peak.High != f.Peak.High {
			t.Errorf("stretchy or %s: %v, want %v", name, both.Peak, f.Peak)
		}
	}
	if f := plan(drop.Stretchy); f.Peak.High >= unsaid.Peak.High || f.Peak.Low != unsaid.Peak.Low {
		t.Errorf("stretchy: %v, unsaid %v", f.Peak, unsaid.Peak)
	}
}

// TestStretchyIsTheIntegratedFall lets the piece fall onto the stiffest line
// of its class, integrated apart from the code under test.
func TestStretchyIsTheIntegratedFall(t *testing.T) {
	s := usual()
	s.Class = drop.Stretchy
	f, err := drop.Plan(s)
	if err != nil {
		t.Fatal(err)
	}
	// 0.30 of the break at 0.05 of the length, a tenth of which the block keeps.
	k := 0.30 / 0.05 * float64(s.Break) / float64(s.Rope) / 0.9
	peak, _, _ := fall(float64(s.Weight.High), float64(s.Drop), k, math.Inf(1))
	if math.Abs(peak/float64(f.Peak.High)-1) > 1e-4 {
		t.Errorf("high end %v N, integrated %v N", float64(f.Peak.High), peak)
	}
}

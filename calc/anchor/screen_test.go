package anchor_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/anchor"
	"heft/calc/limits"
	"heft/calc/piece"
	"heft/calc/unit"
)

// degrees is an angle as it is said.
func degrees(d float64) unit.Angle { return unit.Angle(d) * unit.Degree }

// usual is 2 kN square on, 3 m out on a red oak of 25 cm.
func usual() (anchor.Stem, anchor.Pull) {
	return anchor.Stem{Scientific: "Quercus rubra", Diameter: 0.25}, anchor.Pull{Force: 2000, Lever: 3, ToAxis: degrees(90)}
}

func TestBendingWorkedOut(t *testing.T) {
	// From the formula of AUF 38(4): 20 cm round, 1,000 N at 4 m, 5.09 MPa.
	w, err := anchor.Screen(anchor.Stem{Scientific: "Quercus rubra", Diameter: 0.20},
		anchor.Pull{Force: 1000, Lever: 4, ToAxis: degrees(90)})
	if err != nil || math.Abs(float64(w.Moment)-4000) > 1e-9 || math.Abs(float64(w.Stress/anchor.Megapascal)-5.09) > 0.01 {
		t.Fatalf("%+v, %v", w, err)
	}
	// Over 0.40 of red oak's 57 MPa.
	if math.Abs(w.Used-5.093/(0.40*57)) > 1e-3 {
		t.Errorf("used %v", w.Used)
	}
}

func TestWhatTestsLeft(t *testing.T) {
	// Kane 2007, AUF 33:283, table 3: green wood of Bradford pear 69.9 MPa,
	// branches as a circle outside bark 28.1, ellipse outside bark 38.6,
	// ellipse inside bark 50.1. We take the least.
	if math.Abs(anchor.Left-28.1/69.9) > 0.005 || anchor.Left > 38.6/69.9 || anchor.Left > 50.1/69.9 {
		t.Errorf("left %v", anchor.Left)
	}
	// A branch that breaks as those did has used up all of it.
	wood := anchor.Stress(69.9) * anchor.Megapascal
	if used := float64(28.1 * anchor.Megapascal / (anchor.Left * wood)); math.Abs(used-1) > 0.01 {
		t.Errorf("at the break used %v", used)
	}
}

func TestAgainstSlices(t *testing.T) {
	// The rim's stress from the section cut into thin slices across: M·r/I,
	// I = Σ y²·width·dy. The load's weight comes down on a limb 30 degrees
	// above level, its own weight slice by slice along it.
	const d, length, mass, load, out = 0.30, 6.0, 250.0, 1500.0, 4.0
	var second float64
	const n = 200000
	for i := range n {
		y := -d/2 + (float64(i)+0.5)*d/n
		second += y * y * 2 * math.Sqrt(d*d/4-y*y) * d / n
	}
	level := math.Cos(30 * math.Pi / 180) // lever arms along the ground
	moment := load * out * level
	for i := range n {
		moment += mass * 9.80665 / n * (float64(i) + 0.5) * length / n * level
	}
	w, err := anchor.Screen(anchor.Stem{Scientific: "Quercus rubra", Diameter: d},
		anchor.Pull{Force: load, Lever: out, ToAxis: degrees(120)},
		anchor.Pull{Force: unit.Mass(mass).Weight(), Lever: length / 2, ToAxis: degrees(120)})
	if err != nil || math.Abs(float64(w.Moment)/moment-1) > 1e-6 || math.Abs(float64(w.Stress)/(moment*d/2/second)-1) > 1e-5 {
		t.Errorf("%+v, %v; by slices %v N·m and %v Pa", w, err, moment, moment*d/2/second)
	}
}

func TestOverloadIsSaid(t *testing.T) {
	stem, pull := usual()
	pull.Force = 50e3
	w, err := anchor.Screen(stem, pull)
	if err != nil || w.Used <= 1 {
		t.Errorf("%+v, %v", w, err)
	}
}

// changed screens the usual stem and pull with a change.
func changed(change func(*anchor.Stem, *anchor.Pull)) error {
	stem, pull := usual()
	change(&stem, &pull)
	_, err := anchor.Screen(stem, pull)
	return err
}

func TestOutOfRange(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	for name, test := range map[string]struct {
		err  error
		want limits.Quantity
	}{
		"a twig":              {changed(func(s *anchor.Stem, _ *anchor.Pull) { s.Diameter = 0.03 }), limits.Diameter},
		"a giant":             {changed(func(s *anchor.Stem, _ *anchor.Pull) { s.Diameter = 1.3 }), limits.Diameter},
		"no diameter":         {changed(func(s *anchor.Stem, _ *anchor.Pull) { s.Diameter = 0 }), limits.Diameter},
		"no number, diameter": {changed(func(s *anchor.Stem, _ *anchor.Pull) { s.Diameter = unit.Length(nan) }), limits.Diameter},
		"no pull":             {changed(func(_ *anchor.Stem, p *anchor.Pull) { p.Force = 0 }), limits.Tension},
		"no end of pull":      {changed(func(_ *anchor.Stem, p *anchor.Pull) { p.Force = unit.Force(inf) }), limits.Tension},
		"no number, pull":     {changed(func(_ *anchor.Stem, p *anchor.Pull) { p.Force = unit.Force(nan) }), limits.Tension},
		"no lever":            {changed(func(_ *anchor.Stem, p *anchor.Pull) { p.Lever = 0 }), limits.Lever},
		"no number, lever":    {changed(func(_ *anchor.Stem, p *anchor.Pull) { p.Lever = unit.Length(nan) }), limits.Lever},
		"along the stem":      {changed(func(_ *anchor.Stem, p *anchor.Pull) { p.ToAxis = 0 }), limits.Angle},
		"down the stem":       {changed(func(_ *anchor.Stem, p *anchor.Pull) { p.ToAxis = degrees(180) }), limits.Angle},
		"no number, angle":    {changed(func(_ *anchor.Stem, p *anchor.Pull) { p.ToAxis = unit.Angle(nan) }), limits.Angle},
	} {
		out, ok := errors.AsType[*limits.OutOfRange](test.err)
		if !ok || out.Quantity != test.want || out.Why == "" {
			t.Errorf("%s: got %v, want %s out of range", name, test.err, test.want)
		}
	}
}

func TestNothingToScreenWith(t *testing.T) {
	for name, err := range map[string]error{
		"dead wood":  changed(func(s *anchor.Stem, _ *anchor.Pull) { s.Condition = piece.Dead }),
		"not listed": changed(func(s *anchor.Stem, _ *anchor.Pull) { s.Scientific = "Maclura pomifera" }),
	} {
		if u, ok := errors.AsType[*anchor.Unscreenable](err); !ok || u.Error() == "" {
			t.Errorf("%s: %v", name, err)
		}
	}
	stem, _ := usual()
	_, errPull := anchor.Screen(stem)
	errSpecies := changed(func(s *anchor.Stem, _ *anchor.Pull) { s.Scientific = "" })
	for want, err := range map[limits.Quantity]error{limits.Tension: errPull, limits.Species: errSpecies} {
		if m, ok := errors.AsType[*limits.Missing](err); !ok || m.Quantity != want {
			t.Errorf("%s: %v", want, err)
		}
	}
}

func TestDomainsAreTheRangesChecked(t *testing.T) {
	for _, d := range anchor.Domains() {
		stem, pull := usual()
		switch beyond := d.High * 1.01; d.Quantity {
		case limits.Diameter:
			stem.Diameter = unit.Length(beyond)
		case limits.Lever:
			pull.Lever = unit.Length(beyond)
		case limits.Tension:
			pull.Force = unit.Force(beyond)
		case limits.Angle:
			pull.ToAxis = degrees(beyond)
		}
		_, err := anchor.Screen(stem, pull)
		out, ok := errors.AsType[*limits.OutOfRange](err)
		if !ok || out.Quantity != d.Quantity || out.High != d.High || out.Low != d.Low || out.Why != d.Why {
			t.Errorf("%+v: got %v", d, err)
		}
	}
}

func TestUsedGoesTheRightWay(t *testing.T) {
	rows := anchor.Strengths()
	rapid.Check(t, func(t *rapid.T) {
		r := rapid.SampledFrom(rows).Draw(t, "tree")
		stem := anchor.Stem{Scientific: r.Scientific, Diameter: unit.Length(rapid.Float64Range(0.05, 1).Draw(t, "diameter"))}
		pull := anchor.Pull{Force: unit.Force(rapid.Float64Range(1, 5e5).Draw(t, "force")),
			Lever:  unit.Length(rapid.Float64Range(0.05, 15).Draw(t, "lever")),
			ToAxis: degrees(rapid.Float64Range(10, 80).Draw(t, "angle"))}
		used := func(s anchor.Stem, pulls ...anchor.Pull) float64 {
			w, err := anchor.Screen(s, pulls...)
			if err != nil {
				t.Fatal(err)
			}
			return w.Used
		}
		base := used(stem, pull)
		more := rapid.Float64Range(1, 1.2).Draw(t, "more")
		harder, further, squarer, thicker, genus := pull, pull, pull, stem, stem
		harder.Force *= unit.Force(more)
		further.Lever *= unit.Length(more)
		squarer.ToAxis += degrees(10 * (more - 1))
		thicker.Diameter *= unit.Length(more)
		genus.Scientific = r.Scientific[:len(r.Scientific)-1] + "?"
		const bit = 1 - 1e-12
		if !(base > 0) || used(stem, harder) < base*bit || used(stem, further) < base*bit || used(stem, squarer) < base*bit ||
			used(stem, pull, pull) < base || used(thicker, pull) > base/bit || used(genus, pull) < base*bit {
			t.Fatalf("%s %+v: used %v", r.Scientific, pull, base)
		}
	})
}

func BenchmarkScreen(b *testing.B) {
	stem, pull := usual()
	b.ReportAllocs()
	for b.Loop() {
		if _, err := anchor.Screen(stem, pull); err != nil {
			b.Fatal(err)
		}
	}
}

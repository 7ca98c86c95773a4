package drop_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/drop"
	"heft/calc/limits"
	"heft/calc/unit"
)

// changed plans the usual setup with a change.
func changed(change func(*drop.Setup)) error {
	s := usual()
	change(&s)
	_, err := drop.Plan(s)
	return err
}

func runFor(heavy, height, working float64) error {
	_, err := drop.RunFor(unit.Mass(heavy), unit.Length(height), unit.Force(working))
	return err
}

func TestOutOfRange(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	peak := func(k float64) error { _, err := drop.Peak(10, 1, drop.Stiffness(k)); return err }
	average := func(run float64) error { _, err := drop.Average(10, 1, unit.Length(run)); return err }
	of := func(m float64) error { _, err := drop.Of(5e4, 10, m); return err }
	for name, test := range map[string]struct {
		err  error
		want limits.Quantity
	}{
		"no weight":            {changed(func(s *drop.Setup) { s.Weight = unit.Range[unit.Mass]{} }), limits.Weight},
		"no number, weight":    {changed(func(s *drop.Setup) { s.Weight.High = unit.Mass(nan) }), limits.Weight},
		"too heavy":            {changed(func(s *drop.Setup) { s.Weight.High = 3001 }), limits.Weight},
		"a fall upward":        {changed(func(s *drop.Setup) { s.Drop = -1 }), limits.Drop},
		"a fall of 35 ft":      {changed(func(s *drop.Setup) { s.Drop = 35 * unit.Foot }), limits.Drop},
		"no number, fall":      {changed(func(s *drop.Setup) { s.Drop = unit.Length(nan) }), limits.Drop},
		"a run back":           {changed(func(s *drop.Setup) { s.Run = -1 }), limits.Run},
		"no end of run":        {changed(func(s *drop.Setup) { s.Run = unit.Length(inf) }), limits.Run},
		"no number, run":       {changed(func(s *drop.Setup) { s.Run = unit.Length(nan) }), limits.Run},
		"a thread":             {changed(func(s *drop.Setup) { s.Break = 100 }), limits.RopeBreak},
		"no number, break":     {changed(func(s *drop.Setup) { s.Break = unit.Force(nan) }), limits.RopeBreak},
		"a foot of rope":       {changed(func(s *drop.Setup) { s.Rope = 0.3 }), limits.RopeLength},
		"no number, rope":      {changed(func(s *drop.Setup) { s.Rope = unit.Length(nan) }), limits.RopeLength},
		"a block in the cloud": {changed(func(s *drop.Setup) { s.Hitch = 61 }), limits.HitchHeight},
		"legs turned over":     {changed(func(s *drop.Setup) { s.Between = 4 }), limits.Angle},
		"no stiffness":         {peak(0), limits.Stiffness},
		"no number, stiffness": {peak(nan), limits.Stiffness},
		"a line of steel":      {peak(inf), limits.Stiffness},
		"an average backward":  {average(-1), limits.Run},
		"a line that pushes":   {of(-1), limits.Stiffness},
		"no number, line":      {of(nan), limits.Stiffness},
		"no working load":      {runFor(10, 1, 0), limits.WorkingLoad},
		"no number, working":   {runFor(10, 1, nan), limits.WorkingLoad},
		"a run past the tree":  {runFor(100, 3, 2*100*gravity*1.01), limits.Run},
		"no weight to run":     {runFor(0, 1, 1000), limits.Weight},
		"no number, run for":   {runFor(10, nan, 1000), limits.Drop},
	} {
		out, ok := errors.AsType[*limits.OutOfRange](test.err)
		if !ok || out.Quantity != test.want || out.Why == "" {
			t.Errorf("%s: got %v, want %s out of range", name, test.err, test.want)
		}
	}
}

func TestImpossible(t *testing.T) {
	backwards := unit.Range[unit.Mass]{Low: 100, High: 60}
	for name, test := range map[string]struct {
		err           error
		first, second limits.Quantity
		limit         float64
	}{
		"the line breaks":   {changed(func(s *drop.Setup) { s.Weight.High, s.Drop = 1500, 4 }), limits.Tension, limits.RopeBreak, 60e3},
		"into the ground":   {changed(func(s *drop.Setup) { s.Run = 12.5 }), limits.Run, limits.HitchHeight, 12},
		"ends back to fore": {changed(func(s *drop.Setup) { s.Weight = backwards }), limits.Weight, limits.Weight, 60},
		// A line good for 3,922.66 N may take 200 kg set on at once.
		"no run is enough":  {runFor(250, 1, 2*200*gravity), limits.Weight, limits.WorkingLoad, 200},
		"nor at twice":      {runFor(200, 0.1, 2*200*gravity), limits.Weight, limits.WorkingLoad, 200},
		"nor without a run": {runFor(201, 0, 2*200*gravity), limits.Weight, limits.WorkingLoad, 200},
	} {
		c, ok := errors.AsType[*limits.Contradiction](test.err)
		if !ok || c.First != test.first || c.Second != test.second || math.Abs(c.Limit-test.limit) > 1e-6 || c.Why == "" {
			t.Errorf("%s: got %v", name, test.err)
		}
	}
}

func TestMissing(t *testing.T) {
	_, noRun := drop.Average(10, 1, 0)
	for name, test := range map[string]struct {
		err  error
		want limits.Quantity
	}{
		"no strength": {changed(func(s *drop.Setup) { s.Break = 0 }), limits.RopeBreak},
		"no length":   {changed(func(s *drop.Setup) { s.Rope = 0 }), limits.RopeLength},
		"no run":      {noRun, limits.Run},
	} {
		if m, ok := errors.AsType[*limits.Missing](test.err); !ok || m.Quantity != test.want {
			t.Errorf("%s: got %v, want %s missing", name, test.err, test.want)
		}
	}
}

func TestDomainsAreTheRangesChecked(t *testing.T) {
	for _, d := range drop.Domains() {
		beyond := d.High * 1.01
		var err error
		switch d.Quantity {
		case limits.Drop:
			err = changed(func(s *drop.Setup) { s.Drop = unit.Length(beyond) })
		case limits.Run:
			err = changed(func(s *drop.Setup) { s.Run = unit.Length(beyond) })
		case limits.RopeBreak:
			err = changed(func(s *drop.Setup) { s.Break = unit.Force(beyond) })
		case limits.RopeLength:
			err = changed(func(s *drop.Setup) { s.Rope = unit.Length(beyond) })
		case limits.Stiffness:
			_, err = drop.Peak(10, 1, drop.Stiffness(beyond))
		case limits.WorkingLoad:
			err = runFor(10, 1, beyond)
		}
		out, ok := errors.AsType[*limits.OutOfRange](err)
		if !ok || out.Quantity != d.Quantity || out.High != d.High || out.Low != d.Low || out.Why != d.Why {
			t.Errorf("%+v: got %v", d, err)
		}
	}
}

func TestNothingPanics(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		wild := rapid.OneOf(rapid.Float64(), rapid.SampledFrom([]float64{0, math.NaN(), math.Inf(1), math.Inf(-1), 0.3, 5, 5e4}))
		draw := func(name string) float64 { return wild.Draw(t, name) }
		s := drop.Setup{Weight: unit.Range[unit.Mass]{Low: unit.Mass(draw("low")), High: unit.Mass(draw("high"))},
			Drop: unit.Length(draw("drop")), Run: unit.Length(draw("run")), Break: unit.Force(draw("break")),
			Rope: unit.Length(draw("rope")), Hitch: unit.Length(draw("hitch")), Between: unit.Angle(draw("between"))}
		if f, err := drop.Plan(s); err == nil && !(0 < f.Peak.Low && f.Peak.Low <= f.Peak.High*(1+1e-9) && f.OfBreak < 1) {
			t.Fatalf("%+v", f)
		}
		if stop, err := drop.RunFor(s.Weight.High, s.Drop, s.Break); err == nil && !(0 <= stop.Least && stop.Least <= stop.Plan) {
			t.Fatalf("%+v", stop)
		}
	})
}

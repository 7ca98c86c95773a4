package drop_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/drop"
	"heft/calc/unit"
)

// usual is 60 to 100 kg on 15 m of line that breaks at 60 kN.
func usual() drop.Setup {
	return drop.Setup{Weight: unit.Range[unit.Mass]{Low: 60, High: 100}, Drop: 2, Break: 60e3, Rope: 15, Hitch: 12}
}

func TestStretchAsPublished(t *testing.T) {
	// Stretch at a share of the break strength. Every figure must lie between
	// the softest and the stiffest line planned with.
	for name, f := range map[string]struct{ share, stretch float64 }{
		// Cordage Institute classes.
		"low-stretch, softest": {0.10, 0.10}, "low-stretch, stiffest": {0.10, 0.06},
		// Rope history text and a forum.
		"double braid, softest": {0.30, 0.05}, "double braid, stiffest": {0.30, 0.035},
		// Makers' sheets, from memory.
		"a tenth": {0.10, 0.011}, "a fifth": {0.20, 0.017}, "three tenths": {0.30, 0.027},
	} {
		m := f.share / f.stretch
		if m < drop.Soft*(1-1e-9) || m > drop.Stiff*(1+1e-9) {
			t.Errorf("%s: %.2f lies outside %v to %.2f", name, m, drop.Soft, drop.Stiff)
		}
		// A line of 10 m that breaks at 50 kN, at that share of it.
		k, err := drop.Of(50e3, 10, m)
		if err != nil || math.Abs(float64(k)*f.stretch*10-f.share*50e3) > 1e-6 {
			t.Errorf("%s: %v N/m, %v", name, float64(k), err)
		}
	}
}

func TestPlan(t *testing.T) {
	f, err := drop.Plan(usual())
	if err != nil {
		t.Fatal(err)
	}
	// By integration: the light end on the softest line, 4,000 N/m, and the
	// heavy end on the stiffest, 52,288 N/m, which is a fifth over 1.7 % of
	// 60 kN over nine tenths of 15 m.
	low, _, _ := fall(60, 2, 4000, math.Inf(1))
	high, _, _ := fall(100, 2, 0.2/0.017*60e3/13.5, math.Inf(1))
	for name, pair := range map[string][2]float64{
		"low":        {float64(f.Peak.Low), low},
		"high":       {float64(f.Peak.High), high},
		"block low":  {float64(f.Block.Low), 2 * low},
		"block high": {float64(f.Block.High), 2 * high},
		"static":     {float64(f.Static), 100 * gravity},
		"sudden":     {float64(f.Sudden), 200 * gravity},
		"of break":   {f.OfBreak, high / 60e3},
	} {
		if math.Abs(pair[0]/pair[1]-1) > 1e-6 {
			t.Errorf("%s: got %v, want %v", name, pair[0], pair[1])
		}
	}
	// Trade press, from earlier studies: peaks of more than ten times the
	// weight of the piece.
	if f.Peak.High < 10*f.Static {
		t.Errorf("high end %v N, ten times the weight is %v", f.Peak.High, 10*f.Static)
	}
}

func TestPlanWithARun(t *testing.T) {
	s := usual()
	s.Run = 4
	f, err := drop.Plan(s)
	if err != nil {
		t.Fatal(err)
	}
	// A pull that rises evenly to P over 4 m is a spring of P/4: integrated,
	// it stops the piece there.
	peak, stopped, _ := fall(100, 2, float64(f.Peak.High)/4, math.Inf(1))
	if math.Abs(peak/float64(f.Peak.High)-1) > 1e-5 || math.Abs(stopped-4) > 1e-4 {
		t.Errorf("high end %v N; integrated %v N, stopped after %v m", float64(f.Peak.High), peak, stopped)
	}
	_, _, ran := fall(60, 2, 4000, float64(f.Peak.Low))
	if math.Abs(ran-4) > 1e-2 {
		t.Errorf("low end %v N runs %v m", float64(f.Peak.Low), ran)
	}
	// A run of a hand's breadth is no better than none.
	held, errHeld := drop.Plan(usual())
	s.Run = 0.05
	short, errShort := drop.Plan(s)
	if err := errors.Join(errHeld, errShort); err != nil || short.Peak.High != held.Peak.High {
		t.Errorf("short run %v N, held %v N, %v", short.Peak.High, held.Peak.High, err)
	}
}

func TestRunFor(t *testing.T) {
	// 100 kg falling 2 m, 6 kN: by hand, 980.665·2/5019.335 and
	// 2·980.665·2/4038.67.
	stop, err := drop.RunFor(100, 2, 6000)
	if err != nil || math.Abs(float64(stop.Least)-0.390755) > 1e-6 || math.Abs(float64(stop.Plan)-0.971275) > 1e-6 {
		t.Fatalf("%+v, %v", stop, err)
	}
	average, err := drop.Average(100, 2, stop.Least)
	if err != nil || math.Abs(float64(average)-6000) > 1e-6 {
		t.Errorf("average %v N, %v", float64(average), err)
	}
	if stop, err := drop.RunFor(100, 0, 2*100*gravity); err != nil || stop != (drop.Stop{}) {
		t.Errorf("no fall: %+v, %v", stop, err)
	}
}

func TestRunForKeepsThePlanWithin(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		heavy := unit.Mass(rapid.Float64Range(1, 500).Draw(t, "heavy"))
		height := unit.Length(rapid.Float64Range(0, 6).Draw(t, "height"))
		working := heavy.Weight() * unit.Force(rapid.Float64Range(2.5, 12).Draw(t, "working"))
		stop, err := drop.RunFor(heavy, height, max(100, working))
		if err != nil {
			t.Fatal(err)
		}
		s := drop.Setup{Weight: unit.Exactly(heavy), Drop: height, Run: stop.Plan, Break: 5e5, Rope: 20}
		f, err := drop.Plan(s)
		if err != nil || f.Peak.High > max(100, working)*(1+1e-9) {
			t.Fatalf("peak %v N after a run of %v m, working load %v, %v", f.Peak.High, stop.Plan, working, err)
		}
		if stop.Least > stop.Plan {
			t.Fatalf("%+v", stop)
		}
	})
}

func TestPlansGoTheRightWay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		metres := func(low, high float64, name string) unit.Length {
			return unit.Length(rapid.Float64Range(low, high).Draw(t, name))
		}
		high := unit.Mass(rapid.Float64Range(0.1, 200).Draw(t, "high"))
		s := drop.Setup{
			Weight: unit.Range[unit.Mass]{Low: high * unit.Mass(rapid.Float64Range(0.1, 1).Draw(t, "low")), High: high},
			Drop:   metres(0, 3, "drop"), Run: metres(0, 10, "run"), Break: 4e5, Rope: metres(10, 100, "rope"),
		}
		plan := func(s drop.Setup) drop.Fall {
			f, err := drop.Plan(s)
			if err != nil {
				t.Fatal(err)
			}
			return f
		}
		base := plan(s)
		if !(base.Peak.Low > 0 && base.Peak.Low <= base.Peak.High*(1+1e-9) && base.Block.Low <= base.Block.High*(1+1e-9)) {
			t.Fatalf("%+v", base)
		}
		heavier, higher, further, longer := s, s, s, s
		heavier.Weight.High *= unit.Mass(rapid.Float64Range(1, 2).Draw(t, "heavier"))
		higher.Drop += metres(0, 1, "higher")
		further.Run += metres(0, 10, "further")
		longer.Rope += metres(0, 20, "longer")
		const bit = 1 + 1e-9
		if plan(heavier).Peak.High*bit < base.Peak.High || plan(higher).Peak.High*bit < base.Peak.High {
			t.Fatal("a heavier piece or a longer fall pulls less")
		}
		if plan(further).Peak.High > base.Peak.High*bit || plan(longer).Peak.High > base.Peak.High*bit {
			t.Fatal("a longer run or more rope pulls more")
		}
	})
}

func BenchmarkPlan(b *testing.B) {
	s := usual()
	s.Run = 3
	b.ReportAllocs()
	for b.Loop() {
		if _, err := drop.Plan(s); err != nil {
			b.Fatal(err)
		}
	}
}

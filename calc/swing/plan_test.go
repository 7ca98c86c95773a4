package swing_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/limits"
	"heft/calc/swing"
	"heft/calc/unit"
)

// usual is 200 kg on 6 m of line, let go at 30 degrees under a block at 12 m.
func usual() swing.Setup {
	return swing.Setup{Heavy: 200, Line: 6, Start: degrees(30), Hung: 2, Hitch: 12}
}

func near(got, want float64) bool { return math.Abs(got-want) <= 1e-9*max(1, math.Abs(want)) }

func TestPlan(t *testing.T) {
	s := usual()
	s.Obstacle = &swing.Obstacle{Distance: 3, Top: 4}
	w, err := swing.Plan(s)
	if err != nil {
		t.Fatal(err)
	}
	weight := 200 * gravity
	for name, pair := range map[string][2]float64{
		"bottom": {float64(w.Bottom.Line), weight * (3 - math.Sqrt(3))},
		// Two parallel legs: see the printed block-load tables of calc/block.
		"block":       {float64(w.Bottom.Block), 2 * weight * (3 - math.Sqrt(3))},
		"askew":       {float64(w.Askew.Line / w.Bottom.Line), 1 + 6*(1-math.Sqrt(3)/2)},
		"askew block": {float64(w.Askew.Block / w.Askew.Line), 2},
		// Geometry: half of 6 m, and the 2 m of the piece flung out.
		"reach":  {float64(w.Reach), 5},
		"lowest": {float64(*w.Lowest), 4},
		// The wall's top lies 3 m out and 8 m down: √73 from the block, and
		// the piece comes 8 m from it.
		"gap": {float64(*w.Gap), math.Sqrt(73) - 8},
		// The middle of the piece falls 7·(1 − cos 30°).
		"speed": {float64(w.Speed), math.Sqrt(2 * gravity * 7 * (1 - math.Sqrt(3)/2))},
	} {
		if !near(pair[0], pair[1]) {
			t.Errorf("%s: got %v, want %v", name, pair[0], pair[1])
		}
	}
	if !(w.InLine.Line < w.Bottom.Line && w.Bottom.Line < w.Askew.Line) {
		t.Errorf("in line %v, bottom %v, askew %v", w.InLine, w.Bottom, w.Askew)
	}
}

func TestPlanLeavesOutWhatWasNotSaid(t *testing.T) {
	w, err := swing.Plan(swing.Setup{Heavy: 200, Line: 6, Start: degrees(30), Between: degrees(60)})
	if err != nil {
		t.Fatal(err)
	}
	if w.Lowest != nil || w.Gap != nil || w.Askew != (swing.Pull{}) || w.InLine != (swing.Pull{}) {
		t.Errorf("%+v", w)
	}
	// Legs 60 degrees apart: 1.73 (printed block-load tables).
	if factor := float64(w.Bottom.Block / w.Bottom.Line); math.Abs(factor-1.73) > 0.011 {
		t.Errorf("block factor %v", factor)
	}
}

func TestGaps(t *testing.T) {
	// Geometry, by hand, with 8 m of line and piece under a block at 12 m.
	for name, test := range map[string]struct {
		obstacle swing.Obstacle
		want     float64
	}{
		"beyond the reach":        {swing.Obstacle{Distance: 7, Top: 11}, 2},
		"just at the reach":       {swing.Obstacle{Distance: 5, Top: 12}, 0},
		"a fence under the swing": {swing.Obstacle{Distance: 0, Top: 1}, 3},
		"a shed in the way":       {swing.Obstacle{Distance: 3, Top: 8}, -2},
		"a wall over the block":   {swing.Obstacle{Distance: 4, Top: 20}, -1},
	} {
		s := usual()
		s.Obstacle = &test.obstacle
		w, err := swing.Plan(s)
		if err != nil || !near(float64(*w.Gap), test.want) {
			t.Errorf("%s: got %v, %v; want %v", name, w.Gap, err, test.want)
		}
	}
}

func TestStart(t *testing.T) {
	// The sine of 30 degrees is one half.
	for _, test := range []struct {
		offset, line unit.Length
		want         float64
	}{{0, 5, 0}, {2.5, 5, 30}, {5, 5, 90}, {12 * unit.Inch, 30.48 * unit.Centimetre * 2, 30}, {3 * unit.Foot, 0.9144, 90}} {
		got, err := swing.Start(test.offset, test.line)
		if err != nil || math.Abs(got.Degrees()-test.want) > 1e-4 {
			t.Errorf("%v of %v m: %v degrees, %v; want %v", test.offset, test.line, got.Degrees(), err, test.want)
		}
	}
	for _, offset := range []unit.Length{5.01, 6} {
		_, err := swing.Start(offset, 5)
		if c, ok := errors.AsType[*limits.Contradiction](err); !ok || c.First != limits.Offset || c.Limit != 5 {
			t.Errorf("%v m: %v", float64(offset), err)
		}
	}
	for _, offset := range []float64{-1, 61, math.NaN(), math.Inf(1)} {
		_, err := swing.Start(unit.Length(offset), 5)
		if out, ok := errors.AsType[*limits.OutOfRange](err); !ok || out.Quantity != limits.Offset {
			t.Errorf("%v m: %v", offset, err)
		}
	}
}

func TestMoreOfAnythingNeverClearsMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(low, high float64, name string) unit.Length {
			return unit.Length(rapid.Float64Range(low, high).Draw(t, name))
		}
		line := draw(1, 20, "line")
		s := swing.Setup{Heavy: 100, Line: line, Hung: draw(0.01, float64(line), "hung"), Hitch: 55,
			Start:    degrees(rapid.Float64Range(1, 80).Draw(t, "start")),
			Obstacle: &swing.Obstacle{Distance: draw(0, 60, "distance"), Top: draw(0, 60, "top")}}
		base, err := swing.Plan(s)
		if err != nil {
			t.Fatal(err)
		}
		more := s
		switch rapid.IntRange(0, 3).Draw(t, "which") {
		case 0:
			more.Line += draw(0, 3, "longer")
		case 1:
			more.Hung = min(swing.Hangs.High, s.Hung+draw(0, float64(line), "bigger"))
		case 2:
			more.Start += degrees(rapid.Float64Range(0, 10).Draw(t, "further"))
		case 3:
			more.Obstacle = &swing.Obstacle{Distance: s.Obstacle.Distance * draw(0, 1, "nearer"), Top: s.Obstacle.Top}
		}
		w, err := swing.Plan(more)
		if err != nil {
			t.Fatal(err)
		}
		if *w.Gap > *base.Gap+1e-9 || w.Reach < base.Reach-1e-9 || *w.Lowest > *base.Lowest+1e-9 || w.Speed < base.Speed-1e-9 {
			t.Fatalf("%+v became %+v", base, w)
		}
	})
}

func TestNothingPanics(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		wild := rapid.OneOf(rapid.Float64(), rapid.SampledFrom([]float64{0, math.NaN(), math.Inf(1), math.Inf(-1), 0.3, 5, 20}))
		s := swing.Setup{Heavy: unit.Mass(wild.Draw(t, "heavy")), Line: unit.Length(wild.Draw(t, "line")),
			Start: unit.Angle(wild.Draw(t, "start")), Hung: unit.Length(wild.Draw(t, "hung")),
			Hitch: unit.Length(wild.Draw(t, "hitch")), Between: unit.Angle(wild.Draw(t, "between"))}
		if w, err := swing.Plan(s); err == nil && !(w.Bottom.Line > 0 && w.Bottom.Block >= 0 && w.Reach >= 0) {
			t.Fatalf("%+v", w)
		}
	})
}

func BenchmarkPlan(b *testing.B) {
	s := usual()
	s.Obstacle = &swing.Obstacle{Distance: 3, Top: 4}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := swing.Plan(s); err != nil {
			b.Fatal(err)
		}
	}
}

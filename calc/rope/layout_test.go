package rope_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/limits"
	"heft/calc/rope"
	"heft/calc/unit"
)

func needs(t interface {
	Helper()
	Fatal(...any)
}, l rope.Layout) unit.Length {
	t.Helper()
	need, err := l.Needed()
	if err != nil {
		t.Fatal(err)
	}
	return need
}

func TestLaidOutByHand(t *testing.T) {
	// Geometry worked by hand; single line: height, the way from block to
	// drum, wraps and tie, as the trade counts it.
	tail := float64(rope.Tail)
	for _, test := range []struct {
		l    rope.Layout
		want float64
	}{
		{rope.Layout{Hitch: 10, Parts: 1}, 20 + tail},
		{rope.Layout{Hitch: 10, Parts: 2}, 30 + tail},
		{rope.Layout{Hitch: 10, Parts: 1, Extra: 9}, 20 + 9},
		{rope.Layout{Hitch: 10, Parts: 1, Extra: 3}, 20 + tail}, // less than the usual is not planned
		{rope.Layout{Hitch: 10, Parts: 1, Away: 5}, 25 + tail},
		{rope.Layout{Hitch: 10, Parts: 2, Trunk: 0.5}, 30 + 1.5708 + tail},
		// √(8² + 6²) is 10.
		{rope.Layout{Hitch: 8, Parts: 1, Lands: 6}, 18 + tail},
		{rope.Layout{Hitch: 8, Parts: 2, Lands: 6}, 28 + tail},
		// Three wraps on 20 cm are 1.885 m.
		{rope.Layout{Hitch: 10, Parts: 1, Drum: 0.2, Wraps: 3}, 20 + 1.885 + tail},
		{rope.Layout{Hitch: 10, Parts: 1, Wraps: 3}, 20 + tail},
		{rope.Layout{Hitch: 12, Parts: 2, Away: 6, Trunk: 0.6, Drum: 0.3, Wraps: 4}, 36 + 6 + 1.885 + 3.770 + tail},
	} {
		if got := float64(needs(t, test.l)); math.Abs(got-test.want) > 0.001 {
			t.Errorf("%+v: %v m, want %v", test.l, got, test.want)
		}
	}
}

func TestEndIsWhereTheRopeIsUsedUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		length := func(low, high float64, name string) unit.Length {
			return unit.Length(rapid.Float64Range(low, high).Draw(t, name))
		}
		l := rope.Layout{Hitch: length(2, 40, "hitch"), Parts: rapid.IntRange(1, 4).Draw(t, "parts"), Away: length(0, 20, "away"), Lands: length(0, 20, "lands"),
			Trunk: length(0.1, 1, "trunk"), Drum: length(0.05, 0.4, "drum"), Wraps: rope.Wraps(rapid.IntRange(1, 6).Draw(t, "wraps")), Extra: length(0, 20, "extra")}
		have := length(1, 300, "have")
		end, err := l.End(have)
		if err != nil {
			t.Fatal(err)
		}
		// Let the piece down in small steps until the rope laid out is all
		// there is: legs from block to piece, block to foot, foot to drum.
		used := func(up, tail float64) float64 {
			return float64(l.Parts)*math.Hypot(float64(l.Hitch)-up, float64(l.Lands)) + float64(l.Hitch) + float64(l.Away) +
				math.Pi*(float64(l.Trunk)+float64(l.Wraps)*float64(l.Drum)) + tail
		}
		for tail, got := range map[float64]unit.Length{0: end.Low, max(float64(rope.Tail), float64(l.Extra)): end.High} {
			up := float64(l.Hitch)
			for step := up / 2000; up > 0 && used(up, tail) < float64(have); up -= step {
			}
			if math.Abs(max(0, up)-float64(got)) > float64(l.Hitch)/1000 {
				t.Fatalf("tail %v: %v m up, stepped down to %v", tail, got, up)
			}
		}
		if need := needs(t, l); have >= need && end.High > 1e-9 {
			t.Fatalf("%v m of %v: ends %v m up", have, need, end.High)
		}
	})
}

func TestMoreOfAnythingTakesMoreRope(t *testing.T) {
	l := rope.Layout{Hitch: 10, Parts: 2, Away: 3, Trunk: 0.4, Drum: 0.2, Wraps: 2}
	base := needs(t, l)
	for name, change := range map[string]func(*rope.Layout){
		"hitch": func(l *rope.Layout) { l.Hitch++ }, "parts": func(l *rope.Layout) { l.Parts++ },
		"away": func(l *rope.Layout) { l.Away++ }, "lands": func(l *rope.Layout) { l.Lands++ }, "trunk": func(l *rope.Layout) { l.Trunk += 0.1 },
		"drum": func(l *rope.Layout) { l.Drum += 0.1 }, "wraps": func(l *rope.Layout) { l.Wraps++ }, "tail": func(l *rope.Layout) { l.Extra = rope.Tail + 1 },
	} {
		more := l
		change(&more)
		if needs(t, more) <= base {
			t.Errorf("more %s takes no more rope", name)
		}
	}
}

func TestLayoutRefusals(t *testing.T) {
	nan := unit.Length(math.NaN())
	for q, l := range map[limits.Quantity]rope.Layout{
		limits.DrumAway:     {Hitch: 10, Parts: 1, Away: -1},
		limits.RopeTail:     {Hitch: 10, Parts: 1, Extra: 61},
		limits.LandsOut:     {Hitch: 10, Parts: 1, Lands: 31},
		limits.TrunkAcross:  {Hitch: 10, Parts: 1, Trunk: 4},
		limits.DrumDiameter: {Hitch: 10, Parts: 1, Drum: nan},
		limits.Wraps:        {Hitch: 10, Parts: 1, Drum: 0.2, Wraps: 20},
		limits.HitchHeight:  {Hitch: nan, Parts: 1},
	} {
		_, err := l.Needed()
		_, err2 := l.End(10)
		for _, e := range []error{err, err2} {
			if out, ok := errors.AsType[*limits.OutOfRange](e); !ok || out.Quantity != q {
				t.Errorf("%+v: %v, want %s", l, e, q)
			}
		}
	}
}

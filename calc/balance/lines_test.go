package balance_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/balance"
	"heft/calc/unit"
)

func degrees(d float64) unit.Angle { return unit.Angle(d) * unit.Degree }

func exactly(at unit.Length) unit.Range[unit.Length] { return unit.Exactly(at) }

func near(got unit.Force, want, tolerance float64) bool {
	return math.Abs(float64(got)-want) <= tolerance
}

func TestSlingTable(t *testing.T) {
	// Rigging-handbook table: leg angle from the horizontal and the pull of a
	// leg over its share of the load.
	for angle, want := range map[float64]float64{90: 1.000, 75: 1.035, 60: 1.155, 45: 1.414, 35: 1.742, 30: 2.000} {
		first, second, err := balance.Legs(2, degrees(angle), degrees(angle))
		if err != nil || first != second || !near(first/unit.StandardGravity, want, 0.002) {
			t.Errorf("%v degrees: %v and %v N, %v; want %v of half", angle, first, second, err, want)
		}
	}
	// The same book: a leg good for 1,000 lifts 866, 707, 500 and 258 of its
	// share at 60, 45, 30 and 15 degrees.
	for angle, want := range map[float64]float64{60: 866, 45: 707, 30: 500, 15: 258} {
		leg, _, err := balance.Legs(2, degrees(angle), degrees(angle))
		if got := 1000 / float64(leg.Held()); err != nil || math.Abs(got-want) > 1 {
			t.Errorf("%v degrees: lifts %.1f, %v; want %v", angle, got, err, want)
		}
	}
	// Rigging text: 1000 kg on two legs at 45 degrees are 707 kg a leg.
	first, second, err := balance.Legs(1000, degrees(45), degrees(45))
	if err != nil || math.Abs(float64(first.Held())-707) > 1 || math.Abs(float64(second.Held())-707) > 1 {
		t.Errorf("%v and %v, %v", first.Held(), second.Held(), err)
	}
}

func TestLegsAreInBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := rapid.Float64Range(15, 85)
		a, b := draw.Draw(t, "first")*math.Pi/180, draw.Draw(t, "second")*math.Pi/180
		load := rapid.Float64Range(1, 5000).Draw(t, "load")
		first, second, err := balance.Legs(unit.Mass(load), unit.Angle(a), unit.Angle(b))
		if err != nil {
			t.Fatal(err)
		}
		// Independent: pulls up add to the weight, pulls aside to nothing.
		up := float64(first)*math.Sin(a) + float64(second)*math.Sin(b)
		aside := float64(first)*math.Cos(a) - float64(second)*math.Cos(b)
		w := load * 9.80665
		if math.Abs(up-w) > 1e-9*w || math.Abs(aside) > 1e-9*w {
			t.Fatalf("up %v of %v N, aside %v", up, w, aside)
		}
	})
}

func TestTwoLinesByHand(t *testing.T) {
	// 100 kg (980.7 N) balance a quarter of the way from the first tie to the
	// second: three quarters hang on the first.
	first, second, err := balance.TwoLines(100, exactly(2), 1, 5)
	if err != nil || !near(first, 735.5, 0.01) || !near(second, 245.17, 0.01) {
		t.Errorf("%v and %v N, %v", first, second, err)
	}
	// A balance point known to a metre loads either line by its worse end.
	first, second, err = balance.TwoLines(100, unit.Range[unit.Length]{Low: 2, High: 3}, 1, 5)
	if err != nil || !near(first, 735.5, 0.01) || !near(second, 490.33, 0.01) {
		t.Errorf("%v and %v N, %v", first, second, err)
	}
}

func TestTwoLinesByWork(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(low, high float64, name string) float64 { return rapid.Float64Range(low, high).Draw(t, name) }
		x1 := draw(0, 10, "first")
		x2 := x1 + draw(0.5, 10, "span")
		x, load := draw(max(x1, 0.01), x2, "balance"), draw(1, 5000, "load")
		first, second, err := balance.TwoLines(unit.Mass(load), exactly(unit.Length(x)), unit.Length(x1), unit.Length(x2))
		if err != nil {
			t.Fatal(err)
		}
		// Virtual work: take one tie up by a little and hold the other.
		const step = 1e-6
		at := func(up1, up2 float64) float64 { return up1 + (up2-up1)*(x-x1)/(x2-x1) }
		w := load * 9.80665
		want1, want2 := w*at(step, 0)/step, w*at(0, step)/step
		if math.Abs(float64(first)-want1) > 1e-6*w || math.Abs(float64(second)-want2) > 1e-6*w {
			t.Fatalf("%v and %v N, by work %v and %v", first, second, want1, want2)
		}
	})
}

func TestTies(t *testing.T) {
	at := unit.Range[unit.Length]{Low: 2, High: 2.6}
	for as, want := range map[balance.Hang]unit.Range[unit.Length]{
		balance.Level:     at,
		balance.ButtHeavy: {Low: 2.6 + balance.Margin, High: 7},
		balance.TipHeavy:  {High: 2 - balance.Margin},
	} {
		if got, err := balance.Ties(at, 7, as); err != nil || got != want {
			t.Errorf("%s: %v, %v; want %v", as, got, err, want)
		}
	}
}

func TestTiesHangAsSaid(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		low := unit.Length(rapid.Float64Range(0.4, 8).Draw(t, "balance"))
		at := unit.Range[unit.Length]{Low: low, High: low + unit.Length(rapid.Float64Range(0, 2).Draw(t, "unsure"))}
		length := at.High + unit.Length(rapid.Float64Range(0.4, 8).Draw(t, "beyond"))
		as := rapid.SampledFrom([]balance.Hang{balance.ButtHeavy, balance.TipHeavy}).Draw(t, "as")
		ties, err := balance.Ties(at, length, as)
		if err != nil {
			t.Fatal(err)
		}
		// Wherever the balance point lies, the moment about any of the ties
		// takes the same end down.
		for _, tie := range []unit.Length{ties.Low, ties.Middle(), ties.High} {
			for _, x := range []unit.Length{at.Low, at.Middle(), at.High} {
				buttDown := x < tie
				if buttDown != (as == balance.ButtHeavy) || tie < 0 || tie > length {
					t.Fatalf("tie %v, balance %v, %s", tie, x, as)
				}
			}
		}
	})
}

func TestRoll(t *testing.T) {
	// By hand: 40 kg 1.5 m to one side and 20 kg 1 m to the other are
	// 9.80665·(60 − 20) = 392.3 N·m.
	said := func(m unit.Mass) unit.Range[unit.Mass] { return unit.Exactly(m) }
	got, err := balance.Roll([]balance.Branch{{said(40), 1.5}, {said(20), -1}})
	if err != nil || !got.Single() || math.Abs(float64(got.High)-392.266) > 0.001 {
		t.Errorf("%v, %v", got, err)
	}
	// 30 to 40 kg against 10 to 20: from 45 − 20 to 60 − 10.
	got, err = balance.Roll([]balance.Branch{
		{unit.Range[unit.Mass]{Low: 30, High: 40}, 1.5}, {unit.Range[unit.Mass]{Low: 10, High: 20}, -1}})
	if err != nil || math.Abs(float64(got.Low)-245.166) > 0.001 || math.Abs(float64(got.High)-490.333) > 0.001 {
		t.Errorf("%v, %v", got, err)
	}
	if got, err := balance.Roll(nil); err != nil || got != (unit.Range[balance.Moment]{}) {
		t.Errorf("a bare stem: %v, %v", got, err)
	}
}

func TestRollByWork(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mass := rapid.Float64Range(1, 500).Draw(t, "mass")
		offset := rapid.Float64Range(-10, 10).Draw(t, "offset")
		got, err := balance.Roll([]balance.Branch{{unit.Exactly(unit.Mass(mass)), unit.Length(offset)}})
		// What the branch gives up as the stem rolls by a little.
		const step = 1e-5
		want := mass * 9.80665 * offset * math.Sin(step) / step
		if err != nil || math.Abs(float64(got.High)-want) > 1e-6*math.Abs(want) {
			t.Fatalf("%v N·m, by work %v, %v", got.High, want, err)
		}
	})
}

func BenchmarkTwoLines(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		_, _, errLines := balance.TwoLines(300, exactly(2.5), 1, 5)
		_, errTag := balance.TagLine(300, 10, 3, degrees(20))
		if err := errors.Join(errLines, errTag); err != nil {
			b.Fatal(err)
		}
	}
}

package piece_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/piece"
	"heft/calc/unit"
	"heft/calc/wood"
)

// drawPiece draws a piece that can be weighed, with room to grow by a third.
func drawPiece(t *rapid.T) piece.Piece {
	rows := wood.All()
	row := rows[rapid.IntRange(0, len(rows)-1).Draw(t, "row")]
	if row.Palm {
		row = water
	}
	p := piece.Piece{
		Wood:      row,
		Shape:     piece.Shape(rapid.IntRange(0, 2).Draw(t, "shape")),
		Condition: piece.Condition(rapid.IntRange(0, 1).Draw(t, "condition")),
	}
	metres := func(low, high float64, name string) unit.Length {
		return unit.Length(rapid.Float64Range(low, high).Draw(t, name))
	}
	length := metres(0.1, 22, "length")
	thick := metres(0.03, 1.8, "diameter")
	if p.Shape == piece.Limb {
		length = metres(0.5, 22, "limb")
		thick = metres(0.03, min(0.8, float64(length)/5), "butt")
	}
	said := func(v unit.Length) unit.Range[unit.Length] {
		return unit.Range[unit.Length]{Low: v, High: v * unit.Length(rapid.SampledFrom([]float64{1, 1.1}).Draw(t, "range"))}
	}
	p.Length = said(length)
	switch rapid.IntRange(0, 2).Draw(t, "diameters") {
	case 0:
		p.Diameter = said(thick)
	case 1:
		p.Butt = said(thick)
	case 2:
		p.Butt = said(thick)
		p.Tip = unit.Exactly(metres(0.01, float64(thick), "tip"))
		if rapid.Bool().Draw(t, "three") {
			p.Mid = unit.Exactly(metres(float64(p.Tip.Low), float64(thick), "mid"))
		}
	}
	return p
}

// atLeast fails where any end of a is lighter than that of b.
func atLeast(t *rapid.T, a, b piece.Weight) {
	const bit = 1 - 1e-12
	if a.Low < b.Low*bit || a.Likely < b.Likely*bit || a.High < b.High*bit {
		t.Fatalf("%v to %v to %v kg is less than %v to %v to %v", a.Low, a.Likely, a.High, b.Low, b.Likely, b.High)
	}
}

func grown(r unit.Range[unit.Length], by float64) unit.Range[unit.Length] {
	return unit.Range[unit.Length]{Low: r.Low * unit.Length(by), High: r.High * unit.Length(by)}
}

func TestEndsAreInOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := weigh(t, drawPiece(t))
		if !(0 < w.Low && w.Low <= w.Likely && w.Likely <= w.High) || math.IsInf(float64(w.High), 0) {
			t.Fatalf("%v, %v, %v kg", w.Low, w.Likely, w.High)
		}
	})
}

func TestLongerNeverWeighsLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPiece(t)
		short := weigh(t, p)
		p.Length = grown(p.Length, rapid.Float64Range(1, 1.2).Draw(t, "grown"))
		atLeast(t, weigh(t, p), short)
	})
}

func TestThickerNeverWeighsLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPiece(t)
		thin := weigh(t, p)
		by := rapid.Float64Range(1, 1.2).Draw(t, "grown")
		p.Diameter, p.Butt = grown(p.Diameter, by), grown(p.Butt, by)
		atLeast(t, weigh(t, p), thin)
		if !p.Tip.IsZero() {
			p.Mid, p.Tip = grown(p.Mid, by), grown(p.Tip, by)
			atLeast(t, weigh(t, p), thin)
		}
	})
}

func TestWiderRangesNarrowNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPiece(t)
		w := weigh(t, p)
		p.Length.High *= unit.Length(rapid.Float64Range(1, 1.2).Draw(t, "grown"))
		if wide := weigh(t, p); wide.Low != w.Low || wide.High < w.High {
			t.Fatalf("%v to %v kg became %v to %v", w.Low, w.High, wide.Low, wide.High)
		}
	})
}

func TestDeadNeverOutweighsGreen(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawPiece(t)
		p.Condition = piece.Green
		green := weigh(t, p)
		p.Condition = piece.Dead
		dead := weigh(t, p)
		atLeast(t, green, dead)
		if dead.High != green.High {
			t.Fatalf("heavy end %v kg dead, %v green", dead.High, green.High)
		}
	})
}

func TestUnitsAgree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		metric := drawPiece(t)
		imperial := metric
		for _, r := range []*unit.Range[unit.Length]{&imperial.Diameter, &imperial.Butt, &imperial.Mid, &imperial.Tip} {
			r.Low, r.High = unit.Length(r.Low.Inches())*unit.Inch, unit.Length(r.High.Inches())*unit.Inch
		}
		l := &imperial.Length
		l.Low, l.High = unit.Length(l.Low.Feet())*unit.Foot, unit.Length(l.High.Feet())*unit.Foot
		a, b := weigh(t, metric), weigh(t, imperial)
		for _, pair := range [][2]unit.Mass{{a.Low, b.Low}, {a.Likely, b.Likely}, {a.High, b.High}} {
			if math.Abs(float64(pair[0]/pair[1])-1) > 1e-9 {
				t.Fatalf("%v kg in metres, %v in feet", pair[0], pair[1])
			}
		}
	})
}

func TestNothingPanics(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		any := func(name string) unit.Range[unit.Length] {
			draw := rapid.OneOf(rapid.Float64(), rapid.SampledFrom([]float64{0, math.NaN(), math.Inf(1), math.Inf(-1), 0.3, 5}))
			return unit.Range[unit.Length]{Low: unit.Length(draw.Draw(t, name)), High: unit.Length(draw.Draw(t, name))}
		}
		w, err := piece.Weigh(piece.Piece{Wood: water, Shape: piece.Shape(rapid.IntRange(0, 2).Draw(t, "shape")),
			Diameter: any("diameter"), Butt: any("butt"), Mid: any("mid"), Tip: any("tip"), Length: any("length")})
		if err == nil && !(0 < w.Low && w.Low <= w.Likely && w.Likely <= w.High) {
			t.Fatalf("%v, %v, %v kg", w.Low, w.Likely, w.High)
		}
		if err != nil && err.Error() == "" {
			t.Fatal("an error without words")
		}
	})
}

func BenchmarkWeigh(b *testing.B) {
	p := limb(find(b, "Quercus rubra"), 14*unit.Inch, 22*unit.Foot)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := piece.Weigh(p); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkFind(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, ok := wood.Find("Quercus rubra"); !ok {
			b.Fatal("no red oak")
		}
	}
}

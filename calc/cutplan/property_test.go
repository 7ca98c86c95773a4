package cutplan_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/cutplan"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/calc/wood"
)

// drawStick draws a stick that can be weighed.
func drawStick(t *rapid.T) piece.Piece {
	rows := wood.All()
	row := rows[rapid.IntRange(0, len(rows)-1).Draw(t, "row")]
	if row.Palm {
		row = rows[0]
	}
	metres := func(low, high float64, name string) unit.Length {
		return unit.Length(rapid.Float64Range(low, high).Draw(t, name))
	}
	length := metres(1, 25, "length")
	p := piece.Piece{Wood: row, Shape: piece.Shape(rapid.IntRange(0, 2).Draw(t, "shape")), Length: unit.Exactly(length)}
	butt := metres(0.05, min(1, float64(length)/4), "butt")
	p.Butt = unit.Exactly(butt)
	if rapid.Bool().Draw(t, "tapers") {
		p.Tip = unit.Exactly(metres(0.01, float64(butt), "tip"))
		if rapid.Bool().Draw(t, "measured twice") {
			p.Mid = unit.Exactly(metres(float64(p.Tip.Low), float64(butt), "mid"))
		}
	}
	return p
}

// drawLimit draws a limit that the shortest piece stays under.
func drawLimit(t *rapid.T, p piece.Piece) unit.Mass {
	least := 2000 * math.Pi / 4 * math.Pow(float64(p.Butt.High), 2) * 0.05
	return unit.Mass(math.Exp(rapid.Float64Range(math.Log(4*least), math.Log(19000)).Draw(t, "limit")))
}

func longest(t *rapid.T, p piece.Piece, from cutplan.End, limit unit.Mass) cutplan.Cut {
	cut, err := cutplan.Longest(p, from, limit, 0)
	if err != nil {
		t.Fatal(err)
	}
	return cut
}

func TestNoLongerPieceIsUnderTheLimit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawStick(t)
		limit := drawLimit(t, p)
		from := cutplan.End(rapid.IntRange(0, 1).Draw(t, "end"))
		cut := longest(t, p, from, limit)
		if cut.Heavy > limit*(1+1e-9) || cut.Uncut != (float64(p.Length.High-cut.Length) < 1e-6) {
			t.Fatalf("%+v under %v kg", cut, limit)
		}
		if cut.Balance <= 0 || cut.Balance > cut.Length/2*(1+1e-9) {
			t.Fatalf("balance %v of %v m", cut.Balance, cut.Length)
		}
		// With what this piece may weigh for a limit, a longer one is found
		// over it: no second, longer length fits.
		again := longest(t, p, from, cut.Heavy)
		if math.Abs(float64(again.Length-cut.Length)) > 1e-5 {
			t.Fatalf("%v m at %v kg, %v at %v", cut.Length, limit, again.Length, cut.Heavy)
		}
	})
}

func TestAHigherLimitNeverShortens(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawStick(t)
		limit := drawLimit(t, p)
		from := cutplan.End(rapid.IntRange(0, 1).Draw(t, "end"))
		short := longest(t, p, from, limit)
		long := longest(t, p, from, limit*unit.Mass(rapid.Float64Range(1, 1.05).Draw(t, "more")))
		if long.Length < short.Length-1e-5 || long.Heavy < short.Heavy*(1-1e-5) {
			t.Fatalf("%+v, at a higher limit %+v", short, long)
		}
		if tip := longest(t, p, cutplan.Tip, limit); tip.Length < longest(t, p, cutplan.Butt, limit).Length-1e-5 {
			t.Fatalf("shorter from the tip: %+v", tip)
		}
		thicker := p
		thicker.Butt = unit.Exactly(p.Butt.High * 1.02)
		if fat := longest(t, thicker, from, limit); fat.Length > short.Length+1e-5 {
			t.Fatalf("%+v, of a thicker stick %+v", short, fat)
		}
	})
}

func TestPiecesAreTheStick(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawStick(t)
		limit := drawLimit(t, p)
		step := unit.Length(rapid.SampledFrom([]float64{0, 0.0254, 0.05}).Draw(t, "step"))
		plan, err := cutplan.Pieces(p, limit, step, 0)
		if err != nil {
			t.Fatal(err)
		}
		var sum unit.Length
		for i, c := range plan.Pieces {
			sum += c.Length
			if c.Heavy > limit*(1+1e-9) || c.Length < 0.05*(1-1e-9) || c.Balance <= 0 || c.Balance > c.Length/2*(1+1e-9) {
				t.Fatalf("piece %d under %v kg: %+v", i, limit, c)
			}
		}
		if math.Abs(float64(sum-p.Length.High)) > 2e-6 || plan.Cuts != len(plan.Pieces) {
			t.Fatalf("%v m of %v, %d cuts", sum, p.Length.High, plan.Cuts)
		}
		// The first piece is the longest from the butt, to a step of the tape,
		// unless the rest was too short.
		if first := longest(t, p, cutplan.Butt, limit); len(plan.Pieces) > 2 && (plan.Pieces[0].Length > first.Length || plan.Pieces[0].Length < first.Length-step) {
			t.Fatalf("%v m, longest %v", plan.Pieces[0].Length, first.Length)
		}
	})
}

func BenchmarkLongest(b *testing.B) {
	p := log(find(b, "Quercus rubra"), 0, 20*unit.Inch, 0, 12*unit.Inch, 30*unit.Foot)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := cutplan.Longest(p, cutplan.Butt, 400*unit.Pound, 0); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkPieces(b *testing.B) {
	p := log(find(b, "Quercus rubra"), 0, 20*unit.Inch, 0, 12*unit.Inch, 30*unit.Foot)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := cutplan.Pieces(p, 400*unit.Pound, 0, 0); err != nil {
			b.Fatal(err)
		}
	}
}

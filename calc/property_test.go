package calc_test

import (
	"testing"

	"pgregory.net/rapid"

	"heft/calc"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/calc/wood"
)

// drawLimb draws a limb light enough to be lowered after growing by a fifth
// either way.
func drawLimb(t *rapid.T) piece.Piece {
	rows := wood.All()
	row := rows[rapid.IntRange(0, len(rows)-1).Draw(t, "row")]
	if row.Palm {
		row = rows[0]
	}
	return piece.Piece{Wood: row, Shape: piece.Limb,
		Butt:   unit.Exactly(unit.Length(rapid.Float64Range(0.05, 0.4).Draw(t, "butt"))),
		Length: unit.Exactly(unit.Length(rapid.Float64Range(1.5, 8).Draw(t, "length")))}
}

func mustWork(t *rapid.T, j calc.Job) calc.Result {
	r, err := calc.Work(j)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func TestABiggerLimbNeverTakesLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawLimb(t)
		hitch := unit.Exactly(unit.Length(rapid.Float64Range(1, 40).Draw(t, "hitch")))
		small := mustWork(t, calc.Job{Piece: &p, Hitch: hitch})
		bigger := p
		by := unit.Length(rapid.Float64Range(1, 1.2).Draw(t, "grown"))
		if rapid.Bool().Draw(t, "thicker") {
			bigger.Butt = unit.Exactly(p.Butt.Low * by)
		} else {
			bigger.Length = unit.Exactly(p.Length.Low * by)
		}
		big := mustWork(t, calc.Job{Piece: &bigger, Hitch: hitch})
		if big.Lowering.Start < small.Lowering.Start || big.Lowering.Least < small.Lowering.Least || big.Block < small.Block {
			t.Fatalf("bigger %+v at %v N, smaller %+v at %v N", *big.Lowering, big.Block, *small.Lowering, small.Block)
		}
	})
}

func TestTheCrewsWeightNeverLightensThePlan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawLimb(t)
		alone := mustWork(t, calc.Job{Piece: &p, Lower: true})
		said := unit.Exactly(unit.Mass(rapid.Float64Range(1, 2900).Draw(t, "said")))
		both := mustWork(t, calc.Job{Piece: &p, Given: said, Lower: true})
		if both.Weight.High < alone.Weight.High || both.Lowering.Start < alone.Lowering.Start || both.Block < alone.Block {
			t.Fatalf("with the crew's weight %+v, without %+v", both.Weight, alone.Weight)
		}
		if !(both.Weight.Low <= both.Weight.Likely && both.Weight.Likely <= both.Weight.High) {
			t.Fatalf("%+v", both.Weight)
		}
	})
}

func TestAHigherHitchNeverTakesLessRope(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawLimb(t)
		low := rapid.Float64Range(0.5, 60).Draw(t, "low")
		high := rapid.Float64Range(low, 60).Draw(t, "high")
		parts := rapid.IntRange(1, 5).Draw(t, "parts")
		at := func(hitch float64, parts int) unit.Length {
			return mustWork(t, calc.Job{Piece: &p, Hitch: unit.Exactly(unit.Length(hitch)), Parts: parts}).Rope
		}
		if at(high, parts) < at(low, parts) || at(low, parts+1) <= at(low, parts) {
			t.Fatalf("rope shrinks between %v and %v m, %d parts and one more", low, high, parts)
		}
	})
}

func BenchmarkWork(b *testing.B) {
	j := calc.Job{Piece: redOakLimb(b), Hitch: unit.Exactly(35 * unit.Foot)}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := calc.Work(j); err != nil {
			b.Fatal(err)
		}
	}
}

package rope_test

import (
	"math"
	"os"
	"strings"
	"testing"

	"heft/calc/published"
	"heft/calc/rope"
	"heft/calc/unit"
)

func TestTextbookCapstans(t *testing.T) {
	const lb, quarter = unit.PoundForce, rope.Wraps(0.25)
	for _, test := range []struct {
		name            string
		got, want       unit.Force
		tolerance, unit unit.Force
	}{
		// Beer & Johnston, Vector Mechanics, problem 8.104: 80 lb hold 5,000
		// with two turns, μ = 0.329 ± 0.001 (1.3 % of the hold); 20,000 lb
		// then take 2.67 turns ± 0.01 (2 % of it).
		{"5,000 lb, two turns", rope.Hold(5000*lb, 0.329, 2), 80, 1, lb},
		{"20,000 lb, 2.67 turns", rope.Hold(20000*lb, 0.329, 2.67), 80, 1.6, lb},
		// Engineering-mechanics worked example: 100 kg (981 N), μ 0.2, 3π/2.
		{"981 N, three quarters", rope.Hold(981, 0.2, 3*quarter), 382.26, 0.1, 1},
		// Lecture notes: 1000 N, μ 0.4.
		{"1000 N, one turn", rope.Hold(1000, 0.4, 1), 81, 0.81, 1},
		{"1000 N, two turns", rope.Hold(1000, 0.4, 2), 6.56, 0.0656, 1},
		{"1000 N, four turns", rope.Hold(1000, 0.4, 4), 0.043, 0.00043, 1},
		// Worked problem: 1000 N, μ 0.25, one turn and a half.
		{"raise 1000 N", rope.Haul(1000, 0.25, 1.5), 10550.72, 0.1, 1},
		{"hold 1000 N", rope.Hold(1000, 0.25, 1.5), 94.78, 0.1, 1},
		// University quiz: μ 0.3 multiplies by 6.6 a turn, by 43 in two.
		{"one turn of 0.3", rope.Haul(1, 0.3, 1), 6.6, 0.066, 1},
		{"two turns of 0.3", rope.Haul(1, 0.3, 2), 43, 0.43, 1},
		// Textbook problem 6.14, worked out from the equation: 50 lb at the
		// hand hold 1,354 on one turn and a half of an 8 in pole, μ 0.35.
		{"an 8 in pole", rope.Haul(50*lb, 0.35, 1.5), 1354, 1, lb},
		{"a bare hand", rope.Hold(700, rope.Slick, 0), 700, 0, 1},
	} {
		if got := test.got / test.unit; math.Abs(float64(got-test.want)) > float64(test.tolerance) {
			t.Errorf("%s: got %.4f, want %v", test.name, float64(got), float64(test.want))
		}
	}
}

func TestWrapTable(t *testing.T) {
	rows := published.Rows(t, os.DirFS("testdata"), "wrap_table.csv")
	if len(rows) != 8 {
		t.Errorf("%d rows, want 8", len(rows))
	}
	for _, row := range rows {
		turns, ratio, holds := rope.Wraps(published.Number(t, row[0])), published.Number(t, row[1]), published.Number(t, row[2])
		// 0.4 % is how closely one friction fits all eight rows; the smallest
		// holds are printed to two places.
		got := float64(rope.Hold(100, 0.175, turns))
		if math.Abs(got-holds) > max(0.004*holds, 0.006) {
			t.Errorf("%v turns: holds %.3f kg, want %v", float64(turns), got, holds)
		}
		if got := float64(rope.Haul(1, 0.175, turns)); math.Abs(got/ratio-1) > 0.004 {
			t.Errorf("%v turns: ratio %.3f, want %v", float64(turns), got, ratio)
		}
	}
}

func TestMeasuredPulls(t *testing.T) {
	rows := published.Rows(t, os.DirFS("testdata"), "bar_pulls.csv")
	if len(rows) != 14 {
		t.Errorf("%d rows, want 14", len(rows))
	}
	metal := 0
	for _, row := range rows {
		load, wraps := unit.Force(published.Number(t, row[2])), rope.Wraps(published.Number(t, row[3])/360)
		raised, lowered := unit.Force(published.Number(t, row[4])), unit.Force(published.Number(t, row[5]))
		printed := rope.Friction(published.Number(t, row[6]))
		// One friction does not fit both directions: with the printed one the
		// equation asks for more than was measured, both ways.
		if got := rope.Hold(load, printed, wraps); got <= lowered {
			t.Errorf("%v: hold %.1f kg, measured %.1f", row[:2], float64(got), float64(lowered))
		}
		if got := rope.Haul(load, printed, wraps); got <= raised {
			t.Errorf("%v: haul %.1f kg, measured %.1f", row[:2], float64(got), float64(raised))
		}
		if strings.Contains(row[1], "wood") || row[1] == "concrete" {
			continue
		}
		metal++
		// What the hand felt on metal lies between our grippy and our slick
		// drum; scales were read to the kilogram.
		if most := rope.Hold(load, rope.Slick, wraps); lowered > most {
			t.Errorf("%v: measured %.1f kg, slick %.1f", row[:2], float64(lowered), float64(most))
		}
		if least := rope.Hold(load, rope.Grippy, wraps); lowered < least-0.5 {
			t.Errorf("%v: measured %.1f kg, grippy %.1f", row[:2], float64(lowered), float64(least))
		}
	}
	if metal != 11 {
		t.Errorf("%d rows on metal, want 11", metal)
	}
}

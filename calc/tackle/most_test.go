package tackle_test

import (
	"errors"
	"math"
	"testing"

	"heft/calc/limits"
	"heft/calc/tackle"
	"heft/calc/unit"
)

// TestMost, worked by hand: 3 people at 200 N on a 2:1 with sheaves that pass
// nine tenths lift 600·(0.9 + 0.81)/1.25 = 820.8 N, 83.7 kg.
func TestMost(t *testing.T) {
	got, err := tackle.Most(tackle.Tackle{Parts: 2, Efficiency: 0.9}, tackle.Power{People: 3, PerPerson: 200})
	if err != nil || math.Abs(float64(got)-83.70) > 0.01 {
		t.Errorf("%v kg, %v; want 83.7", float64(got), err)
	}
}

// TestMostIsEnough: the most is enough, and what is heavier is not.
func TestMostIsEnough(t *testing.T) {
	for parts := 1; parts <= 5; parts++ {
		for people := 1; people <= 8; people++ {
			tk, p := tackle.Tackle{Parts: parts, Efficiency: 0.9}, tackle.Power{People: people, PerPerson: tackle.PerPerson}
			most, err := tackle.Most(tk, p)
			if err != nil {
				t.Fatal(err)
			}
			for factor, want := range map[float64]tackle.Verdict{0.999: tackle.Enough, 1.001: tackle.Marginal, 1.26: tackle.MorePower} {
				r, err := tackle.Plan(tackle.Lift{Load: most * unit.Mass(factor), Tackle: tk, Power: p})
				if err != nil || r.Verdict != want {
					t.Errorf("%d parts, %d people, %v of the most: %v, %v; want %v", parts, people, factor, r.Verdict, err, want)
				}
			}
		}
	}
}

func TestMostNeedsPower(t *testing.T) {
	_, err := tackle.Most(tackle.Tackle{Parts: 2, Efficiency: 0.9}, tackle.Power{PerPerson: tackle.PerPerson})
	if m, ok := errors.AsType[*limits.Missing](err); !ok || m.Quantity != limits.People {
		t.Errorf("without anybody to pull: %v", err)
	}
	if _, err := tackle.Most(tackle.Tackle{Parts: 0, Efficiency: 0.9}, tackle.Power{People: 1, PerPerson: tackle.PerPerson}); err == nil {
		t.Error("without a part of line: no error")
	}
}

// TestFewest, worked by hand: 2 people pull 400 N, and with a fifth to spare
// 320 N; 100 kg are 980.7 N, and sheaves of nine tenths leave 2.44 of three
// parts (401.9 N) and 3.10 of four (316.8 N).
func TestFewest(t *testing.T) {
	l := tackle.Lift{Load: 100, Tackle: tackle.Tackle{Parts: 1, Efficiency: 0.9}, Power: tackle.Power{People: 2, PerPerson: 200}}
	if n, err := tackle.Fewest(l); err != nil || n != 4 {
		t.Errorf("%d parts, %v; want 4", n, err)
	}
	l.Load = 1000
	if n, err := tackle.Fewest(l); err != nil || n != 0 {
		t.Errorf("a ton for two: %d parts, %v; want none", n, err)
	}
	l.People = 0
	if _, err := tackle.Fewest(l); err == nil {
		t.Error("without anybody to pull: no error")
	}
}

package tackle_test

import (
	"testing"

	"heft/calc/tackle"
	"heft/calc/unit"
)

// TestStrained, by hand: 100 N on a 3:1 led from the top block hold 300 N below and pull
// 400 N on what is above; led from the moving block 200.
func TestStrained(t *testing.T) {
	for up, fixed := range map[bool]unit.Force{false: 400, true: 200} {
		got, err := tackle.Strained(tackle.Tackle{Parts: 3, Upward: up}, 100)
		if err != nil || !near(got.Load, 300) || !near(got.Fixed, fixed) || !near(got.Redirect, 200) {
			t.Errorf("upward %v: %+v, %v", up, got, err)
		}
	}
	for _, pull := range []unit.Force{0, 1, -5, 1e9} {
		if _, err := tackle.Strained(tackle.Tackle{Parts: 3}, pull); err == nil {
			t.Errorf("a pull of %v N: no error", float64(pull))
		}
	}
	if _, err := tackle.Strained(tackle.Tackle{}, 100); err == nil {
		t.Error("without a part of line: no error")
	}
}

// TestStrainedIsTheMost: friction leaves less on both ends.
func TestStrainedIsTheMost(t *testing.T) {
	for parts := 1; parts <= 6; parts++ {
		for _, up := range []bool{false, true} {
			if up && parts == 1 {
				continue
			}
			tk := tackle.Tackle{Parts: parts, Efficiency: 0.9, Upward: up}
			adv, err := tk.Advantage()
			if err != nil {
				t.Fatal(err)
			}
			s, err := tackle.Strained(tk, 300)
			if err != nil {
				t.Fatal(err)
			}
			r, err := tackle.Pull(unit.Force(adv)*300, tk, tackle.Power{PerPerson: 200})
			if err != nil || unit.Force(adv)*300 > s.Load*(1+1e-9) || r.Tree > s.Fixed*(1+1e-9) {
				t.Errorf("%d parts, upward %v: %+v, with friction %v on the tree, %v", parts, up, s, float64(r.Tree), err)
			}
		}
	}
}

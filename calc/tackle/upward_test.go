package tackle_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/tackle"
	"heft/calc/unit"
)

func TestHauledAtTheMovingBlock(t *testing.T) {
	// US Navy Builder training manual: a gun tackle, inverted, gains three
	// where it gained two.
	inverted := tackle.Tackle{Parts: 3, Efficiency: 1, Upward: true}
	if a, err := inverted.Advantage(); err != nil || math.Abs(a-3) > 1e-9 {
		t.Errorf("inverted gun tackle: %v, %v", a, err)
	}
	// University of Oregon notes: three to one on plain carabiners is about two
	// to one.
	inverted.Efficiency = kind(t, "carabiner").Efficiency
	if a, err := inverted.Advantage(); err != nil || math.Abs(a-2) > 0.2 {
		t.Errorf("carabiners: %v, %v", a, err)
	}
	// Statics, worked by hand: one moving block without friction, hauled
	// upward, is held half by the hands and half by the dead end on the tree.
	l := lift(100, 2, 0)
	l.Efficiency, l.Upward = 1, true
	w := l.Load.Weight()
	if r := plan(t, l); !near(r.Haul, w/2) || !near(r.DeadEnd, w/2) || r.Block > 1e-6 || !near(r.Tree, w/2) {
		t.Errorf("%+v", r)
	}
}

func TestUpwardIsTheSameTackleWithASheaveLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := lift(unit.Mass(rapid.Float64Range(1, 1000).Draw(t, "load")), rapid.IntRange(1, 6).Draw(t, "parts"), 0)
		l.Efficiency = rapid.Float64Range(0.3, 1).Draw(t, "e")
		down := plan(t, l)
		l.Upward = true
		up := plan(t, l)
		if !near(up.Haul, down.Haul*unit.Force(l.Efficiency)) {
			t.Fatalf("up %v, down %v", up.Haul, down.Haul)
		}
		// What hangs is held by the tree and the hands, and by nothing else.
		if !near(up.Tree+up.Haul, l.Load.Weight()) || !near(up.Block+up.DeadEnd, up.Tree) && up.Tree > 1e-6 {
			t.Fatalf("%+v", up)
		}
	})
}

package rope_test

import (
	"testing"

	"heft/calc/rope"
	"heft/calc/unit"
)

// Where wraps slipped, the plan never goes back to them, whatever the figures say.
func TestPast(t *testing.T) {
	l, err := rope.Plan(200, 200, rope.Gloved(1)) // start 3, least 1½
	if err != nil {
		t.Fatal(err)
	}
	for slipped, want := range map[rope.Wraps][2]rope.Wraps{1: {3, 1.5}, 3: {4, 3.5}, 7: {8, 7.5}} {
		past, err := l.Past(slipped)
		if err != nil || past.Start != want[0] || past.Least != want[1] || past.Most < past.Start {
			t.Errorf("%v slipped: %+v, %v; want start %v, least %v", slipped, past, err, want[0], want[1])
		}
	}
	if _, err := l.Past(8); err == nil {
		t.Error("a drum has no turn beyond the eighth")
	}
}

// Weaker hands take more wraps: 300 kg is 2,942 N; on a slick drum 200 N take
// 3.06 turns, 100 N take 3.85, in halves 3½ and 4.
func TestPlanOnTheHandsTold(t *testing.T) {
	for each, want := range map[unit.Force]rope.Wraps{200: 3.5, 100: 4} {
		l, err := rope.Plan(300, 300, rope.Hands{People: 1, Each: each})
		if err != nil || l.Start != want {
			t.Errorf("%v N: start %v, %v; want %v", float64(each), l.Start, err, want)
		}
	}
	for _, each := range []unit.Force{0, 19, 201} {
		if _, err := rope.Plan(300, 300, rope.Hands{People: 1, Each: each}); err == nil {
			t.Errorf("%v N: planned on", float64(each))
		}
	}
}

package main

import (
	"io"
	"testing"
)

func TestPlan(t *testing.T) {
	p, err := parsePlan([]string{"-rounds", "9", "-questions", "200"}, io.Discard)
	// Six times 200 questions under load; a tenth of 200 readings.
	want := plan{rounds: 9, starts: 15, turns: 20, alone: 200, crowd: 1200, rows: 1200, writes: 200, reads: 20}
	if err != nil || p != want {
		t.Errorf("%+v, %v; want %+v", p, err, want)
	}
	for _, args := range [][]string{{"-rounds", "0"}, {"-questions", "0"}, {"-questions", "-50"}, {"-questions", "199"}, {"heft"}, {"-fast"}} {
		if p, err := parsePlan(args, io.Discard); err == nil {
			t.Errorf("%v was taken as %+v", args, p)
		}
	}
}

// TestOrder: in any run of turns, each echo comes right after Heft as often
// as the other, or once more.
func TestOrder(t *testing.T) {
	after := [3]int{}
	for i := range 20 {
		turn := order(i)
		if turn[1] != heftBot {
			t.Fatalf("turn %d is %v: Heft is not in the middle", i, turn)
		}
		after[turn[2]]++
	}
	if after[echoBot] != 10 || after[controlBot] != 10 {
		t.Errorf("in 20 turns the echoes came %v times after Heft, want 10 each", after)
	}
}

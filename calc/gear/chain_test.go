package gear_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/gear"
	"heft/calc/limits"
	"heft/calc/unit"
)

func TestWeakestLink(t *testing.T) {
	// Worked by hand. A block sees twice the line: statics, and a trade
	// article (TCI) for a straight fall.
	chain := []gear.Link{
		{Part: gear.Rope, Break: 60e3, Factor: gear.Planning, Knot: gear.Bowline, Carries: 1}, // 60000/10·0.60 = 3600
		{Part: gear.Block, Working: 20e3, Carries: 2},                                         // 10000
		{Part: gear.Sling, Break: 70e3, Factor: gear.Planning, Carries: 2},                    // 3500
		{Part: gear.Connector, Break: 40e3, Working: 9e3, Factor: gear.Rigging, Carries: 2},   // min(8000, 9000)/2
		{Part: gear.Drum, Working: 3.5e3, Carries: 1},
	}
	c, err := gear.Weakest(chain)
	if err != nil || c.Weakest != 2 || !near(float64(c.Line), 3500) {
		t.Errorf("%+v, %v; want the sling at 3500 N of line", c, err)
	}
	for i, want := range []float64{3600, 20e3, 7e3, 8e3, 3.5e3} {
		if limit, err := chain[i].Limit(); err != nil || !near(float64(limit), want) {
			t.Errorf("%s: %v N, %v; want %v", chain[i].Part, float64(limit), err, want)
		}
	}
	// The marked load goes first where it is the lower, and a knot takes its
	// share of it too.
	marked := gear.Link{Break: 40e3, Working: 5e3, Factor: gear.Rigging, Knot: gear.CloveHitch, Carries: 1}
	if limit, err := marked.Limit(); err != nil || !near(float64(limit), 3e3) {
		t.Errorf("marked: %v N, %v", float64(limit), err)
	}
}

func TestNoNumberForDoubtfulGear(t *testing.T) {
	for _, state := range []gear.State{gear.SecondHand, gear.Old, gear.Unlabelled, 99, -1} {
		doubtful := gear.Link{Part: gear.Rope, State: state, Break: 60e3, Working: 6e3, Factor: 10, Carries: 1}
		limit, err := doubtful.Limit()
		u, ok := errors.AsType[*gear.Unrated](err)
		if !ok || limit != 0 || u.Part != gear.Rope || !strings.Contains(u.Ask, "?") || strings.ContainsAny(u.Error(), "0123456789") {
			t.Errorf("state %d: %v N, %v", state, float64(limit), err)
		}
		sound := gear.Link{Working: 6e3, Carries: 1}
		if c, err := gear.Weakest([]gear.Link{sound, doubtful}); c != (gear.Chain{}) || err == nil {
			t.Errorf("state %d in a chain: %+v, %v", state, c, err)
		}
	}
	want := "no working load for old gear: has the qualified arborist inspected it, and is it within the life its maker gives it?"
	if _, err := (gear.Link{State: gear.Old}).Limit(); err == nil || err.Error() != want {
		t.Errorf("got %v", err)
	}
}

func TestMissing(t *testing.T) {
	_, errNone := gear.Weakest(nil)
	_, errLink := gear.Weakest([]gear.Link{{Part: gear.Block, Carries: 2, Factor: 10}})
	for name, err := range map[string]error{"no link": errNone, "no figure": errLink} {
		if m, ok := errors.AsType[*limits.Missing](err); !ok || m.Quantity != limits.WorkingLoad {
			t.Errorf("%s: %v", name, err)
		}
	}
}

func TestALongerChainIsNeverStronger(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		knots := append(gear.Knots(), gear.Retention{Knot: gear.None})
		draw := func() gear.Link {
			return gear.Link{
				Break:   unit.Force(rapid.Float64Range(1e3, 4e5).Draw(t, "break")),
				Factor:  rapid.Float64Range(5, 15).Draw(t, "factor"),
				Knot:    rapid.SampledFrom(knots).Draw(t, "knot").Knot,
				Carries: rapid.Float64Range(0.5, 3).Draw(t, "carries"),
			}
		}
		var links []gear.Link
		line := unit.Force(math.Inf(1))
		for range rapid.IntRange(1, 5).Draw(t, "links") {
			links = append(links, draw())
			c, err := gear.Weakest(links)
			if err != nil || c.Line > line {
				t.Fatalf("%v N after %v, %v", c.Line, line, err)
			}
			line = c.Line
			// At that tension no link is over its own working load, and the
			// weakest is just at it.
			for i, l := range links {
				limit, err := l.Limit()
				if err != nil {
					t.Fatal(err)
				}
				if used := float64(line) * l.Carries / float64(limit); used > 1+1e-9 || i == c.Weakest && !near(used, 1) {
					t.Fatalf("link %d used %v, weakest %d", i, used, c.Weakest)
				}
			}
		}
	})
}

func BenchmarkWeakest(b *testing.B) {
	chain := []gear.Link{
		{Part: gear.Rope, Break: 60e3, Factor: gear.Planning, Knot: gear.Bowline, Carries: 1},
		{Part: gear.Block, Working: 20e3, Carries: 2},
		{Part: gear.Sling, Break: 70e3, Factor: gear.Planning, Carries: 2},
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := gear.Weakest(chain); err != nil {
			b.Fatal(err)
		}
	}
}

package gear_test

import (
	"errors"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/gear"
	"heft/calc/limits"
	"heft/calc/unit"
)

func TestNeeds(t *testing.T) {
	for _, c := range []struct {
		what string
		link gear.Link
		line unit.Force
		want gear.Needed
	}{
		// Worked by hand: 3600·1·10/0.60 and 3600·2·5. The factors are those of
		// CI 1401 and of ASWP06, the bowline's share that of a cordage table.
		{"a rope with a bowline", gear.Link{Part: gear.Rope, Factor: 10, Knot: gear.Bowline, Carries: 1}, 3600, gear.Needed{Load: 3600, Break: 60e3}},
		{"a block under two legs", gear.Link{Part: gear.Block, Factor: 5, Carries: 2}, 3600, gear.Needed{Load: 7200, Break: 36e3}},
	} {
		got, err := c.link.Needs(c.line)
		if err != nil || !near(float64(got.Load), float64(c.want.Load)) || !near(float64(got.Break), float64(c.want.Break)) {
			t.Errorf("%s: %+v, %v; want %+v", c.what, got, err, c.want)
		}
	}
}

// TestNeedsIsLimitBackwards: gear that breaks at what is needed may carry
// just that.
func TestNeedsIsLimitBackwards(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := gear.Link{
			Factor:  rapid.Float64Range(5, 15).Draw(t, "factor"),
			Knot:    rapid.SampledFrom(append(gear.Knots(), gear.Retention{})).Draw(t, "knot").Knot,
			Carries: rapid.Float64Range(0.1, 3).Draw(t, "share"),
		}
		line := unit.Force(rapid.Float64Range(200, 1e4).Draw(t, "line"))
		needed, err := l.Needs(line)
		if err != nil {
			t.Fatal(err)
		}
		l.Break = needed.Break
		limit, err := l.Limit()
		if err != nil || !near(float64(limit), float64(line)*l.Carries) {
			t.Errorf("%+v needs %+v, and may carry %v N, %v", l, needed, float64(limit), err)
		}
	})
}

func TestNeedsRefuses(t *testing.T) {
	for what, x := range map[string]struct {
		link gear.Link
		line unit.Force
	}{
		"more than any rope breaks at":   {gear.Link{Factor: 10, Carries: 2}, 2e5},
		"a factor below what is allowed": {gear.Link{Factor: 4, Carries: 1}, 1e3},
		"a share that no link can have":  {gear.Link{Factor: 10, Carries: 5}, 1e3},
		"a pull the wrong way":           {gear.Link{Factor: 10, Carries: 1}, -1},
		"next to nothing, likely a slip": {gear.Link{Factor: 10, Carries: 1}, 1},
	} {
		if got, err := x.link.Needs(x.line); err == nil || got != (gear.Needed{}) {
			t.Errorf("%s: %+v, %v", what, got, err)
		} else if _, ok := errors.AsType[*limits.OutOfRange](err); !ok {
			t.Errorf("%s: %v", what, err)
		}
	}
	if _, err := (gear.Link{State: gear.Old, Factor: 10, Carries: 1}).Needs(1e3); err == nil {
		t.Error("old gear was given a figure")
	}
}

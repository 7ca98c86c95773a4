package hinge_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/hinge"
	"heft/calc/limits"
	"heft/calc/unit"
)

// TestLowestByHand: tied 4 m out the block has to stand 0.6 m higher; set back
// 0.36 m, √(0.36 − 0.1296) = 0.48 m. Half of 7 m and 0.3 m beyond it are 3.8 m:
// 4.4 m. A tackle that takes up 1 m needs that.
func TestLowestByHand(t *testing.T) {
	for _, c := range []struct {
		l    hinge.Layout
		want float64
	}{
		{hinge.Layout{Tie: 4}, 4.6},
		{hinge.Layout{Tie: 4, Offset: 0.36}, 4.48},
		{hinge.Layout{Tie: 4, Offset: 2}, 4},
		{hinge.Layout{Length: 7, Balance: 3.5}, 4.4},
		{hinge.Layout{Tie: 4, Closed: 1}, 5},
	} {
		if got, err := hinge.Lowest(c.l); err != nil || math.Abs(float64(got)-c.want) > 1e-9 {
			t.Errorf("%+v: %v m, %v; want %v", c.l, float64(got), err, c.want)
		}
	}
}

// TestLowestIsWhatFits: the blocks stay apart, or there is room for a tie, with
// the block at the lowest, and no more a hand below it. A tie further out, or a
// longer limb, never means a lower block.
func TestLowestIsWhatFits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		metres := func(low, high float64, name string) unit.Length {
			return unit.Length(rapid.Float64Range(low, high).Draw(t, name))
		}
		l := hinge.Layout{Length: metres(1, 25, "length"), Offset: metres(0, 2, "offset"), Closed: metres(0, 1.5, "closed")}
		l.Balance = l.Length / 2
		tied := rapid.Bool().Draw(t, "tied")
		if tied {
			l.Tie = metres(0.1, float64(l.Length), "tie")
		}
		h, err := hinge.Lowest(l)
		if err != nil {
			if l.Length/2+0.3 > l.Length || h != 0 {
				return // too short for a tie beyond its balance point
			}
			t.Fatal(err)
		}
		good := func(height unit.Length) bool {
			at := l
			at.Height = height
			f, err := hinge.Fit(at)
			if err != nil {
				t.Fatal(err)
			}
			return tied && f.TwoBlocks == nil || !tied && f.Window.Ties.High > 0
		}
		if !good(h + 1e-6) {
			t.Fatalf("%+v: %v m will not do", l, float64(h))
		}
		if below := h - 0.1; below >= hinge.Heights.Low && good(below) {
			t.Fatalf("%+v: %v m will do too", l, float64(below))
		}
		further := l
		further.Tie, further.Length, further.Balance = l.Tie*1.01, l.Length*1.01, l.Balance*1.01
		if up, err := hinge.Lowest(further); err == nil && up < h-1e-9 {
			t.Fatalf("%v m, and %v m further out", float64(h), float64(up))
		}
	})
}

func TestLowestRefuses(t *testing.T) {
	for name, c := range map[string]struct {
		l    hinge.Layout
		want limits.Quantity
	}{
		"nothing told":   {hinge.Layout{}, limits.Tie},
		"no number":      {hinge.Layout{Tie: unit.Length(math.NaN())}, limits.Tie},
		"a long limb":    {hinge.Layout{Length: 31, Balance: 15.5}, limits.Length},
		"block in front": {hinge.Layout{Tie: 4, Offset: -1}, limits.Offset},
	} {
		got, err := hinge.Lowest(c.l)
		if out, ok := errors.AsType[*limits.OutOfRange](err); !ok || out.Quantity != c.want || got != 0 {
			t.Errorf("%s: %v, %v", name, float64(got), err)
		}
	}
	if _, err := hinge.Lowest(hinge.Layout{Tie: 8, Length: 7, Balance: 3.5}); err == nil {
		t.Error("a tie off the limb")
	}
}

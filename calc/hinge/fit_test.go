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

func fit(t interface {
	Helper()
	Fatal(...any)
}, l hinge.Layout) hinge.Fitting {
	t.Helper()
	f, err := hinge.Fit(l)
	if err != nil {
		t.Fatal(err)
	}
	return f
}

func TestFitByHand(t *testing.T) {
	// The blocks of TestRaisedByHand: 5.292 m apart at 30°, 2 m upright.
	angle := degrees(30)
	l := hinge.Layout{Length: 7, Balance: 2.5, Tie: 4, Height: 6, Angle: &angle, Parts: 2}
	f := fit(t, l)
	for name, pair := range map[string][2]float64{
		"apart": {float64(f.Apart), 2}, "closes": {float64(f.Closes), 3.2915}, "travel": {float64(f.Travel), 6.5830},
		"near": {float64(f.Window.Ties.Low), 2.8}, "far": {float64(f.Window.Ties.High), 5.4}, "lower": {float64(f.Lower), 0},
	} {
		if math.Abs(pair[0]-pair[1]) > 1e-4 {
			t.Errorf("%s: %v, want %v", name, pair[0], pair[1])
		}
	}
	if f.TwoBlocks != nil || f.TurnsOver || f.Rope != 0 {
		t.Errorf("%+v", f)
	}
	// Tied 0.1 m further than 0.6 m below the block, they meet: it has to come in
	// or the block up by as much.
	l.Tie = 5.5
	if two := fit(t, l).TwoBlocks; two == nil || math.Abs(float64(two.RaiseBy)-0.1) > 1e-9 || math.Abs(float64(two.MoveIn)-0.1) > 1e-9 {
		t.Errorf("%+v", two)
	}
	// A tie half a metre short of the balance point lets it turn over.
	l.Tie = 2
	if !fit(t, l).TurnsOver {
		t.Error("it does not turn over")
	}
}

// What was not said is left out of the figures, and never taken for nought.
func TestFitLeavesOutWhatWasNotSaid(t *testing.T) {
	f := fit(t, hinge.Layout{Tie: 4, Height: 6})
	if f.Window.Near != hinge.ByNothing || f.TurnsOver || f.Closes != 0 || f.Travel != 0 || f.Rope != 0 || f.Apart != 2 {
		t.Errorf("%+v", f)
	}
	f = fit(t, hinge.Layout{Length: 7, Balance: 3.5, Height: 6})
	if f.TwoBlocks != nil || f.TurnsOver || f.Apart != 0 || f.Window.Near != hinge.ByBalance {
		t.Errorf("%+v", f)
	}
	// 3.5 m and 0.3 m are 3.8 m out; 4 m less 0.6 m are 3.4 m: 0.4 m too low.
	f = fit(t, hinge.Layout{Length: 7, Balance: 3.5, Height: 4})
	if f.Window.Ties != (unit.Range[unit.Length]{}) || math.Abs(float64(f.Lower)-0.4) > 1e-9 {
		t.Errorf("%+v", f)
	}
}

func TestFitRefuses(t *testing.T) {
	steep := degrees(86)
	for name, test := range map[string]struct {
		layout hinge.Layout
		want   limits.Quantity
	}{
		"no block":       {hinge.Layout{Tie: 4}, limits.BlockHeight},
		"no number":      {hinge.Layout{Tie: unit.Length(math.NaN()), Height: 6}, limits.Tie},
		"far too far":    {hinge.Layout{Tie: 31, Height: 6}, limits.Tie},
		"a long limb":    {hinge.Layout{Length: 31, Balance: 15, Height: 6}, limits.Length},
		"up already":     {hinge.Layout{Tie: 4, Height: 6, Angle: &steep}, limits.LimbAngle},
		"block in front": {hinge.Layout{Tie: 4, Height: 6, Offset: -1}, limits.Offset},
	} {
		_, err := hinge.Fit(test.layout)
		if out, ok := errors.AsType[*limits.OutOfRange](err); !ok || out.Quantity != test.want {
			t.Errorf("%s: %v, want %s out of range", name, err, test.want)
		}
	}
	_, err := hinge.Fit(hinge.Layout{Tie: 8, Length: 7, Balance: 3.5, Height: 12})
	if two, ok := errors.AsType[*limits.Contradiction](err); !ok || two.First != limits.Tie {
		t.Errorf("a tie off the limb: %v", err)
	}
}

// raisable draws setups that Raise works out: neither tackle nor rope is past what
// it holds for.
var raisable = rapid.Custom(func(t *rapid.T) hinge.Setup {
	s := drawSetup(t)
	s.People, s.Winch = 0, 0 // a pull at hand narrows the window
	if rapid.Bool().Draw(t, "far out") {
		s.Tie = s.Height + unit.Length(rapid.Float64Range(-0.8, 0.2).Draw(t, "about"))
		s.Tie = max(s.Tie, 0.3)
	}
	s.Length = unit.Length(rapid.Float64Range(max(float64(s.Balance), float64(s.Tie)), 30).Draw(t, "length"))
	if rapid.Bool().Draw(t, "grounded") {
		s.Hitch = s.Height + 3
	}
	return s
}).Filter(func(s hinge.Setup) bool {
	_, err := hinge.Raise(s)
	return err == nil
})

// What hangs on the places alone is the same whatever the limb weighs.
func TestFitIsThatOfEveryWeight(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := raisable.Draw(t, "setup")
		r, err := hinge.Raise(s)
		if err != nil {
			t.Fatal(err)
		}
		f := fit(t, hinge.Layout{Length: s.Length, Balance: s.Balance, Tie: s.Tie, Height: s.Height, Offset: s.Offset,
			Hitch: s.Hitch, Angle: &s.Angle, Parts: s.Parts, Closed: s.Closed})
		if f.Window != r.Window || f.TurnsOver != r.TurnsOver || f.Travel != r.Travel || f.Rope != r.Rope {
			t.Fatalf("%+v\n%+v", f, r)
		}
		if (f.TwoBlocks == nil) != (r.TwoBlocks == nil) || f.TwoBlocks != nil && *f.TwoBlocks != *r.TwoBlocks {
			t.Fatalf("two blocks %+v, %+v", f.TwoBlocks, r.TwoBlocks)
		}
		// A block that much higher leaves room for a tie.
		if f.Lower > 0 {
			up := hinge.Layout{Length: s.Length, Balance: s.Balance, Height: s.Height + f.Lower + 1e-6, Offset: s.Offset, Closed: s.Closed}
			if got := fit(t, up).Window.Ties; got.High == 0 && s.Balance+0.3 < s.Length {
				t.Fatalf("no tie with the block %v m higher: %+v", f.Lower, got)
			}
		}
	})
}

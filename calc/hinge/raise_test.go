package hinge_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/hinge"
	"heft/calc/rope"
	"heft/calc/unit"
)

func raise(t interface {
	Helper()
	Fatal(...any)
}, s hinge.Setup) hinge.Raising {
	t.Helper()
	r, err := hinge.Raise(s)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func TestRaisedByHand(t *testing.T) {
	// Worked by hand: tie at (3.464, 2), block at (0, 6), so 5.292 m apart and
	// 2 m at upright. 200 kg are 1961.3 N: 1961.3·(2.5/4)·(5.292/6) = 1081.1 N,
	// less than the weight, which the line has to hold once the hinge parts.
	// 1961.3/1.71 = 1147.0 N at the hands; 2·(5.292 − 2) = 6.583 m hauled.
	s := leaning()
	s.Hitch = 12
	r := raise(t, s)
	for name, pair := range map[string][3]float64{
		"start": {float64(r.Start), 1081.1, 0.1}, "line": {float64(r.Line), 1961.3, 0.1},
		"haul": {float64(r.Lift.Haul), 1147.0, 0.1}, "travel": {float64(r.Travel), 6.583, 0.001},
		// The limb is let down too: three times the 12 m of the block and a tail.
		"rope": {float64(r.Rope), 36 + float64(rope.Tail), 1e-9},
		// Balance point and margin; 0.6 m below the block.
		"near": {float64(r.Window.Ties.Low), 2.8, 1e-9}, "far": {float64(r.Window.Ties.High), 5.4, 1e-9},
	} {
		if math.Abs(pair[0]-pair[1]) > pair[2] {
			t.Errorf("%s: %v, want %v", name, pair[0], pair[1])
		}
	}
	if r.TurnsOver || r.TwoBlocks != nil || r.Lift.PeopleNeeded != 6 || r.Window.Near != hinge.ByBalance || r.Window.Far != hinge.ByClearance {
		t.Errorf("%+v", r)
	}
	// Tied near the hinge of a limb lying level, it takes more than the weight.
	s.Angle, s.Tie = 0, 2
	if r := raise(t, s); r.Line != r.Start || r.Line <= 200*unit.StandardGravity || !r.TurnsOver {
		t.Errorf("%+v", r)
	}
	// Tied at the balance point itself, either end may go down.
	s.Tie = s.Balance
	if !raise(t, s).TurnsOver {
		t.Error("tied at the balance point it does not turn over")
	}
	s.Tie, s.Hitch, s.Angle = 5.3, 6, degrees(-40)
	// Cut at the ground, two parts to a limb hanging 40 degrees down:
	// (4.060, −3.407) to (0, 6) is 10.246 m, twice that and 6 m are more than 18.
	if r := raise(t, s); math.Abs(float64(r.Rope)-(26.492+float64(rope.Tail))) > 0.01 {
		t.Errorf("rope %v m", r.Rope)
	}
}

func TestTravelIsWhatTheBlocksDrawTogether(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSetup(t)
		from := float64(s.Angle)
		// Summed in small steps of the way.
		sum := 0.0
		for i := range 500 {
			step := (math.Pi/2 - from) / 500
			sum += apart(s, from+step*float64(i)) - apart(s, from+step*float64(i+1))
		}
		if got, want := float64(raise(t, s).Travel), sum*float64(s.Parts); math.Abs(got-want) > 1e-6 || got < 0 {
			t.Fatalf("%v m, summed %v", got, want)
		}
	})
}

func TestFrictionAndWeightNeverEaseTheHaul(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := drawSetup(t)
		s.Weight = min(s.Weight, 1500)
		free := raise(t, s)
		s.Efficiency = rapid.Float64Range(0.3, 0.9).Draw(t, "rusty")
		s.Weight *= unit.Mass(rapid.Float64Range(1, 2).Draw(t, "heavier"))
		stiff := raise(t, s)
		if stiff.Lift.Haul < free.Lift.Haul || stiff.Lift.PeopleNeeded < free.Lift.PeopleNeeded || stiff.Line < free.Line {
			t.Fatalf("free %+v, stiff %+v", free.Lift, stiff.Lift)
		}
	})
}

func BenchmarkRaise(b *testing.B) {
	s := leaning()
	s.People, s.Hitch, s.Offset = 4, 12, 1
	b.ReportAllocs()
	for b.Loop() {
		if _, err := hinge.Raise(s); err != nil {
			b.Fatal(err)
		}
	}
}

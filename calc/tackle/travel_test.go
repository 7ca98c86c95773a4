package tackle_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/tackle"
	"heft/calc/unit"
)

// TestTravel, worked by hand: up 3 m on four parts takes 12 m of rope in, and of 5 m
// between the blocks leaves 2; with 0.6 kept they may come up 4.4 m, for 17.6 of rope.
func TestTravel(t *testing.T) {
	got, err := tackle.Run(tackle.Travel{Parts: 4, Apart: 5, Rise: 3})
	if err != nil {
		t.Fatal(err)
	}
	for name, pair := range map[string][2]float64{
		"haul": {float64(got.Haul), 12}, "left": {float64(got.Left), 2}, "keep": {float64(got.Keep), 0.6},
		"most": {float64(got.Most), 4.4}, "most haul": {float64(got.MostHaul), 17.6}, "start": {float64(got.Start), 3.6},
	} {
		if math.Abs(pair[0]-pair[1]) > 1e-9 {
			t.Errorf("%s: %v, want %v", name, pair[0], pair[1])
		}
	}
	if got.Meet {
		t.Error("the blocks meet with 2 m between them")
	}
}

func TestBlocksThatMeet(t *testing.T) {
	for _, c := range []struct {
		travel tackle.Travel
		meet   bool
	}{
		{tackle.Travel{Apart: 5, Rise: 4.4}, false},
		{tackle.Travel{Apart: 5, Rise: 4.5}, true},
		{tackle.Travel{Apart: 5, Rise: 6}, true},
		{tackle.Travel{Apart: 5, Rise: 4.1, Closed: 1}, true},
		{tackle.Travel{Apart: 5, Rise: 4.1, Closed: 0.3}, false},
	} {
		if got, err := tackle.Run(c.travel); err != nil || got.Meet != c.meet {
			t.Errorf("%+v: %+v, %v; want meet %v", c.travel, got, err, c.meet)
		}
	}
}

// TestTravelWithinItsMost: what comes up by the most that it can never lets the blocks
// meet, and 2 cm more always does.
func TestTravelWithinItsMost(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		trip := tackle.Travel{Parts: rapid.IntRange(1, 6).Draw(t, "parts"), Apart: unit.Length(rapid.Float64Range(2, 50).Draw(t, "apart"))}
		far, err := tackle.Run(trip)
		if err != nil {
			t.Fatal(err)
		}
		for more, meet := range map[unit.Length]bool{0: false, 0.02: true} {
			trip.Rise = far.Most + more
			if got, err := tackle.Run(trip); err != nil || got.Meet != meet {
				t.Fatalf("%+v: %+v, %v; want meet %v", trip, got, err, meet)
			}
		}
	})
}

func TestTravelOutOfRange(t *testing.T) {
	for _, trip := range []tackle.Travel{{Apart: 200, Rise: 3}, {Apart: 0.01}, {Rise: 90}, {Parts: 9, Rise: 3}} {
		if _, err := tackle.Run(trip); err == nil {
			t.Errorf("%+v: no error", trip)
		}
	}
}

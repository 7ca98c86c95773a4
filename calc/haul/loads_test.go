package haul_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/haul"
	"heft/calc/limits"
	"heft/calc/unit"
)

func TestLoads(t *testing.T) {
	for name, test := range map[string]struct {
		pieces        []unit.Mass
		payload       unit.Mass
		loads, weight int
	}{
		"one that fits exactly": {[]unit.Mass{1000}, 1000, 1, 1},
		"rounded up":            {[]unit.Mass{600, 400, 1}, 1000, 2, 2},
		// Three of 600 are 1.8 loads of 1000 by weight, and three of pieces
		// that do not go two to a load.
		"pieces are not split": {[]unit.Mass{600, 600, 600}, 1000, 3, 2},
		// A worked example of bin packing in textbooks: 4 8 1 4 2 1 into bins
		// of 10 are two (from memory); here times a hundred.
		"textbook": {[]unit.Mass{400, 800, 100, 400, 200, 100}, 1000, 2, 2},
		// Ten tenths of the payload are one load whatever the last bits say.
		"tenths": {[]unit.Mass{100.1, 100.1, 100.1, 100.1, 100.1, 100.1, 100.1, 100.1, 100.1, 100.1}, 1001, 1, 1},
	} {
		got, err := haul.Loads(test.pieces, test.payload)
		if err != nil || got.Loads != test.loads || got.ByWeight != test.weight {
			t.Errorf("%s: %+v, %v; want %d, by weight %d", name, got, err, test.loads, test.weight)
		}
	}
}

func TestLoadsStayWithinTheirBounds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		payload := unit.Mass(rapid.Float64Range(500, 10000).Draw(t, "payload"))
		var pieces []unit.Mass
		for range rapid.IntRange(1, 40).Draw(t, "pieces") {
			pieces = append(pieces, payload*unit.Mass(rapid.Float64Range(0.01, 1).Draw(t, "share")))
		}
		got, err := haul.Loads(pieces, payload)
		if err != nil {
			t.Fatal(err)
		}
		// No two loads could be one, so that all but one are over half full.
		if got.Loads < got.ByWeight || got.Loads > len(pieces) || got.Loads > 2*got.ByWeight {
			t.Fatalf("%+v for %d pieces", got, len(pieces))
		}
	})
}

func TestRefused(t *testing.T) {
	for name, test := range map[string]struct {
		pieces  []unit.Mass
		payload unit.Mass
		want    limits.Quantity
	}{
		"no payload":     {[]unit.Mass{100}, 0, limits.Payload},
		"no number":      {[]unit.Mass{100}, unit.Mass(math.NaN()), limits.Payload},
		"past any truck": {[]unit.Mass{100}, 45001, limits.Payload},
	} {
		_, err := haul.Loads(test.pieces, test.payload)
		if out, ok := errors.AsType[*limits.OutOfRange](err); !ok || out.Quantity != test.want {
			t.Errorf("%s: %v", name, err)
		}
	}
	for name, pieces := range map[string][]unit.Mass{"nothing": nil, "no weight": {0}, "no number": {unit.Mass(math.NaN())}} {
		_, err := haul.Loads(pieces, 1000)
		if _, ok := errors.AsType[*limits.Missing](err); !ok {
			t.Errorf("%s: %v", name, err)
		}
	}
	got, err := haul.Loads([]unit.Mass{500, 1001}, 1000)
	if got.Loads != 0 || got.ByWeight != 2 { // 1,501 on loads of 1,000, once it is cut
		t.Errorf("over the payload: %+v", got)
	}
	if c, ok := errors.AsType[*limits.Contradiction](err); !ok || c.Got != 1001 || c.Limit != 1000 {
		t.Errorf("over the payload: %v", err)
	}
}

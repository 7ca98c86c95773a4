package cutplan_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"heft/calc/cutplan"
	"heft/calc/limits"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/calc/wood"
)

func TestOutOfRange(t *testing.T) {
	red := find(t, "Quercus rubra")
	for name, test := range map[string]struct {
		p     piece.Piece
		limit float64
		want  limits.Quantity
	}{
		"no limit":            {log(red, 0.4, 0, 0, 0, 9), 0, limits.Limit},
		"a limit below":       {log(red, 0.4, 0, 0, 0, 9), -5, limits.Limit},
		"a limit past all":    {log(red, 0.4, 0, 0, 0, 9), 20001, limits.Limit},
		"no number, limit":    {log(red, 0.4, 0, 0, 0, 9), math.NaN(), limits.Limit},
		"no end of limit":     {log(red, 0.4, 0, 0, 0, 9), math.Inf(1), limits.Limit},
		"too long a stick":    {log(red, 0.4, 0, 0, 0, 31), 100, limits.Length},
		"no number, length":   {log(red, 0.4, 0, 0, 0, unit.Length(math.NaN())), 100, limits.Length},
		"no number, diameter": {log(red, unit.Length(math.NaN()), 0, 0, 0, 9), 100, limits.Diameter},
		"too thin a tip":      {log(red, 0, 0.4, 0, 0.001, 9), 100, limits.TipDiameter},
	} {
		_, errLongest := cutplan.Longest(test.p, cutplan.Tip, unit.Mass(test.limit), 0)
		_, errPieces := cutplan.Pieces(test.p, unit.Mass(test.limit), 0, 0)
		for _, err := range []error{errLongest, errPieces} {
			out, ok := errors.AsType[*limits.OutOfRange](err)
			if !ok || out.Quantity != test.want || out.Why == "" {
				t.Errorf("%s: got %v, want %s out of range", name, err, test.want)
			}
		}
	}
}

func TestEvenTheShortestIsTooHeavy(t *testing.T) {
	// Five centimetres of a metre of red oak are 39 litres, some 40 kg.
	stick := log(find(t, "Quercus rubra"), 1, 0, 0, 0, 9)
	_, errLongest := cutplan.Longest(stick, cutplan.Butt, 20, 0)
	_, errPieces := cutplan.Pieces(stick, 20, 0, 0)
	for _, err := range []error{errLongest, errPieces} {
		c, ok := errors.AsType[*limits.Contradiction](err)
		if !ok || c.First != limits.Limit || c.Got != 20 || c.Limit < 35 || c.Limit > 60 || c.Why == "" {
			t.Errorf("got %v", err)
		}
	}
	// Nine centimetres make no two pieces of five.
	disc := log(find(t, "Quercus rubra"), 1, 0, 0, 0, 0.09)
	if _, err := cutplan.Pieces(disc, 60, 0, 0); err == nil {
		t.Error("a disc of 9 cm was halved")
	}
}

func TestRefusedAsTheyAreWeighed(t *testing.T) {
	red := find(t, "Quercus rubra")
	thick := log(red, 0, 1.3, 0, 0, 9)
	thick.Shape = piece.Limb
	for name, p := range map[string]piece.Piece{
		"a palm":               log(find(t, "Sabal palmetto"), 0.4, 0, 0, 0, 9),
		"no wood":              log(wood.Row{}, 0.4, 0, 0, 0, 9),
		"no diameter":          log(red, 0, 0, 0, 0, 9),
		"a taper of no length": log(red, 0, 0.4, 0, 0.2, 0),
		"tip over butt":        log(red, 0, 0.2, 0, 0.4, 9),
		"too thick for limbs":  thick,
	} {
		_, errLongest := cutplan.Longest(p, cutplan.Butt, 100, 0)
		_, errPieces := cutplan.Pieces(p, 100, 0, 0)
		_, want := piece.Weigh(p)
		if want == nil || errLongest == nil || errPieces == nil || errLongest.Error() != want.Error() {
			t.Errorf("%s: %v and %v, weighing says %v", name, errLongest, errPieces, want)
		}
	}
	_, err := cutplan.Pieces(log(red, 0.4, 0, 0, 0, 0), 100, 0, 0)
	if m, ok := errors.AsType[*limits.Missing](err); !ok || m.Quantity != limits.Length {
		t.Errorf("no length: %v", err)
	}
}

func TestDomainsAreTheRangesChecked(t *testing.T) {
	for _, d := range cutplan.Domains() {
		_, err := cutplan.Longest(log(find(t, "Quercus rubra"), 0.4, 0, 0, 0, 9), cutplan.Butt, unit.Mass(d.High*1.01), 0)
		out, ok := errors.AsType[*limits.OutOfRange](err)
		if !ok || out.Quantity != d.Quantity || out.High != d.High || out.Low != d.Low || out.Why != d.Why {
			t.Errorf("%+v: got %v", d, err)
		}
	}
}

func TestNothingPanics(t *testing.T) {
	red := find(t, "Quercus rubra")
	rapid.Check(t, func(t *rapid.T) {
		wild := rapid.OneOf(rapid.Float64(), rapid.SampledFrom([]float64{0, math.NaN(), math.Inf(1), math.Inf(-1), 0.05, 0.3, 5}))
		any := func(name string) unit.Range[unit.Length] {
			return unit.Range[unit.Length]{Low: unit.Length(wild.Draw(t, name)), High: unit.Length(wild.Draw(t, name))}
		}
		p := piece.Piece{Wood: red, Shape: piece.Shape(rapid.IntRange(0, 2).Draw(t, "shape")),
			Diameter: any("diameter"), Butt: any("butt"), Mid: any("mid"), Tip: any("tip"), Length: any("length")}
		limit := unit.Mass(rapid.OneOf(wild, rapid.Float64Range(1, 1000)).Draw(t, "limit"))
		cut, err := cutplan.Longest(p, cutplan.End(rapid.IntRange(0, 1).Draw(t, "end")), limit, 0)
		if err == nil && !(cut.Length > 0 && cut.Heavy > 0 && cut.Heavy <= limit*(1+1e-9)) {
			t.Fatalf("%+v", cut)
		}
		if plan, err := cutplan.Pieces(p, limit, 0, 0); err == nil && len(plan.Pieces) == 0 {
			t.Fatal("no piece and no error")
		}
	})
}

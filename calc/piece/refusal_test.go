package piece_test

import (
	"errors"
	"math"
	"testing"

	"heft/calc/limits"
	"heft/calc/piece"
	"heft/calc/unit"
	"heft/calc/wood"
)

func TestOutOfRange(t *testing.T) {
	red := find(t, "Quercus rubra")
	nan, inf := unit.Length(math.NaN()), unit.Length(math.Inf(1))
	for name, test := range map[string]struct {
		p    piece.Piece
		want limits.Quantity
	}{
		"a limb of 900 ft":      {limb(red, 0.3, 900*unit.Foot), limits.Length},
		"a limb of 1.3 m":       {limb(red, 1.3, 20), limits.ButtDiameter},
		"a negative length":     {log(red, 0.3, -2), limits.Length},
		"a negative diameter":   {log(red, -0.3, 2), limits.Diameter},
		"a hair's diameter":     {log(red, 0.009, 2), limits.Diameter},
		"a diameter of 8 ft 3":  {log(red, 99*unit.Inch, 2), limits.Diameter},
		"a slice":               {log(red, 0.3, 0.04), limits.Length},
		"no number, length":     {log(red, 0.3, nan), limits.Length},
		"no number, diameter":   {log(red, nan, 3), limits.Diameter},
		"no number, butt":       {limb(red, nan, 3), limits.ButtDiameter},
		"no end of length":      {log(red, 0.3, inf), limits.Length},
		"no end of thickness":   {log(red, inf, 3), limits.Diameter},
		"a middle out of range": {sizes(piece.Log, red, 0, 0.3, 0.001, 0.2, 3), limits.MidDiameter},
		"a tip out of range":    {sizes(piece.Log, red, 0, 0.3, 0, 0.001, 3), limits.TipDiameter},
		"half a range": {piece.Piece{Wood: red, Shape: piece.Log, Diameter: unit.Exactly(unit.Length(0.3)),
			Length: unit.Range[unit.Length]{High: 3}}, limits.Length},
	} {
		_, err := piece.Weigh(test.p)
		out, ok := errors.AsType[*limits.OutOfRange](err)
		if !ok || out.Quantity != test.want || out.Why == "" {
			t.Errorf("%s: got %v, want %s out of range", name, err, test.want)
		}
	}
}

func TestContradictions(t *testing.T) {
	red := find(t, "Quercus rubra")
	backwards := log(red, 0.3, 3)
	backwards.Length = unit.Range[unit.Length]{Low: 4, High: 3}
	highEnd := sizes(piece.Log, red, 0, 0.3, 0, 0.2, 3)
	highEnd.Tip.High = 0.31
	for name, test := range map[string]struct {
		p             piece.Piece
		first, second limits.Quantity
	}{
		"tip thicker than butt":     {sizes(piece.Log, red, 0, 0.3, 0, 0.31, 3), limits.TipDiameter, limits.ButtDiameter},
		"so at the high ends alone": {highEnd, limits.TipDiameter, limits.ButtDiameter},
		"middle thicker than butt":  {sizes(piece.Log, red, 0, 0.3, 0.31, 0.2, 3), limits.MidDiameter, limits.ButtDiameter},
		"middle thinner than tip":   {sizes(piece.Log, red, 0, 0.3, 0.1, 0.2, 3), limits.MidDiameter, limits.TipDiameter},
		"a stump called a limb":     {limb(red, 0.5, 1.4), limits.Length, limits.ButtDiameter},
		"a range back to front":     {backwards, limits.Length, limits.Length},
		"which diameter, butt":      {sizes(piece.Log, red, 0.3, 0.4, 0, 0, 3), limits.Diameter, limits.ButtDiameter},
		"which diameter, middle":    {sizes(piece.Log, red, 0.3, 0, 0.4, 0, 3), limits.Diameter, limits.MidDiameter},
		"which diameter, tip":       {sizes(piece.Log, red, 0.3, 0, 0, 0.2, 3), limits.Diameter, limits.TipDiameter},
	} {
		_, err := piece.Weigh(test.p)
		c, ok := errors.AsType[*limits.Contradiction](err)
		if !ok || c.First != test.first || c.Second != test.second || c.Why == "" {
			t.Errorf("%s: got %v, want %s against %s", name, err, test.first, test.second)
		}
	}
}

func TestMissing(t *testing.T) {
	red := find(t, "Quercus rubra")
	for name, test := range map[string]struct {
		p    piece.Piece
		want limits.Quantity
	}{
		"no species":         {log(wood.Row{}, 0.3, 3), limits.Species},
		"no length":          {log(red, 0.3, 0), limits.Length},
		"no diameter":        {log(red, 0, 3), limits.Diameter},
		"no limb's butt":     {limb(red, 0, 3), limits.ButtDiameter},
		"a limb's tip alone": {sizes(piece.Limb, red, 0, 0, 0, 0.1, 3), limits.ButtDiameter},
		"a limb's mid alone": {sizes(piece.Limb, red, 0, 0, 0.2, 0, 3), limits.ButtDiameter},
		"a log's tip alone":  {sizes(piece.Log, red, 0, 0, 0, 0.1, 3), limits.ButtDiameter},
		"butt and middle":    {sizes(piece.Log, red, 0, 0.3, 0.2, 0, 3), limits.TipDiameter},
	} {
		_, err := piece.Weigh(test.p)
		if m, ok := errors.AsType[*limits.Missing](err); !ok || m.Quantity != test.want {
			t.Errorf("%s: got %v, want %s missing", name, err, test.want)
		}
	}
}

func TestPalmIsRefused(t *testing.T) {
	_, err := piece.Weigh(log(find(t, "Sabal palmetto"), 0.3, 3))
	if _, ok := errors.AsType[*wood.Unweighable](err); !ok {
		t.Errorf("got %v, want an Unweighable", err)
	}
}

func TestTheEdgesHold(t *testing.T) {
	red := find(t, "Quercus rubra")
	for name, p := range map[string]piece.Piece{
		"thickest and longest log": log(red, 2.5, 30),
		"thinnest, shortest log":   log(red, 0.01, 0.05),
		"thickest limb":            limb(red, 1.2, 30),
		"stubbiest limb":           limb(red, 12*unit.Inch, 3*unit.Foot),
		"tip as thick as butt":     sizes(piece.Log, red, 0, 12*unit.Inch, 0, 30.48*unit.Centimetre, 3),
		"three the same":           sizes(piece.Log, red, 0, 0.3, 0.3, 0.3, 3),
		"a log's middle alone":     sizes(piece.Log, red, 0, 0, 0.3, 0, 3),
	} {
		if _, err := piece.Weigh(p); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
}

func TestDomainsAreTheRangesChecked(t *testing.T) {
	red := find(t, "Quercus rubra")
	for _, d := range piece.Domains() {
		beyond := unit.Length(d.High * 1.01)
		p := map[limits.Quantity]piece.Piece{
			limits.Diameter:     log(red, beyond, 3),
			limits.ButtDiameter: limb(red, beyond, 20),
			limits.Length:       log(red, 0.3, beyond),
		}[d.Quantity]
		_, err := piece.Weigh(p)
		out, ok := errors.AsType[*limits.OutOfRange](err)
		if !ok || out.Quantity != d.Quantity || out.High != d.High || out.Low != d.Low || out.Why != d.Why {
			t.Errorf("%+v: got %v", d, err)
		}
	}
}

package limits_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"heft/calc/limits"
	"heft/calc/unit"
)

var lengths = limits.Range[unit.Length]{Low: 0.05, High: 30, Why: "no piece is longer"}

func TestRangeHoldsBothEnds(t *testing.T) {
	// 30 m in feet, converted back, is a bit more than 30.
	inFeet := unit.Length(30/0.3048) * unit.Foot
	for _, v := range []unit.Length{0.05, 1, 30, inFeet} {
		if err := lengths.Check(limits.Length, v); err != nil {
			t.Errorf("%v m: %v", float64(v), err)
		}
	}
}

func TestRangeRefusesWhatIsOutside(t *testing.T) {
	inf := unit.Length(math.Inf(1))
	for _, v := range []unit.Length{0, -1, 0.0499, 30.001, 900 * unit.Foot, inf, -inf, unit.Length(math.NaN())} {
		err := lengths.Check(limits.Length, v)
		out, ok := errors.AsType[*limits.OutOfRange](err)
		if !ok {
			t.Errorf("%v m: got %v, want an OutOfRange", float64(v), err)
			continue
		}
		if out.Quantity != limits.Length || out.Low != 0.05 || out.High != 30 {
			t.Errorf("%v m: %+v", float64(v), *out)
		}
		if !math.IsNaN(float64(v)) && out.Got != float64(v) {
			t.Errorf("got %v, want %v", out.Got, float64(v))
		}
	}
}

func TestCheckBoth(t *testing.T) {
	if err := lengths.CheckBoth(limits.Length, unit.Range[unit.Length]{Low: 2, High: 3}); err != nil {
		t.Error(err)
	}
	for _, r := range []unit.Range[unit.Length]{{Low: 0, High: 3}, {Low: 2, High: 31}} {
		if _, ok := errors.AsType[*limits.OutOfRange](lengths.CheckBoth(limits.Length, r)); !ok {
			t.Errorf("%v was let through", r)
		}
	}
	err := lengths.CheckBoth(limits.Length, unit.Range[unit.Length]{Low: 3, High: 2})
	c, ok := errors.AsType[*limits.Contradiction](err)
	if !ok || c.Got != 3 || c.Limit != 2 {
		t.Errorf("ends the wrong way round: %v", err)
	}
}

func TestAboveForgivesTheLastBit(t *testing.T) {
	// Three feet are 0.9144 m exactly, but not in binary.
	if limits.Above(3*0.3048, 0.9144) || limits.Above(0.9144, 3*0.3048) {
		t.Error("three feet lie above themselves")
	}
	if !limits.Above(0.9145, 0.9144) {
		t.Error("a tenth of a millimetre is lost")
	}
}

func TestErrorsArePlainEnglish(t *testing.T) {
	tests := map[string]error{
		"butt diameter 5 m is outside 0.01 to 1.2 m: too thick": &limits.OutOfRange{
			Quantity: limits.ButtDiameter, Got: 5, Low: 0.01, High: 1.2, Why: "too thick"},
		"angle 200 degrees is outside 0 to 180 degrees: no such angle": &limits.OutOfRange{
			Quantity: limits.Angle, Got: 200, High: 180, Why: "no such angle"},
		"people 9 is outside 1 to 4: no room": &limits.OutOfRange{
			Quantity: limits.People, Got: 9, Low: 1, High: 4, Why: "no room"},
		"weight is not a number": &limits.OutOfRange{Quantity: limits.Weight, Got: math.NaN()},
		"tip diameter 0.5 m against 0.4 m by the butt diameter: a tip is no thicker than its butt": &limits.Contradiction{
			First: limits.TipDiameter, Second: limits.ButtDiameter, Got: 0.5, Limit: 0.4, Why: "a tip is no thicker than its butt"},
		"length is missing": &limits.Missing{Quantity: limits.Length},
	}
	for want, err := range tests {
		if err.Error() != want {
			t.Errorf("got  %s\nwant %s", err, want)
		}
		if strings.Contains(err.Error(), "_") {
			t.Errorf("machine name in %q", err)
		}
	}
}

func TestDomainIsTheRange(t *testing.T) {
	want := limits.Domain{Method: "piece", Quantity: limits.Length, Low: 0.05, High: 30, Why: "no piece is longer"}
	if got := lengths.Domain("piece", limits.Length); got != want {
		t.Errorf("got %+v, want %+v", got, want)
	}
}

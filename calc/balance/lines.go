package balance

import (
	"math"

	"heft/calc/limits"
	"heft/calc/unit"
)

// TwoLines are the loads on two plumb lines that share a piece:
//
//	F₁ = W·(x₂ − x)/(x₂ − x₁),  F₂ = W·(x − x₁)/(x₂ − x₁)
//
// in N, with x₁ and x₂ the ties and x the balance point, from the cut in m,
// and W the weight. Each line is planned on the end of x that loads it most,
// so that the two may add up to more than W. It holds within Weights and
// Points, first < second, the balance point between them, both lines taut.
//
// The error is a *limits.Missing, *limits.OutOfRange or
// *limits.Contradiction.
//
// Errors: lines at a slant carry more, see Legs; a line that is let out
// leaves the whole of W to the other.
//
// Source: statics.
func TwoLines(weight unit.Mass, at unit.Range[unit.Length], first, second unit.Length) (atFirst, atSecond unit.Force, err error) {
	if err := checkLines(weight, at, first, second); err != nil {
		return 0, 0, err
	}
	w, span := weight.Weight(), second-first
	atFirst = w * unit.Force(min(1, (second-at.Low)/span))
	atSecond = w * unit.Force(min(1, (at.High-first)/span))
	return atFirst, atSecond, nil
}

func checkLines(weight unit.Mass, at unit.Range[unit.Length], first, second unit.Length) error {
	if err := Weights.Check(limits.Weight, weight); err != nil {
		return err
	}
	if err := checkBalance(at); err != nil {
		return err
	}
	if err := Points.Check(limits.Tie, first); err != nil {
		return err
	}
	if err := Points.Check(limits.SecondTie, second); err != nil {
		return err
	}
	refuse := func(a, b limits.Quantity, got, limit unit.Length, why string) error {
		return &limits.Contradiction{First: a, Second: b, Got: float64(got), Limit: float64(limit), Why: why}
	}
	switch {
	case !limits.Above(second, first):
		return refuse(limits.SecondTie, limits.Tie, second, first, "the second tie is further from the cut than the first")
	case limits.Above(first, at.Low):
		return refuse(limits.BalancePoint, limits.Tie, at.Low, first, "both ties lie on one side of the balance point: one line carries all")
	case limits.Above(at.High, second):
		return refuse(limits.BalancePoint, limits.SecondTie, at.High, second, "both ties lie on one side of the balance point: one line carries all")
	}
	return nil
}

// LegAngles are those of a leg above the horizontal, in degrees. The printed
// tables end at 15.
var LegAngles = limits.Range[float64]{Low: 15, High: 90,
	Why: "flatter legs pull many times the load, and steeper than plumb there is none"}

// Legs are the pulls of two legs from one point that share a load:
//
//	T₁ = W·cos β/sin(α + β),  T₂ = W·cos α/sin(α + β)
//
// in N, with α and β the angles of the first and second leg above the
// horizontal; two plumb legs take half each. It holds within Weights and
// LegAngles, the legs on opposite sides.
//
// The error is a *limits.OutOfRange.
//
// Errors: at 15 degrees, one degree less is 7 % more pull. Near plumb the
// share of each leg goes by small differences of angle.
//
// Source: statics; the sling tables of rigging handbooks, 1/sin α.
func Legs(weight unit.Mass, first, second unit.Angle) (onFirst, onSecond unit.Force, err error) {
	if err := Weights.Check(limits.Weight, weight); err != nil {
		return 0, 0, err
	}
	for _, leg := range [...]unit.Angle{first, second} {
		if err := LegAngles.Check(limits.Angle, leg.Degrees()); err != nil {
			return 0, 0, err
		}
	}
	w := weight.Weight()
	if first == second {
		half := w / 2 / unit.Force(math.Sin(float64(first)))
		return half, half, nil
	}
	both := math.Sin(float64(first + second))
	onFirst = w * unit.Force(math.Cos(float64(second))/both)
	onSecond = w * unit.Force(math.Cos(float64(first))/both)
	return onFirst, onSecond, nil
}

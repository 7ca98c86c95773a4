package balance

import (
	"heft/calc/limits"
	"heft/calc/unit"
)

// Margin is how far beyond the balance point a tie has to be for one end to
// be sure of going down (common practice, no source).
const Margin unit.Length = 0.3

const slip = "likely a slip in the number or its unit"

// Where the method holds.
var (
	// Lengths are those of the piece: see piece.Lengths.
	Lengths = limits.Range[unit.Length]{Low: 0.05, High: 30, Why: slip}
	// Points lie along the piece.
	Points = limits.Range[unit.Length]{Low: 0, High: 30, Why: "it lies between the cut and the longest piece's tip"}
	// Weights are those of one piece.
	Weights = limits.Range[unit.Mass]{Low: 0.001, High: 20000, Why: slip} // common practice, no source
)

// Hang says which end is to go down.
type Hang string

// The ways a piece hangs.
const (
	Level     Hang = "level"
	ButtHeavy Hang = "butt-heavy" // the butt goes down
	TipHeavy  Hang = "tip-heavy"  // the tip goes down
)

// Ties are the points at which a single line makes a piece hang as wanted, in
// m from the cut:
//
//	level       x_low to x_high
//	butt-heavy  x_high + Margin to L
//	tip-heavy   0 to x_low − Margin
//
// with x the balance point, known to lie between x_low and x_high, and L the
// length. It holds within Lengths and Points for a piece that hangs free.
//
// The error is a *limits.Missing, *limits.OutOfRange or
// *limits.Contradiction, the last where the piece leaves no such point.
//
// Errors: a piece hung from a point on its axis is level at the balance point
// alone and plumb at any other; a tie on its upper side, or round it, lets it
// hang at a slant between the two. A level tie has to be tried by lifting a
// little: anywhere but at the true balance point an end goes down.
//
// Source: statics; the margin is common practice, no source.
func Ties(at unit.Range[unit.Length], length unit.Length, as Hang) (unit.Range[unit.Length], error) {
	none := unit.Range[unit.Length]{}
	if err := checkBalance(at); err != nil {
		return none, err
	}
	if err := Lengths.Check(limits.Length, length); err != nil {
		return none, err
	}
	if limits.Above(at.High, length) {
		return none, &limits.Contradiction{First: limits.BalancePoint, Second: limits.Length,
			Got: float64(at.High), Limit: float64(length), Why: "a piece balances between its ends"}
	}
	switch as {
	case ButtHeavy:
		if near := at.High + Margin; !limits.Above(near, length) {
			return unit.Range[unit.Length]{Low: min(near, length), High: length}, nil
		}
		return none, &limits.Contradiction{First: limits.Tie, Second: limits.Length,
			Got: float64(at.High + Margin), Limit: float64(length), Why: "the tie has to clear the balance point toward the tip"}
	case TipHeavy:
		if far := at.Low - Margin; far >= 0 {
			return unit.Range[unit.Length]{High: far}, nil
		}
		return none, &limits.Contradiction{First: limits.Tie, Second: limits.BalancePoint,
			Got: float64(Margin), Limit: float64(at.Low), Why: "the tie has to clear the balance point toward the butt"}
	case Level:
		return at, nil
	}
	return none, &limits.Missing{Quantity: limits.Tie}
}

func checkBalance(at unit.Range[unit.Length]) error {
	if at.IsZero() {
		return &limits.Missing{Quantity: limits.BalancePoint}
	}
	return Points.CheckBoth(limits.BalancePoint, at)
}

// Domains lists the ranges of validity.
func Domains() []limits.Domain {
	const method = "balance"
	return []limits.Domain{
		Weights.Domain(method, limits.Weight),
		Lengths.Domain(method, limits.Length),
		Points.Domain(method, limits.BalancePoint),
		Points.Domain(method, limits.Tie),
		LegAngles.Domain(method, limits.Angle),
		Offsets.Domain(method, limits.Offset),
		Lines.Domain(method, limits.LineLength),
		Sideways.Domain(method, limits.Sideways),
		Below.Domain(method, limits.Angle),
	}
}

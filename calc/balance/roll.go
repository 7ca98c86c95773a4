package balance

import (
	"heft/calc/limits"
	"heft/calc/unit"
)

// Moment is in newton-metres.
type Moment float64

// Offsets are how far a side branch's weight lies beside the axis of the
// piece.
var Offsets = limits.Range[unit.Length]{Low: -20, High: 20, Why: slip} // common practice, no source

// Branch is a side branch. Its offset is the level distance from the axis of
// the piece to the branch's own balance point, positive to one side and
// negative to the other.
type Branch struct {
	Weight unit.Range[unit.Mass]
	Offset unit.Length
}

// Roll is the moment that turns a piece about its axis when it is cut:
//
//	M = Σ m·g·y
//
// in N·m, with m the mass of each side branch and y its offset; positive
// rolls the positive side down. The range takes the weights at the ends that
// roll it most one way and the other. It holds within Weights and Offsets,
// the piece about level and free to roll.
//
// The error is a *limits.OutOfRange or a *limits.Contradiction.
//
// Errors: those of the weights and the offsets, both judged by eye; a tie on
// the upper side holds some of it.
//
// Source: statics.
func Roll(branches []Branch) (unit.Range[Moment], error) {
	var sum unit.Range[Moment]
	for _, b := range branches {
		if err := Weights.CheckBoth(limits.Weight, b.Weight); err != nil {
			return unit.Range[Moment]{}, err
		}
		if err := Offsets.Check(limits.Offset, b.Offset); err != nil {
			return unit.Range[Moment]{}, err
		}
		light, heavy := moment(b.Weight.Low, b.Offset), moment(b.Weight.High, b.Offset)
		sum.Low += min(light, heavy)
		sum.High += max(light, heavy)
	}
	return sum, nil
}

func moment(m unit.Mass, offset unit.Length) Moment {
	return Moment(float64(m.Weight()) * float64(offset))
}

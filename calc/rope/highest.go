package rope

import (
	"math"

	"heft/calc/limits"
	"heft/calc/unit"
)

// Highest is the highest block from which a rope lowers to the ground, Needed
// solved for the height:
//
//	H = (have − A − π·D − N·π·d − T)/(n + 1)
//
// in m, with the terms of Needed; what Hitch says is left aside. It holds as
// Needed does, and no further than Hitches.
//
// The error is a *limits.OutOfRange, also where the rope is too short for the
// lowest of Hitches.
//
// Errors: those of Needed.
//
// Source: geometry; no published figure was found.
func (l Layout) Highest(have unit.Length) (unit.Length, error) {
	l.Hitch = Hitches.Low
	least, err := l.Needed()
	if err != nil {
		return 0, err
	}
	h := Hitches.Low + (have-least)/unit.Length(l.Parts+1)
	h = unit.Length(math.Min(float64(h), float64(Hitches.High)))
	if err := Hitches.Check(limits.HitchHeight, h); err != nil {
		return 0, err
	}
	return h, nil
}

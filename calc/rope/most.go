package rope

import (
	"math"

	"heft/calc/limits"
	"heft/calc/unit"
)

// Most is the heaviest load that hands hold over wraps on a slick drum, Hold
// solved for the load:
//
//	W = F·e^(2π·μ·n)
//
// in N, returned as the mass, with F of the hands, μ of Slick and n the turns.
// It holds within Turns, Crews and Holds, and no further than Loads.
//
// Errors: on a drum that grips, a load far below this may not run.
//
// Source: that of Hold.
func Most(wraps Wraps, by Hands) (unit.Mass, error) {
	if err := Turns.Check(limits.Wraps, wraps); err != nil {
		return 0, err
	}
	if err := by.check(); err != nil {
		return 0, err
	}
	heaviest := by.Force() * unit.Force(math.Exp(2*math.Pi*float64(Slick)*float64(wraps)))
	return min(heaviest.Held(), Loads.High), nil
}

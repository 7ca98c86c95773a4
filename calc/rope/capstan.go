package rope

import (
	"math"

	"heft/calc/unit"
)

// Friction is the coefficient of friction between rope and drum.
type Friction float64

// Wraps counts turns of rope around the drum.
type Wraps float64

// The friction planned with, of polyester rope on a metal drum. Pulls over
// metal bars print 0.14 to 0.25, and the lowering pulls alone reach 0.30
// (Delaney, Physics for Roping Technicians, 2022). Wet, worn, glazed and
// dusty ropes and drums differ, and used rope gripped more than new (Kane
// 2007): plan the hold on Slick and expect anything up to Grippy.
const (
	Slick  Friction = 0.14
	Grippy Friction = 0.30
)

// Hold is the force at the hand that holds a load while it is lowered, the
// capstan (Euler–Eytelwein) equation:
//
//	F = W·e^(−2π·μ·n)
//
// with W the load in N, μ the friction and n the turns. It holds for a rope
// that slides or is about to, on a round drum, wraps side by side.
//
// Errors: μ is known to a factor of two at best, which at three wraps is a
// factor of twenty in F. With the μ printed for raising and lowering
// together, measured holds came out below the computed.
//
// Source: standard mechanics, checked against textbook problems.
func Hold(load unit.Force, mu Friction, wraps Wraps) unit.Force {
	return load * unit.Force(math.Exp(-2*math.Pi*float64(mu)*float64(wraps)))
}

// Haul is the force at the hand that raises a load over the same wraps:
//
//	F = W·e^(2π·μ·n)
//
// in the terms, and with the errors and source, of Hold. With the printed μ,
// measured hauls came out below the computed too.
func Haul(load unit.Force, mu Friction, wraps Wraps) unit.Force {
	return load * unit.Force(math.Exp(2*math.Pi*float64(mu)*float64(wraps)))
}

// turns is how many wraps bring a load down to a hold: Hold solved for n.
func turns(load, hold unit.Force, mu Friction) float64 {
	return math.Log(float64(load/hold)) / (2 * math.Pi * float64(mu))
}

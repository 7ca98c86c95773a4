package block

import (
	"math"

	"heft/calc/limits"
	"heft/calc/unit"
)

// Efficiency is the force on the outgoing leg over that on the incoming one,
// of a sheave in ordinary order: about 10 % is lost at each (US Navy Builder
// training manual).
const Efficiency = 0.90

// Where the method holds.
var (
	// Angles lie between the two legs, in degrees: 0 is parallel.
	Angles = limits.Range[float64]{Low: 0, High: 180,
		Why: "the angle between two legs of a rope runs from 0, parallel, to 180, straight on"}
	// Efficiencies run from a rope over a bare bar to a sheave without
	// friction. A rope over a carabiner kept 0.53 (published redirect test).
	Efficiencies = limits.Range[float64]{Low: 0.3, High: 1,
		Why: "a block gives back less than it takes, and no block loses most of it"}
	// Tensions are those of a rope that pulls.
	Tensions = limits.Range[unit.Force]{Low: 0, High: 1e6,
		Why: "a rope only pulls, and no rope in a tree holds so much"} // common practice, no source
)

// Domains lists the ranges of validity.
func Domains() []limits.Domain {
	const method = "block"
	return []limits.Domain{
		Angles.Domain(method, limits.Angle),
		Efficiencies.Domain(method, limits.Efficiency),
		Tensions.Domain(method, limits.Tension),
	}
}

// Load is what a block carries with the same tension in both legs:
//
//	P = 2·T·cos(θ/2)
//
// in N, with θ the angle between the legs. It holds within Angles and
// Tensions, for a load at rest.
//
// Errors: friction in the block makes it a little less while the load goes
// down and more while it goes up; see Lowering and Raising. A load that drops
// before the rope takes it may pull many times this.
//
// Source: statics; two printed block-load tables.
func Load(tension unit.Force, between unit.Angle) (unit.Force, error) {
	return legs(tension, tension, between)
}

// Lowering is what a block carries while a load goes down: W on the load's
// leg, W·e on the other, e the efficiency:
//
//	P = W·√(1 + e² + 2·e·cos θ)
//
// in N. It holds within Angles, Tensions and Efficiencies, for a slow and
// steady lower.
//
// Errors: e of a given block is seldom known to better than 0.05; at a small
// angle that is 2.5 % of P.
//
// Source: statics; a published field test weighed 19 lb where 11 lb hung over
// a pulley, less than twice 11.
func Lowering(load unit.Force, efficiency float64, between unit.Angle) (unit.Force, error) {
	if err := Efficiencies.Check(limits.Efficiency, efficiency); err != nil {
		return 0, err
	}
	return legs(load, load*unit.Force(efficiency), between)
}

// Raising is what a block carries while a load goes up: W on the load's leg,
// W/e on the other:
//
//	P = W·√(1 + 1/e² + (2/e)·cos θ)
//
// in the terms and within the ranges of Lowering, with its errors.
//
// Source: statics; the same field test weighed 24 lb, more than twice 11.
func Raising(load unit.Force, efficiency float64, between unit.Angle) (unit.Force, error) {
	if err := Efficiencies.Check(limits.Efficiency, efficiency); err != nil {
		return 0, err
	}
	return legs(load, load/unit.Force(efficiency), between)
}

// legs is the resultant of two pulls at an angle, √(a² + b² + 2ab·cos θ).
func legs(load, other unit.Force, between unit.Angle) (unit.Force, error) {
	if err := Tensions.Check(limits.Tension, load); err != nil {
		return 0, err
	}
	if err := Angles.Check(limits.Angle, between.Degrees()); err != nil {
		return 0, err
	}
	a, b := float64(load), float64(other)
	// (a − b)² + 4ab·cos²(θ/2): the same, and never below nought.
	half := math.Cos(float64(between) / 2)
	return unit.Force(math.Hypot(a-b, 2*math.Sqrt(a*b)*half)), nil
}

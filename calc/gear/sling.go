package gear

import (
	"math"

	"heft/calc/limits"
	"heft/calc/unit"
)

// Where slings hold.
var (
	// LegAngles lie between a leg and the level, in degrees.
	LegAngles = limits.Range[float64]{Low: 30, High: 90,
		Why: "flatter than 30 degrees a leg carries more than twice its share, and the table ends"}
	// Legs are those that share a load. Of more than two, a stiff load may
	// rest on two.
	Legs = limits.Range[float64]{Low: 1, High: 2,
		Why: "count on two legs however many there are"} // common practice, no source
	// Chokes are the angles of a choker at its own eye, in degrees: 180 has
	// the leg straight on, 0 folded back.
	Chokes = limits.Range[float64]{Low: 0, High: 180,
		Why: "the choke runs from 0, folded back, to 180, straight on"}
)

// LegFactor is the tension of a sling's leg over its share of the load:
//
//	1/sin α
//
// with α between the leg and the level. It holds within LegAngles.
//
// Source: statics; the table of a rigging handbook.
func LegFactor(fromLevel unit.Angle) (float64, error) {
	if err := LegAngles.Check(limits.LegAngle, fromLevel.Degrees()); err != nil {
		return 0, err
	}
	return 1 / math.Sin(float64(fromLevel)), nil
}

// Leg is the tension in each leg of a sling:
//
//	T = W/(n·sin α)
//
// in N, with W the load in N, n the legs that share it and α between leg and
// level. It holds within Loads, Legs and LegAngles, for a load that hangs
// evenly.
//
// Errors: a load off its middle puts more on the leg that is steeper.
//
// Source: statics; worked examples of rigging texts.
func Leg(load unit.Force, legs int, fromLevel unit.Angle) (unit.Force, error) {
	if err := Loads.Check(limits.Tension, load); err != nil {
		return 0, err
	}
	if err := Legs.Check(limits.Legs, float64(legs)); err != nil {
		return 0, err
	}
	factor, err := LegFactor(fromLevel)
	if err != nil {
		return 0, err
	}
	return load / unit.Force(legs) * unit.Force(factor), nil
}

// Bridle is what legs of a sling may carry together that share a load:
//
//	F = n·V·sin α
//
// in N, with n the legs, V the working load of each as a single vertical leg
// and α between leg and level. It holds within Workings, Legs and LegAngles,
// for a load that hangs evenly.
//
// Errors: as Leg.
//
// Source: statics; the table of a rigging handbook.
func Bridle(vertical unit.Force, legs int, fromLevel unit.Angle) (unit.Force, error) {
	if err := Workings.Check(limits.WorkingLoad, vertical); err != nil {
		return 0, err
	}
	each, err := Leg(1, legs, fromLevel)
	if err != nil {
		return 0, err
	}
	return vertical / each, nil
}

// Basket is what a sling may carry that is passed under the load with both
// eyes up:
//
//	F = 2·V·sin α
//
// in N, with V its working load as a single vertical leg. It holds within
// Workings and LegAngles, over an edge that does not bend the sling sharply.
//
// Source: a US Navy manual (twice the vertical), statics.
func Basket(vertical unit.Force, fromLevel unit.Angle) (unit.Force, error) {
	if err := Workings.Check(limits.WorkingLoad, vertical); err != nil {
		return 0, err
	}
	factor, err := LegFactor(fromLevel)
	if err != nil {
		return 0, err
	}
	return 2 * vertical / unit.Force(factor), nil
}

// VerticalOf is the working load of a sling as a single vertical leg, of which the one
// for a basket is told:
//
//	V = B/2
//
// in N, with B the working load in a basket with both legs plumb, as labels print it. It
// holds within Workings.
//
// Errors: a label that prints its basket for flatter legs is taken below what it says.
//
// Source: as Basket.
func VerticalOf(basket unit.Force) (unit.Force, error) {
	if err := Workings.Check(limits.WorkingLoad, basket); err != nil {
		return 0, err
	}
	return basket / 2, nil
}

// OfVertical is what a choker may carry, of a single vertical leg (a US Navy
// manual).
const OfVertical = 0.75

// Choker is what a sling may carry that is passed through its own eye:
//
//	F = 0.75·V·c
//
// in N, with V its working load as a single vertical leg, and c by the angle
// of the choke: 1 above 120 degrees, 0.87 from 90, 0.74 from 60, 0.62 from
// 30, 0.49 below. It holds within Workings and Chokes.
//
// Errors: a jerk may pull the choke tighter than it was set.
//
// Sources: a US Navy manual; the table of a rigging handbook.
func Choker(vertical unit.Force, choke unit.Angle) (unit.Force, error) {
	if err := Workings.Check(limits.WorkingLoad, vertical); err != nil {
		return 0, err
	}
	if err := Chokes.Check(limits.ChokeAngle, choke.Degrees()); err != nil {
		return 0, err
	}
	return OfVertical * vertical * unit.Force(chokeFactor(choke.Degrees())), nil
}

// chokeFactor is the table, which prints whole degrees: what lies between two
// of its lines takes the lower. A bound said in degrees is not missed by the
// last bits of radians.
func chokeFactor(degrees float64) float64 {
	switch {
	case limits.Above(degrees, 120):
		return 1.00
	case !limits.Above(90, degrees):
		return 0.87
	case !limits.Above(60, degrees):
		return 0.74
	case !limits.Above(30, degrees):
		return 0.62
	}
	return 0.49
}

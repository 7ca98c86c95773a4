package calc

import (
	"heft/calc/anchor"
	"heft/calc/balance"
	"heft/calc/block"
	"heft/calc/cutplan"
	"heft/calc/drop"
	"heft/calc/gear"
	"heft/calc/haul"
	"heft/calc/hinge"
	"heft/calc/limits"
	"heft/calc/piece"
	"heft/calc/redirect"
	"heft/calc/rope"
	"heft/calc/swing"
	"heft/calc/tackle"
	"heft/calc/unit"
)

// Version names the formulas and tables, and is raised when the same job may
// have another result.
const Version = "1"

// GivenWeights are the weights taken from a crew.
var GivenWeights = limits.Range[unit.Mass]{Low: 0.001, High: 20000,
	Why: "likely a slip in the number or its unit"} // common practice, no source

// Job is what the crew asks for. Zero was not said.
type Job struct {
	Piece   *piece.Piece
	Given   unit.Range[unit.Mass]   // the crew's own weight
	Lower   bool                    // plan a lower; a hitch asks for one too
	Hitch   unit.Range[unit.Length] // height of the block above the ground
	People  int                     // on the rope
	Each    unit.Force              // that one of them holds
	Parts   int                     // of line on the load
	Wraps   float64                 // the crew has on the drum
	Slipped bool                    // those wraps did not hold
	Between *unit.Angle             // the legs of the rope at the block
	Laid    rope.Layout             // where the drum and the dead end are; its height, parts and wraps are those of the job
}

// Result is the job worked out. What does not apply is zero.
type Result struct {
	Weight       piece.Weight  // to plan with
	Piece        *piece.Weight // the calculated weight, where the crew gave one too
	Disagreement bool          // the crew's weight lies outside the calculated
	Assumed      []Assumption

	Lowering *rope.Lowering
	AtWraps  *unit.Range[unit.Force] // at the hand, with the crew's wraps
	Block    unit.Force              // on the top block, the heavy end hanging still
	Rope     unit.Length             // from end to end
	Laid     rope.Layout             // how it is laid out
}

// Assumption names something taken for granted that the crew did not say.
type Assumption string

// The assumptions.
const (
	OverBark     Assumption = "over-bark"      // diameters include the bark
	GreenWood    Assumption = "green-wood"     // the piece is not dead
	GenusAverage Assumption = "genus-average"  // the species weighs what its genus does
	GroupDefault Assumption = "group-default"  // the species weighs what all hardwoods, or softwoods, do
	HeavierOfTwo Assumption = "heavier-of-two" // the crew's weight and the calculated
	SlickRope    Assumption = "slick-rope"     // the least friction of rope on a metal drum
	NoDrop       Assumption = "no-drop"        // the rope takes the load without a fall or a jerk
	OnePerson    Assumption = "one-person"     // on the rope
	StraightLegs Assumption = "straight-legs"  // parallel at the block, its heaviest case
	SimpleLower  Assumption = "simple-lower"   // one part of line, no moving block
	WholeOnDrum  Assumption = "whole-on-drum"  // several parts of line, planned as one: drum and block see less
)

// Domains lists the ranges of validity of every method.
func Domains() []limits.Domain {
	all := []limits.Domain{GivenWeights.Domain("calc", limits.Weight)}
	for _, of := range []func() []limits.Domain{
		piece.Domains, rope.Domains, block.Domains, tackle.Domains, hinge.Domains, redirect.Domains,
		balance.Domains, swing.Domains, drop.Domains, gear.Domains, anchor.Domains, cutplan.Domains, haul.Domains,
	} {
		all = append(all, of()...)
	}
	return all
}

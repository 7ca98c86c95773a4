package rope

import (
	"heft/calc/limits"
	"heft/calc/unit"
)

// Tail is the rope for the knot, the wraps and the hands, about 20 ft (common
// practice, no source).
const Tail unit.Length = 6

// Where the method holds.
var (
	// Hitches are the heights of the block above the ground.
	Hitches = limits.Range[unit.Length]{Low: 0.5, High: 60,
		Why: "likely a slip in the number or its unit"} // common practice, no source
	// PartsOfLine are the parts that carry the load.
	PartsOfLine = limits.Range[float64]{Low: 1, High: 6,
		Why: "no tackle in a tree has more parts of line"} // common practice, no source
)

// Needed is the rope for a lower to the ground, from end to end:
//
//	L = (n + 1)·H + Tail
//
// in m, with H the height of the block and n the parts of line on the load:
// 2H for a simple lower, from the ground up and down again, 3H with one moving
// block on the load. It holds within Hitches and PartsOfLine for a drum at the
// foot of the tree.
//
// Errors: redirects and a piece lowered into a hole need their length on top;
// a drum set off from the trunk does in Layout.
//
// Source: geometry; no published figure was found.
func Needed(hitch unit.Length, parts int) (unit.Length, error) {
	if err := Hitches.Check(limits.HitchHeight, hitch); err != nil {
		return 0, err
	}
	if err := PartsOfLine.Check(limits.Parts, float64(parts)); err != nil {
		return 0, err
	}
	return unit.Length(parts+1)*hitch + Tail, nil
}

// Domains lists the ranges of validity.
func Domains() []limits.Domain {
	const method = "rope"
	return []limits.Domain{
		Loads.Domain(method, limits.Weight),
		Turns.Domain(method, limits.Wraps),
		Crews.Domain(method, limits.People),
		Holds.Domain(method, limits.PersonPull),
		Hitches.Domain(method, limits.HitchHeight),
		PartsOfLine.Domain(method, limits.Parts),
		Aways.Domain(method, limits.DrumAway),
		Landings.Domain(method, limits.LandsOut),
		Trunks.Domain(method, limits.TrunkAcross),
		Drums.Domain(method, limits.DrumDiameter),
	}
}

package rope

import (
	"math"

	"heft/calc/limits"
	"heft/calc/unit"
)

// Layout is how a rope is laid out for a lower. Zero was not said.
type Layout struct {
	Hitch unit.Length // height of the block
	Parts int         // of line on the load
	Away  unit.Length // of the drum, from the foot of the tree
	Trunk unit.Length // across, where the dead end goes once round it; 0 where it ends at a block
	Drum  unit.Length // across
	Wraps Wraps       // on it, counted where Drum is known, else in the tail
}

// Where the method holds.
var (
	// Aways are how far a drum stands from the foot of the tree.
	Aways = limits.Range[unit.Length]{Low: 0, High: 60,
		Why: "likely a slip in the number or its unit"} // common practice, no source
	// Trunks are how thick a trunk is where a dead end goes round it.
	Trunks = limits.Range[unit.Length]{Low: 0.05, High: 3,
		Why: "likely a slip in the number or its unit"} // common practice, no source
	// Drums are how thick the drums are.
	Drums = limits.Range[unit.Length]{Low: 0.03, High: 0.6,
		Why: "no lowering drum is so thick or so thin"} // common practice, no source
)

// Needed is the rope for a lower to the ground, from end to end:
//
//	L = (n + 1)·H + A + π·D + N·π·d + Tail
//
// in m, with the terms of the package function Needed, A the way from the foot
// of the tree to the drum, D the trunk and d the drum across, N the wraps. It
// holds within Hitches, PartsOfLine, Aways, Trunks, Drums and Turns.
//
// The error is a *limits.OutOfRange.
//
// Errors: a rope led straight from the block to a drum that stands off takes
// less, √(H² + A²) for H + A. The thickness of the rope, on a drum of ten
// times that, makes a wrap a tenth longer.
//
// Source: geometry; no published figure was found.
func (l Layout) Needed() (unit.Length, error) {
	need, err := Needed(l.Hitch, l.Parts)
	if err != nil {
		return 0, err
	}
	if err := Aways.Check(limits.DrumAway, l.Away); err != nil {
		return 0, err
	}
	if l.Trunk != 0 {
		if err := Trunks.Check(limits.TrunkAcross, l.Trunk); err != nil {
			return 0, err
		}
	}
	if l.Drum != 0 {
		if err := Drums.Check(limits.DrumDiameter, l.Drum); err != nil {
			return 0, err
		}
		if err := Turns.Check(limits.Wraps, l.Wraps); err != nil {
			return 0, err
		}
	}
	return need + l.Away + l.RoundTrunk() + l.OnDrum(), nil
}

// RoundTrunk is what a dead end round the trunk takes more than one at a block.
func (l Layout) RoundTrunk() unit.Length { return math.Pi * l.Trunk }

// OnDrum is what lies on the drum, 0 where it is counted in the tail.
func (l Layout) OnDrum() unit.Length { return unit.Length(l.Wraps) * math.Pi * l.Drum }

// End is where a piece hangs, above the ground, as the end of a rope that is
// too short comes to the drum:
//
//	z = (L − have − Tail + K)/n, at most H
//
// in m, with L from Needed and K what of the tail cannot run in: nothing at
// the low end, all of it at the high. Zero is on the ground. It holds as
// Needed does, for a rope of any length.
//
// The error is a *limits.OutOfRange.
//
// Errors: those of Needed; z is that of the tie, and the piece hangs below it.
//
// Source: geometry, L solved for the height.
func (l Layout) End(have unit.Length) (unit.Range[unit.Length], error) {
	need, err := l.Needed()
	if err != nil {
		return unit.Range[unit.Length]{}, err
	}
	at := func(short unit.Length) unit.Length {
		return min(l.Hitch, max(0, short/unit.Length(l.Parts)))
	}
	return unit.Range[unit.Length]{Low: at(need - have - Tail), High: at(need - have)}, nil
}

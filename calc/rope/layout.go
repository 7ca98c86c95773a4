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
	Lands unit.Length // how far out from there the piece comes down
	Trunk unit.Length // across, where the dead end goes once round it; 0 where it ends at a block
	Drum  unit.Length // across
	Wraps Wraps       // on it, counted where Drum is known, else in the tail
	Extra unit.Length // tail that is wanted; less than the usual Tail is not planned
}

// Where the method holds.
var (
	// Aways are how far a drum stands from the foot of the tree.
	Aways = limits.Range[unit.Length]{Low: 0, High: 60,
		Why: "likely a slip in the number or its unit"} // common practice, no source
	// Tails are how long a tail may be wanted.
	Tails = limits.Range[unit.Length]{Low: 0, High: 60,
		Why: "likely a slip in the number or its unit"} // common practice, no source
	// Landings are how far out a piece comes down.
	Landings = limits.Range[unit.Length]{Low: 0, High: 30,
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
//	L = (n + 1)·H + n·(√(H² + B²) − H) + A + π·D + N·π·d + T
//
// in m, with the terms of the package function Needed, B how far out the piece
// lands, A the way from the foot of the tree to the drum, D the trunk and d the
// drum across, N the wraps, T the tail: Tail, or what is wanted where that is more.
// It holds within Hitches, PartsOfLine, Landings, Aways, Tails, Trunks, Drums and
// Turns.
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
	if err := Tails.Check(limits.RopeTail, l.Extra); err != nil {
		return 0, err
	}
	if err := Landings.Check(limits.LandsOut, l.Lands); err != nil {
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
	return need - Tail + l.Tail() + l.Out() + l.Away + l.RoundTrunk() + l.OnDrum(), nil
}

// Out is what a piece that lands away from the foot of the tree takes more than one
// that comes straight down.
func (l Layout) Out() unit.Length {
	return unit.Length(l.Parts) * (unit.Length(math.Hypot(float64(l.Hitch), float64(l.Lands))) - l.Hitch)
}

// Tail is the rope behind the drum that is planned: the usual, or more where more is wanted.
func (l Layout) Tail() unit.Length { return max(Tail, l.Extra) }

// RoundTrunk is what a dead end round the trunk takes more than one at a block.
func (l Layout) RoundTrunk() unit.Length { return math.Pi * l.Trunk }

// OnDrum is what lies on the drum, 0 where it is counted in the tail.
func (l Layout) OnDrum() unit.Length { return unit.Length(l.Wraps) * math.Pi * l.Drum }

// End is where a piece hangs, above the ground, as the end of a rope that is
// too short comes to the drum:
//
//	z = H − √((√(H² + B²) − (L − have − T + K)/n)² − B²), at most H
//
// in m, with L from Needed, B how far out it is let down and K what of the tail
// cannot run in: nothing at the low end, all of it at the high. Zero is on the
// ground; straight below the block z is (L − have − T + K)/n. It holds as
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
		leg := math.Hypot(float64(l.Hitch), float64(l.Lands)) - max(0, float64(short))/float64(l.Parts)
		if leg <= float64(l.Lands) {
			return l.Hitch
		}
		return max(0, l.Hitch-unit.Length(math.Sqrt(leg*leg-float64(l.Lands*l.Lands))))
	}
	return unit.Range[unit.Length]{Low: at(need - have - l.Tail()), High: at(need - have)}, nil
}

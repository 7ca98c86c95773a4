package drop

import (
	"heft/calc/block"
	"heft/calc/limits"
	"heft/calc/unit"
)

// Stiffness is in newtons per metre.
type Stiffness float64

// How hard a line pulls back: its tension as a share of its break strength,
// over its stretch as a share of its length.
//
// Soft is the softest class sold for holding loads, 10 % of stretch at a
// tenth of its break strength (Cordage Institute: 6 to 10 %). Stiff is the
// stiffest figure for a polyester double braid, 1.7 % at a fifth (makers'
// sheets, from memory; the softest found for one is 5 % at 30 %). Where two
// figures disagree the stiffer one makes the heavy end.
const (
	Soft  = 1.0
	Stiff = 0.20 / 0.017
)

const slip = "likely a slip in the number or its unit"

// Where the method holds. The ends are common practice, no source.
var (
	// Breaks are the break strengths of a line.
	Breaks = limits.Range[unit.Force]{Low: 2e3, High: 5e5, Why: slip}
	// Ropes are the lengths of line between the piece and what holds it.
	Ropes = limits.Range[unit.Length]{Low: 1, High: 150, Why: slip}
	// Stiffnesses are those of such lines, in N/m.
	Stiffnesses = limits.Range[Stiffness]{Low: 10, High: 1e7, Why: "no line is so soft or so stiff"}
)

// Of is the stiffness of a line:
//
//	k = m·B/L
//
// in N/m, with B its break strength in N, L the length that stretches in m
// and m between Soft and Stiff. It holds within Breaks and Ropes.
//
// Errors: stretch was published up to 30 % of the break strength, of new,
// dry line; line that has worked is stiffer. It is not for lines of aramid
// or other fibres that hardly stretch: they are stiffer than Stiff.
//
// Source: the definition of stiffness.
func Of(breaking unit.Force, length unit.Length, m float64) (Stiffness, error) {
	if err := Breaks.Check(limits.RopeBreak, breaking); err != nil {
		return 0, err
	}
	if err := Ropes.Check(limits.RopeLength, length); err != nil {
		return 0, err
	}
	k := Stiffness(m * float64(breaking) / float64(length))
	return k, Stiffnesses.Check(limits.Stiffness, k)
}

// Class is how soft and how stiff the lines of a kind are, as Soft and Stiff.
// A zero class was not said: any line.
type Class struct{ Soft, Stiff float64 }

// The kinds of line. Where a kind is sold stiff, or is called so by people who
// mean a stiff one, its stiff end is that of any line.
//
// Static stretches less than 6 % at a tenth of its break strength, low-stretch
// 6 to 10 % (Cordage Institute); but crews call a double braid low-stretch
// too. A double braid was found to stretch 3.5 to 5 % at 30 % (a rope history
// text), less than Stiff by makers' sheets. A stretchy line is softer than any
// double braid. Three-strand and kernmantle say how a line is made, and not of
// what: they may be any.
var (
	Any         = Class{Soft, Stiff}
	Static      = Class{0.10 / 0.06, Stiff}
	LowStretch  = Any
	DoubleBraid = Class{softestBraid, Stiff}
	Stretchy    = Class{Soft, softestBraid}
	ThreeStrand = Any
	Kernmantle  = Any
)

const softestBraid = 0.30 / 0.05

// With is a line that may be of either class.
func (c Class) With(d Class) Class {
	if c == (Class{}) {
		return d
	}
	return Class{min(c.Soft, d.Soft), max(c.Stiff, d.Stiff)}
}

// ends are the softest and the stiffest a line of the class can be. At its
// stiffest the friction of the block keeps a tenth of the stretch from it.
func (c Class) ends(breaking unit.Force, rope unit.Length) (soft, stiff Stiffness, err error) {
	if c == (Class{}) {
		c = Any
	}
	if soft, err = Of(breaking, rope, c.Soft); err != nil {
		return 0, 0, err
	}
	stiff, err = Of(breaking, rope, c.Stiff/block.Efficiency)
	return soft, stiff, err
}

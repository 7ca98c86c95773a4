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

// ends are the softest and the stiffest a line can be. At its stiffest the
// friction of the block keeps a tenth of the stretch from it.
func ends(breaking unit.Force, rope unit.Length) (soft, stiff Stiffness, err error) {
	if soft, err = Of(breaking, rope, Soft); err != nil {
		return 0, 0, err
	}
	stiff, err = Of(breaking, rope, Stiff/block.Efficiency)
	return soft, stiff, err
}

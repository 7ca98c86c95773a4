package cutplan

import (
	"heft/calc/limits"
	"heft/calc/piece"
	"heft/calc/unit"
)

// Thick is how thick a piece may be.
type Thick struct {
	Across unit.Length
	Heavy  unit.Mass // the heavy end of its weight
	Any    bool      // the thickest that can be weighed at this length is under the limit
}

// Thickest is the thickest piece of a length whose heavy end stays under the
// limit:
//
//	max d: High(d) ≤ limit
//
// in m, with High that of piece.Weigh for a piece as thick as d at its thickest
// place. It is found by halving, from below, since a thicker piece is never the
// lighter. It holds within Limits and the ranges of piece.Weigh; a limb is at
// most a third of its length thick, and no thicker than piece.LimbButts.
//
// Thicknesses of the piece itself do not count; of a length said as a range the
// long end does.
//
// The error is that of piece.Weigh, an *limits.OutOfRange, an *limits.Missing
// where the length was not said, or an *limits.Contradiction where even the
// thinnest piece is over the limit.
//
// Errors: as piece.Weigh. A weight goes by the square of the thickness: one read
// short by a tenth is a fifth more weight.
//
// Source: piece.Weigh.
func Thickest(p piece.Piece, limit unit.Mass) (Thick, error) {
	if err := Limits.Check(limits.Limit, limit); err != nil {
		return Thick{}, err
	}
	if p.Length.IsZero() {
		return Thick{}, &limits.Missing{Quantity: limits.Length}
	}
	if err := piece.Lengths.CheckBoth(limits.Length, p.Length); err != nil {
		return Thick{}, err
	}
	best, err := Across(p, piece.Diameters.Low)
	if err != nil {
		return Thick{}, err
	}
	if limits.Above(best.Heavy, limit) {
		return Thick{}, &limits.Contradiction{First: limits.Limit, Second: limits.Length, Got: float64(limit), Limit: float64(best.Heavy),
			Why: "even the thinnest piece of this length may be heavier"}
	}
	most, err := Across(p, thickestOf(p))
	if err != nil || !limits.Above(most.Heavy, limit) {
		most.Any = true
		return most, err
	}
	for over := most.Across; over-best.Across > fine; {
		try, err := Across(p, (best.Across+over)/2)
		if err != nil {
			return Thick{}, err
		}
		if try.Heavy > limit {
			over = try.Across
		} else {
			best = try
		}
	}
	return best, nil
}

// Across is a piece of the length of p that is so thick: its heavy end is that of
// piece.Weigh, whose error it has.
func Across(p piece.Piece, d unit.Length) (Thick, error) {
	p.Diameter, p.Butt, p.Mid, p.Tip = unit.Exactly(d), unit.Range[unit.Length]{}, unit.Range[unit.Length]{}, unit.Range[unit.Length]{}
	if p.Shape == piece.Limb {
		p.Diameter, p.Butt = p.Butt, p.Diameter
	}
	p.Length = unit.Exactly(p.Length.High)
	w, err := piece.Weigh(p)
	return Thick{Across: d, Heavy: w.High}, err
}

// thickestOf is the thickest that a piece of its length and shape can be weighed.
func thickestOf(p piece.Piece) unit.Length {
	if p.Shape != piece.Limb {
		return piece.Diameters.High
	}
	return min(piece.LimbButts.High, p.Length.High/piece.Slenderness)
}

package hinge

import (
	"math"

	"heft/calc/limits"
	"heft/calc/unit"
)

// Lowest is the least height of the top block above the hinge at which the
// blocks stay apart, the furthest tie solved for the height:
//
//	h = a + √(c² − d²)
//
// in m, with c that of Clear, d the block behind the hinge and a the tie, or,
// where that was not said, the nearest that is clear of the balance point; h = a
// where d ≥ c. Height and Angle are left aside. It holds within Domains.
//
// The error is a *limits.OutOfRange or a *limits.Contradiction; without a tie
// and without a balance point it is that of the tie.
//
// Errors: those of Fit.
//
// Source: geometry.
func Lowest(l Layout) (unit.Length, error) {
	if l.Tie == 0 && l.Balance == 0 {
		return 0, Ties.Check(limits.Tie, l.Tie)
	}
	s := Setup{Length: l.Length, Balance: l.Balance, Tie: l.Tie, Height: Heights.High, Offset: l.Offset, Closed: l.Closed}
	if s.Tie == 0 {
		s.Tie = s.clear()
	}
	if err := s.checkPlaces(); err != nil {
		return 0, err
	}
	c, d := float64(Clear(s.Closed)), float64(s.Offset)
	h := max(Heights.Low, s.Tie+unit.Length(math.Sqrt(max(0, c*c-d*d))))
	if err := Heights.Check(limits.BlockHeight, h); err != nil {
		return 0, err
	}
	return h, nil
}

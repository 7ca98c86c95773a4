package cutplan

import (
	"math"

	"heft/calc/limits"
	"heft/calc/piece"
	"heft/calc/unit"
)

// Limits are the weights to stay under.
var Limits = limits.Range[unit.Mass]{Low: 0.01, High: 20000,
	Why: "likely a slip in the number or its unit"} // common practice, no source

// fine is how close to the longest a length is found, from below.
const fine unit.Length = 1e-6

// End is an end of a stick.
type End int

// The ends.
const (
	Butt End = iota // the thick one
	Tip             // the thin one
)

// Piece is one piece of a stick.
type Piece struct {
	Length  unit.Length
	Heavy   unit.Mass   // the heavy end of its weight
	Balance unit.Length // from its own thick end to the centre of gravity
}

// Cut is the longest piece from an end.
type Cut struct {
	Piece
	Uncut bool // the whole stick is under the limit; where no length was said, all that can be weighed
}

// Longest is the longest piece, from an end of a stick, whose heavy end stays
// under the limit, and that is no longer than most:
//
//	max x ≤ most: High(x) ≤ limit
//
// in m, with High that of piece.Weigh for the part of the stick from the end
// to x; a most of 0 is none. It is found by halving, from below, since a longer
// part is never the lighter. It holds within Limits and the ranges of piece.Weigh.
//
// The stick tapers straight between the diameters measured, and is as thick
// as its one diameter where there is only one: measure that at the thick end.
// Of sizes said as a range the thick end counts, and of a length the end that
// makes the piece thicker.
//
// The error is that of piece.Weigh, an *limits.OutOfRange, or an
// *limits.Contradiction where even the shortest piece is over the limit.
//
// Errors: as piece.Weigh. A stick with swellings, or forks, is heavier where
// they are.
//
// Source: piece.Weigh.
func Longest(p piece.Piece, from End, limit unit.Mass, most unit.Length) (Cut, error) {
	if err := Limits.Check(limits.Limit, limit); err != nil {
		return Cut{}, err
	}
	s, err := stickOf(p)
	if err != nil {
		return Cut{}, err
	}
	part := func(x unit.Length) (Piece, error) { return s.cut(0, x) }
	if from == Tip {
		// The shorter the stick, the faster it thickens from the tip.
		if s.tip > 0 {
			s.length = p.Length.Low
		}
		part = func(x unit.Length) (Piece, error) { return s.cut(s.length-x, s.length) }
	}
	best, err := longest(limit, capped(s.length, most), part)
	if err != nil {
		return Cut{}, err
	}
	return Cut{Piece: best, Uncut: best.Length >= s.length-fine}, nil
}

// Plan is a stick in pieces.
type Plan struct {
	Pieces []Piece // from the butt to the tip, whichever is cut first
	Cuts   int     // of a stick still on its tree; one less of one that lies free
}

// Pieces divides a stick into as few pieces under the limit as it takes, each
// from the butt on as long as Longest has it; the last, at the tip, is what is
// left. A rest too short to weigh is given some of the piece before it. A
// length said as a range counts with its long end. No piece is longer than most, where
// that is not 0.
//
// Each piece but the last is a whole number of steps long, so that whoever cuts by
// the plan ends up with its pieces; a step of 0 is none.
//
// It holds, and errs, as Longest.
func Pieces(p piece.Piece, limit unit.Mass, step, most unit.Length) (Plan, error) {
	if err := Limits.Check(limits.Limit, limit); err != nil {
		return Plan{}, err
	}
	if p.Length.IsZero() {
		return Plan{}, &limits.Missing{Quantity: limits.Length}
	}
	s, err := stickOf(p)
	if err != nil {
		return Plan{}, err
	}
	var plan Plan
	for from := unit.Length(0); s.length-from > fine; {
		next, err := s.next(from, limit, step, most)
		if err != nil {
			return Plan{}, err
		}
		plan.Pieces = append(plan.Pieces, next)
		from += next.Length
	}
	plan.Cuts = len(plan.Pieces)
	return plan, nil
}

// next is the piece that begins at a distance from the butt.
func (s *stick) next(from unit.Length, limit unit.Mass, step, most unit.Length) (Piece, error) {
	left := s.length - from
	best, err := longest(limit, capped(left, most), func(x unit.Length) (Piece, error) { return s.cut(from, from+x) })
	if err == nil && left-best.Length >= fine {
		best, err = s.stepped(from, best, step)
	}
	if err != nil || left-best.Length < fine || left-best.Length >= piece.Lengths.Low {
		return best, err
	}
	shorter := left - piece.Lengths.Low
	if shorter < piece.Lengths.Low {
		return Piece{}, tooHeavy(limit, best.Heavy)
	}
	return s.cut(from, from+shorter)
}

// stepped is the piece shortened to a whole number of steps, where that leaves
// enough of it to weigh.
func (s *stick) stepped(from unit.Length, p Piece, step unit.Length) (Piece, error) {
	if step <= 0 {
		return p, nil
	}
	short := step * unit.Length(math.Floor(float64((p.Length+fine)/step)))
	if short < piece.Lengths.Low {
		return p, nil
	}
	return s.cut(from, from+short)
}

// capped is a length, or the most that it may be where that is less; a most of 0 is none.
func capped(l, most unit.Length) unit.Length {
	if most > 0 {
		return min(l, most)
	}
	return l
}

// Domains lists the ranges of validity.
func Domains() []limits.Domain {
	return []limits.Domain{Limits.Domain("cutplan", limits.Limit)}
}

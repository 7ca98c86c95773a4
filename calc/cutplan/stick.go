package cutplan

import (
	"heft/calc/limits"
	"heft/calc/piece"
	"heft/calc/unit"
)

// stick is what is cut, at its thickest and heaviest.
type stick struct {
	of             piece.Piece // wood, condition and shape of any piece of it
	butt, mid, tip unit.Length // tip 0: as thick as the butt all along
	length         unit.Length
}

// stickOf checks a stick as piece.Weigh does and takes the thick end of every
// size said. A length not said is as long as a piece may be; a taper needs it.
func stickOf(p piece.Piece) (stick, error) {
	unsaid := p.Length.IsZero()
	if unsaid && p.Tip.IsZero() {
		p.Length = unit.Exactly(piece.Lengths.High)
	}
	if _, err := piece.Weigh(p); err != nil {
		return stick{}, err
	}
	s := stick{
		of:     piece.Piece{Wood: p.Wood, Condition: p.Condition, Shape: p.Shape},
		butt:   max(p.Diameter.High, p.Butt.High, p.Mid.High),
		tip:    p.Tip.High,
		length: p.Length.High,
	}
	if s.tip > 0 {
		s.mid = p.Mid.High
	}
	// A part of a limb may be as thick as it is long; unsaid it is weighed as
	// either, and has the heavier of the two heavy ends.
	if p.Shape == piece.Limb {
		s.of.Shape = piece.Unsaid
	}
	return s, nil
}

// at is the diameter a distance from the butt, straight between the measured
// ones.
func (s *stick) at(from unit.Length) unit.Length {
	share := from / s.length
	switch {
	case s.tip == 0:
		return s.butt
	case s.mid == 0:
		return s.butt + (s.tip-s.butt)*share
	case share < 0.5:
		return s.butt + (s.mid-s.butt)*2*share
	}
	return s.mid + (s.tip-s.mid)*(2*share-1)
}

// bellied says whether the middle is thicker than a straight taper has it.
func (s *stick) bellied() bool { return s.mid > (s.butt+s.tip)/2 }

// cut weighs the part between two distances from the butt.
func (s *stick) cut(from, to unit.Length) (Piece, error) {
	p := s.of
	p.Length = unit.Exactly(to - from)
	if s.tip == 0 {
		p.Diameter = unit.Exactly(s.butt)
	} else {
		p.Butt, p.Tip = unit.Exactly(s.at(from)), unit.Exactly(s.at(to))
		// Across the middle of a bellied stick the two ends say too little;
		// of one that flares they say too much, which is the safe side.
		if s.bellied() && from < s.length/2 && to > s.length/2 {
			p.Mid = unit.Exactly(s.at((from + to) / 2))
		}
	}
	w, err := piece.Weigh(p)
	return Piece{Length: to - from, Heavy: w.High, Balance: w.Balance}, err
}

// longest is the longest part that stays under the limit, of those that begin
// at one place and are no longer than most.
func longest(limit unit.Mass, most unit.Length, part func(unit.Length) (Piece, error)) (Piece, error) {
	whole, err := part(most)
	if err != nil || !limits.Above(whole.Heavy, limit) {
		return whole, err
	}
	best, err := part(min(piece.Lengths.Low, most))
	if err != nil {
		return Piece{}, err
	}
	if limits.Above(best.Heavy, limit) {
		return Piece{}, tooHeavy(limit, best.Heavy)
	}
	for over := most; over-best.Length > fine; {
		try, err := part((best.Length + over) / 2)
		if err != nil {
			return Piece{}, err
		}
		if try.Heavy > limit {
			over = try.Length
		} else {
			best = try
		}
	}
	return best, nil
}

func tooHeavy(limit, least unit.Mass) error {
	return &limits.Contradiction{First: limits.Limit, Second: limits.Diameter,
		Got: float64(limit), Limit: float64(least),
		Why: "even the shortest piece that can be cut may be heavier"}
}

package piece

import (
	"heft/calc/limits"
	"heft/calc/unit"
)

const slip = "likely a slip in the number or its unit"

// Where the method holds. No crew cuts beyond these as one piece; the ends
// are common practice, no source, but for the limb's: past it nothing says
// how a limb tapers.
var (
	Diameters = limits.Range[unit.Length]{Low: 0.01, High: 2.5, Why: slip}
	Lengths   = limits.Range[unit.Length]{Low: 0.05, High: 30, Why: slip}
	LimbButts = limits.Range[unit.Length]{Low: 0.01, High: 1.2,
		Why: "no limb form holds for it; measure it as a log"}
)

// Domains lists the ranges of validity.
func Domains() []limits.Domain {
	const method = "piece"
	return []limits.Domain{
		Diameters.Domain(method, limits.Diameter),
		LimbButts.Domain(method, limits.ButtDiameter),
		Lengths.Domain(method, limits.Length),
	}
}

// check refuses what cannot be weighed.
func (p *Piece) check() error {
	if err := p.Wood.Weighable(); err != nil {
		return err
	}
	if !(p.Wood.Green() > 0) {
		return &limits.Missing{Quantity: limits.Species}
	}
	if err := p.missing(); err != nil {
		return err
	}
	if err := p.within(); err != nil {
		return err
	}
	low, _, high := p.sticks()
	if err := low.possible(p.Shape); err != nil {
		return err
	}
	return high.possible(p.Shape)
}

// missing finds the size without which there is no volume.
func (p *Piece) missing() error {
	has := func(r unit.Range[unit.Length]) bool { return !r.IsZero() }
	one, butt, mid, tip := has(p.Diameter), has(p.Butt), has(p.Mid), has(p.Tip)
	var q limits.Quantity
	switch {
	case one && (butt || mid || tip):
		return p.whichDiameter()
	case p.Length.IsZero():
		q = limits.Length
	case !butt && (tip || p.Shape == Limb):
		q = limits.ButtDiameter
	case butt && mid && !tip:
		q = limits.TipDiameter
	case !one && !butt && !mid:
		q = limits.Diameter
	default:
		return nil
	}
	return &limits.Missing{Quantity: q}
}

// whichDiameter refuses one diameter said without its place beside others
// said with theirs.
func (p *Piece) whichDiameter() error {
	other, said := limits.ButtDiameter, p.Butt
	if said.IsZero() {
		other, said = limits.MidDiameter, p.Mid
	}
	if said.IsZero() {
		other, said = limits.TipDiameter, p.Tip
	}
	return &limits.Contradiction{First: limits.Diameter, Second: other,
		Got: float64(p.Diameter.High), Limit: float64(said.High),
		Why: "say where along the piece each was taken"}
}

// within refuses sizes out of range.
func (p *Piece) within() error {
	butts := Diameters
	if p.Shape == Limb {
		butts = LimbButts
	}
	for _, size := range [...]struct {
		q     limits.Quantity
		said  unit.Range[unit.Length]
		holds limits.Range[unit.Length]
	}{
		{limits.Diameter, p.Diameter, Diameters},
		{limits.ButtDiameter, p.Butt, butts},
		{limits.MidDiameter, p.Mid, Diameters},
		{limits.TipDiameter, p.Tip, Diameters},
		{limits.Length, p.Length, Lengths},
	} {
		if size.said.IsZero() {
			continue
		}
		if err := size.holds.CheckBoth(size.q, size.said); err != nil {
			return err
		}
	}
	return nil
}

// possible refuses sizes that do not go together.
func (s stick) possible(shape Shape) error {
	refuse := func(first, second limits.Quantity, got, limit unit.Length, why string) error {
		return &limits.Contradiction{First: first, Second: second, Got: float64(got), Limit: float64(limit), Why: why}
	}
	switch {
	case limits.Above(s.tip, s.butt):
		return refuse(limits.TipDiameter, limits.ButtDiameter, s.tip, s.butt, "the tip is no thicker than the butt")
	case s.butt > 0 && limits.Above(s.mid, s.butt):
		return refuse(limits.MidDiameter, limits.ButtDiameter, s.mid, s.butt, "the middle is no thicker than the butt")
	case s.mid > 0 && limits.Above(s.tip, s.mid):
		return refuse(limits.MidDiameter, limits.TipDiameter, s.mid, s.tip, "the middle is no thinner than the tip")
	case shape == Limb && limits.Above(Slenderness*s.butt, s.length):
		return refuse(limits.Length, limits.ButtDiameter, s.length, Slenderness*s.butt,
			"a limb is at least three times as long as it is thick; call it a log")
	}
	return nil
}

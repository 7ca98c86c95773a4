package piece

import "heft/calc/unit"

// The share of the full cylinder on its butt diameter that a limb fills,
// brush and leaves included, at 1000 kg/m³. Twenty branches weighed whole lie
// between 0.33 and 1.07, the quartiles at 0.42, 0.52 and 0.65, the mean at
// 0.57 (yale.edu/fes519b/totoket/allom/brdat.txt). A bare cone would be 0.33
// and a paraboloid 0.50.
//
// The thickest of those branches had 9.9 cm at the base. For thicker limbs
// the heavy end rests on geometry: without brush, nothing that tapers fills
// more than the full cylinder.
const (
	LightForm  = 0.40
	LikelyForm = 0.55
	HeavyForm  = 1.00
)

// The brush a limb carries on top of its measured stem, as a share of the
// stem's volume: common practice, no source. The light end has none.
const (
	LikelyBrush = 0.10
	HeavyBrush  = 0.30
)

// Slenderness is the least length of a limb, in butt diameters: what is
// shorter is a log, whatever it is called (common practice, no source).
const Slenderness = 3

// stick is one end, or the middle, of the ranges said: a piece to the point.
type stick struct{ diameter, butt, mid, tip, length unit.Length }

func (p *Piece) sticks() (low, likely, high stick) {
	low = stick{p.Diameter.Low, p.Butt.Low, p.Mid.Low, p.Tip.Low, p.Length.Low}
	likely = stick{p.Diameter.Middle(), p.Butt.Middle(), p.Mid.Middle(), p.Tip.Middle(), p.Length.Middle()}
	high = stick{p.Diameter.High, p.Butt.High, p.Mid.High, p.Tip.High, p.Length.High}
	return low, likely, high
}

// method is the rule that a stem of these sizes calls for.
func (s stick) method() Method {
	switch {
	case s.tip == 0:
		return ByCylinder
	case s.mid == 0:
		return ByFrustum
	}
	return ByNewton
}

// thickest is the largest diameter of the stick: the only one, or its butt.
func (s stick) thickest() unit.Length { return max(s.diameter, s.butt, s.mid) }

// stem is the volume without brush.
func (s stick) stem() unit.Volume {
	switch s.method() {
	case ByFrustum:
		return Frustum(s.butt, s.tip, s.length)
	case ByNewton:
		return Newton(s.butt, s.mid, s.tip, s.length)
	}
	return Cylinder(s.thickest(), s.length)
}

// balance is the centre of gravity of the stem.
func (s stick) balance() unit.Length {
	switch s.method() {
	case ByFrustum:
		return FrustumBalance(s.butt, s.tip, s.length)
	case ByNewton:
		return NewtonBalance(s.butt, s.mid, s.tip, s.length)
	}
	return s.length / 2
}

// leastUnsaid is the light end where no shape was said. By one diameter it is
// a limb's, but never below the log of the first three diameters, since a
// piece no longer than that can only be a log: so a longer or thicker piece
// is never the lighter.
func (s stick) leastUnsaid() unit.Volume {
	if s.method() != ByCylinder || s.thickest() > LimbButts.High {
		return s.stem()
	}
	short := Cylinder(s.thickest(), min(s.length, Slenderness*s.thickest()))
	return max(short, LightForm*s.stem())
}

// mostUnsaid is the heavy end where no shape was said. By one diameter log
// and limb have the same one. A measured stem may carry a limb's brush, but
// no more than the thickest stem that could be a limb at this length.
func (s stick) mostUnsaid() unit.Volume {
	if s.method() == ByCylinder {
		return s.stem()
	}
	limb := min(s.butt, s.length/Slenderness, LimbButts.High)
	return s.stem() + HeavyBrush*min(s.stem(), Cylinder(limb, s.length))
}

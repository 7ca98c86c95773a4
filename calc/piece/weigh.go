package piece

import "heft/calc/unit"

// Weigh returns how heavy the piece may be:
//
//	low    = V_low·ρ_light·(1 − s)
//	likely = V_likely·ρ_green
//	high   = V_high·max(ρ_heavy·(1 + s), ρ_soaked·(1 + t))
//
// in kg, with V the volumes in m³ that the sizes allow, ρ the published
// densities in kg/m³ and s = √Σsᵢ² over the tree, the eye and, where neither
// the species nor a second table is behind the density, the average; t is the
// same over tree and eye for wood with every pore full, where the moisture of
// the tree is not published (else ρ_soaked is 0). It holds
// within Diameters, LimbButts and Lengths.
//
// A log is Cylinder, Frustum or Newton by what was measured; its butt alone
// makes the cylinder on the butt. A limb by its butt alone fills LightForm to
// HeavyForm of that cylinder; on a measured stem it adds up to HeavyBrush. A
// piece of no said shape runs from the lighter of the two to the heavier, and
// is likely a log. A dead piece has its light end at air-dry, its heavy end
// at green, its likely density midway.
//
// The error is an *limits.Missing, *limits.OutOfRange, *limits.Contradiction
// or *wood.Unweighable.
//
// Errors of the method: hollow, rotten, iced or waterlogged pieces, and limbs
// with more brush than stem, may lie outside the range.
//
// Sources: with the formulas and constants named.
func Weigh(p Piece) (Weight, error) {
	if p.Shape == Limb && p.Butt.IsZero() {
		p.Butt, p.Diameter = p.Diameter, unit.Range[unit.Length]{}
	}
	if err := p.check(); err != nil {
		return Weight{}, err
	}
	w := Weight{Spread: make([]Source, 0, 8)}
	low, likely, high := p.volumes(&w)
	light, mean, heavy := p.densities(&w)
	w.Light, w.Green, w.Heavy = light, mean, heavy
	w.Low, w.Likely, w.High = light.Of(low), mean.Of(likely), heavy.Of(high)
	return w, nil
}

// volumes finds what the sizes allow, and notes the method, the balance and
// what the sizes leave open.
func (p *Piece) volumes(w *Weight) (low, likely, high unit.Volume) {
	lo, mid, hi := p.sticks()
	low, likely, high = lo.stem(), mid.stem(), hi.stem()
	w.Method, w.Balance = mid.method(), mid.balance()
	switch {
	case p.Shape == Unsaid:
		low, high = lo.leastUnsaid(), hi.mostUnsaid()
		if low < lo.stem() || high > hi.stem() {
			w.Spread = append(w.Spread, ShapeUnsaid)
		}
	case p.Shape == Limb && w.Method == ByCylinder:
		low, likely, high = LightForm*low, LikelyForm*likely, HeavyForm*high
		w.Method, w.Balance = ByLimbForm, LimbBalance(mid.length)
		w.Spread = append(w.Spread, LimbForm)
	case p.Shape == Limb:
		likely, high = (1+LikelyBrush)*likely, (1+HeavyBrush)*high
		w.Spread = append(w.Spread, Brush)
	}
	if lo != hi {
		w.Spread = append(w.Spread, SaidRange)
	}
	return low, likely, high
}

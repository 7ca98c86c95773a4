package piece

import "heft/calc/unit"

// FrustumBalance is the distance from the butt to the centre of gravity of
// the frustum of a cone:
//
//	x = L/4·(R² + 2·R·r + 3·r²)/(R² + R·r + r²)
//
// with R the radius (or diameter) at the butt, r that at the tip and L the
// length, all in m. It runs from L/4, a full cone, to L/2, a cylinder. It
// holds for the sizes of Frustum and for wood alike from end to end.
//
// Errors: brush, which is not in it, moves the point toward the tip.
//
// Source: standard geometry, the formula from memory; its two limits are
// exact.
func FrustumBalance(butt, tip, length unit.Length) unit.Length {
	R, r := float64(butt), float64(tip)
	return unit.Length(float64(length) / 4 * (R*R + 2*R*r + 3*r*r) / (R*R + R*r + r*r))
}

// NewtonBalance is the distance from the butt to the centre of gravity of a
// log by three diameters: the first moment of the section areas over the
// volume, both by Simpson's rule, which is exact while the area runs as a
// quadratic along the log:
//
//	x = L·(2·A½ + A₁)/(A₀ + 4·A½ + A₁)
//
// in the terms of Newton, in m. It gives L/4 for a cone, L/3 for a
// paraboloid and L/2 for a cylinder. It holds for the sizes of Newton.
//
// Errors: as FrustumBalance.
//
// Source: derived here from Newton's rule.
func NewtonBalance(butt, mid, tip, length unit.Length) unit.Length {
	a0, half, a1 := area(butt), area(mid), area(tip)
	return unit.Length(float64(length) * (2*half + a1) / (a0 + 4*half + a1))
}

// LimbBalance is the distance from the cut to the centre of gravity of a limb
// by its butt diameter alone. A section area that falls as (1 − x/L)^p from
// cut to tip fills the share f = 1/(p+1) of the full cylinder and balances at
//
//	x = L/(p+2) = L·f/(1 + f)
//
// in m: L/4 for a cone (f = 1/3), L/3 for a paraboloid (f = 1/2), L/2 for a
// cylinder (f = 1). With the likely form, f = 0.55 brush included, it is
// 0.355·L. It holds for the sizes of LimbButts and Lengths.
//
// Errors: a limb with its leaves at the very end balances further out, one
// stripped of brush further in: between L/4 and L/2. Published work finds
// the length the best predictor of the point (Dahle et al. 2012), without
// figures to use here.
//
// Source: derived here; f from the weighed branches of LikelyForm.
func LimbBalance(length unit.Length) unit.Length {
	return unit.Length(float64(length) * LikelyForm / (1 + LikelyForm))
}

// BalancePoints are where the balance point may lie, from the cut in m, with
// the point of the likely shape among them:
//
//	a limb, or a piece of no said shape  L/4 to L/2
//	a log by one diameter                0.39·L to L/2
//	a log by two or three                x − L/20 to x + L/20
//
// L/4 is a full cone, L/2 a cylinder, 0.39·L the frustum whose tip is half its
// butt (FrustumBalance). It holds for the sizes of LimbButts and Lengths.
//
// Errors: a limb with its brush at the very end, or a log with a swelling
// there, balances beyond L/2.
//
// Source: geometry; the twentieth is common practice, no source.
func BalancePoints(shape Shape, tapered bool, likely, length unit.Length) unit.Range[unit.Length] {
	half, play := length/2, length/20
	switch {
	case shape == Log && tapered:
		return unit.Range[unit.Length]{Low: likely - play, High: likely + play}
	case shape == Log:
		return unit.Range[unit.Length]{Low: leastLog * length, High: half}
	}
	return unit.Range[unit.Length]{Low: min(likely, length/4), High: max(likely, half)}
}

// leastLog is the share of its length at which a log balances whose tip is
// half as thick as its butt: FrustumBalance(2, 1, 1) is 11/28.
const leastLog = 0.39

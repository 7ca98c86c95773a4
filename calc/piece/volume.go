package piece

import (
	"math"

	"heft/calc/unit"
)

// Cylinder is the volume of a log by one diameter, Huber's rule:
//
//	V = π/4·d²·L
//
// with d the diameter at the middle over bark and L the length, both in m,
// the volume in m³. It holds for the diameters and lengths of Diameters and
// Lengths.
//
// Errors: about −2 % on long sections with the diameter at the middle
// (Goulding 1978); too much with the diameter at the butt, too little with
// that at the tip.
//
// Source: standard forest mensuration.
func Cylinder(d, length unit.Length) unit.Volume {
	return unit.Volume(area(d) * float64(length))
}

// Frustum is the volume of a log by its two end diameters, the frustum of a
// cone:
//
//	V = π/12·L·(D² + D·d + d²)
//
// with D the butt, d the tip and L the length, all in m, the volume in m³. It
// holds for the diameters and lengths of Diameters and Lengths, d ≤ D.
//
// Errors: a bellied log is heavier, one with a flared butt lighter (the
// frustum of a neiloid is about 0.2 % less at the tapers of the printed
// examples).
//
// Source: standard forest mensuration; worked figures of the University of
// Missouri.
func Frustum(butt, tip, length unit.Length) unit.Volume {
	D, d := float64(butt), float64(tip)
	return unit.Volume(math.Pi / 12 * float64(length) * (D*D + D*d + d*d))
}

// Newton is the volume of a log by three diameters:
//
//	V = L/6·(A₀ + 4·A½ + A₁)
//
// with A₀, A½ and A₁ the section areas π/4·d² at the butt, the middle and the
// tip in m², L the length in m, the volume in m³. It holds for the diameters
// and lengths of Diameters and Lengths, tip ≤ mid ≤ butt.
//
// Errors: none for a cylinder, cone, paraboloid or neiloid; small for
// anything between.
//
// Source: standard forest mensuration.
func Newton(butt, mid, tip, length unit.Length) unit.Volume {
	return unit.Volume(float64(length) / 6 * (area(butt) + 4*area(mid) + area(tip)))
}

func area(d unit.Length) float64 { return math.Pi / 4 * float64(d) * float64(d) }

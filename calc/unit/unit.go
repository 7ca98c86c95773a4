package unit

import "math"

// Length is in metres.
type Length float64

// Volume is in cubic metres.
type Volume float64

// Mass is in kilograms.
type Mass float64

// Force is in newtons.
type Force float64

// Density is in kilograms per cubic metre.
type Density float64

// Angle is in radians.
type Angle float64

// Exact by international agreement (NIST Special Publication 811, appendix B):
// the yard is 0.9144 m, the avoirdupois pound 0.45359237 kg, and standard
// gravity 9.80665 m/s².
const (
	Metre      Length = 1
	Centimetre Length = 0.01
	Millimetre Length = 0.001
	Inch       Length = 0.0254
	Foot       Length = 0.3048
	Yard       Length = 0.9144

	CubicFoot Volume = 0.3048 * 0.3048 * 0.3048

	Kilogram Mass = 1
	Tonne    Mass = 1000
	Pound    Mass = 0.45359237

	Newton     Force = 1
	Kilonewton Force = 1000
	PoundForce Force = 0.45359237 * StandardGravity

	PoundPerCubicFoot Density = 0.45359237 / (0.3048 * 0.3048 * 0.3048)

	Radian Angle = 1
	Degree Angle = math.Pi / 180

	// StandardGravity is in m/s².
	StandardGravity = 9.80665
)

// Feet is the length in feet.
func (l Length) Feet() float64 { return float64(l / Foot) }

// Inches is the length in inches.
func (l Length) Inches() float64 { return float64(l / Inch) }

// Pounds is the mass in pounds.
func (m Mass) Pounds() float64 { return float64(m / Pound) }

// Weight is the force of gravity on the mass.
func (m Mass) Weight() Force { return Force(float64(m) * StandardGravity) }

// Held is the mass whose weight is the force.
func (f Force) Held() Mass { return Mass(float64(f) / StandardGravity) }

// Pounds is the force in pounds-force.
func (f Force) Pounds() float64 { return float64(f / PoundForce) }

// Degrees is the angle in degrees.
func (a Angle) Degrees() float64 { return float64(a / Degree) }

// Of is the mass of a volume at this density.
func (d Density) Of(v Volume) Mass { return Mass(float64(d) * float64(v)) }

// Range is a quantity known to lie between two ends; a quantity known to the
// point has them equal.
type Range[T ~float64] struct{ Low, High T }

// Exactly is the range whose two ends are v.
func Exactly[T ~float64](v T) Range[T] { return Range[T]{v, v} }

// Single says whether the two ends are the same.
func (r Range[T]) Single() bool { return r.Low == r.High }

// Middle is half way between the two ends.
func (r Range[T]) Middle() T { return (r.Low + r.High) / 2 }

// IsZero says whether the range was left out: no quantity of a rigging
// question is nought.
func (r Range[T]) IsZero() bool { return r == Range[T]{} }

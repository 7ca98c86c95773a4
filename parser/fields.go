package parser

// dimensionOf says what a field is measured in; a field that is not here is
// counted.
var dimensionOf = map[Field]dimension{
	Diameter: dimLength, ButtDiameter: dimLength, MidDiameter: dimLength, TipDiameter: dimLength,
	Length: dimLength, HitchHeight: dimLength, RopeLength: dimLength, DropHeight: dimLength,
	RunLength: dimLength, BlockHeight: dimLength, Tie: dimLength,
	Weight: dimMass, Limit: dimMass,
	WinchPull: dimForce, RopeBreak: dimForce,
	BlockAngle: dimAngle, LimbAngle: dimAngle,
	Parts: dimRatio,
}

// counted are the fields whose number has no unit.
var counted = map[Field]bool{People: true, Wraps: true}

// takes says whether a measure can be the quantity of a field. A pull is
// often told as the mass it lifts, and a weight as a force.
func takes(f Field, d dimension) bool {
	want := dimensionOf[f]
	if f == Parts {
		return d == dimRatio || d == dimCount
	}
	if want == dimMass || want == dimForce {
		return d == dimMass || d == dimForce
	}
	return want == d
}

// across are the fields that say how thick a piece is.
var across = []Field{Diameter, ButtDiameter, MidDiameter, TipDiameter}

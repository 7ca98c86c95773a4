package parser

// dimensionOf says what a field is measured in; a field that is not here is
// counted.
var dimensionOf = map[Field]dimension{
	Diameter: dimLength, ButtDiameter: dimLength, MidDiameter: dimLength, TipDiameter: dimLength,
	Length: dimLength, HitchHeight: dimLength, RopeLength: dimLength, SecondRope: dimLength, DropHeight: dimLength,
	RunLength: dimLength, BlockBelow: dimLength, BlockHeight: dimLength, Tie: dimLength,
	DrumAway: dimLength, DrumAcross: dimLength, TrunkAcross: dimLength, BlockBehind: dimLength, BlockOut: dimLength, Closed: dimLength,
	LineOut: dimLength, Sideways: dimLength, RopeDiameter: dimLength,
	ObstacleOut: dimLength, ObstacleHeight: dimLength,
	SecondTie: dimLength, SideBranchOut: dimLength, SideBranch: dimMass, LegAngle: dimAngle, SecondLeg: dimAngle,
	Weight: dimMass, Limit: dimMass,
	WinchPull: dimForce, PersonPull: dimForce, RopeBreak: dimForce, RopeWorking: dimForce, BlockBreak: dimForce, BlockWorking: dimForce,
	SlingBreak: dimForce, SlingWorking: dimForce, ConnectorBreak: dimForce, ConnectorWorking: dimForce,
	DrumBreak: dimForce, DrumWorking: dimForce, Payload: dimMass,
	ChokeAngle: dimAngle, DesignFactor: dimRatio,
	BlockAngle: dimAngle, LimbAngle: dimAngle, StartAngle: dimAngle, Turn: dimAngle,
	Parts: dimRatio,
}

// counted are the fields whose number has no unit.
var counted = map[Field]bool{
	People: true, Wraps: true, Efficiency: true, Redirects: true, Legs: true, Lines: true, Strands: true, Alike: true,
}

// mentioned are the fields whose words are often said without a number.
var mentioned = map[Field]bool{RopeLength: true, WinchPull: true, RopeBreak: true, DropHeight: true, RunLength: true}

// mostWraps is how many wraps anybody could mean: "hitch 35 wraps" is a hitch
// and a question about wraps.
const mostWraps = 15

// roundest is the thickest that a number in metres is taken for a diameter
// rather than a length; thickest is the most that any diameter is.
const (
	roundest = 1.2
	thickest = 3

	mostParts     = 20 // "una troza de 2200 con partes de línea" counts none
	mostPeople    = 30 // nor does "he's about 160 and holding 600 lb"
	manyRedirects = 8  // more than these is no count of redirects
)

// takes says whether a number can be the quantity of a field. A pull is often
// told as the mass it lifts, and a weight as a force. No hitch and no rope is
// as short as a number told in inches, and no piece as thick as a height.
func takes(f Field, fig *figure) bool {
	if fig.elsewhere || fig.pair || fig.falling || fig.rope || fig.told != "" {
		return false
	}
	if fig.sure != "" {
		return f == fig.sure && (fig.dim != dimCount || dimensionOf[f] == dimRatio)
	}
	d, want := fig.dim, dimensionOf[f]
	switch {
	case f == Parts && d == dimCount && fig.high > mostParts, f == People && fig.high > mostPeople:
		return false
	case f == Parts || f == DesignFactor:
		return d == dimRatio || d == dimCount
	case want == dimMass || want == dimForce:
		return d == dimMass || d == dimForce
	case want != d, f == Wraps && fig.high > mostWraps, f == Redirects && fig.high > manyRedirects:
		return false
	case thickness(f):
		return fig.high <= thickest
	case f == HitchHeight || f == RopeLength:
		return !fig.unit.fine || fig.high > roundest
	}
	return true
}

// across are the fields that say how thick a piece is.
var across = []Field{Diameter, ButtDiameter, MidDiameter, TipDiameter}

func thickness(f Field) bool {
	return f == Diameter || f == ButtDiameter || f == MidDiameter || f == TipDiameter
}

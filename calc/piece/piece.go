package piece

import (
	"heft/calc/unit"
	"heft/calc/wood"
)

// Shape says what is being cut.
type Shape int

// The shapes.
const (
	Unsaid Shape = iota
	Log          // a length of stem or bough, brush off
	Limb         // from the cut to the tip, or cut back, brush on
)

// Condition says whether the tree was alive.
type Condition int

// The conditions. Green is what a piece is taken for unless it is said to be
// dead: it is the heavier.
const (
	Green Condition = iota
	Dead
)

// Piece is what the crew said. A zero range was not said. The low ends of
// the ranges are one piece, and the high ends another: each has to be
// possible by itself.
//
// Diameter is the one diameter of a log, or of a shape unsaid. The single
// diameter of a limb is at the cut, over bark: it belongs in Butt, and a
// limb's Diameter is taken for it.
type Piece struct {
	Wood      wood.Row
	Shape     Shape
	Condition Condition

	Diameter, Butt, Mid, Tip, Length unit.Range[unit.Length]
}

// Weight is how heavy the piece may be.
type Weight struct {
	Low, Likely, High unit.Mass
	Spread            []Source // what holds the ends apart
	Method            Method
	Light, Green      unit.Density // behind Low and Likely; 0 where the crew gave the weight
	Heavy             unit.Density // behind High
	Balance           unit.Length  // from the butt to the centre of gravity of the likely shape
}

// Method names the rule that gave the volume.
type Method string

// The methods.
const (
	ByCylinder Method = "cylinder"  // one diameter (Huber)
	ByFrustum  Method = "frustum"   // butt and tip
	ByNewton   Method = "newton"    // butt, middle and tip
	ByLimbForm Method = "limb-form" // a limb's butt alone
	ByCrew     Method = "given"     // not calculated: the crew gave the weight
)

// Source names one cause of the spread between the ends of a weight.
type Source string

// The causes.
const (
	TreeToTree     Source = "tree-to-tree"     // one tree against the mean of its species
	ByEye          Source = "by-eye"           // sizes judged from the ground
	GenusAverage   Source = "genus-average"    // no figure for the species itself
	GroupDefault   Source = "group-default"    // no figure for the genus either
	NoMoisture     Source = "no-moisture"      // the wood was measured, and not how wet it is
	SecondTable    Source = "second-table"     // two published means differ
	AnyOfGroup     Source = "any-of-group"     // only hardwood or softwood was said
	SpeciesOfGenus Source = "species-of-genus" // only the genus was named
	SaidRange      Source = "said-range"       // the crew gave a range
	LimbForm       Source = "limb-form"        // how fast it tapers, and its brush
	Brush          Source = "brush"            // side branches and leaves on a measured stem
	ShapeUnsaid    Source = "shape-unsaid"     // log or limb
	MaybeDry       Source = "maybe-dry"        // a dead piece may be dry or soaked
	Given          Source = "given"            // the crew's own figure
)

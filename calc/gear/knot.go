package gear

import (
	"slices"

	"heft/calc/unit"
)

// Knot names a knot, hitch or splice. None is a rope without one.
type Knot string

// The knots.
const (
	None           Knot = ""
	Bowline        Knot = "bowline"
	CloveHitch     Knot = "clove-hitch"
	TimberHitch    Knot = "timber-hitch"
	TwoHalfHitches Knot = "two-half-hitches"
	EyeSplice      Knot = "eye-splice"
	SquareKnot     Knot = "square-knot"
	OverhandKnot   Knot = "overhand-knot"
	FigureEight    Knot = "figure-eight"
	AnyOtherKnot   Knot = "any-other"
	UnlistedHitch  Knot = "unlisted" // named, and printed nowhere by itself: see Keeps
)

// Where the shares were published. The climbing notes are weak.
const (
	cordageTable  = "a cordage table of 1946, natural fibre"
	climbingNotes = "climbing notes and " + cordageTable
	cordageGuides = "Cordage Institute CI 1401, a paper of Pettigrew's, and the least of " + cordageTable
)

// Retention is what a knot leaves of the strength of its rope, from the least
// published share to the most.
type Retention struct {
	Knot   Knot
	Kept   unit.Range[float64]
	Source string
}

// retentions, the last of them for any knot not listed.
var retentions = []Retention{
	{Bowline, unit.Range[float64]{Low: 0.60, High: 0.75}, climbingNotes},
	{CloveHitch, unit.Range[float64]{Low: 0.60, High: 0.75}, climbingNotes},
	{TimberHitch, unit.Exactly(0.70), cordageTable},
	{TwoHalfHitches, unit.Exactly(0.75), cordageTable},
	{EyeSplice, unit.Exactly(0.95), cordageTable},
	{SquareKnot, unit.Exactly(0.45), cordageTable},
	{OverhandKnot, unit.Exactly(0.45), cordageTable},
	{FigureEight, unit.Range[float64]{Low: 0.48, High: 0.80}, climbingNotes},
	{AnyOtherKnot, unit.Range[float64]{Low: 0.45, High: 0.80}, cordageGuides},
}

// Knots returns the table of what knots leave. The slice is the caller's.
func Knots() []Retention { return slices.Clone(retentions) }

// Keeps returns what a knot leaves of the strength of its rope; a knot that
// was not published on its own leaves what the worst of all does. Plan on the
// low end.
//
// Errors: sources disagree by a third, and neither rope nor knot is like
// another. Four hitches for tying blocks broke at much the same load (Kane
// 2012).
func Keeps(k Knot) Retention {
	if k == None {
		return Retention{Kept: unit.Exactly(1.0)}
	}
	for _, r := range retentions {
		if r.Knot == k {
			return r
		}
	}
	return retentions[len(retentions)-1]
}

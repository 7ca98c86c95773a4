package balance

import (
	"math"

	"heft/calc/limits"
	"heft/calc/unit"
)

// Where a tag line's method holds.
var (
	// Lines are the rope from the block to the load.
	Lines = limits.Range[unit.Length]{Low: 0.5, High: 60, Why: slip} // common practice, no source
	// Sideways are how far a load is pulled out of plumb.
	Sideways = limits.Range[unit.Length]{Low: 0, High: 60, Why: slip} // common practice, no source
	// Below are the angles of a tag line below the horizontal, in degrees;
	// negative runs up from the load.
	Below = limits.Range[float64]{Low: -60, High: 60,
		Why: "a tag line as steep as that lifts or holds down the load more than it pulls it aside"} // common practice, no source
)

// lean is the greatest angle, in degrees, of the line out of plumb, and of it
// and the tag line together: there the pull is up to four times the weight
// and a degree changes it by 7 % (common practice, no source).
const lean = 75

// Tag is a load held aside.
type Tag struct {
	Pull unit.Force // of the tag line
	Line unit.Force // of the rope that the load hangs on
}

// TagLine is what holds a hanging load aside:
//
//	sin θ = x/l
//	F = W·sin θ/cos(θ + β),  T = W·cos β/cos(θ + β)
//
// in N, with x the distance out of plumb and l the rope from block to load in
// m, β the angle of the tag line below the horizontal, F the pull on the tag
// line and T that of the rope. A level tag line pulls W·x/√(l² − x²). It
// holds within Weights, Lines, Sideways and Below, for θ and θ + β up to 75
// degrees and a load at rest.
//
// The error is a *limits.OutOfRange or a *limits.Contradiction.
//
// Errors: a load let go swings: see package swing. Sag of the tag line and
// wind are not in it.
//
// Source: statics.
func TagLine(weight unit.Mass, line, sideways unit.Length, below unit.Angle) (Tag, error) {
	if err := checkTag(weight, line, sideways, below); err != nil {
		return Tag{}, err
	}
	w, theta, beta := float64(weight.Weight()), math.Asin(float64(sideways/line)), float64(below)
	together := math.Cos(theta + beta)
	return Tag{
		Pull: unit.Force(w * math.Sin(theta) / together),
		Line: unit.Force(w * math.Cos(beta) / together),
	}, nil
}

func checkTag(weight unit.Mass, line, sideways unit.Length, below unit.Angle) error {
	if err := Weights.Check(limits.Weight, weight); err != nil {
		return err
	}
	if err := Lines.Check(limits.LineLength, line); err != nil {
		return err
	}
	if err := Sideways.Check(limits.Sideways, sideways); err != nil {
		return err
	}
	if err := Below.Check(limits.Angle, below.Degrees()); err != nil {
		return err
	}
	farthest := line * unit.Length(math.Sin(float64(min(lean*unit.Degree, lean*unit.Degree-below))))
	if limits.Above(sideways, farthest) {
		return &limits.Contradiction{First: limits.Sideways, Second: limits.LineLength,
			Got: float64(sideways), Limit: float64(farthest), Why: "so far aside the lines pull many times the load; use a longer line or another block"}
	}
	return nil
}

package places

import (
	"heft/parser"
	"heft/parser/reading"
)

// mentioned are the fields whose words are often said without a number.
var mentioned = map[parser.Field]bool{parser.RopeLength: true, parser.WinchPull: true, parser.RopeBreak: true, parser.DropHeight: true, parser.RunLength: true}

// takes says whether a number can be the quantity of a field. A pull is often
// told as the mass it lifts, and a weight as a force. No hitch and no rope is
// as short as a number told in inches, and no piece as thick as a height.
func takes(f parser.Field, fig *reading.Figure) bool {
	if fig.Elsewhere || fig.Pair || fig.Falling || fig.Rope || fig.Told != "" {
		return false
	}
	if fig.Sure != "" {
		return f == fig.Sure && (fig.Dim != parser.DimCount || parser.DimensionOf[f] == parser.DimRatio || f == parser.People)
	}
	d, want := fig.Dim, parser.DimensionOf[f]
	switch {
	case f == parser.Parts && d == parser.DimCount && fig.High > reading.MostParts, f == parser.People && fig.High > reading.MostPeople:
		return false
	case f == parser.Parts || f == parser.DesignFactor:
		return d == parser.DimRatio || d == parser.DimCount
	case want == parser.DimMass || want == parser.DimForce:
		return d == parser.DimMass || d == parser.DimForce
	case want != d, f == parser.Wraps && fig.High > reading.MostWraps, f == parser.Redirects && fig.High > reading.ManyRedirects:
		return false
	case parser.Thickness(f):
		return fig.High <= reading.Thickest
	case f == parser.HitchHeight || f == parser.RopeLength:
		return !fig.Unit.Fine || fig.High > reading.Roundest
	}
	return true
}

package reader

import (
	"strings"

	"heft/parser"
	"heft/parser/lines"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
)

// A number without a unit has one reading where its place is told and the
// other numbers of the message leave that place a single unit: "16 at the butt"
// beside "12 ft" is in inches, "hitched at 35" beside them in feet.

// bareUnit is the unit of the bare number at i, nil where more than one, or
// none, is left.
func bareUnit(rd *reading.Reading, i int) *scan.UnitWord {
	fig := rd.Elems[i].Fig
	if fig.Low <= 0 || fig.Pair || fig.Falling && !sizes.TapersBare(rd, i) || strings.ContainsAny(fig.Words(rd.Text), "/") {
		return nil
	}
	if sizes.Counts(rd, i) {
		return nil
	}
	if sizes.Labelled(rd, i) {
		return sizes.CapacityUnit(rd, i)
	}
	if sizes.IsLoad(rd, i) {
		return sizes.LoadUnit(rd, i)
	}
	f := sizedAs(rd, i)
	switch parser.DimensionOf[f] {
	case parser.DimMass, parser.DimForce:
		if sizes.MassTold(rd, i) || f == parser.Limit || f == parser.WinchPull || f == parser.Payload {
			if u := sizes.CapacityUnit(rd, i); u != nil {
				return u
			}
		}
		return sizes.Kilograms(rd, i, f)
	case parser.DimLength:
		if f == parser.RopeDiameter {
			return scan.Millimetre
		}
		if u := lines.LengthUnit(rd, i, f); u != nil {
			return u
		}
		return sizes.ByPounds(rd, i, f)
	}
	return nil
}

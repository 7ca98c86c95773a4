package reader

import (
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/lines"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
	"heft/parser/stops"
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
	if sizes.MassBeside(rd, i-1, i+1) == parser.Payload && fig.Low >= stops.LeastLoad {
		return sizes.CapacityUnit(rd, i) // "7k trailer"
	}
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

// putsRight says whether a message puts one number right, and has no word for what that is
// of: "no wait 7 ft, he moved it down".
func putsRight(rd *reading.Reading) bool {
	at := -1
	for i, e := range rd.Elems {
		if e.Fig == nil {
			continue
		}
		if at >= 0 {
			return false
		}
		at = i
	}
	return rd.PutRight && at >= 0 && rd.Elems[at].Fig.Told == "" && sizedAs(rd, at) == ""
}

// ofNext says whether a message speaks of the piece after this one: "ok next lump down is 46".
func ofNext(rd *reading.Reading) bool {
	return slices.ContainsFunc(scan.SplitWords(rd.Text), func(w string) bool { return rd.In.Cued(strings.ToLower(w), lexicon.CueNextPiece) })
}

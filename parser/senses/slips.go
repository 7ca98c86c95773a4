package senses

import (
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
)

// A rope that slipped on the drum, or a piece that ran away, tells that the wraps
// it had were too few, whatever the figures say of them.

// Slips notes it where the message is about wraps. Where it names a sling or a
// knot, that could be what slipped; where nothing is lowered, it says no more than
// that something happened.
func Slips(rd *reading.Reading) {
	onDrum := gear.AsksFor(rd, parser.AskLower) || rd.Worded(parser.Wraps)
	for i := 0; i < len(rd.Elems); i++ {
		switch {
		case !rd.TermAt(i).Slips || tiedOn(rd):
		case onDrum:
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Note: parser.Slipped} })
		default:
			rd.Pass(i, i+1)
			i--
		}
	}
}

// tiedOn says whether a sling, a connector or a knot is named.
func tiedOn(rd *reading.Reading) bool {
	return gear.SlingNamed(rd) || rd.AnyAt(func(i int) bool {
		return gear.Part(rd.Elems[i]) == lexicon.PartConnector || strings.HasSuffix(rd.TermAt(i).Note, "hitch")
	})
}

// Tried passes over the wraps that are asked about without their word where
// others slipped, "do we go 4 or 5": how many to start with is answered.
func Tried(rd *reading.Reading) {
	if !rd.AnyAt(func(i int) bool { return rd.TermAt(i).Note == parser.Slipped }) || !rd.Worded(parser.Wraps) {
		return
	}
	for i := 0; i < len(rd.Elems); i++ {
		fig := rd.Elems[i].Fig
		tries := rd.Cued(rd.At(i-1), lexicon.CueTries) || rd.At(i-1).Pause > 0 && rd.At(i+1).Pause > 2
		if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.High > reading.MostWraps || !tries || !sizes.Alone(rd, i) && !rd.Cued(rd.At(i+1), lexicon.CueTries) {
			continue
		}
		rd.Pass(i, i+1)
		i--
	}
}

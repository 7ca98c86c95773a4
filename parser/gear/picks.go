package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Picks reads "a 900 lb pick" beside gear as a piece of that weight: it asks for no lift,
// and the mass is no strength of the block, whatever stands between them. What a sling is
// "good for 900 lb picks" tells its strength.
func Picks(rd *reading.Reading) {
	if !rd.AnyAt(func(i int) bool { return Part(rd.Elems[i]) != "" }) {
		return
	}
	for i, e := range rd.Elems {
		if e.Fig != nil && e.Fig.Unit != nil && e.Fig.Dim == parser.DimMass && e.Fig.Told == "" && !rd.TermAt(i-1).Bears && !rd.At(i-1).Marked(lexicon.MarkRating) && rd.Cued(rd.At(i+1), lexicon.CuePick) {
			rd.Elems[i+1].Term = &scan.Term{Unnamed: true}
			e.Fig.Sure = parser.Weight
		}
	}
}

package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// What a crew makes of a break strength by a factor is its own figure, "10,400 lb break,
// working load at 10:1 is 1040 right?": it is no weight of a piece, nor a label's. The answer
// works it out, and the figure is said to be passed over.

// FactorGives passes over such figures where a break strength is told.
func FactorGives(rd *reading.Reading) {
	breaks := func(k int) bool { return Strength(rd.Elems[k]) == lexicon.Breaking }
	if !rd.AnyAt(breaks) {
		return
	}
	for i := range rd.Elems {
		at := rd.Past(i+1, +1, lexicon.MarkAt|lexicon.MarkArticle)
		f := rd.At(at).Fig
		j := rd.Past(at+1, +1, lexicon.MarkIs)
		if Strength(rd.Elems[i]) != lexicon.Working || f == nil || f.Dim != parser.DimRatio || j == at+1 || rd.At(j).Fig == nil || !Rates(rd.Elems[j].Fig) || rd.At(j+1).Piece() {
			continue
		}
		f.Sure = parser.DesignFactor
		rd.Elems[i].Spent = true
		rd.Pass(j, j+1)
		return
	}
}

package turning

import (
	"math"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
)

// A small whole number can count what the question is not about: "hang it from two
// trees", "i need 3 scenarios". It is passed over and said back.

// CountedThings passes over such numbers.
func CountedThings(rd *reading.Reading) {
	const most = 12
	for i := range rd.Elems {
		fig := rd.Elems[i].Fig
		if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.Low != fig.High || fig.Low != math.Trunc(fig.Low) || fig.Low < 1 || fig.Low > most {
			continue
		}
		switch {
		case rd.Cued(rd.At(i+1), lexicon.CueThings) && rd.At(i+2).Fig == nil:
			Blank(rd, i, i+1)
		case peopleOnTackle(rd, i):
			places.Claim(rd, i, parser.People)
		}
	}
}

// peopleOnTackle reads "two on a 5:1": those who pull.
func peopleOnTackle(rd *reading.Reading, i int) bool {
	const most = 8
	j := rd.Past(i+2, +1, lexicon.MarkArticle)
	ratio := rd.At(j).Fig
	if rd.Elems[i].Fig.Low > most || !rd.At(i+1).Marked(lexicon.MarkIn) || ratio == nil || ratio.Dim != parser.DimRatio || rd.AnyAt(func(k int) bool { return rd.Elems[k].Plays(parser.People) && rd.At(k-1).Fig != nil }) {
		return false
	}
	return i == 0 || rd.At(i-1).Pause > 0 || rd.At(i-1).Marked(lexicon.MarkAnd|lexicon.MarkWhere) || rd.Cued(rd.At(i-1), lexicon.CueOwns)
}

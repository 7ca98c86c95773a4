package turning

import (
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// How much it rained is no size of a piece, and says how wet it is no better than "rain"
// does: "we had two inches of rain", "llovieron 50 mm".

// Rainfall passes over it. The rain itself stays told.
func Rainfall(rd *reading.Reading) {
	for i := range rd.Elems {
		if !rd.Elems[i].Fig.Short() {
			continue
		}
		if k := rd.Past(i+1, +1, lexicon.MarkRelation|lexicon.MarkMade|lexicon.MarkArticle|lexicon.MarkAt); k > i+1 && rd.Cued(rd.At(k), lexicon.CueRainfall) || rd.Cued(rd.At(i+1), lexicon.CueRainfall) {
			rd.Pass(i, k)
			return
		}
		if k := rd.Back(i - 1); rd.Cued(rd.At(k), lexicon.CueRained) {
			rd.Pass(i, i+1)
			return
		}
	}
}

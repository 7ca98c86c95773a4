package turning

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// PerVolume passes over a weight that is told by the cubic foot or metre, "62 lb per cubic
// foot": it is no piece's, and what we count with is said instead.
func PerVolume(rd *reading.Reading) {
	for i := range rd.Elems {
		if rd.TermAt(i).Note != parser.NotePerVolume {
			continue
		}
		k := i - 1
		for k > i-3 && rd.Cued(rd.At(k), lexicon.CueByThe) {
			k-- // "60 lb to the cubic foot"
		}
		if gear.Heavy(rd, k) {
			Blank(rd, k, k+1)
		}
	}
}

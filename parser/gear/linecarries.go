package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// LineCarries understands "the rope turns through 90 degrees and carries 550 lb": said of
// the rope, where it is asked what a block of its path sees, it tells the load in the line.
// Said of gear, or of what "it" names, it may be a strength, and is asked about.
func LineCarries(rd *reading.Reading) {
	if !AsksFor(rd, parser.AskBlockLoad) && !rd.AnyAt(func(i int) bool { return parser.Redirecting(rd.TermAt(i).Block) }) {
		return
	}
	for i := range rd.Elems {
		if rd.TermAt(i).Ask != parser.Unknown || !rd.Cued(rd.Elems[i], lexicon.CueCarriesLoad) || !Heavy(rd, rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkBound)) {
			continue
		}
		if ropeCarries(rd, i) {
			rd.Alter(i, func(t *scan.Term) { t.Ask, t.Own = "", false })
		}
	}
}

// ropeCarries says whether the rope is what carries at i: named right before, or at the
// head of the clause that "and" goes on with.
func ropeCarries(rd *reading.Reading, i int) bool {
	rope := func(k int) bool {
		return Part(rd.At(k)) == lexicon.PartRope || rd.Cued(rd.At(k), lexicon.CueRopeTurns)
	}
	k := rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkAdverb)
	if !rd.At(k).Marked(lexicon.MarkAnd) {
		return rope(k)
	}
	for k--; k >= 0 && rd.At(k).Pause == 0; k-- {
		switch {
		case rope(k):
			return true
		case Part(rd.At(k)) != "", rd.At(k).Piece(), rd.At(k).Fig != nil && Rates(rd.At(k).Fig):
			return false
		}
	}
	return false
}

package turning

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Crews part from the last piece in passing: "forget the last one", "longer one
// now". Where a whole piece is told behind such words, nothing hangs on them;
// elsewhere they could take back what this very message tells, or mean another
// piece than the one of before, and are asked about.

// FreshPieces passes over such words before a tree and the sizes of a piece, and "thicker
// one now" before the thickness that is another.
func FreshPieces(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if e.Fig != nil || rd.TermAt(i).Tree != nil || e.Piece() && !rd.TermAt(i).Fresh {
			return
		}
		if next := rd.TermAt(i).Fresh && NextSize(rd, i); next || rd.TermAt(i).Fresh && tellsPiece(rd) {
			if next {
				TellNextSize(rd, i)
			}
			rd.Pass(i, i+1)
			return
		}
	}
}

// tellsPiece says whether the message names one tree and tells two lengths.
func tellsPiece(rd *reading.Reading) bool {
	lengths := 0
	for _, e := range rd.Elems {
		if e.Fig != nil && (e.Fig.Dim == parser.DimLength || e.Fig.Pair) {
			lengths++
		}
	}
	return lengths > 1 && len(places.TreesIn(rd, 0, len(rd.Elems))) == 1
}

// NeedMore passes over the bound in "do we need more than 3 wraps?" and "can we
// get away with less than 3 wraps": how many it takes answers both.
func NeedMore(rd *reading.Reading) {
	for i := 1; i < len(rd.Elems); i++ {
		fig := rd.At(i + 1).Fig
		if !rd.Elems[i].Marked(lexicon.MarkBound) || fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.Pair {
			continue
		}
		if rd.At(i+2).Plays(parser.Wraps) && asksNeed(rd, i-1) {
			rd.Pass(i, i+2)
		}
	}
}

// asksNeed says whether the word at i asks what it takes, in a message that begins
// with a question: "will 600 lb need".
func asksNeed(rd *reading.Reading, i int) bool {
	word, _ := scan.NextWord(rd.Text)
	return rd.In.Cued(word, lexicon.CueAsking) && rd.Cued(rd.At(i), lexicon.CueNeeds)
}

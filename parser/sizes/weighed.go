package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// A mass that stands right behind the piece, "piece is around 500 lb", or behind the word
// that holds it fast, "snubbing 80 kg", is what it weighs, whatever gear is rated beside it.

// Weighed finds such a weight, where it is the only one.
func Weighed(rd *reading.Reading) {
	at := rd.Only(rd.Is(weighsSo)) // two of them are two pieces
	other := func(k int) bool {
		return k != at && gear.Heavy(rd, k) && (rd.At(k+1).Piece() || rd.TermAt(k+1).Unnamed)
	}
	if at >= 0 && !rd.AnyAt(other) {
		rd.Elems[at].Fig.Told, rd.Elems[at].Fig.Sure = parser.Weight, parser.Weight
	}
}

// weighsSo says whether the number at i is a mass that ends its breath, of which no
// strength is told, and which the piece or a word for holding it fast leads to.
func weighsSo(rd *reading.Reading, i int) bool {
	fig, next := rd.Elems[i].Fig, rd.At(i+1)
	if fig == nil || fig.Dim != parser.DimMass || fig.Pair || fig.Falling || fig.Told != "" || fig.Sure != "" || fig.Claimed != "" {
		return false
	}
	if rd.Cued(rd.At(i-1), lexicon.CueLetsDown) && rd.Cued(next, lexicon.CueDown) {
		return true // "we let 450 lb down slowly"
	}
	if s, _ := gear.StrengthBeside(rd, i-1, i+1); s != "" || !rd.EndsBreath(i+1) && !next.Marked(lexicon.MarkAnd) && !next.Polite() {
		return false
	}
	return rd.TermAt(i-1).Note == parser.Snubbed || behindPiece(rd, i) && rd.AnyAt(func(k int) bool { return gear.Strength(rd.Elems[k]) != "" })
}

// behindPiece says whether nothing but "is" and "about" stands between the piece, the
// first thing that its breath tells, and the number at i: of "the most a piece", "no log"
// and "for a log" it would be another.
func behindPiece(rd *reading.Reading, i int) bool {
	k := i - 1
	for rd.At(k).Marked(lexicon.MarkIs) && !rd.At(k).Marked(lexicon.MarkAt) && !rd.At(k).Marked(lexicon.MarkBound) || rd.TermAt(k).Note == "about" {
		k--
	}
	if rd.TermAt(k).Shape == "" && !rd.TermAt(k).Unnamed || rd.At(k).Marked(lexicon.MarkStanding) {
		return false
	}
	k = rd.Past(k-1, -1, lexicon.MarkArticle|lexicon.MarkPronoun)
	return k < 0 || rd.At(k).Pause > 0
}

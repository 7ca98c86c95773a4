package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// PeakTold takes a peak that is told beside strengths for the pull in the line that it
// was: "shock load came out at 3100 lb, rope 20,500 lb break". Where a fall or a piece is
// told as well, the peak is what is asked for.
func PeakTold(rd *reading.Reading) {
	falls := func(i int) bool { return rd.Elems[i].Plays(parser.DropHeight) || rd.Elems[i].Plays(parser.RunLength) }
	rated := func(i int) bool { return Strength(rd.Elems[i]) != "" }
	if rd.AnyAt(falls) || !rd.AnyAt(rated) {
		return
	}
	for i := range rd.Elems {
		if !unrated(rd, i) || rd.At(i+1).Piece() || rd.AnyAt(func(k int) bool { return k != i && unrated(rd, k) }) {
			continue
		}
		if at := peakBefore(rd, i); at >= 0 {
			rd.Elems[i].Fig.Told, rd.Elems[i].Fig.Sure = parser.Weight, parser.Weight
			rd.Alter(at, func(t *scan.Term) { *t = scan.Term{Note: parser.NoteLinePeak, Intent: parser.AskGear} })
		}
	}
}

// unrated says whether the number at i is a load, and no strength is told of it.
func unrated(rd *reading.Reading, i int) bool {
	if !Heavy(rd, i) || rd.Elems[i].Fig.Told != "" {
		return false
	}
	s, _ := StrengthBeside(rd, i-1, i+1)
	return s == ""
}

// peakBefore finds the words for a peak that lead to the number at i, -1 for none.
func peakBefore(rd *reading.Reading, i int) int {
	const most = 4
	for k := i - 1; k >= 0 && i-k <= most; k-- {
		e := rd.Elems[k]
		switch {
		case rd.Cued(e, lexicon.CuePeak):
			return k
		case !e.Marked(lexicon.MarkIs|lexicon.MarkAt|lexicon.MarkIn|lexicon.MarkMade|lexicon.MarkRelation) && !rd.Cued(e, lexicon.CueOut) && !e.Polite() && rd.TermAt(k).Note != "about" && !rd.Colon(k):
			return -1
		}
	}
	return -1
}

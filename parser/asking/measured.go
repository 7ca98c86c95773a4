package asking

import (
	"slices"
	"strings"
	"unicode"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/stops"
	"heft/parser/turning"
)

// An unknown word right behind a length names what is so long: "4 wraps on an 8 in
// whatsit". Without the word the number would be the piece's, so both are asked about as
// one, and left out as one. So are a length behind that, "half inch whatsit 150 ft", and
// the wraps of a knot that grips a rope, which are none on the drum.

// MeasuredUnknown takes such lengths with their unknown words.
func MeasuredUnknown(rd *reading.Reading, asks []*parser.Ask) {
	for _, a := range asks {
		if i := measuredBy(rd, a); i >= 0 {
			a.Start = rd.Elems[i].Start
			a.Words, a.Measured = rd.Text[a.Start:a.End], true
			rd.Elems = slices.Delete(rd.Elems, i, i+1)
			if fig := rd.At(i).Fig; fig.Far() && fig.Told == "" && rd.EndsBreath(i+1) && strings.TrimSpace(rd.Text[a.End:fig.Start]) == "" {
				takeAlong(rd, a, i, i+1)
			}
		}
		if from, to := gripWraps(rd, a); to > from {
			takeAlong(rd, a, from, to)
		}
	}
}

// takeAlong makes elements part of the unknown words that they tell of.
func takeAlong(rd *reading.Reading, a *parser.Ask, from, to int) {
	a.Start, a.End = min(a.Start, rd.Elems[from].Start), max(a.End, rd.Elems[to-1].End)
	a.Words, a.Measured = rd.Text[a.Start:a.End], true
	rd.Elems = slices.Delete(rd.Elems, from, to)
}

// gripWraps is where the wraps of an unknown knot that grips a rope are told.
func gripWraps(rd *reading.Reading, a *parser.Ask) (from, to int) {
	if a.Kind != parser.Unknown || !rd.CuedAs(a.Words, lexicon.CueGripKnot) {
		return 0, 0
	}
	prev, next, _ := stops.Around(rd, a)
	return turning.WrapsOfKnot(rd, prev, next)
}

// measuredBy is the place of the length right before an unknown word that names no piece
// and stands before none, -1 for none.
func measuredBy(rd *reading.Reading, a *parser.Ask) int {
	if a.Kind != parser.Unknown || strings.ContainsAny(a.Words, "0123456789") || !strings.ContainsFunc(a.Words, unicode.IsLetter) {
		return -1
	}
	i, next, _ := stops.Around(rd, a)
	fig := rd.At(i).Fig
	if fig == nil || fig.Dim != parser.DimLength || fig.Told != "" || fig.Sure != "" || fig.Claimed != "" || strings.TrimSpace(rd.Text[fig.End:a.Start]) != "" {
		return -1
	}
	if rd.At(i-1).Looks(lexicon.After) || rd.At(i-1).Cross || rd.At(i-1).Marked(lexicon.MarkAt) || rd.At(i-1).Fig != nil || rd.At(next).Looks(lexicon.Before) {
		return -1 // it has words of its own: "hitched at 30 ft …"
	}
	if rd.At(next).Fig != nil && !rd.AnyAt(func(k int) bool { return rd.TermAt(k).Tree != nil }) || turning.LikeStop(rd, a) != "" {
		return -1 // it may be the tree, "16 in … 10 ft", or a danger
	}
	if k := rd.Past(next, +1, lexicon.MarkMade|lexicon.MarkRelation|lexicon.MarkArticle|lexicon.MarkAdjective); rd.At(k).Piece() || rd.TermAt(k).Tree != nil {
		return -1 // "a 14 in … limb", "8 ft … of red oak"
	}
	return i
}

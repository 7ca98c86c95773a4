package stops

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// Who is told to pull holds the rope, and hangs on none: "how hard does mike have to
// pull, he weighs 150 lb".

// someonePulls says whether somebody is named who pulls, and nobody whom that pulls up.
func someonePulls(rd *reading.Reading) bool {
	return rd.AnyAt(func(i int) bool { return SomeonePulls(rd, i) })
}

// SomeonePulls says whether the word at i is what somebody does who is named beside it: "mike
// has to pull", "tiene que jalar Lupe".
func SomeonePulls(rd *reading.Reading, i int) bool {
	return pullerBefore(rd, i) || pullerBehind(rd, i+1)
}

// pullerBefore reads "mike has to pull" at its verb: behind that nothing stands that it
// could pull.
func pullerBefore(rd *reading.Reading, i int) bool {
	if !rd.TermAt(i).Lifts || !rd.Cued(rd.At(i), lexicon.CueByHand) || !rd.EndsBreath(i+1) {
		return false
	}
	k := i - 1
	for k >= 0 && rd.At(k).Pause == 0 && rd.At(k).Fig == nil && !rd.At(k).Piece() && !Person(rd, k) && !rd.TermAt(k).Lifts {
		k--
	}
	return Person(rd, k) && !rd.TermAt(k-1).Lifts
}

// pullerBehind reads "tiene que jalar Lupe" at who does: whoever is pulled stands behind
// an "a" there.
func pullerBehind(rd *reading.Reading, i int) bool {
	return Person(rd, i) && rd.TypedBefore(i, lexicon.CueMustPull)
}

// pullersBodies passes over what somebody weighs who is told to pull: "he weighs 150 lb".
// What "weighs 150 lb" alone may be the piece.
func pullersBodies(rd *reading.Reading) {
	if !someonePulls(rd) {
		return
	}
	for i := range rd.Elems {
		fig, k := rd.Elems[i].Fig, rd.Back(i-1)
		mass := fig != nil && fig.Dim == parser.DimMass && fig.Low >= Lightest && fig.High <= heaviest
		his := rd.TermAt(k).Human && (rd.At(k).Marked(lexicon.MarkPlace) || rd.At(k).Marked(lexicon.MarkPronoun) && rd.At(i-1).Plays(parser.Weight))
		if mass && his && weightEnds(rd, i+1) && !rd.At(i+1).Piece() {
			rd.Pass(k, i+1)
			return
		}
	}
}

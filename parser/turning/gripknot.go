package turning

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// GripKnots passes over the wraps of a knot that grips another rope, with the words of that
// knot where they are only talk: "3 wrap prusik on the tail". They are none on the drum.
func GripKnots(rd *reading.Reading) {
	for i := 0; i < len(rd.Elems); i++ {
		if !rd.Cued(rd.Elems[i], lexicon.CueGripKnot) {
			continue
		}
		if from, to := WrapsOfKnot(rd, i-1, i+1); to > from {
			rd.Pass(min(from, i), max(to, i+1))
		}
	}
}

// WrapsOfKnot is where the wraps of a knot are told between the elements right before and
// right behind it, "prusik with 3 wraps", "3 wrap prusik"; nowhere where they go on to the
// drum.
func WrapsOfKnot(rd *reading.Reading, prev, next int) (from, to int) {
	wraps := func(i int) bool { return rd.At(i).Fig != nil && rd.At(i+1).Plays(parser.Wraps) }
	if wraps(prev - 1) {
		return prev - 1, prev + 1
	}
	at := rd.Past(next, +1, lexicon.MarkArticle|lexicon.MarkIs|lexicon.MarkMade)
	if rd.Cued(rd.At(at), lexicon.CueHaving) {
		at++
	}
	if wraps(at) && !rd.At(at+2).Marked(lexicon.MarkPlace|lexicon.MarkRelation|lexicon.MarkStation) {
		return next, at + 2
	}
	return 0, 0
}

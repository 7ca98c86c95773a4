package turning

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// GripKnots passes over the wraps of a knot that grips another rope, with the words of that
// knot where they are only talk: "3 wrap prusik on the tail". They are none on the drum.
func GripKnots(rd *reading.Reading) {
	wraps := func(i int) bool { return rd.At(i).Fig != nil && rd.At(i+1).Plays(parser.Wraps) }
	for i := 0; i < len(rd.Elems); i++ {
		if !rd.Cued(rd.Elems[i], lexicon.CueGripKnot) {
			continue
		}
		behind := i + 1
		if rd.Cued(rd.At(behind), lexicon.CueHaving) {
			behind++
		}
		switch {
		case wraps(i - 2):
			rd.Pass(i-2, i+1)
		case wraps(behind) && !rd.At(behind+2).Marked(lexicon.MarkPlace|lexicon.MarkRelation|lexicon.MarkStation):
			rd.Pass(i, behind+2)
		}
	}
}

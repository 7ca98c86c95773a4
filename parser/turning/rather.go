package turning

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// "Is 4 or 5 wraps better for 600 lb" asks what each of them holds, which the answer
// tells: "better" is left out beside two counts of wraps. What is better than something
// stays in doubt.

// Rather leaves out such words.
func Rather(rd *reading.Reading) {
	for i, e := range rd.Elems {
		word, _ := scan.NextWord(rd.Text[e.End:])
		if rd.TermAt(i).Ask == parser.Unknown && rd.Cued(e, lexicon.CueRather) && !rd.In.Cued(word, lexicon.CueThan) && besideWraps(rd, i) && eitherWraps(rd) {
			LeaveOut(rd, i, i+1)
		}
	}
}

// besideWraps says whether wraps, or a count that may be theirs, stand right beside i.
func besideWraps(rd *reading.Reading, i int) bool {
	prev, next := rd.At(rd.Past(i-1, -1, lexicon.MarkIs)), rd.At(i+1)
	counts := func(e reading.Element) bool {
		return e.Plays(parser.Wraps) || e.Fig != nil && e.Fig.Dim == parser.DimCount && e.Fig.Unit == nil
	}
	return counts(prev) || counts(next)
}

// eitherWraps says whether two counts of wraps are told.
func eitherWraps(rd *reading.Reading) bool {
	return rd.AnyAt(func(k int) bool {
		fig, next := rd.Elems[k].Fig, rd.At(k+1)
		if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || !next.Plays(parser.Wraps) || next.Fig != nil {
			return false
		}
		other := rd.At(k + 3).Fig // "3 wraps or 4"
		return fig.Low < fig.High || rd.Cued(rd.At(k+2), lexicon.CueVersus) || other != nil && other.Dim == parser.DimCount && other.Unit == nil && rd.TermAt(k+2).ISay
	})
}

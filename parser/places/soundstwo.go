package places

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// SoundsTwo reads a number as it is spoken, "60 degrees between the too legs": what sounds like
// two, between an article and what is counted, is two, and the answer says so.
func SoundsTwo(rd *reading.Reading) {
	for i, e := range rd.Elems {
		before, next := rd.At(i-1), rd.At(i+1)
		counted := next.Plays(parser.Legs) || next.Plays(parser.People) || next.Plays(parser.Wraps) || next.Marked(lexicon.MarkTwins|lexicon.MarkBridle)
		if !rd.Cued(e, lexicon.CueSoundsTwo) || !counted || !before.Marked(lexicon.MarkArticle|lexicon.MarkBetween) {
			continue
		}
		rd.Elems[i] = reading.Element{Start: e.Start, End: e.End, Fig: &reading.Figure{Low: 2, High: 2, Start: e.Start, End: e.End}}
		rd.Fixes = append(rd.Fixes, parser.Fix{Words: rd.Text[e.Start:e.End], As: "2"})
	}
}

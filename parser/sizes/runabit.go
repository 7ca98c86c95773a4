package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// RunABit tells the number behind "we can run it a bit, maybe 3 m" as how far that is: it
// stands in a clause of its own, where a bare length could be that of the piece.
func RunABit(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if rd.TermAt(i).Note != parser.LetRun && !e.Plays(parser.RunLength) {
			continue
		}
		if rd.SaidTo(lexicon.CueABit, e.End) < 0 {
			continue
		}
		k := i + 1
		for k < len(rd.Elems) && rd.Elems[k].Fig == nil && aside(rd, k) {
			k++
		}
		if k >= len(rd.Elems) || !gear.Far(rd, k) || rd.Elems[k].Fig.Told != "" || rd.Elems[k].Fig.Pair || !rd.EndsBreath(k+1) {
			continue
		}
		told := *rd.Elems[k].Fig
		told.Told = parser.RunLength
		rd.Elems[k].Fig = &told
		return
	}
}

// aside says whether the element at k says nothing between how a piece is let run and how far:
// a comma, "a bit", "maybe".
func aside(rd *reading.Reading, k int) bool {
	const comma = 2
	e, t := rd.Elems[k], rd.TermAt(k)
	return e.Pause > 0 && e.Pause <= comma || e.Polite() || t.Note == "about" || t.Overlook || t.Chatter || rd.Cued(e, lexicon.CueABit) || e.Marked(lexicon.MarkArticle|lexicon.MarkAdverb) || t.Idle
}

package turning

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// "Double" adds nothing up before one wrap, "doble vuelta", nor behind "or", "doble
// vuelta o triple", where how many it takes is what is asked.

// Folds reads both, at the word at i.
func Folds(rd *reading.Reading, i int) {
	n := 2.0
	if rd.Cued(rd.Elems[i], lexicon.CueThreeTurns) {
		n = 3
	}
	e := rd.Elems[i]
	switch {
	case rd.At(i+1).Plays(parser.Wraps) && rd.At(i-1).Fig == nil:
		rd.Elems[i] = reading.Element{Start: e.Start, End: e.End, Fig: &reading.Figure{Low: n, High: n, Start: e.Start, End: e.End}}
	case CountedBy(rd, i-2):
		LeaveOut(rd, i, i+1)
	}
}

package turning

import (
	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// "At once" makes one load of several pieces. Of the one piece that is told, "take the whole
// top at once", it only says that it is not cut up.

// WholeAtOnce leaves out such words at i; it says whether it did.
func WholeAtOnce(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	if !t.AtOnce && (t.Ask != parser.Twist || !rd.Cued(rd.Elems[i], lexicon.CueAtOnce)) {
		return false
	}
	whole := t.AtOnce
	for k := i - 1; k >= 0 && rd.Elems[k].Pause == 0; k-- {
		whole = whole || rd.Cued(rd.Elems[k], lexicon.CueWholePiece) || rd.TypedBefore(k, lexicon.CueWholePiece)
	}
	one := rd.AnyAt(func(k int) bool {
		return rd.TermAt(k).Shape != "" || rd.Elems[k].Piece() || rd.Elems[k].Marked(lexicon.MarkTreetop)
	})
	if !whole || !one || rd.AnyAt(func(k int) bool { return k != i && several(rd, k) }) {
		return false
	}
	LeaveOut(rd, i, i+1)
	return true
}

// several says whether the element at i tells of more pieces than one.
func several(rd *reading.Reading, i int) bool {
	e, t := rd.Elems[i], rd.TermAt(i)
	other := rd.At(rd.Past(i-1, -1, lexicon.MarkArticle)).Marked(lexicon.MarkAnd) && (e.Piece() || t.Unnamed)
	return other || bounds.PluralAt(rd, i) || e.Plays(parser.Alike) || t.Each || t.AtOnce || t.Turning == parser.TurnsSeveral || rd.Cued(e, lexicon.CueTwosome)
}

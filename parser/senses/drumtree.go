package senses

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// DrumTrees reads "move that drum over to the next pine": another tree than that of the piece,
// which says no more than that the drum stands off its foot. In a talk about how much rope it
// takes, where no piece is told, any tree behind the drum is that: "could the drum go at the oak".
func DrumTrees(rd *reading.Reading) {
	for i := 1; i < len(rd.Elems); i++ {
		if rd.TermAt(i).Tree == nil || rd.At(i+1).Piece() || !anotherTree(rd, i) || !drumBefore(rd, i-1) {
			continue
		}
		e := reading.Element{Start: rd.Elems[i-1].Start, End: rd.Elems[i].End, Term: &scan.Term{Marks: lexicon.MarkOffTree}}
		rd.Elems = append(rd.Elems[:i-1], append([]reading.Element{e}, rd.Elems[i+1:]...)...)
	}
}

// anotherTree says whether the tree at i is told as another than that of the piece.
func anotherTree(rd *reading.Reading, i int) bool {
	prev := rd.At(i - 1)
	ofRope := rd.Before.Intent == parser.AskRope && rd.Before.Pieceless() && !rd.AnyAt(func(k int) bool { return rd.Elems[k].Fig != nil })
	leads := prev.Marked(lexicon.MarkArticle | lexicon.MarkAt | lexicon.MarkRelation | lexicon.MarkIn | lexicon.MarkMade)
	return rd.Cued(prev, lexicon.CueNextPiece) || rd.Cued(prev, lexicon.CueOther) || ofRope && leads
}

// drumBefore says whether a drum stands before the element at i, in its clause, with nothing
// measured and no wood between.
func drumBefore(rd *reading.Reading, i int) bool {
	const most = 6
	for k := i - 1; k >= 0 && i-k <= most; k-- {
		e, t := rd.Elems[k], rd.TermAt(k)
		switch {
		case e.Marked(lexicon.MarkStation):
			return true
		case e.Pause > 0, e.Fig != nil, e.Marked(lexicon.MarkAnd), t.Tree != nil, t.Shape != "", t.Intent != "" && t.Intent != parser.AskAnchor:
			return false
		}
	}
	return false
}

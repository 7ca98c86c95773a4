package turning

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// "Another" is most often no other piece: a block that the rope goes on to, the tree
// next to this one, or what nobody measured.

// theOther settles such words at i, and leaves those in doubt that could be another
// piece, or whose number stands in the same breath.
func theOther(rd *reading.Reading, i int) {
	switch {
	case otherBlock(rd, i), otherAtBase(rd, i), OtherTreeNear(rd, i):
	case otherTalk(rd, i):
		end := i + 1
		if stops.Kit(rd, end) {
			end++
		}
		LeaveOut(rd, i, end)
	}
}

// otherBlock reads "baja a otro block en la base": a block that turns the rope.
func otherBlock(rd *reading.Reading, i int) bool {
	led := rd.At(i - 1).Marked(lexicon.MarkAt | lexicon.MarkRelation | lexicon.MarkAnd)
	switch block := rd.TermAt(i + 1).Block; {
	case !led || block == "" || rd.At(i-1).Marked(lexicon.MarkAnd) && block == parser.AnyBlock || rd.At(i+2).Fig != nil:
		return false
	case block == parser.AnyBlock && atBase(rd, i+2):
		rd.Alter(i+1, func(t *scan.Term) { *t = scan.Term{Block: parser.BaseBlock} })
		rd.Elems[i+2].Term = &scan.Term{}
	case block == parser.AnyBlock:
		rd.Alter(i+1, func(t *scan.Term) { *t = scan.Term{Block: parser.RedirectBlock} })
	}
	rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Marks: lexicon.MarkArticle} })
	return true
}

// otherAtBase reads "un block arriba y otro en la base".
func otherAtBase(rd *reading.Reading, i int) bool {
	if !rd.At(i-1).Marked(lexicon.MarkAnd) || !atBase(rd, i+1) || !gear.BlockBefore(rd, i) {
		return false
	}
	rd.Elems[i].Term, rd.Elems[i+1].Term = &scan.Term{}, &scan.Term{Block: parser.BaseBlock}
	return true
}

// atBase says whether "at the base" stands at i, and no thickness that is told there.
func atBase(rd *reading.Reading, i int) bool {
	return rd.At(i).Plays(parser.ButtDiameter) && !rd.At(i).Piece() && rd.At(i-1).Fig == nil && rd.At(i+1).Fig == nil
}

// OtherTreeNear reads "en otro pino a 6 metros": the tree is a place there, and what
// is cut is no pine.
func OtherTreeNear(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i + 1)
	if gear.BlockBefore(rd, i) && !rd.AnyAt(func(k int) bool { return rd.Elems[k].Marked(lexicon.MarkStation) }) {
		return false // a block there may be the first, or turn the rope
	}
	at := rd.TermAt(i).OneEnd || rd.At(i-1).Marked(lexicon.MarkAt|lexicon.MarkWhere|lexicon.MarkRelation)
	if !at || t.Tree == nil && !rd.At(i+1).Marked(lexicon.MarkStanding) || t.Shape != "" || rd.At(i+2).Fig != nil || rd.At(i-1).Fig != nil {
		return false
	}
	rd.Elems[i].Term = &scan.Term{Marks: lexicon.MarkAt | lexicon.MarkIs | lexicon.MarkWhere}
	rd.Elems[i+1].Term = &scan.Term{Marks: lexicon.MarkPlace | lexicon.MarkStanding | lexicon.MarkOffTree}
	return true
}

// otherTalk says whether nothing is told of the other at i that a number or a piece
// could belong to.
func otherTalk(rd *reading.Reading, i int) bool {
	if byItself(rd, i) || rd.At(i-1).Fig != nil || rd.At(i-1).Marked(lexicon.MarkAnd) && !stops.Kit(rd, i+1) {
		return false
	}
	hand := stops.Person(rd, i+1)
	for k := i + 1; k < clauseEnd(rd, i+1); k++ {
		if e := rd.Elems[k]; hand && (stops.Kit(rd, k) || rd.TermAt(k).RopeEnd) || e.Fig != nil || e.Piece() || rd.TermAt(k).Unnamed || e.Plays(parser.People) || e.Plays(parser.Wraps) || e.Marked(lexicon.MarkCord) {
			return false
		}
	}
	return true
}

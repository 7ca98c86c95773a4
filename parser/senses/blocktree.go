package senses

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// BlockTrees passes over the tree that the block hangs in, "up to a block at 12 m in the
// oak", where the piece's own is named or the piece was told before: what is cut need not
// grow there.
func BlockTrees(rd *reading.Reading) {
	for i := range rd.Elems {
		if in := inTree(rd, i); in >= 0 && (blockBefore(rd, in) || rd.At(in-1).LeadsTo(parser.HitchHeight)) && ofAnother(rd, i) {
			rd.Pass(in, i+1)
			return
		}
	}
}

// inTree is where "in the oak" begins that ends at i, -1 where nothing of that kind does.
func inTree(rd *reading.Reading, i int) int {
	if rd.TermAt(i).Tree == nil || rd.At(i+1).Piece() || rd.At(i+1).Fig != nil {
		return -1
	}
	k := rd.Past(i-1, -1, lexicon.MarkArticle|lexicon.MarkAdjective)
	switch {
	case k == i-1: // "block in oak", and what grows there
	case rd.At(k).LeadsTo(parser.HitchHeight) && rd.At(k).Pause == 0:
		return k + 1 // "la polea en" leads to its height too
	case rd.At(k).Marked(lexicon.MarkIn):
		return k
	}
	return -1
}

// blockBefore says whether a block stands before the element at i, with no more than how
// high it is between.
func blockBefore(rd *reading.Reading, i int) bool {
	for k := i - 1; k >= 0 && i-k <= 4 && rd.Elems[k].Pause == 0; k-- {
		e := rd.Elems[k]
		switch {
		case gear.Part(e) == lexicon.PartBlock, rd.TermAt(k).Block == parser.AnyBlock, rd.TermAt(k).Block == parser.TopBlock:
			return true
		case !e.Fig.Far() && !e.Marked(lexicon.MarkIs|lexicon.MarkAt|lexicon.MarkErect|lexicon.MarkUpward|lexicon.MarkAdverb):
			return false
		}
	}
	return false
}

// ofAnother says whether the tree at i is not the piece's: another is named outside of it,
// or the piece was told before, and of no such tree.
func ofAnother(rd *reading.Reading, i int) bool {
	tree, was := rd.TermAt(i).Tree, rd.Before
	if rd.AnyAt(func(k int) bool { t := rd.TermAt(k).Tree; return k != i && t != nil && t.Sci != tree.Sci }) {
		return true
	}
	if s := was.Species; s != nil {
		return s.Value.Scientific != tree.Sci
	}
	return was.Shape != nil && was.Has(parser.Length, parser.Diameter, parser.ButtDiameter, parser.Weight)
}

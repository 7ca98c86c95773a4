package senses

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/pulls"
	"heft/parser/reading"
	"heft/parser/scan"
)

// "620 lb, is it double at the block" asks what the block sees: it is no block with two
// sheaves, and nothing is to be doubled.

// DoubleAtBlock makes such words ask for the load on the block, where no tackle is told and
// no wraps.
func DoubleAtBlock(rd *reading.Reading) {
	if pulls.TackleTold(rd) || rd.Worded(parser.Wraps) {
		return
	}
	for i, e := range rd.Elems {
		before := rd.At(i - 1)
		counted := i == 0 || before.Pause > 0 || before.Fig != nil || before.Marked(lexicon.MarkArticle|lexicon.MarkWhere) && !rd.Cued(before, lexicon.CueThe)
		if rd.Cued(e, lexicon.CueTwofold) && !counted && (loadsBlock(rd, i+1) || blockAhead(rd, i-1)) {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Intent: parser.AskBlockLoad} })
			return
		}
	}
}

// loadsBlock says whether the words from i on are where a load bears, "at the block", "that
// on the pulley".
func loadsBlock(rd *reading.Reading, i int) bool {
	i = rd.Past(i, +1, lexicon.MarkPronoun)
	if rd.TermAt(i).Block != "" && rd.Cued(rd.At(i), lexicon.CueAtBlock) {
		return true
	}
	k := rd.Past(i, +1, lexicon.MarkAt|lexicon.MarkIn|lexicon.MarkArticle)
	return k > i && blockNamed(rd, k)
}

// blockAhead reads "en la polea es el doble": where the load bears stands first.
func blockAhead(rd *reading.Reading, i int) bool {
	k := rd.Past(i, -1, lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkPronoun)
	return k < i && loadsBlock(rd, max(0, rd.Past(k-1, -1, lexicon.MarkArticle)))
}

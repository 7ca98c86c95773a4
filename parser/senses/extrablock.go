package senses

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// ExtraBlocks takes "an extra block on the next tree" for a redirect: it turns the rope on its
// way, and adds nothing to a number. In a tackle an extra block makes parts of line, and is
// asked about.
func ExtraBlocks(rd *reading.Reading) {
	if gear.AsksFor(rd, parser.AskLift) || gear.AsksFor(rd, parser.AskRaise) {
		return
	}
	for i := range rd.Elems {
		block, at := rd.TermAt(i+1).Block, onTree(rd, i+2)
		if !rd.Cued(rd.Elems[i], lexicon.CueMore) || block != parser.AnyBlock || at < 0 {
			continue
		}
		for k := i + 2; k < at; k++ {
			if rd.TermAt(k).OneEnd {
				rd.Elems[k].Term = &scan.Term{Marks: lexicon.MarkIn}
			}
		}
		if rd.TermAt(at).Tree != nil {
			rd.Elems[at].Term = &scan.Term{Marks: lexicon.MarkPlace | lexicon.MarkStanding | lexicon.MarkOffTree}
		}
		rd.Elems[i].Term = &scan.Term{Marks: lexicon.MarkArticle}
		rd.Alter(i+1, func(t *scan.Term) { *t = scan.Term{Block: parser.RedirectBlock} })
	}
}

// onTree is the tree, or the limb of one, that the words from i on tell something to be on; -1
// for none.
func onTree(rd *reading.Reading, i int) int {
	const most = 4
	k, on := i, false
	for ; k <= i+most && rd.At(k).Pause == 0 && rd.At(k).Fig == nil; k++ {
		if on && (rd.At(k).Marked(lexicon.MarkStanding|lexicon.MarkPlace) || rd.TermAt(k).Tree != nil || rd.TermAt(k).Shape == parser.Limb) {
			return k
		}
		on = on || rd.At(k).Marked(lexicon.MarkIn) || rd.TermAt(k).OneEnd
	}
	return -1
}

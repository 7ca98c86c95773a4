package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// The most that is wanted on a block is no limit of a piece: lowered steady, the block
// sees about twice the piece. "400 kg is max we want on the block".

// LimitOnBlock makes such a number what the block may carry.
func LimitOnBlock(rd *reading.Reading) {
	for i := range rd.Elems {
		word := limitWord(rd, i)
		if !Heavy(rd, i) || rd.Elems[i].Fig.Told != "" || word < 0 {
			continue
		}
		at := blockAfter(rd, max(i, word))
		if at < 0 {
			continue
		}
		rd.Elems[i].Fig.Told, rd.Elems[i].Fig.Sure = parser.BlockWorking, parser.BlockWorking
		rd.Elems[word].Term, rd.Elems[word].Spent = &scan.Term{}, true
		rd.Alter(at, func(t *scan.Term) { t.Intent, t.Note = "", "" })
		return
	}
}

// limitWord is the word for a limit beside the number at i, -1 for none.
func limitWord(rd *reading.Reading, i int) int {
	for _, k := range []int{i - 1, rd.Back(i - 1), rd.Past(i+1, +1, lexicon.MarkIs|lexicon.MarkArticle)} {
		if e := rd.At(k); e.Plays(parser.Limit) || e.Marked(lexicon.MarkBound) && k == i-1 {
			return k
		}
	}
	return -1
}

// blockAfter finds "on the block" behind the element at i, in the same breath and with no
// number, piece or other gear between; -1 where it does not stand there.
func blockAfter(rd *reading.Reading, i int) int {
	const most = 6
	for k := i + 1; k < len(rd.Elems) && k-i <= most; k++ {
		e := rd.Elems[k]
		switch p := Part(e); {
		case p == lexicon.PartBlock && on(rd, k) && !Far(rd, rd.Past(k+1, +1, lexicon.MarkAt)), e.Marked(lexicon.MarkLoaded) && rd.TermAt(k).Intent == parser.AskBlockLoad:
			return k
		case p != "", e.Pause > 0, e.Fig != nil, e.Piece():
			return -1
		}
	}
	return -1
}

// on says whether the gear at i is what something is on.
func on(rd *reading.Reading, i int) bool {
	return rd.At(rd.Past(i-1, -1, lexicon.MarkArticle|lexicon.MarkAdjective)).Marked(lexicon.MarkIn | lexicon.MarkAt)
}

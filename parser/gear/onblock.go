package gear

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// The most that is wanted on a block is no limit of a piece: lowered steady, the block
// sees about twice the piece. "400 kg is max we want on the block".

// LimitOnBlock makes such a number what the block may carry.
func LimitOnBlock(rd *reading.Reading) {
	if AsksFor(rd, parser.AskCutPlan) {
		heldToByGear(rd)
	}
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
		case p == "" && rd.TermAt(k).Anchors && on(rd, k) && rd.EndsBreath(k+1):
			return k // "nothing over 3000 lb on the anchor"
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

// heldToByGear reads the number of "anchor good for 2000 lb, how long can i cut it" and "hold
// the anchor to 2000 lb" as what the anchor may carry, as much as the block on it. That of a
// sling or a block is of its label: which figure, is asked.
func heldToByGear(rd *reading.Reading) {
	for i := range rd.Elems {
		fig := rd.Elems[i].Fig
		if !Heavy(rd, i) || fig.Told != "" {
			continue
		}
		at := holderOf(rd, i)
		if at < 0 {
			at = seesNoMore(rd, i)
		}
		if at < 0 {
			continue
		}
		for k := at; k < i; k++ {
			if rd.At(k).Plays(parser.Limit) || rd.At(k).Plays(parser.Weight) || k == at {
				rd.Elems[k].Term = &scan.Term{Part: rd.TermAt(k).Part}
			}
		}
		if p := Part(rd.Elems[at]); p != "" {
			AsksStrength(rd, fig, p)
			continue
		}
		fig.Told, fig.Sure = parser.BlockWorking, parser.BlockWorking
	}
}

// holderOf finds the gear before the number at i that it is told to hold, in the same breath
// and with no number, drum or piece between; -1 for none, and where the gear tells a strength.
func holderOf(rd *reading.Reading, i int) int {
	if s, _ := StrengthBeside(rd, i-1, i+1); s != "" {
		return -1
	}
	for k := i - 1; k >= 0 && rd.Elems[k].Pause == 0; k-- {
		e, p := rd.Elems[k], Part(rd.Elems[k])
		switch {
		case p == lexicon.PartBlock, p == lexicon.PartSling, p == "" && namesAnchor(rd, e):
			return k
		case p != "", e.Fig != nil, e.Piece() && rd.TermAt(k).Shape == "":
			return -1
		}
	}
	return -1
}

// seesNoMore finds the verb of "how short do i cut it to see under 10 kN", where no gear is
// named before it: what is seen is the load on the block, about twice the piece. -1 for none.
func seesNoMore(rd *reading.Reading, i int) int {
	bound := func(k int) bool { return rd.At(k).Marked(lexicon.MarkBound) || rd.At(k).Plays(parser.Limit) }
	verb := i - 1
	for verb > 0 && (bound(verb) || rd.At(verb).Marked(lexicon.MarkArticle) || rd.TermAt(verb).Note == "about") {
		verb--
	}
	if verb == i-1 || !rd.Cued(rd.At(verb), lexicon.CueFeels) {
		return -1
	}
	for k := verb; k >= 0 && rd.At(k+1).Fig == nil; k-- {
		if Part(rd.Elems[k]) != "" || rd.At(k).Plays(parser.Weight) && k < verb {
			return -1
		}
		if rd.At(k).Pause > 0 {
			break
		}
	}
	return verb
}

// namesAnchor says whether an anchor is among the words of an element: "anchor good for".
func namesAnchor(rd *reading.Reading, e reading.Element) bool {
	return e.Fig == nil && slices.ContainsFunc(scan.SplitWords(rd.Word(e)), func(w string) bool {
		return rd.In.Cued(w, lexicon.CueAnchor) || rd.In.Cued(w, lexicon.CueAnchorPoint)
	})
}

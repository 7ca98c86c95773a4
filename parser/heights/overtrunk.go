package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// A swing is told from the trunk as well: "tied 10 ft out from the stem, block 20 ft above
// it". Where the block hangs on the trunk, that is how far the piece is to its side; where
// it is not told to hang anywhere else it is taken to, and the answer says so.

// OverTrunk tells how far out from the trunk a piece is that swings.
func OverTrunk(rd *reading.Reading) {
	if !gear.Swings(rd) || gear.AsksFor(rd, parser.AskRaise) || TagsAlone(rd) || rd.Has(lexicon.MarkTwins|lexicon.MarkBridle) || rd.Before.Has(parser.Sideways) {
		return
	}
	passesTrunk(rd)
	at := rd.Only(rd.Is(outFromTrunk))
	if at < 0 {
		return
	}
	end := trunkBehind(rd, at+1)
	switch {
	case rd.Worded(parser.Sideways) || rd.AnyAt(rd.Is(toldAside)):
		return
	case inOtherTree(rd):
		k := blockHangs(rd, lexicon.CueOtherTree)
		rd.Alter(k, func(t *scan.Term) { t.Marks &^= lexicon.MarkStanding | lexicon.MarkObstacle }) // nothing that is struck
		rd.Pass(at, end, reading.Element{Start: rd.Elems[at].Start, End: rd.Elems[end-1].End, Term: &scan.Term{}})
		return
	}
	fig := rd.Elems[at].Fig
	fig.Told, fig.Elsewhere, fig.Claimed = parser.Sideways, false, ""
	hush(rd, at+1, end)
	if k := rd.Back(at - 1); rd.TermAt(k).Tied || rd.At(k).Marked(lexicon.MarkAside) {
		rd.Elems[k].Term = &scan.Term{}
	}
	if !blockOnTrunk(rd) {
		rd.Elems[end-1].Term = &scan.Term{Note: parser.OverTrunk}
	}
	for i := range rd.Elems {
		pastTheTrunk(rd, i)
	}
}

// pastTheTrunk reads "fence is 14 ft past the trunk" and "on the other side, 12 ft off the
// trunk" where the block hangs on that: so far past the block.
func pastTheTrunk(rd *reading.Reading, i int) {
	if !gear.Far(rd, i) || rd.Elems[i].Fig.Told != "" {
		return
	}
	far := false
	for k := i - 1; k >= 0 && rd.At(k).Pause == 0 && rd.At(k).Fig == nil; k-- {
		far = far || rd.At(k).Marked(lexicon.MarkOutward) && rd.At(k).Marked(lexicon.MarkPlace) && !rd.Cued(rd.At(k), lexicon.CueOut)
	}
	k := i + 1
	for rd.At(k).Marked(lexicon.MarkOutward|lexicon.MarkRelation|lexicon.MarkArticle) && !rd.Cued(rd.At(k), lexicon.CueOffTrunk) {
		far = far || rd.At(k).Marked(lexicon.MarkOutward) && !rd.Cued(rd.At(k), lexicon.CueOut)
		k++
	}
	if far && (rd.Cued(rd.At(k), lexicon.CueOffTrunk) || k > i+1 && (rd.Cued(rd.At(k), lexicon.CueTheTrunk) || rd.Cued(rd.At(k), lexicon.CueTheTree))) {
		rd.Elems[k].Term = &scan.Term{Marks: lexicon.MarkOutward | lexicon.MarkPlace}
	}
}

// passesTrunk takes the trunk that a limb swings past, or is told from, for no log: "how far
// does it come past the trunk".
func passesTrunk(rd *reading.Reading) {
	limb := rd.AnyAt(func(k int) bool { return rd.TermAt(k).Shape == parser.Limb })
	for i, e := range rd.Elems {
		k := rd.Past(i-1, -1, lexicon.MarkArticle)
		if limb && rd.Cued(e, lexicon.CueTheTrunk) && rd.TermAt(i).Shape == parser.Log && rd.At(k).Marked(lexicon.MarkRelation) && rd.At(k-1).Fig == nil {
			rd.Alter(i, func(t *scan.Term) { t.Shape = "" })
		}
	}
}

// outFromTrunk says whether the number at i is how far from the trunk the piece is, or its
// tie: not where it is cut, which tells of no tie, and not what it may strike.
func outFromTrunk(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	if !fig.Far() || fig.Pair || fig.Falling || fig.Told != "" || trunkBehind(rd, i+1) == 0 {
		return false
	}
	for k := rd.Back(i - 1); k >= 0 && rd.At(k).Pause == 0 && rd.At(k).Fig == nil; k-- {
		e := rd.At(k)
		switch {
		case rd.TermAt(k).Shape == parser.Limb, rd.TermAt(k).Unnamed, rd.TermAt(k).Tied, tiePoint(rd, k), rd.Cued(e, lexicon.CueTies):
			return true
		case gear.Obstacle(e) != "", gear.BlockNoun(rd, k), gear.Part(e) != "", rd.Cued(e, lexicon.CueCutting), e.Marked(lexicon.MarkStation):
			return false
		}
	}
	return false
}

// trunkBehind is the end of "out from the stem" from the element at i on, 0 where that does
// not stand there.
func trunkBehind(rd *reading.Reading, i int) int {
	k := i
	for rd.Cued(rd.At(k), lexicon.CueOut) && !rd.Cued(rd.At(k), lexicon.CueOffTrunk) && k < i+2 {
		k++
	}
	if rd.Cued(rd.At(k), lexicon.CueOffTrunk) {
		return k + 1
	}
	from := rd.At(k)
	trunk := rd.Past(k+1, +1, lexicon.MarkArticle)
	if (rd.Cued(from, lexicon.CueFrom) || rd.Cued(from, lexicon.CueOffFrom) || from.Marked(lexicon.MarkRelation) && from.Marked(lexicon.MarkIs)) && rd.Cued(rd.At(trunk), lexicon.CueTheTrunk) {
		return trunk + 1 // "3 m del tronco"
	}
	return 0
}

// toldAside says whether the number at i is already how far to the side the piece starts.
func toldAside(rd *reading.Reading, i int) bool { return asideAt(rd, i) }

// blockOnTrunk says whether the block is told to hang on the trunk.
func blockOnTrunk(rd *reading.Reading) bool { return blockHangs(rd, lexicon.CueCutOnTrunk) >= 0 }

// inOtherTree says whether the block is told to hang in another tree: what is told from
// nothing is then not told from under it.
func inOtherTree(rd *reading.Reading) bool { return blockHangs(rd, lexicon.CueOtherTree) >= 0 }

// blockHangs is where the words of a cue tell what the block hangs on, a few words behind
// it; -1 for nowhere.
func blockHangs(rd *reading.Reading, on scan.Cue) int {
	const words = 7
	for i := range rd.Elems {
		if !gear.BlockNoun(rd, i) {
			continue
		}
		for k := i + 1; k <= i+words && rd.At(k).Pause == 0; k++ {
			if rd.Cued(rd.At(k), on) && !rd.Cued(rd.At(k), lexicon.CueOffTrunk) {
				return k
			}
		}
	}
	return -1
}

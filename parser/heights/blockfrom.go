package heights

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Where a swing's block is may be told from the piece, by two small numbers in one
// breath: "anchor's 4 m to the left and about 7 up", "block is 12 ft above the tie and 5
// ft over to the right". Neither is how high the block hangs above the ground.

// blockFrom tells those of the number at i, and says whether it did.
func blockFrom(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	if !fig.Far() || fig.Pair || fig.Falling || fig.Told != "" {
		return false
	}
	if alongLimb(rd, i) {
		fig.Elsewhere = true // asked about: the tie may be further out than that
		hush(rd, i+1, i+2)
		return true
	}
	if n := outSideways(rd, i); n > 0 {
		fig.Told = parser.Sideways
		hush(rd, i+1, n)
		return true
	}
	if n := inward(rd, i); n > 0 && blockSubject(rd, i) {
		fig.Told = parser.Sideways
		upFromTie(rd, i, n)
		hush(rd, i+1, n)
		return true
	}
	if n := overTie(rd, i); n > 0 && blockSubject(rd, i) {
		fig.Told = parser.BlockHeight
		if TagsAlone(rd) && rd.Has(lexicon.MarkTug) {
			fig.Told = parser.LineOut // a load that is pulled aside hung plumb before
		}
		hush(rd, i+1, n)
		return true
	}
	if upBeside(rd, i) {
		fig.Told = parser.BlockHeight
		hush(rd, i+1, i+2)
		return true
	}
	return false
}

// alongLimb reads "rigging point 6 m along from where it's cut": no height.
func alongLimb(rd *reading.Reading, i int) bool {
	return rd.Cued(rd.At(i+1), lexicon.CueDownLimb) && blockSubject(rd, i)
}

// hush takes what the words of a stretch would say besides.
func hush(rd *reading.Reading, from, to int) {
	for k := from; k < to; k++ {
		rd.Elems[k].Term = &scan.Term{}
	}
}

// fromUnder is the end of "from under it", where the hitch or the block was named before
// it, from the element at i on; 0 where that does not stand there.
func fromUnder(rd *reading.Reading, i int) int {
	under := rd.Cued(rd.At(i+1), lexicon.CueUnder) || rd.Cued(rd.At(i+1), lexicon.CueBelow)
	named := rd.AnyAt(func(k int) bool { return k < i && gear.BlockNoun(rd, k) })
	if rd.Cued(rd.At(i), lexicon.CueFrom) && under && named && rd.Cued(rd.At(i+2), lexicon.CueLoad) {
		return i + 3
	}
	return 0
}

// hushed says whether what stood at i was taken out of it.
func hushed(rd *reading.Reading, i int) bool {
	t := rd.At(i).Term
	return t != nil && len(t.Roles) == 0 && t.Marks == 0 && lexicon.Says(t, 0)
}

// outSideways is the end of "out sideways from under it" behind the number at i, 0 where
// no such words stand there.
func outSideways(rd *reading.Reading, i int) int {
	k := i + 1
	for rd.Cued(rd.At(k), lexicon.CueOut) {
		k++
	}
	if n := fromUnder(rd, k); n > 0 && k > i+1 && !struckBefore(rd, i) {
		return n
	}
	if k == i+1 || !rd.At(k).LooksBack(parser.Sideways) || struckBefore(rd, i) {
		return 0
	}
	end := k + 1
	for n := end; n < len(rd.Elems) && rd.At(n).Pause == 0 && rd.At(n).Fig == nil; n++ {
		e := rd.At(n)
		switch {
		case e.Marked(lexicon.MarkRelation | lexicon.MarkMade | lexicon.MarkArticle), rd.Cued(e, lexicon.CueBelow), rd.TermAt(n).BelowBlock:
		case e.Marked(lexicon.MarkPronoun), gear.Part(e) == lexicon.PartBlock, rd.Cued(e, lexicon.CueLoad):
			return n + 1
		default:
			return end
		}
	}
	return end
}

// inward is the end of "in from the tie point" and "in toward the trunk" behind the
// number at i, which a block is told by: so far it is to the side of the piece. It is 0
// where no such words stand there.
func inward(rd *reading.Reading, i int) int {
	k := i + 1
	if !rd.Cued(rd.At(k), lexicon.CueInward) {
		return 0
	}
	if trunk := pastTrunk(rd, k+1); trunk > 0 {
		k = trunk - 1
	}
	if breathEnds(rd, k+1) {
		return k + 1
	}
	from := k + 1
	for k = from; rd.At(k).Marked(lexicon.MarkRelation|lexicon.MarkMade|lexicon.MarkArticle) || rd.Cued(rd.At(k), lexicon.CueWhere); k++ {
	}
	for rd.Cued(rd.At(k), lexicon.CueItIs) || rd.At(k).Marked(lexicon.MarkPronoun|lexicon.MarkIs) {
		k++
	}
	tied := tiePoint(rd, k) || rd.Cued(rd.At(k), lexicon.CueCutting)
	if k > from && tied {
		return k + 1
	}
	return 0
}

// upFromTie reads "20 ft up and 12 ft in from the tie", where the words for the number at
// i end at n: both are seen from the tie.
func upFromTie(rd *reading.Reading, i, n int) {
	up := rd.Past(i-1, -1, lexicon.MarkAnd)
	if rd.At(up).Pause == 2 {
		up--
	}
	told := rd.At(up).Marked(lexicon.MarkUpward) || rd.Cued(rd.At(up), lexicon.CueAbove) || rd.Cued(rd.At(up), lexicon.CueHigher)
	fromTie := tiePoint(rd, n-1)
	if told && fromTie && gear.Far(rd, up-1) {
		rd.Elems[up-1].Fig.Told = parser.BlockHeight
		hush(rd, up, up+1)
	}
}

// tiePoint says whether the element at i names where the piece is tied.
func tiePoint(rd *reading.Reading, i int) bool {
	return rd.TermAt(i).Tied || rd.Cued(rd.At(i), lexicon.CueSling) || rd.Cued(rd.At(i), lexicon.CueTiePoint)
}

// pastTrunk is the end of "toward the trunk" from the element at i on, 0 where that
// does not stand there.
func pastTrunk(rd *reading.Reading, i int) int {
	k := rd.Past(i+1, +1, lexicon.MarkArticle)
	if rd.Cued(rd.At(i), lexicon.CueTowards) && rd.Cued(rd.At(k), lexicon.CueTheTrunk) {
		return k + 1
	}
	return 0
}

// overTie is the end of "above the tie" and "up from where it's tied" behind the number
// at i, 0 where none stands there.
func overTie(rd *reading.Reading, i int) int {
	k := rd.Past(i+1, +1, lexicon.MarkAdverb)
	up := rd.At(k).Marked(lexicon.MarkUpward) || rd.Cued(rd.At(k), lexicon.CueHigher) || rd.Cued(rd.At(k), lexicon.CueAbove)
	if !up {
		return 0
	}
	from := false
	for k++; rd.At(k).Marked(lexicon.MarkRelation|lexicon.MarkMade|lexicon.MarkArticle) || rd.Cued(rd.At(k), lexicon.CueWhere); k++ {
		from = true
	}
	for rd.Cued(rd.At(k), lexicon.CueItIs) || rd.At(k).Marked(lexicon.MarkPronoun|lexicon.MarkIs) {
		k++
	}
	over := rd.Cued(rd.At(i+1), lexicon.CueHigher) || rd.Cued(rd.At(i+1), lexicon.CueAbove)
	if (from || over) && (tiePoint(rd, k)) {
		return k + 1
	}
	return 0
}

// blockSubject says whether the number at i is told of a block, an anchor or the rigging
// point: one of them stands before it, and nothing else that could be so high.
func blockSubject(rd *reading.Reading, i int) bool {
	for j := i - 1; j >= 0; j-- {
		e := rd.At(j)
		switch {
		case gear.BlockNoun(rd, j):
			return true
		case e.Pause == 2 && rd.At(j-1).Fig == nil && toldOver(rd, j-1): // "block is 20 ft above, 12 ft in"
		case e.Pause > 0 && !e.Marked(lexicon.MarkAnd), e.Piece(), gear.Obstacle(e) != "":
			return false
		}
	}
	return false
}

// toldOver says whether the words that end at i told how far the block is above.
func toldOver(rd *reading.Reading, i int) bool {
	for ; i >= 0 && rd.At(i).Pause == 0; i-- {
		if fig := rd.At(i).Fig; fig != nil {
			return fig.Told == parser.BlockHeight
		}
	}
	return false
}

// upBeside reads "4 m to the left and about 7 up" of an anchor: both are told from the
// piece, where no height above the ground and no line is told, nor anything that a pull
// hangs on.
func upBeside(rd *reading.Reading, i int) bool {
	if !rd.At(i+1).Marked(lexicon.MarkUpward) && !rd.Cued(rd.At(i+1), lexicon.CueAbove) || !breathEnds(rd, i+2) || !rd.AnyAt(func(k int) bool { return rd.TermAt(k).Intent == parser.AskSwing }) || !blockSubject(rd, i) {
		return false
	}
	j := rd.Back(i - 1)
	for rd.At(j).Marked(lexicon.MarkAnd) || rd.At(j).Pause == 2 {
		j--
	}
	for rd.At(j).LooksBack(parser.Sideways) || rd.Cued(rd.At(j), lexicon.CueOut) || rd.At(j).Marked(lexicon.MarkAside) || hushed(rd, j) {
		j--
	}
	aside := gear.Far(rd, j) && j < i-2 && (rd.At(j).Fig.Told == parser.Sideways || rd.At(j+1).LooksBack(parser.Sideways) || rd.At(j+1).Marked(lexicon.MarkAside))
	other := func(k int) bool {
		return k != i && (gear.Heavy(rd, k) || rd.TermAt(k).Tree != nil || gear.Beside(rd, k, parser.LineOut) || rd.Elems[k].Fig != nil && rd.Elems[k].Fig.Told == parser.LineOut)
	}
	return aside && !rd.AnyAt(other) && !slices.ContainsFunc(rd.Elems[i+1:], func(e reading.Element) bool { return e.LeadsTo(parser.HitchHeight) && e.Term.Leads })
}

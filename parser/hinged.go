package parser

// What is told of a limb that is stood up is seen from its hinge, but crews also
// tell it from the ground, as a part of the limb, or of the tackle itself.

// hinged claims the heights of the hinge and of the block, and how long the
// tackle is with its blocks together.
func (rd *reading) hinged() {
	for i := range rd.elems {
		if rd.far(i) || rd.elems[i].fig.short() {
			rd.closedLength(i)
		}
	}
	if rd.anyAt(func(i int) bool { return rd.beside(i, BlockHeight) }) {
		return
	}
	hinge, block := -1, -1
	for i, e := range rd.elems {
		switch {
		case !rd.far(i) || e.fig.pair || e.fig.elsewhere && e.fig.claimed == "":
		case rd.hingeAt(i):
			hinge = i
		case rd.hoistedAt(i):
			block = i
		}
	}
	if hinge >= 0 && block >= 0 {
		rd.aboveHinge(hinge, block)
		return
	}
	rd.blockUnseen()
}

// blockUnseen asks what a block's height is seen from where the limb's tie is told
// beside it: "block up at 2 m, tied at 2.5 m" may tell of the hinge or of the ground.
func (rd *reading) blockUnseen() {
	block, tied := -1, false
	for i := range rd.elems {
		e := rd.at(rd.back(i - 1))
		switch {
		case !rd.far(i) || !e.plays(HitchHeight) || e.part() == partRope || rd.elems[i].fig.claimed != "":
		case e.term.block != "" || rd.blockBefore(i):
			block = i
		default:
			tied = true
		}
	}
	if block < 0 || !tied || !rd.asksFor(AskRaise) {
		return
	}
	fig := rd.elems[block].fig
	a := fig.ask(TwoReadings, rd.text)
	a.Fields = []Field{BlockHeight, HitchHeight}
	a.Choices = []Choice{{Field: BlockHeight}, {Field: HitchHeight}}
	rd.asks = append(rd.asks, a)
	fig.elsewhere = true
}

// hingeAt says whether the number at i is how high the hinge is: "hinge at 12 m",
// "hinge is 30 ft up".
func (rd *reading) hingeAt(i int) bool {
	return rd.cued(rd.at(rd.pastIs(i-1)), cueHinge) && !rd.at(i+1).marked(markPlace|markRelation|markMade)
}

// hoistedAt says whether the number at i is how high the top block is.
func (rd *reading) hoistedAt(i int) bool {
	e := rd.at(rd.back(i - 1))
	return e.plays(HitchHeight) && e.part() != partRope && !rd.at(i+1).marked(markPlace|markRelation|markMade)
}

// aboveHinge makes of both heights how far the block is above the hinge.
func (rd *reading) aboveHinge(hinge, block int) {
	h, b := rd.elems[hinge].fig, rd.elems[block].fig
	if b.low <= h.high {
		return
	}
	h.low, h.high = b.low-h.high, b.high-h.low
	rd.claim(hinge, BlockHeight)
	rd.claim(block, HitchHeight)
}

// closedLength claims "the blocks take up 3 ft", "4 ft long with the blocks together"
// and "blocks closed are 3 ft": the room that the tackle itself needs.
func (rd *reading) closedLength(i int) {
	j := i + 1
	for !rd.cued(rd.at(j), cueClosed) && rd.besideClosed(j) {
		j++
	}
	before := rd.back(i - 1)
	takes, closed := rd.takesUp(before, i), rd.cued(rd.at(j), cueClosed)
	if rd.termAt(before).intent == AskBlockLoad && rd.asksFor(AskRaise) {
		takes = true // "the blocks take 3 ft": no load is a length
		rd.elems[before].term = &term{part: partBlock}
	}
	first := rd.closedBefore(i - 1)
	if !takes && !closed && first < 0 || !rd.ofTackle(i-1) {
		return
	}
	rd.claim(i, Closed)
	if !closed {
		j = rd.past(i+1, +1, markMade)
	}
	if rd.at(j).onlyPlays(Length) || closed {
		rd.saysNothingFrom(i+1, j+1)
	}
	if first >= 0 {
		rd.saysNothingFrom(first, i)
	}
}

// takesUp says whether a verb of the tackle leads to the number at i.
func (rd *reading) takesUp(from, i int) bool {
	for k := max(from, 0); k < i; k++ {
		if rd.cued(rd.elems[k], cueTakesUp) {
			return true
		}
	}
	return false
}

// saysNothingFrom takes what the words between two places say.
func (rd *reading) saysNothingFrom(from, to int) {
	for k := from; k < to; k++ {
		rd.elems[k].term = &term{}
	}
}

// closedBefore is where the tackle is said to have its blocks together before the
// number that i leads to, "los bloques juntos miden", or -1.
func (rd *reading) closedBefore(i int) int {
	for i >= 0 && !rd.cued(rd.at(i), cueClosed) && (rd.cued(rd.at(i), cueMeasures) || rd.cued(rd.at(i), cueTakesUp) || rd.besideClosed(i)) {
		i--
	}
	if i >= 0 && rd.cued(rd.at(i), cueClosed) {
		return i
	}
	return -1
}

// besideClosed says whether the element at i may stand between a number and such
// words.
func (rd *reading) besideClosed(i int) bool {
	e := rd.at(i)
	return e.polite() && e.pause == 0 || e.marked(markPronoun|markAdverb|markIs|markWhere) || e.onlyPlays(Length)
}

// ofTackle says whether what stands before a number, in the same breath, is the
// tackle or its blocks.
func (rd *reading) ofTackle(i int) bool {
	for ; i >= 0 && rd.elems[i].pause == 0 && !rd.elems[i].piece(); i-- {
		e := rd.elems[i]
		if rd.termAt(i).blocks || e.part() == partBlock || rd.blocksAt(i) || e.term != nil && e.term.intent == AskLift || e.fig != nil && e.fig.dim == dimRatio {
			return true
		}
	}
	return false
}

// overHinge says whether the words behind the number at i put the block above
// the place that the limb turns about: "14 ft above the union".
func (rd *reading) overHinge(i int) bool {
	j := i + 1
	for rd.at(j).marked(markErect | markAdverb) {
		j++
	}
	k := rd.past(j+1, +1, markArticle)
	if !rd.cued(rd.at(j), cueOverHinge) || !rd.cued(rd.at(k), cueHinge) || !rd.blockBefore(i) {
		return false
	}
	rd.alter(k, func(t *term) { t.roles = nil })
	return true
}

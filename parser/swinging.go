package parser

// Where a load swings or is pulled aside, each of its numbers is told by one small
// word: how far "out" the piece is, how far the block is "above" it, how far "past"
// a wall stands. A number without a unit is told by it as well as one with.

// swingPlace is what such words make of the number at i, "" for nothing.
func (rd *reading) swingPlace(i int) Field {
	if !rd.swung() || rd.has(markTwins|markBridle|markSide) || rd.asksFor(AskRaise) {
		return ""
	}
	switch fig := rd.elems[i].fig; {
	case fig.dim != dimCount && !fig.far() || fig.pair || fig.falling || fig.told != "":
		return ""
	case rd.at(i + 1).plays(Sideways), rd.fromPlumb(i):
		return Sideways
	case rd.blockHigher(i), rd.underBlock(i):
		return rd.blockOverLoad()
	case rd.ropeHigher(i), rd.hungFrom(i):
		return LineOut
	case rd.startsOut(i), rd.pulledOver(i):
		return Sideways
	case rd.sideBefore(i):
		return Sideways
	}
	return ""
}

// wallPlace is what a bare number is that is told of what a swing may strike: "shed
// 12 past", "cerca a 11". How far and how high it is are measured alike.
func (rd *reading) wallPlace(i int) Field {
	next := rd.at(rd.past(i+1, +1, markArticle))
	if !rd.swung() || rd.at(rd.past(i-1, -1, markIs|markAt)).obstacle() == "" || !next.marked(markOutward|markUpward) && !rd.endsBreath(i+1) {
		return ""
	}
	if next.marked(markUpward) {
		return ObstacleHeight
	}
	return ObstacleOut
}

// fromPlumb reads "está a 2,5 de la vertical": so few degrees are told as an angle.
func (rd *reading) fromPlumb(i int) bool {
	const most = 4
	fig := rd.elems[i].fig
	return fig.unit == nil && fig.high <= most && (rd.at(i+1).looksBack(StartAngle) || rd.termAt(i+1).offPlumb)
}

// underBlock reads "11 ft out from the block and 25 ft under it".
func (rd *reading) underBlock(i int) bool {
	below := rd.cued(rd.at(i+1), cueBelow) && rd.cued(rd.at(i+2), cueLoad) && rd.endsBreath(i+3) || rd.termAt(i+1).belowBlock && rd.endsBreath(i+2)
	if !below || !rd.at(i-1).marked(markAnd) {
		return false
	}
	for j := i - 2; j >= 0 && rd.elems[j].pause == 0 && rd.elems[j].obstacle() == ""; j-- {
		if rd.at(j).fig != nil && rd.at(j+1).plays(Sideways) || rd.at(j).plays(Sideways) {
			return true
		}
	}
	return false
}

// hungFrom reads "hangs 10 m from the block".
func (rd *reading) hungFrom(i int) bool {
	j := rd.past(i+2, +1, markArticle)
	return rd.termAt(rd.past(i-1, -1, markIs|markAt)).hung && rd.at(i+1).marked(markRelation|markMade) && rd.at(j).part() == partBlock && rd.breathEnds(j+1)
}

// blockOverLoad is what it makes of a swing how far the block is above the load: a
// load that a tag line pulls aside hung plumb before, one that swings did not.
func (rd *reading) blockOverLoad() Field {
	if rd.tagsAlone() {
		return LineOut
	}
	return BlockHeight
}

// sideBefore reads "off plumb 2 m", where the words have no number before them.
func (rd *reading) sideBefore(i int) bool {
	j := rd.back(i - 1)
	return rd.at(j).plays(Sideways) && rd.at(j-1).fig == nil && rd.breathEnds(i+1)
}

// blockHigher reads "block 18 above" and "the block is 9 m above it": above the
// load, where nothing else is named that it could be above.
func (rd *reading) blockHigher(i int) bool {
	over := rd.past(i+1, +1, markAdverb)
	if rd.besideOffset(i) {
		return true
	}
	higher := rd.cued(rd.at(over), cueHigher) || rd.cued(rd.at(over), cueOverHinge) && rd.cued(rd.at(over+1), cueLoad)
	if !higher || !rd.blockBefore(i) && !rd.blockAt(rd.back(i-1)) {
		return false
	}
	if rd.cued(rd.at(over+1), cueLoad) {
		return !rd.anyAt(func(n int) bool { return n < i && rd.elems[n].obstacle() != "" }) && !rd.goesOn(over+2)
	}
	k := rd.past(over+1, +1, markMade|markArticle)
	if rd.termAt(k).shape != "" || rd.termAt(k).unnamed {
		return !rd.goesOn(k + 1)
	}
	return rd.breathEnds(over + 1)
}

// besideOffset reads "la polea está 3 m corrida y 6 arriba": both are told from the
// piece.
func (rd *reading) besideOffset(i int) bool {
	j := i - 2
	for rd.at(j).plays(Sideways) || rd.cued(rd.at(j), cueOut) {
		j--
	}
	fig := rd.at(j).fig
	aside := fig != nil && (fig.told == Sideways || rd.at(j+1).plays(Sideways))
	return rd.cued(rd.at(i+1), cueAbove) && rd.at(i-1).marked(markAnd) && aside && rd.blockBefore(j) && rd.endsBreath(i+2)
}

// ropeHigher reads "rope 9 m above".
func (rd *reading) ropeHigher(i int) bool {
	rope := rd.at(rd.back(i - 1))
	return rope.part() == partRope && rd.cued(rd.at(i+1), cueHigher) && rd.breathEnds(i+2)
}

// startsOut reads "7 out" and "the limb is 9 ft out": the piece is so far to the
// side, unless something else is named that is, or that it is tied so far along.
func (rd *reading) startsOut(i int) bool {
	end := i + 2
	if k := rd.past(end, +1, markArticle); rd.at(k).part() == partBlock {
		end = k + 1 // "8 off the block"
	}
	if !rd.cued(rd.at(i+1), cueOut) || !rd.breathEnds(end) {
		return false
	}
	if rd.in.leads[rd.word(rd.at(i-1))] && !rd.at(i-1).marked(markAt) {
		return true // "from 2 m out"
	}
	for j := rd.back(i - 1); ; j-- {
		switch e := rd.at(j); {
		case j < 0 || e.pause > 0 || e.marked(markAnd):
			return !rd.surely(i, Tie)
		case e.piece() || rd.termAt(j).unnamed || e.part() == partBlock || rd.cued(e, cueLoad):
			return true
		case rd.heavy(j): // "hold 500 lb 5 ft out"
		case e.fig != nil || rd.termAt(j).tied || e.obstacle() != "" || e.part() != "" || e.marked(markPlace|markStation|markPart|markGear) || e.plays(People) || rd.termAt(j).someone:
			return false
		}
	}
}

// pulledOver reads "need it out 3 m" and "to move 400 lb over 6 ft", where a tag
// line is spoken of, which pulls nothing but sideways.
func (rd *reading) pulledOver(i int) bool {
	at := rd.back(i - 1)
	if !rd.tugged() || !rd.cued(rd.at(at), cueOut) || !rd.breathEnds(i+1) {
		return false
	}
	j := at - 1
	for rd.at(j).marked(markPronoun|markArticle) || rd.at(j).piece() || rd.termAt(j).unnamed || rd.heavy(j) {
		j--
	}
	return rd.at(j).marked(markTug|markMoving) || rd.cued(rd.at(j), cueShifts)
}

// tugged says whether a tag line is spoken of, or something pulled aside.
func (rd *reading) tugged() bool {
	return rd.has(markTug) || rd.anyAt(func(i int) bool { return rd.termAt(i).intent == AskBalance })
}

// breathEnds says whether what stands at i tells no more of the number before it:
// "9 ft out with 22 ft of rope".
func (rd *reading) breathEnds(i int) bool {
	e := rd.at(i)
	with := e.marked(markWhere) && (rd.at(i+1).fig != nil || rd.at(i+1).part() == partRope)
	return rd.endsBreath(i) || with || rd.cued(e, cueSoThat) || rd.termAt(i).purpose || rd.termAt(i).intent == AskSwing || rd.termAt(i).intent == AskBalance
}

// swinging settles such numbers, and passes over the words that told them.
func (rd *reading) swinging() {
	for i, e := range rd.elems {
		if e.fig == nil {
			continue
		}
		f := rd.swingPlace(i)
		switch {
		case e.fig.dim == dimAngle && rd.slants(i):
			continue
		case f == "":
			continue
		case e.fig.dim == dimCount && f == Sideways && rd.maybeSlants(i):
			continue
		case e.fig.dim == dimCount:
			e.fig.sure = f // its unit is asked for
			continue
		case f == Sideways && rd.at(i+1).plays(Sideways):
			continue // the words of a role tell it themselves
		}
		e.fig.told = f
		for _, k := range []int{rd.back(i - 1), i + 1} {
			if e := rd.at(k); rd.cued(e, cueOut) || rd.cued(e, cueHigher) {
				rd.elems[k].term = &term{}
			}
		}
	}
}

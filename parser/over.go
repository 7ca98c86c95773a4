package parser

// Where a block stands is told from the piece as well as the other way round:
// "block is 15 ft over from the limb". Under the block or beside it, that is how
// far the piece is to the side.

// blockOver finds such numbers where a block was named before them in the same
// breath.
func (rd *reading) blockOver() {
	for i := range rd.elems {
		if !rd.far(i) || rd.elems[i].fig.told != "" || !rd.blockBefore(i) || rd.asksFor(AskRaise) {
			continue
		}
		if last := rd.overFrom(i); last > 0 {
			rd.elems[i].fig.told = Sideways
			for k := i + 1; k < last; k++ {
				rd.elems[k].term = &term{}
			}
		}
	}
}

// overFrom reads "over from the limb" and "over toward the house from where i
// cut" behind the number at i, and returns where the words for it end.
func (rd *reading) overFrom(i int) int {
	j := i + 1
	if !rd.cued(rd.at(j), cueOver) {
		return 0
	}
	if rd.cued(rd.at(j+1), cueTowards) {
		k := rd.past(j+2, +1, markArticle|markAdjective)
		if rd.at(k).obstacle() == "" {
			return 0
		}
		j = k
	}
	if rd.at(j+1).plays(Sideways) && j > i+1 {
		return j + 2 // "from where i cut"
	}
	k := rd.past(j+2, +1, markArticle)
	if rd.cued(rd.at(j+1), cueFrom) && rd.termAt(k).shape != "" && rd.endsBreath(k+1) {
		return k
	}
	return 0
}

// cutBefore says whether the number at i is told of the cut or of the piece.
func (rd *reading) cutBefore(i int) bool {
	e := rd.at(rd.back(i - 1))
	return e.piece() || rd.cued(e, cueCutting)
}

// hungBelow reads "limb hangs 35 ft below" where a block is named before it, and
// nothing else that it could be below.
func (rd *reading) hungBelow(i int) bool {
	below := rd.cued(rd.at(i+1), cueBelow)
	return below && rd.endsBreath(i+2) && rd.termAt(rd.back(i-1)).hung && rd.anyAt(func(k int) bool { return k < i && rd.elems[k].part() == partBlock })
}

// hungUnder reads "hanging under 6 m of rope".
func (rd *reading) hungUnder(i int) bool {
	return rd.cued(rd.at(i-1), cueUnder) && rd.termAt(rd.back(i-2)).hung && rd.at(i+1).plays(RopeLength)
}

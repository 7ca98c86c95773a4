package parser

// "Another" is most often no other piece: a block that the rope goes on to, the tree
// next to this one, or what nobody measured.

// theOther settles such words at i, and leaves those in doubt that could be another
// piece, or whose number stands in the same breath.
func (rd *reading) theOther(i int) {
	switch {
	case rd.otherBlock(i), rd.otherAtBase(i), rd.otherTreeNear(i):
	case rd.otherTalk(i):
		end := i + 1
		if rd.kit(end) {
			end++
		}
		rd.leaveOut(i, end)
	}
}

// otherBlock reads "baja a otro block en la base": a block that turns the rope.
func (rd *reading) otherBlock(i int) bool {
	led := rd.at(i - 1).marked(markAt | markRelation | markAnd)
	switch block := rd.termAt(i + 1).block; {
	case !led || block == "" || rd.at(i-1).marked(markAnd) && block == AnyBlock || rd.at(i+2).fig != nil:
		return false
	case block == AnyBlock && rd.atBase(i+2):
		rd.alter(i+1, func(t *term) { *t = term{block: BaseBlock} })
		rd.elems[i+2].term = &term{}
	case block == AnyBlock:
		rd.alter(i+1, func(t *term) { *t = term{block: RedirectBlock} })
	}
	rd.alter(i, func(t *term) { *t = term{marks: markArticle} })
	return true
}

// otherAtBase reads "un block arriba y otro en la base".
func (rd *reading) otherAtBase(i int) bool {
	if !rd.at(i-1).marked(markAnd) || !rd.atBase(i+1) || !rd.blockBefore(i) {
		return false
	}
	rd.elems[i].term, rd.elems[i+1].term = &term{}, &term{block: BaseBlock}
	return true
}

// atBase says whether "at the base" stands at i, and no thickness that is told there.
func (rd *reading) atBase(i int) bool {
	return rd.at(i).plays(ButtDiameter) && !rd.at(i).piece() && rd.at(i-1).fig == nil && rd.at(i+1).fig == nil
}

// otherTreeNear reads "en otro pino a 6 metros": the tree is a place there, and what
// is cut is no pine.
func (rd *reading) otherTreeNear(i int) bool {
	t := rd.termAt(i + 1)
	if rd.blockBefore(i) && !rd.anyAt(func(k int) bool { return rd.elems[k].marked(markStation) }) {
		return false // a block there may be the first, or turn the rope
	}
	at := rd.termAt(i).oneEnd || rd.at(i-1).marked(markAt|markWhere|markRelation)
	if !at || t.tree == nil && !rd.at(i+1).marked(markStanding) || t.shape != "" || rd.at(i+2).fig != nil || rd.at(i-1).fig != nil {
		return false
	}
	rd.elems[i].term = &term{marks: markAt | markIs | markWhere}
	rd.elems[i+1].term = &term{marks: markPlace | markStanding | markOffTree}
	return true
}

// otherTalk says whether nothing is told of the other at i that a number or a piece
// could belong to.
func (rd *reading) otherTalk(i int) bool {
	if rd.byItself(i) || rd.at(i-1).fig != nil || rd.at(i-1).marked(markAnd) && !rd.kit(i+1) {
		return false
	}
	hand := rd.person(i + 1)
	for k := i + 1; k < rd.clauseEnd(i+1); k++ {
		if e := rd.elems[k]; hand && (rd.kit(k) || rd.termAt(k).ropeEnd) || e.fig != nil || e.piece() || rd.termAt(k).unnamed || e.plays(People) || e.plays(Wraps) || e.marked(markCord) {
			return false
		}
	}
	return true
}

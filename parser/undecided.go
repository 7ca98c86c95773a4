package parser

// Who cannot tell which of two it is says no more than "or" does: "cant tell if its ash
// or elm", "willow or poplar, not sure from here", "cant tell, 14 or 16 in". Of two
// trees nobody can say which then, and the heavier is planned on.

// undecided leaves such words out.
func (rd *reading) undecided() {
	tree, b, ok := rd.eitherTrees()
	if !ok || !rd.orBetween(tree, b) {
		tree = -1
	}
	for i := range rd.elems {
		switch end := rd.doubtEnd(i, tree); {
		case end < 0:
		case rd.at(end).fig != nil && rd.at(end).fig.low < rd.at(end).fig.high:
			rd.leaveOut(i, end)
		case tree >= 0 && (end == tree || rd.endsBreath(end)):
			rd.leaveOut(i, end)
			rd.heavier = true
		}
	}
}

// doubtEnd finds what stands behind words of doubt at i and what says nothing more: a
// number, the first of two trees, or a pause; -1 where they are of anything else.
func (rd *reading) doubtEnd(i, tree int) int {
	n := rd.doubts(i)
	if n == 0 {
		return -1
	}
	k := i + 1
	for ; k < len(rd.elems) && rd.elems[k].pause == 0 && rd.elems[k].fig == nil && k != tree; k++ {
		e := rd.elems[k]
		said := e.start < rd.elems[i].start+n
		small := e.polite() && rd.termAt(k).condition == "" && e.strength() == "" || rd.termAt(k).ofThese || rd.cued(e, cueDown) || e.marked(markIs|markArticle|markPronoun|markUnsure|markRelation|markPlace)
		if !said && !small {
			return -1
		}
	}
	return k
}

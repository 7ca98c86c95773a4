package parser

// Who speaks is named last: "memo y yo" are two, "2 compas y yo" three, and "entre el
// tambor y yo" is a place.

// selfToo reads the words at i.
func (rd *reading) selfToo(i int) {
	prev, next := rd.at(i-1), rd.at(i+1)
	goesOn := next.term != nil && !next.marked(markAnd) && !next.marked(markPlace) && !next.term.highEnd && !rd.termAt(i+1).ropeEnd && next.fig == nil
	switch {
	case rd.kit(i - 1), goesOn && rd.speaks(i+1):
		rd.alter(i, func(t *term) { *t = term{marks: markAnd} })
	case rd.termAt(i-1).someone && rd.aloft(i):
		rd.alter(i, func(t *term) { *t = term{} })
	case rd.termAt(i - 1).someone:
		rd.countNames(i)
	case prev.plays(People) && (next.plays(People) || rd.onTackle(i+1)) && rd.at(i-2).fig.several() && !rd.at(i-3).plays(People):
		fig := rd.at(i - 2).fig
		fig.low, fig.high = fig.low+1, fig.high+1
		rd.alter(i, func(t *term) { *t = term{} })
	}
}

// speaks says whether what stands at i is what the speaker is or does: "y yo soy".
func (rd *reading) speaks(i int) bool {
	return rd.at(i).marked(markIs|markPlace) || rd.at(i).polite() && rd.at(i).pause == 0
}

// aloft says whether those named around the words at i are told to be up the tree.
func (rd *reading) aloft(i int) bool {
	k := i - 1
	for rd.termAt(k).someone || rd.at(k).marked(markIs|markArticle) {
		k--
	}
	up := func(n int) bool { return rd.termAt(n).highEnd || rd.at(n).marked(markUpward|markErect) }
	return up(k) || up(i+1)
}

// countNames counts the names before the words at i, and who speaks.
func (rd *reading) countNames(i int) {
	n, k := 1.0, i-1
	for rd.termAt(k).someone || n > 1 && rd.at(k).pause == 2 && rd.termAt(k-1).someone {
		if rd.termAt(k).someone {
			n++
		}
		k--
	}
	e := rd.elems[i-1]
	rd.elems[i-1] = element{start: e.start, end: rd.elems[i].end, fig: &figure{low: n, high: n, start: e.start, end: rd.elems[i].end}}
	rd.elems[i].term = &term{roles: []role{{People, before, false}}}
}

// every takes "cada polea" and "both blocks" for no more than "the": gear, or a
// place, of which nothing is added up.
func (rd *reading) every(i int) {
	plain := rd.at(i+1).term != nil && rd.at(i+1).polite() && rd.at(i+1).pause == 0 && !rd.person(i+1) && !rd.anyWithin(i, rd.clauseEnd(i+1), func(k int) bool { return rd.elems[k].fig != nil })
	if next := rd.at(i + 1); plain || rd.kit(i+1) || next.marked(markPlace|markStanding) && !next.piece() || rd.termAt(i+1).block != "" {
		rd.alter(i, func(t *term) { *t = term{marks: markArticle} })
	}
}

// somewhat reads "medio inclinada": no half of anything.
func (rd *reading) somewhat(i int) {
	next := rd.at(i + 1)
	if rd.at(i-1).fig != nil || next.term == nil || next.piece() || len(next.term.roles) > 0 {
		return
	}
	if next.term.note == "lean" || next.term.level {
		rd.alter(i, func(t *term) { *t = term{} })
	}
}

package parser

// "Isnt that too much for 2 wraps" and "wont it be over 500 lb" ask, and deny nothing:
// who is asked of stands behind the denial, which begins what is said.

// asksNegated says whether the denial at i asks so of nothing but wraps, people and what
// a piece may weigh. What it would be taken for of sizes, trees, wood and gear, "isnt it
// 14 in", nobody has told.
func (rd *reading) asksNegated(i int) bool {
	e, next := rd.elems[i], rd.at(i+1)
	if !rd.cued(e, cueNot) || rd.termAt(i).denies || rd.termAt(i).purpose || i > 0 && rd.at(i-1).pause == 0 && !rd.cued(rd.at(i-1), cueClause) {
		return false
	}
	if !rd.cued(next, cueUs) && !next.marked(markPronoun|markArticle) || next.fig != nil {
		return false
	}
	asks := false
	for k := i + 1; k < len(rd.elems) && rd.elems[k].pause == 0; k++ {
		el, t := rd.elems[k], rd.termAt(k)
		counted := rd.countedBy(k+1) || rd.mass(k) && (rd.at(k-1).plays(Limit) || rd.at(k-1).marked(markBound))
		switch {
		case el.fig != nil && !counted, el.fig == nil && (t.tree != nil || t.condition != "" || t.note != "" && t.note != "about" || t.damaged || t.frail || t.ask != "" || el.strength() != ""):
			return false
		}
		asks = asks || el.fig != nil
	}
	return asks
}

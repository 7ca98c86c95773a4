package parser

// Crews tell the ends of a piece without saying which is which: "10 in one end,
// 5 the other". The thicker is the butt. And a ring of wood is a round.

// bothEnds finds the two thicknesses of such a piece.
func (rd *reading) bothEnds() {
	var at []int
	for i := range rd.elems {
		if rd.endOf(i) {
			at = append(at, i)
		}
	}
	if len(at) == 1 {
		at = rd.firstEnd(at[0])
	}
	if len(at) != 2 {
		return
	}
	a, b := rd.elems[at[0]].fig, rd.elems[at[1]].fig
	if b.unit == nil {
		b.lent(a.unit)
	}
	if a.unit != b.unit || !a.short() || a.high == b.high || a.pair || b.pair {
		return
	}
	a.told, b.told = ButtDiameter, TipDiameter
	if a.high < b.high {
		a.told, b.told = TipDiameter, ButtDiameter
	}
	for _, i := range at {
		if !rd.termAt(rd.past(i+1, +1, markAt|markArticle)).oneEnd {
			continue
		}
		rd.alter(rd.past(i+1, +1, markAt|markArticle), func(t *term) { *t = term{} })
	}
}

// firstEnd finds the thickness before the one at i that is told of the other end,
// by itself or of "a tip": "27 cm, 20 en la otra punta", "27 cm en una punta y 20 en
// la otra". It returns both, or none.
func (rd *reading) firstEnd(i int) []int {
	p := i - 1
	for rd.at(p).pause > 0 && rd.at(p).pause < 4 || rd.at(p).marked(markAnd|markIs|markMade) {
		p--
	}
	end := p
	if rd.at(p).plays(TipDiameter) || rd.at(p).plays(Sideways) {
		p--
	}
	fig := rd.at(p).fig
	if !fig.short() || fig.told != "" || fig.pair || end == p && rd.at(p-1).looks(after) {
		return nil
	}
	if end > p {
		rd.alter(end, func(t *term) { *t = term{} })
	}
	return []int{p, i}
}

// endOf says whether the number at i is told of one of two ends.
func (rd *reading) endOf(i int) bool {
	fig := rd.at(i).fig
	return fig != nil && fig.told == "" && (fig.short() || fig.dim == dimCount && fig.unit == nil) &&
		rd.termAt(rd.past(i+1, +1, markAt|markArticle)).oneEnd
}

// ringOfWood reads "sycamore ring" as a round: a ring that a tree is named
// before is no gear.
func (rd *reading) ringOfWood(i int) {
	if rd.termAt(i-1).tree != nil {
		rd.alter(i, func(t *term) { *t = term{shape: Log, marks: markRound} })
	}
}

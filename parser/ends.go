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
	if a.unit != b.unit || a.unit != nil && !a.short() || a.high == b.high || a.pair || b.pair {
		return
	}
	butt, tip := a, b
	if a.high < b.high {
		butt, tip = b, a
	}
	if a.unit == nil {
		butt.sure, tip.sure = ButtDiameter, TipDiameter // only the unit is in doubt
	} else {
		butt.told, tip.told = ButtDiameter, TipDiameter
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
	bare := fig != nil && fig.dim == dimCount && fig.unit == nil && end > p
	if !fig.short() && !bare || fig.told != "" || fig.pair || end == p && rd.at(p-1).looks(after) {
		return nil
	}
	if end == p && rd.at(p-1).plays(Sideways) {
		end = p - 1 // "de un lado 50 cm y 30 del otro"
	}
	if end != p {
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

// thinEnd reads "36 in butt, 30 in top", "22 at the bottom, 12 up top" and "butt 17
// top 13" as both ends of one piece: the words at i stand where those of the thick
// end do, beside a lesser number.
func (rd *reading) thinEnd(i int) {
	if rd.at(i + 1).piece() {
		return
	}
	for k := range rd.elems {
		if k == i || !rd.at(k).plays(ButtDiameter) {
			continue
		}
		behind := rd.numberBefore(k) != nil && rd.numberBefore(k).over(rd.numberBefore(i))
		ahead := !behind && rd.labels(k) && rd.labels(i) && rd.at(k+1).fig.over(rd.at(i+1).fig)
		switch {
		case behind:
			rd.alter(i, func(t *term) { t.shape, t.roles = "", []role{{TipDiameter, before, false}} })
			return
		case ahead:
			rd.alter(i, func(t *term) { t.shape, t.roles = "", []role{{TipDiameter, after, false}} })
			return
		}
	}
}

// labels says whether the words at k stand before their number, and none before
// them: "butt 17 top 13".
func (rd *reading) labels(k int) bool {
	before := rd.at(k - 1)
	return rd.at(k+1).fig != nil && (before.fig == nil || rd.at(k-2).looks(after))
}

// numberBefore is the number that the words at k stand behind, nil for none.
func (rd *reading) numberBefore(k int) *figure {
	return rd.at(rd.past(k-1, -1, markAt|markArticle)).fig
}

// over says whether a thickness is more than another that is told alike.
func (f *figure) over(thin *figure) bool {
	alike := func(f *figure) bool { return f.short() || f != nil && f.dim == dimCount && f.unit == nil }
	return alike(f) && alike(thin) && !f.pair && !thin.pair && f.high > thin.in(f)
}

// thickOfThin reads "20 in, 18 in at the small end": of two thicknesses the one
// that nothing is said of is at the other end.
func (rd *reading) thickOfThin() {
	tip, other := -1, -1
	for i, e := range rd.elems {
		switch {
		case e.fig == nil:
			if e.plays(ButtDiameter) || e.plays(MidDiameter) || e.plays(Diameter) && !e.marked(markAdjective) || e.marked(markTaper) || e.term != nil && e.term.shape == Limb {
				return
			}
		case rd.roleBehind(i) == TipDiameter:
			if tip >= 0 {
				return
			}
			tip = i
		case !e.fig.short() || e.fig.high <= thickestRope:
		case other >= 0 || e.fig.told != "" || e.fig.pair || rd.at(i+1).looks(before):
			return
		default:
			other = i
		}
	}
	if other < 0 || tip < other || !rd.elems[other].fig.over(rd.elems[tip].fig) {
		return
	}
	if thin := rd.elems[tip].fig; thin.unit == nil {
		thin.lent(rd.elems[other].fig.unit)
	}
	rd.elems[other].fig.told = ButtDiameter
}

// toTip claims how long a piece is where it is told as far as its end: "22 foot out to
// the tip". What goes on from there, "to the tip from the tie", tells of a part of it.
func (rd *reading) toTip() {
	const most = 6 // words: "all the way out to the tip"
	for i := range rd.elems {
		before, tip := rd.at(i-1), i+1
		if !rd.far(i) || !rd.typedAfter(i, cueToTip) || before.marked(markRelation) || rd.cued(before, cueMore) || rd.cued(before, cueOther) {
			continue
		}
		for tip < i+most && !rd.at(tip).plays(TipDiameter) && rd.at(tip).term != nil {
			tip++
		}
		part := rd.anyAt(func(k int) bool { return (k < i || k > tip) && (rd.termAt(k).tied || rd.elems[k].plays(Tie)) })
		if goesOn := rd.at(tip + 1); part || goesOn.fig.short() || !rd.at(tip).plays(TipDiameter) || goesOn.marked(markRelation) && !goesOn.marked(markIs) {
			continue
		}
		rd.claim(i, Length)
		for k := i + 1; k <= tip; k++ {
			rd.elems[k].term = &term{}
		}
	}
}

// ringOfWood reads "sycamore ring" as a round: a ring that a tree is named
// before is no gear.
func (rd *reading) ringOfWood(i int) {
	if rd.termAt(i-1).tree != nil {
		rd.alter(i, func(t *term) { *t = term{shape: Log, marks: markRound} })
	}
}

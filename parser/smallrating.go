package parser

// What gear is stamped with in kilonewtons, or is said to bear in tonnes, is a small
// number: "sling's a 22", "biner says 30", "the choker says 8 on the tag". It is no
// size, and no load, and which unit it has is asked.

// mostStamped is more than any such number: more are pounds or kilograms.
const mostStamped = 100

// smallRating is the gear that the bare number at i is a strength of, "" for none.
func (rd *reading) smallRating(i int) part {
	fig := rd.elems[i].fig
	if fig == nil || fig.dim != dimCount || fig.unit != nil || fig.pair || fig.falling || fig.low < 1 || fig.high >= mostStamped {
		return ""
	}
	onTag := rd.typedAfter(i, cueOnTag)
	if next := rd.at(i + 1); !rd.endsBreath(i+1) && !onTag && next.strength() == "" {
		return ""
	}
	k, stamped, one := i-1, onTag, false
	for rd.at(k).pause == 0 && rd.at(k).part() == "" && !rd.at(k).marked(markCord) && rd.linksRating(k) {
		stamped = stamped || rd.cued(rd.at(k), cueStamped) || rd.termAt(k).label || rd.termAt(k).rated
		one = one || rd.at(k).marked(markArticle)
		k--
	}
	switch p := rd.at(k).part(); {
	case k == i-1 && !onTag:
		return ""
	case p == partRope || rd.at(k).marked(markCord):
		if stamped || one && fig.low != float64(int(fig.low)) {
			return partRope // "rope's a 12" may be millimetres
		}
		return ""
	case p != "" && (stamped || one):
		return p
	case stamped && p == "":
		return rd.stampedGear()
	}
	return ""
}

// linksRating says whether the element at i may stand between gear and what is stamped
// on it.
func (rd *reading) linksRating(i int) bool {
	e := rd.at(i)
	return e.fig == nil && (e.marked(markIs|markArticle|markRating) && !e.marked(markAt) || rd.cued(e, cueStamped) || rd.termAt(i).label || rd.termAt(i).rated || rd.termAt(i).note == "about")
}

// stampedGear is the one kind of gear that a message names, a choker being a sling.
func (rd *reading) stampedGear() part {
	if p := rd.part(); p != "" {
		return p
	}
	if rd.anyAt(func(k int) bool { return rd.termAt(k).note == noteChoker || rd.termAt(k).note == noteBasket }) {
		return partSling
	}
	return ""
}

// asksSmall asks for the unit of such numbers, and which figure they are where that is
// not told.
func (rd *reading) asksSmall() {
	for i := range rd.elems {
		p := rd.smallRating(i)
		if p == "" {
			continue
		}
		a := rd.asksStrength(rd.elems[i].fig, p)
		a.Kind = NoUnit
		if s := rd.at(i + 1).strength(); s != "" {
			a.Fields = []Field{p.field(s)}
		}
		if rd.cued(rd.at(i-1), cueStamped) {
			rd.alter(i-1, func(t *term) { t.roles = nil })
		}
	}
}

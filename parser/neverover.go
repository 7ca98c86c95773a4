package parser

// What a piece may weigh is also told by what nobody wants: "dont want over 25 stone
// a bit", "cant go past 600 lb", "dont want anything bigger than 900 lb a piece".

// neverOver reads such limits where it is asked how a piece is cut, or said that
// each of them is held to it.
func (rd *reading) neverOver() {
	for i := range rd.elems {
		bound := rd.elems[max(i-1, 0)]
		if !rd.mass(i) || rd.elems[i].fig.claimed != "" || !bound.marked(markBound) && !bound.plays(Limit) && !rd.cued(bound, cuePast) {
			continue
		}
		not := rd.deniedTo(i-2, rd.cued(bound, cuePast))
		apiece := rd.apiece(i + 1)
		if not >= 0 && !bound.marked(markBound) && rd.gearBefore(not) {
			continue // "the rope cant take anything over 500 lb" rates it
		}
		if not < 0 || apiece < 0 && !rd.asksFor(AskCutPlan) || rd.termAt(i+1).inHand {
			continue
		}
		for k := not; k < i; k++ {
			rd.alter(k, func(t *term) { *t = term{} })
		}
		rd.limited(i)
		if apiece > 0 {
			rd.alter(apiece, func(t *term) { *t = term{intent: AskCutPlan, besides: true} })
		}
	}
}

// piecesUnder reads "even pieces under 400" of wood whose length is told, and "piezas
// iguales de menos de 400", as what each piece may weigh.
func (rd *reading) piecesUnder() {
	for i := range rd.elems {
		bound := rd.at(i - 1)
		if !rd.mass(i) || rd.elems[i].fig.claimed != "" || !bound.marked(markBound) || !bound.plays(Limit) {
			continue
		}
		k := i - 2
		for k >= 0 && rd.elems[k].fig == nil && (rd.elems[k].marked(markMade|markIs|markAdjective) || rd.elems[k].polite()) && !rd.pluralAt(k) && !rd.elems[k].plays(Alike) {
			k--
		}
		if rd.at(k+1).pause > 0 || !rd.pluralAt(k) && !rd.at(k).plays(Alike) || !rd.asksFor(AskCutPlan) && !rd.anyAt(rd.far) {
			continue
		}
		rd.alter(i-1, func(t *term) { *t = term{} })
		rd.limited(i)
		rd.alter(k, func(t *term) { *t = term{intent: AskCutPlan, besides: true} })
	}
}

// limited makes the number at i the limit. One without its unit has the one that the
// numbers around it leave, or is led by a word, so that it is asked about: a bare 400
// is no mass yet.
func (rd *reading) limited(i int) {
	if fig := rd.elems[i].fig; fig.unit == nil {
		fig.lent(rd.capacityUnit(i))
	}
	if fig := rd.elems[i].fig; fig.unit == nil {
		fig.lent(rd.kilograms(i, Limit))
	}
	if rd.heavy(i) {
		rd.claim(i, Limit)
		return
	}
	rd.alter(i-1, func(t *term) { t.roles = []role{{Limit, after, false}} })
}

// mass says whether the number at i is one, or may be one without its unit.
func (rd *reading) mass(i int) bool {
	fig := rd.elems[i].fig
	return rd.heavy(i) || fig != nil && fig.dim == dimCount && fig.unit == nil && fig.low >= leastLimit && !rd.turnable(i+1)
}

// deniedTo finds the denial that what is wanted up to i is denied by, -1 for none:
// "dont want anything". The words of the bound may say themselves what is wanted: "go
// over".
func (rd *reading) deniedTo(i int, will bool) int {
	for n := 0; i >= 0 && n < few; n++ {
		e := rd.elems[i]
		switch {
		case rd.termAt(i).purpose && rd.termAt(i).ask == Twist, rd.denial(i) && will:
			return i // "dont want to"
		case rd.denial(i):
			return -1
		case rd.cued(e, cueWilling):
			will = true
		case e.pause > 0, e.fig != nil, !e.polite() && !e.marked(markIs|markPronoun|markArticle|markUnsure) && !rd.termAt(i).unnamed:
			return -1
		}
		i--
	}
	return -1
}

// apiece finds the word behind the limit at i that says that it is each piece's: "a
// bit", "each", "per cut"; -1 where none stands there.
func (rd *reading) apiece(i int) int {
	if rd.termAt(i).each {
		return i
	}
	j := i
	if rd.at(j).marked(markArticle) || rd.cued(rd.at(j), cuePer) {
		j++
	}
	if j > i && (rd.termAt(j).unnamed || rd.cued(rd.at(j), cueLot)) {
		rd.alter(i, func(t *term) { *t = term{} })
		return j
	}
	return -1
}

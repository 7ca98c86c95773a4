package parser

// figureEights takes the number in "figure eight" for the knot that it names.
func (r *Reader) figureEights(rd *reading) {
	for i := 1; i < len(rd.elems); i++ {
		fig, before := rd.elems[i].fig, i-1
		if fig == nil || fig.dim != dimCount || fig.unit != nil || fig.low != 8 || fig.high != 8 || isDigit(rd.text[fig.start]) {
			continue // digits are asked about: none of them is ever passed over
		}
		if rd.at(before).marked(markIs | markIn) {
			before-- // "figure of eight", "nudo en ocho"
		}
		e := rd.at(before)
		words := []string{rd.word(e), fold(rd.text[fig.start:fig.end])}
		if t, n := r.lex.find(words, rd.in); n == 2 && t.note == "figure-eight" {
			rd.elems[before] = element{start: e.start, end: fig.end, term: t}
			rd.elems = append(rd.elems[:before+1], rd.elems[i+1:]...)
		}
	}
}

// partOf finds the gear that a strength is of: named before it in the same
// breath, or behind it, or in the breath before where that tells of nothing
// but gear ("5/8 double braid, bowline, 16,000 lb break").
func (rd *reading) partOf(left, right int, used map[int]bool) (part, int) {
	j := left
	for ; j >= 0 && !rd.ends(j); j-- {
		p := rd.elems[j].part()
		if p == "" && rd.elems[j].plays(RopeLength) {
			p = partRope // "la cuerda es de 7 toneladas de ruptura"
		}
		if p != "" && !used[j] && !rd.ledTo(j) {
			return p, j
		}
	}
	for k := right; k < len(rd.elems) && !rd.ends(k); k++ {
		if p := rd.elems[k].part(); p != "" && !used[k] {
			return p, k
		}
	}
	for ; j >= 0; j-- {
		e := rd.elems[j]
		switch p := e.part(); {
		case p != "" && rd.ledTo(j): // "40 ft of rope to the drum, breaks at 10,000 lb"
		case p != "" && !used[j]:
			return p, j
		case p != "", e.fig != nil && !e.fig.ofGear(), e.piece(), e.pause > 2:
			return "", -1
		}
	}
	return "", -1
}

// ledTo says whether the drum at i is only where a rope leads that is named
// before it: "rope to the drum".
func (rd *reading) ledTo(i int) bool {
	k := rd.past(i-1, -1, markArticle)
	e := rd.elems[i]
	leads := rd.at(k).marked(markRelation|markTaper) || rd.at(i-1).marked(markRelation) // "al tambor"
	if e.part() != partDrum || !leads {
		return false
	}
	for ; k >= 0 && rd.elems[k].pause == 0; k-- {
		if rd.elems[k].part() == partRope {
			return true
		}
	}
	return false
}

// ratedBefore is the gear of the number before, where that told the other
// figure of its label and nothing else stands between: "rope 16,000 lb break,
// 1,600 lb WLL".
func (rd *reading) ratedBefore(j int, s strength) part {
	for ; j >= 0; j-- {
		e := rd.elems[j]
		switch {
		case e.fig != nil:
			for _, p := range []part{partRope, partBlock, partSling, partConnector, partDrum} {
				if e.fig.sure == p.field(s.other()) {
					return p
				}
			}
			return ""
		case e.strength() == "" && e.pause == 0 && !e.marked(markIs|markRating|markArticle|markAnd):
			return ""
		}
	}
	return ""
}

// ends says whether a breath ends at an element.
func (rd *reading) ends(i int) bool {
	e := rd.elems[i]
	return e.fig != nil && e.fig.rates() || e.pause > 0 && !rd.colon(i) || e.marked(markAnd) || e.piece()
}

// ofGear says whether a number can tell how thick a rope or a sling is, or
// how it is rigged.
func (f *figure) ofGear() bool {
	return f.dim == dimAngle || f.dim == dimRatio || f.dim == dimCount && f.low < 100 || f.dim == dimLength && f.unit.fine
}

// partBeside is the gear right beside a number: "3 ton shackle", "sling rated
// for 4,000 lb".
func (rd *reading) partBeside(left, right int) part {
	if p := rd.at(right).part(); p != "" {
		return p
	}
	return rd.at(rd.past(rd.pastIs(left), -1, markRating|markIs)).part()
}

// gearAsked is the strength of the one piece of gear that is asked about, where none
// is told: of hardware its working load, which is marked on it.
func (rd *reading) gearAsked(q Question) Field {
	if q.Intent != AskGear || q.Has(Ratings...) {
		return ""
	}
	p := rd.part()
	if q.noted(NoteOnBlock) && p == "" {
		p = partSling // "3000 lb on the block, will the sling hold"
	}
	switch p {
	case partSling:
		return SlingBreak
	case partBlock, partConnector, partDrum:
		return p.field(working)
	}
	return ""
}

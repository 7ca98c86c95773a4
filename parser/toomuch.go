package parser

// What a piece may weigh is told in two breaths as well: "más de 400 kg no
// quiero", "arriba de 500 kg no bajamos". Without those words it is a claim, and
// asked about.

// tooMuch reads such limits of what is to be cut.
func (rd *reading) tooMuch() {
	if !rd.asksFor(AskCutPlan) {
		return
	}
	for i, e := range rd.elems {
		if !rd.heavy(i) || e.fig.claimed != "" || rd.at(i-2).plays(Weight) || rd.at(i-2).marked(markPronoun|markIs) {
			continue
		}
		switch bound, next := rd.at(i-1), rd.at(i+1); {
		case rd.cued(bound, cueUpTo) && (next.pause > 0 || rd.termAt(i+1).each):
			rd.claim(i, Limit)
		case bound.marked(markBound):
			rd.refused(i)
		}
	}
}

// refused reads "no quiero" behind the number at i.
func (rd *reading) refused(i int) {
	not := rd.past(i+1, +1, markPronoun)
	if not < len(rd.elems) && rd.colon(not) || rd.at(not).pause == 2 {
		not++
	}
	will := rd.past(not+1, +1, markPronoun)
	if !rd.cued(rd.at(not), cueNot) || !rd.cued(rd.at(will), cueWilling) || rd.at(will+1).fig != nil {
		return
	}
	rd.claim(i, Limit)
	for k := not; k <= will; k++ {
		rd.alter(k, func(t *term) { *t = term{} })
	}
	if rd.termAt(will + 1).each {
		rd.alter(will+1, func(t *term) { *t = term{} })
	}
}

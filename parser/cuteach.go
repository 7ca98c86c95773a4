package parser

// "Each" beside what a piece may weigh says nothing more of a cut: "máximo 300 kg
// cada trozo, ¿cuántos cortes?".

// eachCut takes the doubt from such words.
func (rd *reading) eachCut() {
	for i := range rd.elems {
		if !rd.termAt(i).each || len(rd.termAt(i).roles) > 0 {
			continue
		}
		left, right := rd.past(i-1, -1, markIs|markBound|markMade), rd.past(i+1, +1, markIs|markBound|markMade|markAt)
		if rd.mayWeigh(left, -1) || rd.mayWeigh(right, +1) {
			rd.alter(i, func(t *term) { *t = term{} })
		}
	}
}

// mayWeigh says whether the number at i is a limit of what pieces weigh: one of a
// cut that is asked about, or with the words of a limit on its far side.
func (rd *reading) mayWeigh(i, step int) bool {
	if !rd.heavy(i) {
		return rd.at(i).plays(Limit) && rd.heavy(i+step)
	}
	return rd.asksFor(AskCutPlan) || rd.at(i+step).plays(Limit)
}

package parser

import "strings"

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

// cutInto reads "in 400 lb chunks" as what each piece may weigh, where how long the
// wood is, or how long a piece may be, is told or asked.
func (rd *reading) cutInto() {
	for i := range rd.elems {
		behind := rd.past(i+1, +1, markAdjective)
		if !rd.heavy(i) || !rd.at(i-1).marked(markIn) && !rd.cuts(i-1) || !rd.pluralAt(behind) || !rd.asksFor(AskCutPlan) && !rd.anyAt(rd.far) {
			continue
		}
		rd.claim(i, Limit)
		rd.alter(behind, func(t *term) { *t = term{intent: AskCutPlan, besides: true} })
		return
	}
}

// cuts says whether the words at i ask how a piece is cut: "cut it in".
func (rd *reading) cuts(i int) bool { return rd.termAt(i).intent == AskCutPlan }

// pluralAt says whether the element at i is pieces, whatever they are called.
func (rd *reading) pluralAt(i int) bool {
	e := rd.at(i)
	return e.term != nil && (e.term.unnamed || e.term.shape != "") && strings.HasSuffix(strings.Fields(fold(rd.text[e.start:e.end]))[0], "s")
}

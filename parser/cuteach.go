package parser

import "strings"

// "Each" beside what a piece may weigh says nothing more of a cut: "máximo 300 kg
// cada trozo, ¿cuántos cortes?".

// eachCut takes the doubt from such words.
func (rd *reading) eachCut() {
	for i := range rd.elems {
		if rd.cued(rd.elems[i], cuePer) && rd.mayWeigh(i-1, -1) && (rd.termAt(i+1).unnamed || rd.cued(rd.at(i+1), cueLot)) {
			rd.alter(i, func(t *term) { *t = term{} })
			rd.alter(i+1, func(t *term) { *t = term{} })
		}
		if !rd.termAt(i).each {
			continue
		}
		left, right := rd.past(i-1, -1, markIs|markBound|markMade), rd.pastBound(i+1)
		if rd.mayWeigh(left, -1) || rd.mayWeigh(right, +1) || rd.howEach(i) {
			rd.alter(i, func(t *term) { t.ask, t.each = "", false })
		}
	}
}

// pastBound is what stands behind "each piece no more than".
func (rd *reading) pastBound(i int) int {
	if rd.termAt(i).unnamed || rd.at(i).piece() || rd.at(i).polite() {
		i++
	}
	return rd.past(i, +1, markIs|markBound|markMade|markAt)
}

// howEach says whether "each" at i only asks how long the pieces of a cut are: the
// answer tells of each.
func (rd *reading) howEach(i int) bool {
	next := rd.past(i+1, +1, markArticle|markIs)
	asked := rd.cuts(i-1) || rd.at(i-1).plays(Length) && rd.at(i-1).fig == nil && rd.at(i-2).fig == nil
	return rd.asksFor(AskCutPlan) && asked && (rd.endsBreath(next) || rd.termAt(next).unnamed && rd.endsBreath(next+1))
}

// leastLimit is the least number without a unit that is taken for what a piece may
// weigh, and for no count.
const leastLimit = 50

// mayWeigh says whether the number at i is a limit of what pieces weigh: one of a
// cut that is asked about, or with the words of a limit on its far side.
func (rd *reading) mayWeigh(i, step int) bool {
	if fig := rd.at(i).fig; fig != nil && fig.dim == dimCount && fig.unit == nil && rd.asksFor(AskCutPlan) {
		return fig.low >= leastLimit && !rd.turnable(i+1)
	}
	if !rd.heavy(i) {
		return rd.at(i).plays(Limit) && rd.heavy(i+step)
	}
	k := i + step
	for rd.at(k).polite() || rd.at(k).marked(markMade|markIs|markArticle) {
		k += step // "límite de hoy 150 kg por pieza"
	}
	return rd.asksFor(AskCutPlan) || rd.at(k).plays(Limit)
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

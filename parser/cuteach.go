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
// answer tells of each. What they are cut from may stand behind, where nothing tells how
// long that is: "qué tan largo corto cada trozo de roble de 24 in".
func (rd *reading) howEach(i int) bool {
	next := rd.past(i+1, +1, markArticle|markIs)
	if rd.termAt(next).unnamed {
		next++
	}
	asked := rd.cuts(i-1) || rd.cued(rd.at(i-1), cueCutting) || rd.at(i-1).plays(Length) && rd.at(i-1).fig == nil && rd.at(i-2).fig == nil
	return rd.asksFor(AskCutPlan) && asked && (rd.endsBreath(next) || rd.leadsToSize(next) && !rd.anyAt(rd.far))
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

// fromTop reads "dime dónde cortar desde arriba" as the end that is cut first.
func (rd *reading) fromTop() {
	if !rd.asksFor(AskCutPlan) {
		return
	}
	for i, e := range rd.elems {
		if e.term != nil && rd.cued(e, cueFromTop) && e.term.note == "" && rd.at(i-1).fig == nil {
			rd.alter(i, func(t *term) { *t = term{note: fromTip} })
		}
	}
}

// fromTip is the note of a stick that is cut from its thin end.
const fromTip = "from-tip"

// longerUp reads "do they get longer going up" and "or do they have to be shorter", of
// pieces that have a limit, as a question for a plan: it says how long each is.
func (rd *reading) longerUp() {
	if !rd.asksFor(AskCutPlan) && !rd.worded(Limit) {
		return
	}
	for i := range rd.elems {
		if t := rd.termAt(i); t.ask != Twist || t.turning != TurnsCompared || !rd.cued(rd.elems[i], cueLength) {
			continue
		}
		next := rd.past(i+1, +1, markAdverb|markErect)
		if e := rd.at(next); e.fig == nil && rd.at(i-1).fig == nil && !e.piece() && !rd.termAt(next).unnamed && !rd.cued(e, cueSoThat) && !rd.cued(e, cueThan) {
			if k := rd.past(i+1, +1, markRelation|markArticle|markAt); k > i+1 && rd.termAt(k).shape == Limb {
				rd.elems[k].term = &term{} // "towards the top"
			}
			if !rd.asksFor(AskCutPlan) {
				rd.alter(i, func(t *term) { *t = term{intent: AskCutPlan} })
			}
		}
	}
}

// cuts says whether the words at i ask how a piece is cut: "cut it in".
func (rd *reading) cuts(i int) bool { return rd.termAt(i).intent == AskCutPlan }

// pluralAt says whether the element at i is pieces, whatever they are called.
func (rd *reading) pluralAt(i int) bool {
	e := rd.at(i)
	return e.term != nil && (e.term.unnamed || e.term.shape != "") && strings.HasSuffix(strings.Fields(fold(rd.text[e.start:e.end]))[0], "s")
}

package parser

// Of "trozos de 1 m de roble de 50 cm" the sizes are those of each, so that what
// each weighs is what one does. Of a log that is cut into some they are not.

// eachSized takes the doubt from "each" where one thickness and one length are
// told, of pieces in the plural or of each, and nothing is cut.
func (rd *reading) eachSized() {
	if rd.eachLong() {
		return
	}
	each := -1
	for i, e := range rd.elems {
		switch t := rd.termAt(i); {
		case e.fig == nil && (t.intent == AskCutPlan || rd.cued(e, cueCutting)), t.each && each >= 0:
			return
		case t.each && len(t.roles) == 0:
			each = i
		}
	}
	if each < 0 || !rd.oneSize() || !rd.sizesAreOf(each) {
		return
	}
	rd.alter(each, func(t *term) { *t = term{} })
}

// eachLong takes the doubt from "each" right behind the one length that is told, beside
// one thickness: "22 in walnut, takin 4 foot each". Where it is cut off a longer one,
// that has a length of its own. Of limbs it stays in doubt how many they are; "4 ft each
// side" is no size.
func (rd *reading) eachLong() bool {
	each, thick := -1, 0
	for i, e := range rd.elems {
		switch t := rd.termAt(i); {
		case t.each && each >= 0, t.intent == AskCutPlan, t.shape == Limb, rd.elems[i].part() == partSling, e.plays(Legs), e.plays(RopeLength), e.marked(markTwins | markBridle):
			return false
		case t.each:
			each = i
		case e.fig == nil || rd.far(i) && rd.termAt(i+1).each:
		case rd.fineAt(i) || rd.at(i+1).plays(Diameter):
			thick++
		case e.fig.dim == dimLength, rd.heavy(i), e.fig.unit == nil && !rd.countedBy(i+1):
			return false
		}
	}
	if each < 1 || thick != 1 || !rd.far(each-1) || rd.talkBehind(each) {
		return false
	}
	of, next := rd.past(each-2, -1, markIs|markMade|markArticle), rd.at(each+1)
	ends := rd.endsBreath(each+1) || next.marked(markRelation|markIn) || rd.termAt(each+1).intent == AskWeight
	if !ends || rd.kit(of) || rd.at(of).marked(markGear) {
		return false
	}
	rd.alter(each, func(t *term) { *t = term{roles: []role{{Length, before, false}}} })
	return true
}

// oneSize says whether all numbers are one thickness and one length. A round is so
// short that its length is told like a thickness: "rodajas de 70 cm x 25 cm".
func (rd *reading) oneSize() bool {
	thick, long := 0, 0
	for i, e := range rd.elems {
		switch {
		case e.fig == nil, rd.countedBy(i + 1), e.fig.dim == dimCount && rd.at(i-1).plays(People):
		case rd.fineAt(i), e.fig.dim == dimCount && (thickness(rd.sizedAs(i)) || rd.roundThick(i)):
			thick++
		case e.fig.dim == dimLength:
			long++
		default:
			return false
		}
	}
	return thick == 1 && long == 1 || rd.has(markRound) && thick == 2 && long == 0
}

// sizesAreOf says whether the sizes are those of pieces named in the plural before
// them, and of nothing else, or of each at i: "cada trozo de roble de 50 cm". How thick
// rounds are may stand behind how wide the tree is: "nogal de 1,10 m, rodajas de 30 cm".
func (rd *reading) sizesAreOf(i int) bool {
	many, before := false, false
	for k, e := range rd.elems {
		if t := rd.termAt(k); k != i && (t.unnamed || t.shape != "") {
			if !rd.plural(k) {
				return false
			}
			many = many || (!before || rd.elems[k].marked(markRound)) && rd.leadsToSize(k+1)
		}
		before = before || e.fig != nil
		if k == i && !before && rd.leadsToSize(i+1) {
			many = true
		}
	}
	return many
}

// leadsToSize says whether a size, a tree or a word that leads to them stands at i.
func (rd *reading) leadsToSize(i int) bool {
	return rd.at(i).marked(markMade) || rd.termAt(rd.past(i, +1, markRelation|markArticle)).tree != nil || rd.at(i).fig != nil
}

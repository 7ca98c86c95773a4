package parser

import "slices"

// Some words are what they mostly are only where nothing around them says
// otherwise: "the lower limb" lowers nothing, and "instead of lowering" asks
// for what else is named.

// otherwise settles such words before numbers are placed.
func (rd *reading) otherwise() {
	rd.unitsAside()
	rd.percents()
	rd.offBys()
	rd.colours()
	rd.undecided()
	rd.denials()
	rd.deniedLimits()
	rd.wanted()
	rd.standingEnds()
	for i := 0; i < len(rd.elems); i++ {
		n := len(rd.elems)
		if !rd.settleMarked(i) && !rd.settleInDoubt(i) {
			rd.settleNamed(i)
		}
		i -= n - len(rd.elems) // what was taken out stood before
	}
	rd.idleDenials()
	rd.asides()
	rd.standingUp()
	rd.longerUp()
	rd.unturned()
	rd.thickOfThin()
	rd.ropeThrough()
	rd.sizesAtHitch()
	rd.upBetween()
}

// settleMarked settles a number, and a word that its mark tells apart; false where the
// word at i is neither.
func (rd *reading) settleMarked(i int) bool {
	e, t := rd.elems[i], rd.termAt(i)
	switch {
	case e.fig != nil:
		rd.oneMore(i)
	case rd.adds(i) && rd.peopleSum(i):
	case e.marked(markAttribute):
		rd.attribute(i)
	case e.marked(markUpends):
		rd.upends(i)
	case e.marked(markContrast):
		rd.contrast(i)
	case e.marked(markSelf):
		rd.withSelf(i)
	case t.andSelf:
		rd.andOthers(i)
	case t.another:
		rd.another(i)
	case t.oneEnd && t.ask == Unknown:
		rd.otherTreeNear(i)
	default:
		return false
	}
	return true
}

// settleInDoubt settles a word that could turn the meaning, or that tells of who speaks
// or of a jam; false where the word at i is none of them.
func (rd *reading) settleInDoubt(i int) bool {
	e, t := rd.elems[i], rd.termAt(i)
	switch {
	case t.ask == Twist && (rd.cued(e, cueTwoTurns) || rd.cued(e, cueThreeTurns)):
		rd.folds(i)
	case t.ask == Twist && rd.cued(e, cueCouple):
		rd.pairOf(i)
	case t.selfToo:
		rd.selfToo(i)
	case t.ask == Twist && rd.cued(e, cueEvery):
		rd.every(i)
	case t.ask == Twist && e.marked(markHalf):
		rd.somewhat(i)
	case t.jams && rd.wrapsTold():
		rd.leaveOut(i, i+1)
		rd.elems[i].term.note = tooMany
	default:
		return false
	}
	return true
}

// settleNamed settles a word that names somebody, a part of a tree or a time, or that is
// talk.
func (rd *reading) settleNamed(i int) {
	e, t := rd.elems[i], rd.termAt(i)
	switch {
	case t.order != "":
		rd.order(i)
	case t.topEnd:
		rd.thinEnd(i)
	case t.someone, t.human:
		rd.underneath(i)
	case t.note == peopleBelow:
		rd.crewBelow(i)
	case t.woodRing && rd.termAt(i-1).tree != nil:
		rd.ringOfWood(i)
	case t.overlook:
		rd.overlook(i)
	case t.purpose:
		rd.purpose(i)
	case t.corrects:
		rd.corrected(i)
	case t.ask == Twist && (rd.cued(e, cueMore) || rd.cued(e, cueFewer)):
		rd.more(i)
	case e.marked(markTreetop):
		rd.treetop(i)
	case e.marked(markPasses):
		rd.passes(i)
	case t.note == newTree:
		rd.nextTree(i)
	}
}

// whole reads a word that is the whole message but for a please: "log" alone is
// the day's.
func (rd *reading) whole() {
	at := -1
	for i, e := range rd.elems {
		if e.pause > 0 || e.polite() {
			continue
		}
		if at >= 0 || rd.termAt(i).whole == "" {
			return
		}
		at = i
	}
	if at >= 0 && len(rd.asks) == 0 && len(rd.passed) == 0 {
		rd.alter(at, func(t *term) { *t = term{intent: t.whole} })
	}
}

// polite says whether a term is a greeting, or says nothing.
func (e element) polite() bool { return e.term != nil && e.term.says(markHello) }

// alter gives the element at i a changed copy of its term: the term itself is
// every message's.
func (rd *reading) alter(i int, change func(*term)) {
	t := *rd.elems[i].term
	change(&t)
	rd.elems[i].term = &t
}

// attribute reads "the lower limb" as the name of a limb. What is to be
// lowered stands behind the word with its own article, "lower the limb".
func (rd *reading) attribute(i int) {
	j := i + 1
	for rd.at(j).piece() && rd.at(j).term.shape == "" {
		j++
	}
	if rd.at(i-1).marked(markArticle) && rd.termAt(j).shape != "" {
		rd.alter(i, func(t *term) { t.roles, t.intent = nil, "" })
	}
}

// treetop reads "punta de abeto" as a top: behind a number, or without the
// name of a tree, the word is the thin end.
func (rd *reading) treetop(i int) {
	j := rd.past(i+1, +1, markMade|markIs|markArticle)
	if j == i+1 || rd.termAt(j).tree == nil || rd.at(i-1).fig != nil || rd.at(i-1).marked(markMade|markAt) {
		return
	}
	rd.alter(i, func(t *term) { t.roles, t.shape = nil, Limb })
}

// nextTree reads "on the next tree" as a place: counting starts anew at the next
// tree by itself.
func (rd *reading) nextTree(i int) {
	if rd.at(rd.past(i-1, -1, markArticle)).marked(markAt | markIn | markWhere | markRelation) {
		rd.alter(i, func(t *term) { t.note, t.intent = "", "" })
	}
}

// upends reads "stand that red oak limb up" and "tip the limb upright" as what
// is done to the limb. Where nothing of it follows, the word keeps what else
// it means.
func (rd *reading) upends(i int) {
	k := i + 1
	for rd.at(k).marked(markArticle|markAdjective|markPronoun|markAdverb) || rd.at(k).piece() || k > i+1 && rd.at(k).fig != nil {
		k++
	}
	named := slices.ContainsFunc(rd.elems[i+1:min(k, len(rd.elems))], func(e element) bool { return e.piece() || e.marked(markPronoun) })
	if named && !rd.at(k).marked(markErect) && rd.termAt(i).ask == Unknown && rd.tellsOfHinge() {
		rd.alter(i, func(t *term) { t.ask, t.intent = "", AskRaise }) // "stand a limb on its hinge"
		return
	}
	if !named || !rd.at(k).marked(markErect) || rd.at(i-1).fig != nil || rd.at(i-1).marked(markAt) {
		if rd.termAt(i).overlook {
			rd.overlook(i)
		}
		return
	}
	rd.alter(i, func(t *term) { t.roles, t.ask, t.intent = nil, "", AskRaise })
	rd.alter(k, func(t *term) { t.roles = nil })
}

// contrast reads "stand it up instead of lowering": what is named behind the
// words is not asked for, where another thing is. A number that follows could
// be of either, so that the words stay in doubt.
func (rd *reading) contrast(i int) {
	if rd.at(i-1).marked(markErect) && rd.cued(rd.at(i+1), cueDown) {
		rd.alter(i, func(t *term) { t.ask = "" }) // "up instead of down"
		return
	}
	if rd.runsInstead(i) || rd.putAside(i) {
		return
	}
	out := rd.termAt(i + 1).intent
	if out == "" || rd.termAt(i+1).besides {
		return
	}
	for k := i + 2; rd.at(k).term != nil || rd.at(k).fig != nil; k++ {
		if rd.at(k).fig != nil {
			return
		}
	}
	if !slices.ContainsFunc(special, func(in Intent) bool { return in != out && rd.asksFor(in) }) {
		return
	}
	rd.alter(i, func(t *term) { t.ask = "" })
	rd.alter(i+1, func(t *term) { t.roles, t.intent = nil, "" })
}

// withSelf reads "me and one other guy" where the message tells the sum as
// well, "2 people": then it is clear that who speaks is counted.
func (rd *reading) withSelf(i int) {
	const sum = 2
	for k, e := range rd.elems {
		if rd.at(i+1).plays(People) && e.fig.bare(sum) && rd.at(k+1).plays(People) {
			rd.alter(i, func(t *term) { t.ask = "" })
		}
	}
}

// andOthers counts who speaks in with "me and 2 other guys" and "me and tom".
func (rd *reading) andOthers(i int) {
	if rd.namedPartner(i) {
		rd.elems[i] = element{start: rd.elems[i].start, end: rd.elems[i].end, fig: &figure{low: 2, high: 2, start: rd.elems[i].start, end: rd.elems[i].end}}
		return
	}
	if j := rd.past(i+1, +1, markArticle); rd.termAt(j).someone && !rd.at(j+1).marked(markAnd) && !rd.termAt(j+1).someone {
		start, end := rd.elems[i].start, rd.elems[j].end
		rd.elems[i].term = &term{}
		rd.elems[j-1] = element{start: start, end: end, fig: &figure{low: 2, high: 2, start: start, end: end}}
		rd.elems[j].term = &term{roles: []role{{People, before, false}}}
		return
	}
	fig := rd.at(i + 1).fig
	if fig == nil || fig.dim != dimCount || fig.unit != nil || !rd.termAt(i+2).others && !(rd.at(i+2).plays(People) && rd.onTackle(i+3)) {
		return
	}
	fig.low, fig.high = fig.low+1, fig.high+1
	rd.alter(i, func(t *term) { t.ask = "" })
}

// onTackle says whether the words at i say that those before them all pull: "me
// and two groundies on a 3:1", "me and 2 guys on the rope".
func (rd *reading) onTackle(i int) bool {
	if e := rd.at(i); e.plays(People) && e.fig == nil && e.looks(before) {
		return true
	}
	j := rd.past(i, +1, markIn|markWhere|markArticle)
	fig := rd.at(j).fig
	return j > i && fig != nil && fig.dim == dimRatio
}

// order reads "baja la rama" as what is to be done where it begins what is
// said; elsewhere the word tells one limb from another: "la rama baja". A rope
// that comes down is neither: "la cuerda baja recta".
func (rd *reading) order(i int) {
	j := rd.past(i+1, +1, markAt|markRelation|markArticle)
	toGear := j > i+1 && (rd.kit(j) || rd.termAt(j).block != "" || rd.termAt(j).another && (rd.kit(j+1) || rd.termAt(j+1).block != "")) // "baja a otro block"
	if toGear || rd.at(i-1).part() == partRope && !rd.at(rd.past(i+1, +1, markArticle)).piece() {
		rd.alter(i, func(t *term) { t.ask, t.order = "", "" })
		return
	}
	for k := i - 1; k >= 0 && rd.elems[k].pause == 0; k-- {
		if !rd.elems[k].polite() {
			return
		}
	}
	rd.alter(i, func(t *term) { t.ask, t.intent = "", t.order })
}

// sizesAtHitch asks about a thickness told at the hitch, "14 in at the hitch":
// it is that of no end, and nothing is said of how high the hitch is.
func (rd *reading) sizesAtHitch() {
	for i, e := range rd.elems {
		j := rd.past(i+2, +1, markArticle)
		fig := e.fig
		if fig == nil || fig.dim != dimLength || !fig.unit.fine || fig.high > roundest || !rd.at(i+1).marked(markAt) ||
			!rd.at(j).plays(HitchHeight) || rd.at(j+1).fig != nil || rd.at(j+1).marked(markAt) {
			continue
		}
		rd.alter(j, func(t *term) { t.roles = nil })
		a := fig.ask(TwoReadings, rd.text)
		a.Fields = []Field{ButtDiameter, MidDiameter}
		rd.asks = append(rd.asks, a)
		fig.elsewhere = true
	}
}

// upBetween asks about "12 in x 20 ft, up 35 ft": how high mostly stands before
// the word, but here another height stands right behind it.
func (rd *reading) upBetween() {
	for i, e := range rd.elems {
		j := i - 1
		if rd.at(j).pause == 2 {
			j--
		}
		if !e.looksBack(HitchHeight) || !rd.far(j) || !rd.far(i+1) || rd.at(i+2).plays(Length) || rd.at(i+2).piece() {
			continue
		}
		fig := rd.elems[j].fig
		a := fig.ask(TwoReadings, rd.text)
		a.Fields = []Field{Length, HitchHeight}
		rd.asks = append(rd.asks, a)
		fig.elsewhere = true
	}
}

// looksBack says whether the words take the number before them for the field,
// and never the one behind.
func (e element) looksBack(f Field) bool {
	back := false
	for _, r := range e.term.rolesOf(f) {
		if r.side != before {
			return false
		}
		back = true
	}
	return back
}

// rolesOf are the roles of a term for a field.
func (t *term) rolesOf(f Field) (out []role) {
	if t == nil {
		return nil
	}
	for _, r := range t.roles {
		if r.field == f {
			out = append(out, r)
		}
	}
	return out
}

// anyAt says whether something holds for an element.
func (rd *reading) anyAt(holds func(i int) bool) bool {
	for i := range rd.elems {
		if holds(i) {
			return true
		}
	}
	return false
}

package parser

import "slices"

// What shall hold a redirect or the drum is told in words that mostly tell of
// other things: "use the 6 in dogwood as a redirect", "anclaje en un plátano de
// 35 cm".

// highestSling is the highest that a height told with an anchor is a sling round
// its stem rather than the top block, in metres.
const highestSling = 3

// standsIn makes such words ask for the anchor.
func (rd *reading) standsIn() {
	for i := range rd.elems {
		slung := rd.slungRound(i)
		if !slung && !rd.redirectOn(i) && (!rd.termAt(i).standsIn || !rd.treeBefore(i) && !rd.treeIs(i+1)) {
			continue
		}
		rd.alter(i, func(t *term) { t.intent, t.besides = AskAnchor, false })
		rd.redirectUp(i)
		for j := i - 1; slung && j >= 0; j-- {
			if rd.elems[j].fig.short() {
				rd.elems[j].fig.sure = Diameter // of the stem, not of the sling
			}
		}
	}
}

// redirectUp takes the stem that a redirect at i is told to be up on for a spar, and
// a side pull for what is on the stem rather than in the line.
func (rd *reading) redirectUp(i int) {
	up := func(k int) bool { return k > i && rd.far(k) && rd.at(k+1).plays(HitchHeight) }
	if Redirecting(rd.termAt(i).block) && rd.redirectOn(i) && rd.anyAt(up) && !rd.shapedFrom(0, Limb) {
		rd.alter(i, func(t *term) { t.note = NoteAnchorSpar })
	}
	if rd.anyAt(func(k int) bool { return rd.heavy(k) && rd.pullsOnStem(k) }) {
		rd.alter(i, func(t *term) { t.block = "" })
	}
}

// redirectOn reads "redirect is on a 20 cm birch" as a question about the birch,
// where nothing else is asked: that is no piece.
func (rd *reading) redirectOn(i int) bool {
	j := rd.past(i+1, +1, markIs)
	on := rd.at(j).marked(markWhere | markIn | markAt)
	if rd.termAt(j).tied {
		on, j = true, rd.past(j+1, +1, markWhere|markIn|markAt)-1
	}
	if !on || !Redirecting(rd.termAt(i).block) || rd.asksFor(AskBlockLoad) {
		return false
	}
	return rd.at(rd.past(j+1, +1, markArticle|markAdjective)).fig.short() && rd.anyAt(func(k int) bool { return k > j && rd.elems[k].piece() })
}

// strongAboveUnion reads "12 in stem, block 6 ft above the crotch, strong enough?"
// as a question about the wood, where no gear has a strength.
func (rd *reading) strongAboveUnion() {
	above := func(i int) bool { return rd.far(i) && rd.aboveUnion(i) && rd.blockBefore(i) }
	rated := func(i int) bool { return rd.elems[i].strength() != "" }
	if !rd.anyAt(above) || rd.anyAt(rated) || rd.asksFor(AskRaise) || !rd.anyAt(rd.heavy) {
		return
	}
	for i := range rd.elems {
		if rd.termAt(i).intent == AskGear {
			rd.alter(i, func(t *term) { t.intent, t.besides = AskAnchor, false })
		}
	}
}

// treeBefore says whether a tree or a thickness is named before i in the same
// breath.
func (rd *reading) treeBefore(i int) bool {
	for j := i - 1; j >= 0 && rd.elems[j].pause == 0; j-- {
		if rd.elems[j].fig.short() || rd.termAt(j).tree != nil {
			return true
		}
	}
	return false
}

// treeIs says whether a tree of a told thickness is what stands in: "the only
// thing for a redirect is a 6 in pear".
func (rd *reading) treeIs(i int) bool {
	thick, tree := false, false
	for k := i + 1; rd.at(i).marked(markIs) && k < len(rd.elems) && rd.elems[k].pause == 0; k++ {
		thick = thick || rd.elems[k].fig.short()
		tree = tree || thick && rd.termAt(k).tree != nil
	}
	return tree
}

// slungRound reads "25 cm spruce sling at 1 m pulling 8 kN": a sling round a
// stem, where nothing is told of a piece but how thick it is.
func (rd *reading) slungRound(i int) bool {
	if rd.elems[i].part() != partSling || !rd.low(i+2) || !rd.at(i+1).marked(markAt) || !rd.treeBefore(i) || rd.slung() {
		return false
	}
	thick := 0
	for _, e := range rd.elems {
		if e.fig.short() {
			thick++
		}
	}
	return thick == 1 && rd.anyAt(rd.heavy) && !rd.anyAt(func(k int) bool { return k != i+2 && rd.far(k) })
}

// low says whether the number at i can be how high a sling is round a stem.
func (rd *reading) low(i int) bool { return rd.far(i) && rd.elems[i].fig.high <= highestSling }

// slungAt reads "sling at 1 m", "tied at 3 ft" and "at 4 ft" of an anchor that is
// no limb.
func (rd *reading) slungAt(i int) bool {
	limb := rd.shapedFrom(0, Limb) || slices.ContainsFunc(rd.elems, func(e element) bool { return e.term != nil && e.term.note == NoteAnchorLimb })
	before, next := rd.at(i-2), rd.at(i+1)
	tied := rd.termAt(i-1).tied && rd.at(i-1).plays(HitchHeight)
	switch {
	case limb || !rd.low(i) || !tied && !rd.at(i-1).marked(markAt) || next.piece() || next.plays(Tie):
		return false
	case tied:
		return true
	case before.part() == partSling:
		return true
	}
	return len(rd.termAt(i+1).roles) == 0 && (before.pause > 0 || before.fig != nil)
}

// slungUp reads "sling 80 cm up", which is too much for how thick a sling is, and
// "tied 300 mm up".
func (rd *reading) slungUp(i int) bool {
	const least = 0.2
	fig := rd.elems[i].fig
	slung := rd.past(i-1, -1, markAt|markIs)
	tied := rd.termAt(slung).tied && rd.at(i+1).plays(HitchHeight) || slices.Contains(rd.termAt(i-1).roles, role{field: HitchHeight, side: after})
	return fig.short() && fig.low >= least && fig.high <= highestSling && (tied || rd.at(slung).part() == partSling)
}

// anchorIn reads "anclaje en un plátano de 35 cm" where a load is told and
// nothing else that a piece would have.
func (rd *reading) anchorIn(i int) bool {
	if !rd.cued(rd.elems[i], cueAnchorIn) || !rd.anyAt(rd.heavy) {
		return false
	}
	j := i + 1
	for rd.at(j).marked(markIs|markArticle|markIn|markMade) || rd.termAt(j).tree != nil {
		j++
	}
	return j > i+1 && rd.at(j).fig.short() && !rd.anyAt(func(k int) bool {
		return rd.far(k) && rd.elems[k].fig.high > highestSling || rd.elems[k].plays(Wraps)
	})
}

// aboveUnion reads "block 6 ft above the crotch" of an anchor: how far the block is
// from where the stem or the lead that holds it springs.
func (rd *reading) aboveUnion(i int) bool {
	j := rd.past(i+1, +1, markAdverb)
	return rd.cued(rd.at(j), cueAbove) && rd.at(j).marked(markRelation) && rd.cued(rd.at(rd.past(j+1, +1, markArticle)), cueHinge)
}

// leverAt makes the number at i how far from its base the anchor is loaded, and
// leaves the words behind it without a say.
func (rd *reading) leverAt(i int) {
	rd.elems[i].fig.sure = HitchHeight
	if rd.shapedFrom(0, Limb) {
		rd.elems[i].fig.sure = Tie // a lead bends as a limb does
	}
	for j := i + 1; j < len(rd.elems); j++ {
		e := rd.elems[j]
		if e.term != nil {
			rd.elems[j].term = &term{marks: e.term.marks & (markRelation | markArticle | markAdverb)}
		}
		if rd.cued(e, cueHinge) {
			return
		}
	}
}

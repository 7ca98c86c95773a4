package parser

import "strings"

// An unknown word may change everything, or nothing: that hangs on its place. It
// changes what is told where it says what a number is, which tree, or how the wood or
// the gear is. What else it says, of people, places and the day, the answer can do
// without, and says so.

// spare says whether an unknown word stands where it can change nothing that is told.
func (rd *reading) spare(a *Ask) bool {
	if a.Kind != Unknown || strings.ContainsAny(a.Words, "0123456789") || rd.likeStop(a) != "" || rd.ofNobody() {
		return false
	}
	prev, next, talk := rd.around(a)
	switch {
	case talk == nil, talk.own, talk.oneEnd:
		return rd.changesNothing(prev, next)
	case talk.atOnce:
		return rd.factless(prev, next)
	case talk.perhaps: // in doubt beside a number or gear, of which it hardly tells
		return !rd.at(prev).bareFigure() && !rd.at(next).bareFigure() && !rd.tellsOfWood(prev, next) && !rd.tellsHow(prev)
	}
	return false // known, and in doubt here
}

// factless says whether no number and no piece stands between the same pauses as a word
// between the elements at prev and next.
func (rd *reading) factless(prev, next int) bool {
	for ; prev >= 0 && rd.elems[prev].pause == 0; prev-- {
		if rd.elems[prev].fig != nil || rd.elems[prev].piece() {
			return false
		}
	}
	for ; next < len(rd.elems) && rd.elems[next].pause == 0; next++ {
		if rd.elems[next].fig != nil || rd.elems[next].piece() {
			return false
		}
	}
	return true
}

// around finds the elements right before and right behind what is asked about, and
// what it means itself, nil where it is not known at all.
func (rd *reading) around(a *Ask) (prev, next int, of *term) {
	prev, next = -1, len(rd.elems)
	for i, e := range rd.elems {
		switch {
		case e.end <= a.Start:
			prev = i
		case e.start >= a.End:
			next = min(next, i)
		case e.term != nil:
			of = e.term
		}
	}
	return prev, next, of
}

// changesNothing says whether a word between the elements at prev and next says
// nothing of a number, a tree, wood or gear. Behind a word that lifts it may be
// anybody.
func (rd *reading) changesNothing(prev, next int) bool {
	return !rd.tellsOfNumber(prev, next) && !rd.tellsOfWood(prev, next) && !rd.tellsOfGear(prev, next) && !rd.tellsHow(prev) &&
		!rd.isLifted(prev) && !rd.termAt(next).borne && !rd.harmsBody(next)
}

// harmsBody says whether a word before the element at i may say what was done to
// somebody: "… up his elbow".
func (rd *reading) harmsBody(i int) bool {
	const few = 3
	for k := i; k < i+few && rd.at(k).pause == 0; k++ {
		if rd.ofBody(k) {
			return true
		}
		if !rd.leadsTo(k) && !rd.at(k).marked(markErect) {
			return false
		}
	}
	return false
}

// idle says whether a word that mostly is talk can be left out at i.
func (rd *reading) idle(i int) bool {
	prev, next := i-1, i+1
	if rd.at(prev).fig != nil || rd.at(next).fig != nil || rd.tellsOfWood(prev, next) || rd.tellsOfGear(prev, next) {
		return false
	}
	return rd.at(rd.overTalk(prev)).marked(markAnd) || !rd.tellsHow(prev) && !rd.isLifted(prev)
}

// ofNobody says whether a force is told and no word for a piece: then it may be
// that of what is not known, "karabiner, its 24 kN".
func (rd *reading) ofNobody() bool {
	force := func(i int) bool { return rd.heavy(i) && rd.elems[i].fig.dim == dimForce }
	return rd.anyAt(force) && !rd.anyAt(func(i int) bool { return rd.elems[i].piece() || rd.termAt(i).unnamed || rd.cued(rd.elems[i], cuePiece) })
}

// bareFigure says whether the element is a number without a unit.
func (e element) bareFigure() bool { return e.fig != nil && e.fig.dim == dimCount }

// tellsOfNumber says whether a word between two elements says what a number is: right
// beside one, as what is so and so much ("the shed is 22 ft"), or as what a number
// is seen from ("30 ft from the shed").
func (rd *reading) tellsOfNumber(prev, next int) bool {
	if rd.at(prev).fig != nil || rd.at(next).fig != nil {
		return true
	}
	if k := rd.pastLinks(next); k > next && rd.at(k).fig != nil && !rd.whoever(prev) {
		return true
	}
	p := rd.backToRelation(prev)
	if p < 0 || rd.at(rd.past(next, +1, markAdjective)).marked(markPlace|markObstacle|markGear|markLoaded) {
		return false
	}
	if p == prev && rd.at(next).marked(markArticle|markPronoun) {
		return false // "3 m to miss the roof"
	}
	on := rd.at(p).marked(markAt | markIn)
	if rd.heavy(p - 1) {
		return on // "600 lb by his reckoning"
	}
	return rd.at(p-1).fig != nil || on && rd.at(p-1).looks(before) && rd.at(p-2).fig != nil // "3 wraps on the stub"
}

// pastLinks goes on from i over what leads to a number.
func (rd *reading) pastLinks(i int) int {
	for rd.at(i).marked(markIs) || rd.at(i).looks(after) || rd.termAt(i).note == "about" {
		i++
	}
	return i
}

// backToRelation finds the word that leads to what stands behind i, as "from the
// old" does; -1 where nothing does.
func (rd *reading) backToRelation(i int) int {
	for rd.at(i).marked(markArticle|markAdjective) && !rd.at(i).marked(markIs|markRelation|markWhere) {
		i--
	}
	if rd.at(i).marked(markRelation|markWhere|markMade) && !rd.cued(rd.at(i), cueClause) {
		return i
	}
	return -1
}

// tellsOfWood says whether a word between two elements is said of wood: beside a tree,
// a piece or a part of it, or as what is on it.
func (rd *reading) tellsOfWood(prev, next int) bool {
	if rd.wooden(prev) || rd.wooden(next) || rd.wooden(rd.past(next, +1, markAdjective)) {
		return true
	}
	on := rd.past(next+1, +1, markArticle|markAdjective)
	if rd.at(next).looks(before) && rd.at(next).plays(ButtDiameter) {
		return !rd.whoever(prev) // "fungus at the base"
	}
	return rd.at(next).marked(markIn|markAt) && (rd.wooden(on) || rd.cued(rd.at(on), cueLoad) || rd.termAt(on).unnamed) && !rd.whoever(prev)
}

// wooden says whether the element at i is a tree, a piece or a part of it.
func (rd *reading) wooden(i int) bool {
	part := rd.at(i).marked(markPart) && !rd.cued(rd.at(i), cueDown)
	return rd.at(i).piece() || part || rd.cued(rd.at(i), cueTree) || rd.cued(rd.at(i), cueWood)
}

// tellsOfGear says whether a word between two elements is said of gear: of its
// strength, right before or behind it, or as what is asked about or anchored to.
func (rd *reading) tellsOfGear(prev, next int) bool {
	if rd.at(prev).strength() != "" || rd.at(next).strength() != "" {
		return true
	}
	if tackle := rd.past(next, +1, markAdjective); rd.rigs(tackle) && rd.at(tackle).part() != partDrum && !rd.at(tackle).plays(People) {
		return !rd.placed(prev)
	}
	if rd.rigs(prev) {
		return rd.backToRelation(prev-1) < 0
	}
	sound := func(i int) bool {
		in := rd.termAt(i).intent
		return (in == AskGear || in == AskAnchor) && rd.at(i).part() == ""
	}
	k := prev
	for rd.at(k).marked(markArticle | markAdjective | markRelation | markWhere) {
		k--
	}
	return rd.termAt(k).intent == AskAnchor || rd.termAt(k).anchors || sound(next) && rd.at(prev).marked(markArticle)
}

// rigs says whether the element at i is gear that holds the load.
func (rd *reading) rigs(i int) bool { return rd.at(i).part() != "" || rd.at(i).marked(markCord) }

// placed says whether what stands behind i only tells a place: "by the block". What
// is used is told of, "on the rope", "with the rope".
func (rd *reading) placed(i int) bool {
	p := rd.backToRelation(i)
	return p >= 0 && !rd.at(p).marked(markIn) && !rd.cued(rd.at(p), cueHaving)
}

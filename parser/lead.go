package parser

import "slices"

// How a rope is led over its blocks is told by what it leaves from and by how it
// lies: "30 degrees off the log side", "down to a redirect at the base and flat to
// the truck". Only what leaves no second reading is taken so.

// ledOver reads it.
func (rd *reading) ledOver() {
	if !rd.ropeOrBlock() {
		return
	}
	for i := 0; i < len(rd.elems); i++ {
		switch fig := rd.elems[i].fig; {
		case fig == nil, fig.dim != dimAngle && !(fig.dim == dimCount && fig.unit == nil && fig.degrees()), fig.told != "":
		case rd.offStraight(i):
			rd.turnsHere(i, Turn)
		case rd.fromLoad(i):
			rd.turnsHere(i, BlockAngle)
		}
	}
	rd.oneAtBase()
	rd.leavesLevel()
	rd.overTop()
}

// oneAtBase takes "a redirect at the base" for the base block where that is named too.
func (rd *reading) oneAtBase() {
	if !rd.anyAt(func(i int) bool { return rd.termAt(i).block == BaseBlock }) {
		return
	}
	for i := range rd.elems {
		if j := rd.past(i+1, +1, markArticle|markAt); rd.termAt(i).block == RedirectBlock && rd.at(j).plays(ButtDiameter) {
			rd.alter(i, func(t *term) { t.block = BaseBlock })
		}
	}
}

// ropeOrBlock says whether a rope or a block is spoken of, and no sling whose legs
// have their own angle.
func (rd *reading) ropeOrBlock() bool {
	named := rd.anyAt(func(i int) bool { return rd.elems[i].part() == partRope || rd.termAt(i).block != "" })
	return named && !rd.slingNamed()
}

// turnsHere gives the number at i its field and its degrees.
func (rd *reading) turnsHere(i int, f Field) {
	fig := rd.elems[i].fig
	fig.dim, fig.unit, fig.told = dimAngle, degree, f
	if f == Turn {
		fig.at = rd.lastBlock(i)
	}
}

// offStraight reads "20 degrees off straight" as how far the rope turns.
func (rd *reading) offStraight(i int) bool {
	off, straight := rd.at(i+1), rd.at(rd.past(i+2, +1, markMade))
	if !off.marked(markRelation) || !rd.cued(straight, cueStraight) || !rd.redirected() {
		return false
	}
	rd.elems[i+1].term = &term{}
	return true
}

// fromLoad reads "30 degrees from the log side" and "a 30 grados de la pata de la
// carga" as the angle between the legs at the block: the one goes to the load.
func (rd *reading) fromLoad(i int) bool {
	from := rd.at(i + 1)
	if rd.cued(from, cueOffTrunk) {
		return rd.ropeBeside(i) // "comes back down 30 degrees off the trunk": both hang plumb
	}
	j := rd.past(i+2, +1, markArticle|markMade)
	if rd.cued(rd.at(j), cueLeg) {
		j = rd.past(j+1, +1, markArticle|markMade)
	}
	load := rd.at(j)
	if rd.plumbOther(i, load) {
		return true
	}
	leg := rd.cued(rd.at(j+1), cueLeg) || j > i+3 || rd.cued(load, cueLoaded)
	if !from.marked(markRelation|markMade|markWhere) || !rd.cued(load, cueLoad) && !rd.cued(load, cueLoaded) && !rd.cued(load, cuePiece) && load.shapeOnly() == "" || !leg {
		return false
	}
	for k := i + 1; k <= min(j+1, len(rd.elems)-1); k++ {
		if t := rd.termAt(k); k != j && (rd.cued(rd.elems[k], cueLeg) || k == i+1) && t.stop == "" {
			rd.elems[k].term = &term{}
		}
	}
	return true
}

// plumbOther reads "at 45 to the log on one side and straight down on the other": of
// 45 degrees it does not matter whether they are from plumb or from level.
func (rd *reading) plumbOther(i int, load element) bool {
	const either = 45
	fig := rd.elems[i].fig
	if fig.low != either || fig.high != either || !rd.cued(rd.at(i+1), cueTowards) || !rd.cued(load, cueLoad) && load.shapeOnly() == "" {
		return false
	}
	plumb := func(k int) bool {
		return rd.cued(rd.elems[k], cueStraight) && (rd.cued(rd.at(k+1), cueGoesDown) || rd.cued(rd.at(k+1), cueDown))
	}
	if !rd.anyAt(plumb) {
		return false
	}
	for k := range rd.elems {
		if rd.cued(rd.elems[k], cueOtherSide) {
			rd.elems[k].term = &term{}
		}
	}
	return true
}

// shapeOnly is the shape that an element names.
func (e element) shapeOnly() Shape {
	if e.term == nil {
		return ""
	}
	return e.term.shape
}

// leavesLevel reads "down to a redirect at the base, then flat over to the drum" as a
// right angle there: the rope comes down plumb.
func (rd *reading) leavesLevel() {
	angle := func(i int) bool { fig := rd.elems[i].fig; return fig != nil && fig.dim == dimAngle }
	b := slices.IndexFunc(rd.elems, func(e element) bool { return e.term != nil && Redirecting(e.term.block) })
	if b < 0 || rd.anyAt(angle) || !rd.comesDown(b) {
		return
	}
	for i := b + 1; i < len(rd.elems) && rd.elems[i].pause < 4; i++ {
		e := rd.elems[i]
		if !rd.cued(e, cueLevel) || !rd.thither(i+1) {
			continue
		}
		f := &figure{low: 90, high: 90, unit: degree, dim: dimAngle, told: Turn, at: rd.termAt(b).block, start: e.start, end: e.end}
		rd.elems[i] = element{start: e.start, end: e.end, fig: f}
		return
	}
}

// comesDown says whether the redirect at b stands at the foot of the tree, or the rope
// comes down to it.
func (rd *reading) comesDown(b int) bool {
	if rd.termAt(b).block == BaseBlock {
		return true
	}
	for i := max(0, b-4); i <= b+3; i++ {
		if e := rd.at(i); e.plays(ButtDiameter) && i > b || rd.cued(e, cueDown) || rd.cued(e, cueGoesDown) {
			return true
		}
	}
	return false
}

// thither says whether the words at i lead on to something.
func (rd *reading) thither(i int) bool {
	e := rd.at(rd.past(i, +1, markAdverb|markRelation))
	return rd.at(i).marked(markRelation|markAt) || rd.cued(rd.at(i), cueTowards) || rd.cued(e, cueTowards) || e.marked(markAt)
}

// overTop reads a half turn at the top block where the load on each block is asked
// for, and the rope goes up over it and down to the one whose turn is told.
func (rd *reading) overTop() {
	if !rd.anyAt(func(i int) bool { return rd.cued(rd.elems[i], cueEach) || rd.cued(rd.elems[i], cueEachOne) }) {
		return
	}
	turned := slices.IndexFunc(rd.elems, func(e element) bool { return e.fig != nil && e.fig.told == Turn && Redirecting(e.fig.at) })
	atTop := func(i int) bool {
		fig := rd.elems[i].fig
		return fig != nil && (fig.told == Turn && !Redirecting(fig.at) || fig.told == BlockAngle)
	}
	top := slices.IndexFunc(rd.elems, func(e element) bool {
		return e.term != nil && (e.term.block == TopBlock || e.term.block == AnyBlock)
	})
	if turned < 0 || top < 0 || top > turned || rd.anyAt(atTop) {
		return
	}
	e := rd.elems[top]
	f := &figure{low: 180, high: 180, unit: degree, dim: dimAngle, told: Turn, at: TopBlock, start: e.start, end: e.end}
	rd.elems = slices.Insert(rd.elems, top+1, element{start: e.end, end: e.end, fig: f})
}

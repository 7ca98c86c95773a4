package parser

import (
	"slices"
	"strings"
)

// A rope that only goes over a block lifts one to one: "straight over the top
// block", "on a single line". That takes the most pull, and loads the block most,
// of all that could be meant.

// straightLift reads such words as one part of line or two, where a lift is told of
// and the parts are not.
func (rd *reading) straightLift() {
	if !rd.asksFor(AskLift) && !rd.picks() && !rd.pulledBy() && !rd.raisesLoad() || rd.partsTold() || rd.pulledAside() {
		return
	}
	several := rd.anyAt(rd.moreBlocks)
	for i, e := range rd.elems {
		t, parts := rd.termAt(i), 1.0
		at, over := rd.overBlock(i)
		over = over && !several
		switch {
		case t.doubles:
			parts = 2
		case !over && !t.straight && !(t.single && rd.at(i+1).part() == partRope):
			continue
		}
		rd.alter(i, func(t *term) { t.ask = "" })
		fig := &figure{low: parts, high: parts, dim: dimRatio, told: Parts, start: e.start, end: e.end}
		rd.elems = slices.Insert(rd.elems, at, element{start: e.start, end: e.end, fig: fig})
		return
	}
}

// overBlock reads "over the top block", "through one block" and "just one block up
// top": a block that hangs in the tree and does not move with the load. It returns
// where such words begin, too.
func (rd *reading) overBlock(i int) (at int, over bool) {
	e := rd.elems[i]
	if !rd.blockNamed(i) {
		return i, false
	}
	j := rd.past(i-1, -1, markArticle)
	isOne := func(k int) bool { return rd.at(k).fig.bare(1) || rd.in.numbers[rd.word(rd.at(k))].value == 1 }
	one := isOne(j) || isOne(i-1)
	if isOne(j) {
		j = rd.past(j-1, -1, markArticle)
	}
	next := rd.at(rd.past(i+1, +1, markIs|markAt))
	aloft := e.term.block == TopBlock || next.term != nil && next.term.topEnd || rd.termAt(i+1).highEnd
	if rd.cued(rd.at(j), cueOverBlock) {
		return j, true
	}
	return i, one && aloft
}

// blockNamed says whether the element at i is a block that leads the rope nowhere
// else.
func (rd *reading) blockNamed(i int) bool {
	e := rd.elems[i]
	return e.term != nil && (e.term.part == partBlock || e.term.block == TopBlock || e.term.block == AnyBlock) && !Redirecting(e.term.block)
}

// moreBlocks says whether the element at i tells of more than one block, which may
// move with the load.
func (rd *reading) moreBlocks(i int) bool {
	e, fig := rd.elems[i], rd.at(i-1).fig
	if !rd.blockNamed(i) {
		return false
	}
	return rd.termAt(i).blocks || fig != nil && fig.dim == dimCount && fig.high > 1 || strings.HasSuffix(rd.word(e), "s")
}

// raisesLoad says whether "raise" can only lift: what is raised is no limb, and no
// hinge is told of.
func (rd *reading) raisesLoad() bool {
	limb := func(i int) bool { return rd.termAt(i).shape == Limb }
	return rd.anyAt(func(i int) bool { return rd.elems[i].marked(markHoists) }) && !rd.anyAt(limb) && !rd.tellsOfHinge()
}

// liftedMass reads "raise 200 kg with the winch" as what is lifted, and not as what
// the winch pulls.
func (rd *reading) liftedMass() {
	for i := range rd.elems {
		verb := rd.back(i - 1)
		lifts := rd.termAt(verb).intent == AskLift && !rd.at(verb-1).plays(WinchPull) || rd.at(verb).marked(markHoists)
		if !rd.heavy(i) || rd.elems[i].fig.told != "" || !lifts || !rd.at(i+1).marked(markWhere) {
			continue
		}
		if by := rd.past(i+2, +1, markArticle); rd.at(by).plays(WinchPull) || rd.termAt(by).hauls {
			rd.elems[i].fig.sure = Weight
		}
	}
}

// picks says whether a capstan is told of and a load is what is picked: "pick a 1,900
// lb log with the capstan". By itself the verb says much else.
func (rd *reading) picks() bool {
	capstan := rd.anyAt(func(i int) bool { return rd.termAt(i).hauls })
	return capstan && !rd.worded(Wraps) && rd.anyAt(func(i int) bool {
		return rd.termAt(i).intent == AskLift && rd.heavy(rd.past(i+1, +1, markArticle))
	})
}

// pulledBy says whether the message tells who or what pulls, and asks for
// nothing that is no lift.
func (rd *reading) pulledBy() bool {
	powered := rd.anyAt(func(i int) bool {
		return rd.at(i).plays(WinchPull) || rd.at(i).fig != nil && rd.at(i+1).plays(People)
	})
	asked, besides, _ := rd.intents()
	return powered && len(asked) == 0 && (slices.Contains(besides, AskLift) || rd.winchTold()) && !rd.worded(Wraps)
}

// winchTold says whether it is told what a winch pulls with, and what else weighs.
func (rd *reading) winchTold() bool {
	winch, heavy := false, 0
	for i := range rd.elems {
		winch = winch || rd.elems[i].plays(WinchPull)
		if rd.heavy(i) {
			heavy++
		}
	}
	return winch && heavy == 2
}

// pulledAside says whether a side is told of: what is pulled there is not lifted.
func (rd *reading) pulledAside() bool {
	leads := func(i int) bool { // to the block that the rope goes over
		return rd.anyAt(func(k int) bool { at, over := rd.overBlock(k); return over && at == i })
	}
	return rd.anyAt(func(i int) bool {
		return rd.cued(rd.elems[i], cueOver) && !leads(i) || rd.elems[i].plays(Sideways)
	})
}

// partsTold says whether the parts of line are told, or a block that moves with
// the load, or they are asked for.
func (rd *reading) partsTold() bool {
	return rd.anyAt(func(i int) bool {
		t, fig := rd.termAt(i), rd.elems[i].fig
		return t.note == partsWanted || t.note == MovingBlock || rd.elems[i].plays(Parts) || fig != nil && fig.dim == dimRatio
	})
}

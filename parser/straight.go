package parser

import "slices"

// A rope that only goes over a block lifts one to one: "straight over the top
// block", "on a single line". That takes the most pull, and loads the block most,
// of all that could be meant.

// straightLift reads such words as one part of line, where a lift is told of and
// the parts are not.
func (rd *reading) straightLift() {
	if !rd.asksFor(AskLift) && !rd.pulledBy() || rd.partsTold() || rd.pulledAside() {
		return
	}
	for i, e := range rd.elems {
		t := rd.termAt(i)
		if !t.straight && !(t.single && rd.at(i+1).part() == partRope) {
			continue
		}
		fig := &figure{low: 1, high: 1, dim: dimRatio, told: Parts, start: e.start, end: e.end}
		rd.elems = slices.Insert(rd.elems, i, element{start: e.start, end: e.end, fig: fig})
		return
	}
}

// pulledBy says whether the message tells who or what pulls, and asks for
// nothing that is no lift.
func (rd *reading) pulledBy() bool {
	powered := rd.anyAt(func(i int) bool {
		return rd.at(i).plays(WinchPull) || rd.at(i).fig != nil && rd.at(i+1).plays(People)
	})
	asked, besides, _ := rd.intents()
	return powered && len(asked) == 0 && slices.Contains(besides, AskLift) && !rd.worded(Wraps)
}

// pulledAside says whether a side is told of: what is pulled there is not lifted.
func (rd *reading) pulledAside() bool {
	return rd.anyAt(func(i int) bool { return rd.cued(rd.elems[i], cueOver) || rd.elems[i].plays(Sideways) })
}

// partsTold says whether the parts of line are told, or a block that moves with
// the load, or they are asked for.
func (rd *reading) partsTold() bool {
	return rd.anyAt(func(i int) bool {
		t, fig := rd.termAt(i), rd.elems[i].fig
		return t.note == partsWanted || t.note == MovingBlock || rd.elems[i].plays(Parts) || fig != nil && fig.dim == dimRatio
	})
}

package parser

import "slices"

// How far a piece falls before its rope holds it follows from how long it is and
// how far its block hangs below the cut. Where one of the two is not told, a block
// below the cut, a catch or a line that runs asks for the fall.

// FallFromBlock says whether the fall, which is not told, can be worked out.
func (q Question) FallFromBlock() bool {
	return q.Has(BlockBelow) && q.Has(Length) && !q.Has(DropHeight)
}

// belowCut finds how far a block is below the cut: "block 40 cm below the cut".
func (rd *reading) belowCut() {
	rd.belowBare()
	rd.climberAtCut()
	for i := 0; i < len(rd.elems); i++ {
		if !rd.termAt(i).belowCut || !rd.blockBefore(i+1) && !rd.blockAt(i-2) {
			continue
		}
		rd.alter(i, func(t *term) { t.intent, t.besides = AskDrop, false })
		at := rd.past(rd.forth(i+1), +1, markAt)
		switch {
		case rd.lengthAt(i - 1):
			rd.elems[i-1].fig.told = BlockBelow
		case rd.lengthAt(at) && at > i+1 && rd.endsBreath(at+1):
			rd.elems[at].fig.told = BlockBelow
		}
	}
}

// belowBare reads "negative rig, block a foot under": below what needs no saying
// where something falls onto its rope.
func (rd *reading) belowBare() {
	if !rd.asksFor(AskDrop) {
		return
	}
	for i := range rd.elems {
		if rd.cued(rd.elems[i], cueBelow) && rd.lengthAt(i-1) && rd.blockBefore(i-1) && rd.endsBreath(i+1) && !rd.termAt(rd.back(i-2)).hung {
			rd.alter(i, func(t *term) { *t = term{belowCut: true} })
		}
	}
}

// climberAtCut reads "i'm at 48 ft, block right under the cut": who cuts is as high
// as the block, where no other height is told.
func (rd *reading) climberAtCut() {
	under := func(i int) bool { return rd.termAt(i).belowCut && (rd.blockBefore(i+1) || rd.blockAt(i-2)) }
	if !rd.anyAt(under) || rd.anyAt(rd.hitched) {
		return
	}
	for i := range rd.elems {
		if at := rd.at(i - 1); rd.lengthAt(i) && rd.far(i) && at.marked(markPerson) && at.marked(markPlace) {
			rd.elems[i].fig.told = HitchHeight
		}
	}
}

// below says whether the number is how far a block is below the cut.
func (f *figure) below() bool { return f != nil && f.told == BlockBelow }

// blockAt says whether the words at i lead from a block to a height: "polea a".
func (rd *reading) blockAt(i int) bool { return rd.at(i).leadsTo(HitchHeight) }

func (rd *reading) lengthAt(i int) bool {
	fig := rd.at(i).fig
	return fig != nil && fig.dim == dimLength && fig.told == ""
}

// blockBefore says whether a block is named before i in the same breath,
// or in the words right there.
func (rd *reading) blockBefore(i int) bool {
	for j := i - 1; j >= 0 && rd.elems[j].pause == 0; j-- {
		if rd.elems[j].part() == partBlock {
			return true
		}
		if rd.elems[j].piece() {
			return false
		}
	}
	return false
}

// fallBehind says whether the words at i say that what stands before them is the
// fall: "120 kg a metre before it catches" tells no weight of a metre.
func (rd *reading) fallBehind(i int) bool {
	e := rd.at(i)
	return e.term != nil && e.looksBack(DropHeight)
}

// single are the units that are told without a number: "a foot".
var single = []string{"foot", "metre", "meter"}

// singleUnits reads "a foot under the cut" as one foot.
func (rd *reading) singleUnits() {
	for i := 1; i < len(rd.elems); i++ {
		a, e := rd.elems[i-1], rd.elems[i]
		if rd.word(a) != "a" || !slices.Contains(single, rd.word(e)) || !e.marked(markUnit) || rd.at(i-2).fig != nil && !rd.fallBehind(i+1) {
			continue
		}
		u := rd.in.units[rd.word(e)]
		f := &figure{low: u.factor, high: u.factor, unit: u, dim: dimLength, start: a.start, end: e.end}
		rd.elems = slices.Replace(rd.elems, i-1, i+1, element{start: a.start, end: e.end, fig: f})
	}
}

// runsInstead settles "let it run instead of snubbing it" at i, and the other way
// round: the answer tells what both do.
func (rd *reading) runsInstead(i int) bool {
	held := rd.termAt(i+1).note == snubbed
	other := snubbed
	if held {
		other = letRun
	}
	if !held && rd.termAt(i+1).note != letRun || !rd.anyAt(func(k int) bool { return rd.termAt(k).note == other }) {
		return false
	}
	rd.alter(i, func(t *term) { t.ask = "" })
	if held && rd.anyAt(func(k int) bool { return rd.termAt(k).note == letRun && (rd.far(k+1) || rd.far(k-1)) }) {
		rd.alter(i+1, func(t *term) { t.note = "" }) // "instead of snubbing it let it run 6 ft"
	}
	return true
}

// dropTold reads "only 6 ft, drop 3 ft, rope breaks at 9,000 lb": what stands
// between the word for a fall and the end of a breath is the fall, whatever else
// is told around it.
func (rd *reading) dropTold() {
	for i := range rd.elems {
		lead, apart := rd.at(i-1), rd.at(i-2).pause > 0
		if apart && rd.lengthAt(i) && rd.far(i) && rd.at(i+1).pause > 0 && lead.term != nil && lead.leadsTo(DropHeight) && !lead.leadsTo(RunLength) {
			rd.elems[i].fig.told = DropHeight
			rd.alter(i-1, func(t *term) { t.roles = nil }) // it has its number
		}
	}
}

package parser

// Where nothing is told but how a rope runs, each number is of the thing that was
// named last before it: the block, the drum, the rope itself.

// runsOnly says whether the message tells of a rope and where it runs, and of
// nothing that could hang on it.
func (rd *reading) runsOnly() bool {
	other := func(i int) bool {
		e := rd.elems[i]
		switch rd.termAt(i).intent {
		case AskSwing, AskRaise, AskDrop, AskBalance, AskAnchor, AskGear, AskNotch, AskTree, AskWeight:
			return true
		}
		return rd.termAt(i).tree != nil || rd.sized(i) || rd.heavy(i) || e.plays(Wraps) || e.plays(WinchPull) || e.plays(Sideways) || e.strength() != ""
	}
	roped := func(i int) bool {
		return rd.reachAsked(i) || rd.footer(i) || rd.elems[i].part() == partRope || rd.cued(rd.elems[i], cueEnough)
	}
	laid := rd.has(markStation) && rd.anyAt(func(i int) bool { return rd.elems[i].part() == partBlock || rd.blockAt(i) }) // "tengo 45 m, la polea a 20 y el tambor al pie"
	return (laid || rd.anyAt(roped)) && !rd.anyAt(other)
}

// runPlace is what the number at i is of how a rope runs, "" for nothing.
func (rd *reading) runPlace(i int) Field {
	fig := rd.elems[i].fig
	if fig.dim != dimCount && !fig.far() || fig.pair || fig.falling || fig.told != "" || fig.low < 1 || !rd.runsOnly() {
		return ""
	}
	if rd.footer(i) {
		return RopeLength
	}
	if next := rd.at(i + 1); next.marked(markTall) || next.piece() || next.fig != nil || next.plays(People) || next.plays(Parts) || next.plays(RopeLength) {
		return ""
	}
	if rd.aLower(i) || rd.at(i-1).marked(markMade|markRelation) && rd.termAt(i-2).intent == AskLower {
		return HitchHeight // "alcanza para bajar de 60"
	}
	if rd.at(i-1).looksBack(HitchHeight) && rd.at(i-2).fig == nil && (rd.endsBreath(i+1) || rd.at(i+1).marked(markWhere)) {
		return HitchHeight // "rope for a 3:1 going up 15 m"
	}
	if rd.restOfRope(i) {
		return RopeLength
	}
	const farthest = 6 // words: "the drum is back by the truck about 40 ft"
	for j := rd.back(i - 1); j >= 0 && j >= i-farthest; j-- {
		if e := rd.at(j); e.pause > 0 || e.fig != nil || e.piece() || e.marked(markAnd) {
			return ""
		}
		if f := rd.runOf(i, j); f != "" {
			return f
		}
	}
	return ""
}

// restOfRope reads "do i have enough line, 120 ft, tied off at 50": of what stands by
// itself, where how high the block is is told.
func (rd *reading) restOfRope(i int) bool {
	const shortest = 6
	asked := rd.anyAt(func(k int) bool { return k < i && (rd.termAt(k).intent == AskRope || rd.cued(rd.elems[k], cueEnough)) })
	return asked && rd.far(i) && rd.elems[i].fig.low >= shortest && rd.at(i-1).pause > 0 && rd.endsBreath(i+1) && rd.anyAt(rd.hitched) &&
		!rd.anyAt(func(k int) bool { return k != i && rd.beside(k, RopeLength) })
}

// runOf is what the thing at j makes of the number at i behind it.
func (rd *reading) runOf(i, j int) Field {
	e, next := rd.at(j), rd.at(i+1)
	fig := rd.elems[i].fig
	switch {
	case Redirecting(rd.termAt(j).block), rd.at(j-1).fig != nil && e.looks(before):
		return ""
	case e.part() == partBlock, rd.blockAt(j), rd.cued(e, cueHighest):
		if next.plays(Sideways) || next.marked(markRelation|markBound) || rd.cued(next, cueAbove) || rd.cued(next, cueBelow) {
			return "" // "block 4 ft above the limb"
		}
		return HitchHeight
	case e.marked(markStation) || rd.termAt(j).ropeEnd:
		near := fig.dim == dimLength && fig.low < nearestDrum
		if near || next.marked(markHigh|markUpward) || rd.cued(next, cueAbove) || next.plays(HitchHeight) || !rd.awayBetween(j, i) {
			return "" // "drum 20 ft" may be how high it is
		}
		return DrumAway
	case rd.termAt(j).intent == AskRope && rd.at(i-1).marked(markMade) && fig.low >= shortestRun && !next.looks(before):
		return RopeLength // "llega la cuerda de 50 m"
	case e.part() == partRope && rd.at(j-1).fig == nil && fig.low >= shortestRun && (fig.dim == dimLength || !rd.at(i-1).marked(markCord)):
		return RopeLength
	}
	return ""
}

// awayBetween says whether the number at i is told as so far from the tree: "the drum
// is 20 ft over", "lejos como a 40 pies".
func (rd *reading) awayBetween(drum, i int) bool {
	for k := drum + 1; k <= i+1; k++ {
		if e := rd.at(k); e.marked(markOutward) || rd.cued(e, cueAside) || rd.cued(e, cueOver) {
			return true
		}
	}
	return false
}

// shortestRun is the least that a bare number behind a rope is taken for its length,
// in feet or metres: "cuerda de 16" is rather millimetres.
const shortestRun = 20

// running settles such numbers, and what is asked where both a rope and how high its
// block is are told: whether it is enough.
func (rd *reading) running() {
	for i, e := range rd.elems {
		if e.fig == nil {
			continue
		}
		switch f := rd.runPlace(i); {
		case f == "":
		case e.fig.dim == dimCount:
			e.fig.sure = f // its unit is asked for
		case rd.surely(i, f): // the words right before it take it themselves
		default:
			e.fig.told = f
		}
	}
	told := func(f Field) bool {
		return rd.anyAt(func(i int) bool {
			fig := rd.elems[i].fig
			return fig != nil && (fig.told == f || fig.sure == f) || rd.beside(i, f)
		})
	}
	if !rd.runsOnly() || !told(HitchHeight) {
		return
	}
	for i, e := range rd.elems {
		ofRope := rd.at(rd.past(i+1, +1, markArticle)).part() == partRope || rd.at(i-1).part() == partRope
		if rd.cued(e, cueEnough) && (ofRope || told(RopeLength)) {
			rd.alter(i, func(t *term) { *t = term{intent: AskRope, besides: !ofRope} })
		}
	}
}

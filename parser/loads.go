package parser

// A number without a unit that is too large for any size can only be a mass, and
// beside masses of one unit it has theirs: "the winch pulls 3000 lb, a log of 1800".

const (
	wetRope = "wet" // also how heavy somebody is: "140 soaking wet"

	leastLoad = 250 // more than any size that is told bare, but in millimetres
	leastTold = 100 // likewise, behind words that lead to a load
)

// isLoad says whether the bare number at i can only be a mass.
func (rd *reading) isLoad(i int) bool {
	fig, next := rd.elems[i].fig, rd.at(i+1)
	if fig.high < leastTold || fig.pair || fig.falling || !rd.massTold(i) || rd.at(i-1).cross || rd.at(rd.back(i-1)).fig != nil || next.cross || next.fig != nil || rd.anyAt(rd.inMillimetres) {
		return false
	}
	if rd.takenAsLength(i) || rd.countsWithRole(next) {
		return false
	}
	at := rd.at(rd.past(rd.back(i-1), -1, markMade|markIs))
	switch {
	case at.part() == partRope || next.part() == partRope || next.piece() && fig.high < leastLoad:
		return false
	case at.piece() || rd.termAt(rd.back(i-1)).unnamed:
		return fig.high >= leastLoad
	case at.term != nil && (at.term.intent == AskLower || at.term.intent == AskLift), rd.cued(rd.at(i-1), cueFor), rd.at(rd.back(i - 1)).marked(markRating):
		return true
	}
	return fig.high >= leastLoad && (rd.endsBreath(i+1) || next.polite())
}

// takenAsLength says whether the words beside the number are those of a length that
// it could be: nothing is hitched so high as 1500, whatever the unit, and beside pounds
// alone nothing is so long.
func (rd *reading) takenAsLength(i int) bool {
	beside := rd.roleBeside(i)
	if len(beside) == 0 || dimensionOf[beside[0]] != dimLength {
		return false
	}
	long := beside[0] == HitchHeight || beside[0] == Length && rd.only(Imperial, dimMass)
	return !long || rd.elems[i].fig.high*foot.factor <= highest
}

// countsWithRole says whether words behind a number make it a count.
func (rd *reading) countsWithRole(e element) bool {
	return e.plays(Wraps) || e.plays(People) || e.plays(Legs) || e.plays(Alike)
}

// inMillimetres says whether the number at i is a size in millimetres.
func (rd *reading) inMillimetres(i int) bool {
	fig := rd.elems[i].fig
	return fig != nil && fig.unit == millimetre && fig.high > thickestRope
}

// loadUnit is the unit of such a number: that of the other masses, and of forces in
// kilonewtons the kilogram in a language of the decimal comma.
func (rd *reading) loadUnit(i int) *unitWord {
	if u := rd.massUnit(i); u != nil && u.dim == dimMass {
		return u
	}
	inForce := !rd.anyAt(func(k int) bool { return k != i && rd.elems[k].fig != nil && rd.elems[k].fig.dim == dimMass })
	if rd.in.comma && inForce && rd.only(Metric, dimForce) {
		return unitNamed["kilogram"]
	}
	return nil
}

// namedMass says whether another mass that is nothing else's names the piece, "8,000 lb
// rope ok for a 1,000 lb log": that is what it weighs.
func (rd *reading) namedMass(full bound, but int) bool {
	return (rd.asksFor(AskGear) || rd.part() == partRope) && rd.anyAt(func(k int) bool {
		fig := rd.elems[k].fig
		return k != but && rd.heavy(k) && full[k] == "" && fig.sure == "" && fig.told == "" && !fig.elsewhere && rd.at(k+1).piece()
	})
}

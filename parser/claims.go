package parser

import (
	"slices"
	"strings"
)

// Some numbers belong to words that no role can tell from others: they are
// claimed before the rest is bound.

// claims makes all of them but those of an obstacle.
func (rd *reading) claims() {
	rd.dryGear()
	rd.raised()
	rd.climberCounted()
	rd.notHere()
	rd.formerLimit()
	rd.blockLimit()
	rd.crews()
	rd.gearCounts()
	rd.alikePieces()
	rd.sideBranches()
	rd.twoLines()
	rd.twins()
	rd.endLines()
	rd.toTip()
	rd.ropeKinds()
	rd.longThin()
	rd.lineOn()
	rd.cutFor()
	rd.tooMuch()
	rd.neverOver()
	rd.piecesUnder()
	rd.eachCut()
	rd.cutInto()
	rd.fromTop()
	rd.heights()
}

// claim gives the number at i its field.
func (rd *reading) claim(i int, f Field) {
	fig := rd.elems[i].fig
	fig.elsewhere, fig.claimed = true, f
}

// sideBranches claims the weight and the reach of a side branch where it is
// told how far it sticks out: "a 150 lb side branch sticking out 6 ft to the
// left". Otherwise a side branch is the piece.
func (rd *reading) sideBranches() {
	for i, e := range rd.elems {
		if !e.marked(markSide) {
			continue
		}
		weight, out := rd.ofSide(i)
		if out < 0 {
			continue
		}
		rd.claim(out, SideBranchOut)
		if weight >= 0 {
			rd.claim(weight, SideBranch)
		}
		t := *e.term
		t.shape = ""
		rd.elems[i].term = &t
		return
	}
}

// ofSide finds the weight and the reach of the side branch at i, -1 where
// there is none.
func (rd *reading) ofSide(i int) (weight, out int) {
	weight, out = -1, -1
	if j := rd.past(i-1, -1, markAdjective|markIs|markArticle); rd.heavy(j) {
		weight = j
	}
	stuck := false // "sticking out 6 ft"
	for k := i + 1; k < len(rd.elems); k++ {
		e := rd.elems[k]
		switch {
		case rd.heavy(k) && weight < 0:
			weight = k
		case e.fig.far() && out < 0 && (stuck || rd.at(k+1).marked(markAside|markOutward)):
			out = k
		case e.marked(markAside | markOutward | markAdverb):
			stuck = true
		case e.pause == 4, e.fig != nil, e.piece(), e.term != nil && len(e.term.roles) > 0 && !e.plays(Weight) && !e.marked(markAside):
			return weight, out
		}
	}
	return weight, out
}

func (rd *reading) heavy(i int) bool {
	fig := rd.at(i).fig
	return fig != nil && (fig.dim == dimMass || fig.dim == dimForce)
}

// twins claims the places of two lines, "lines at 3 ft and 15 ft", and the
// angles of two legs to one point, "legs at 60° and 45°".
func (rd *reading) twins() {
	rd.betweenTwo()
	rd.legsForm()
	if rd.slung() {
		return // the legs of a sling are gear
	}
	for i, e := range rd.elems {
		if e.marked(markTwins|markBridle) && rd.at(i-1).fig.bare(2) {
			rd.claim(i-1, Lines) // "two lines"
		}
		if !e.marked(markTwins) || rd.at(i+1).fig == nil || !rd.at(i+2).marked(markAnd) || rd.at(i+3).fig == nil {
			continue
		}
		a, b := rd.elems[i+1].fig, rd.elems[i+3].fig
		switch {
		case a.far() && b.far() && a.high < b.low:
			rd.claim(i+1, Tie)
			rd.claim(i+3, SecondTie)
		case a.dim == dimAngle && b.dim == dimAngle:
			rd.claim(i+1, LegAngle)
			rd.claim(i+3, SecondLeg)
		}
	}
	if !rd.has(markBridle) {
		return
	}
	for i, e := range rd.elems {
		if e.fig != nil && e.fig.dim == dimAngle && e.fig.claimed == "" && rd.at(i+1).plays(LimbAngle) {
			rd.claim(i, LegAngle) // "45° above level"
		}
	}
}

// betweenTwo reads "30° between the two legs" and "angle between the two legs
// 30°" as the angle at the block, as it is without the number.
func (rd *reading) betweenTwo() {
	for i, e := range rd.elems {
		j := rd.past(i-2, -1, markArticle)
		if !e.marked(markTwins|markBridle|markCord) && !e.plays(Legs) || !rd.at(i-1).fig.bare(2) || !rd.at(j).marked(markBetween) {
			continue
		}
		angle := rd.at(j - 1).fig
		if behind := rd.forth(i + 1); angle == nil {
			angle = rd.at(behind).fig
		}
		if angle != nil && angle.dim == dimAngle {
			angle.told = BlockAngle
			rd.elems = slices.Delete(rd.elems, j, i+1)
			return
		}
	}
}

// forth passes over what only links a thing to the number behind it.
func (rd *reading) forth(i int) int {
	for rd.at(i).marked(markIs|markTrailing) || rd.termAt(i).note == "about" || rd.colon(i) {
		i++
	}
	return i
}

// endLines claims the places of a butt line and a tip line: "butt line 3 ft and
// tip line 15 ft". One of them alone is none: "14 in butt, line 30 ft".
func (rd *reading) endLines() {
	butt, tip := rd.endLine(ButtDiameter), rd.endLine(TipDiameter)
	if butt < 0 || tip < 0 {
		return
	}
	for at, f := range map[int]Field{butt: Tie, tip: SecondTie} {
		rd.claim(at+2, f)
		t := *rd.elems[at].term
		t.roles = nil
		rd.elems[at].term = &t
	}
}

// endLine finds "butt line 3 ft", -1 where there is none.
func (rd *reading) endLine(end Field) int {
	for i, e := range rd.elems {
		if e.plays(end) && rd.at(i+1).marked(markGear) && rd.far(i+2) {
			return i
		}
	}
	return -1
}

// bare says whether the number is that count and has no unit.
func (f *figure) bare(n float64) bool {
	return f != nil && f.dim == dimCount && f.unit == nil && f.low == n && f.high == n
}

// ropeKinds claims the strands of "3-strand rope", and the length of "60 ft of 5/8 double braid".
func (rd *reading) ropeKinds() {
	for i := range rd.elems {
		j := i + 2
		if fig := rd.at(j).fig; fig != nil && (fig.rope || fig.bare(3) && strings.HasPrefix(rd.termAt(j+1).note, "rope-")) {
			j++
		}
		kind := j > i+2 || strings.HasPrefix(rd.termAt(j).note, "rope-")
		if rd.far(i) && rd.at(i+1).marked(markIs) && rd.at(i+1).marked(markRelation) && kind {
			rd.claim(i, RopeLength)
		}
		if rd.elems[i].fig.bare(3) && rd.termAt(i+1).note == "rope-three-strand" {
			rd.claim(i, Strands)
		}
	}
}

// lineOn claims the line that a load hangs on: "4 ft aside on 30 ft of line".
// The rope of "120 ft of rope" is another.
func (rd *reading) lineOn() {
	if !slices.ContainsFunc(rd.elems, func(e element) bool {
		return e.plays(Sideways) || e.term != nil && (e.term.intent == AskBalance || e.term.intent == AskSwing)
	}) {
		return
	}
	for i := range rd.elems {
		if rd.far(i) && rd.at(i-1).marked(markIn) && rd.at(i+1).plays(RopeLength) {
			rd.claim(i, LineOut)
		}
	}
}

// howLong says whether the number behind the piece's name is its length though
// its weight is told: a swing, a raise and a balance ask for both.
func (rd *reading) howLong(i int) bool {
	if rd.termAt(rd.past(i-1, -1, markMade)).shape == "" {
		return false
	}
	return slices.ContainsFunc(rd.elems, func(e element) bool {
		if e.fig != nil {
			return e.fig.claimed == SecondTie || e.fig.claimed == ObstacleOut
		}
		return e.term != nil && (e.term.intent == AskBalance || e.term.intent == AskSwing || e.term.intent == AskRaise)
	})
}

package parser

import "slices"

// An angle is told without its degrees beside the words for one, or beside a
// redirect: "angle 60", "redirect at like 45". No size stands there.

// bareAngles gives such numbers their degrees. Whether one is the turn or lies
// between the legs is another question, but for a right angle: that could be the
// height of a redirect where other heights are told.
func (rd *reading) bareAngles() {
	const least, most, right = 10, 180, 90
	rd.legsApart()
	named := rd.anyAt(func(i int) bool {
		return rd.termAt(i).block != "" || rd.elems[i].plays(BlockAngle) && rd.cued(rd.elems[i], cueAngle)
	})
	if !named && !rd.asksFor(AskBlockLoad) && !rd.tensionAtBlock() {
		return
	}
	long := rd.anyAt(rd.far)
	for i, e := range rd.elems {
		fig := e.fig
		if fig == nil || fig.dim != dimCount || fig.unit != nil || fig.pair || fig.low < least || fig.high > most || rd.counts(i) || rd.at(i+1).plays(HitchHeight) || rd.blockRight(i) != "" && !rd.cued(rd.at(rd.back(i-1)), cueAngle) {
			continue
		}
		j := rd.back(i - 1)
		redirect := Redirecting(rd.termAt(j).block) && !(long && fig.high == right)
		if rd.cued(rd.at(j), cueAngle) || redirect {
			fig.dim, fig.unit = dimAngle, degree
		}
	}
}

// legsApart reads the angle that legs are said to have between them, "ramales a 120
// entre ellos": its degrees, which a smaller number needs to be told with, and that it
// lies between, whatever leads to it.
func (rd *reading) legsApart() {
	const least, most = 45, 170
	if !rd.has(markBridle | markTwins) {
		return
	}
	for i, e := range rd.elems {
		fig := e.fig
		if fig == nil || fig.pair || !rd.at(i+1).plays(BlockAngle) {
			continue
		}
		if fig.dim == dimCount && fig.unit == nil && fig.low >= least && fig.high <= most {
			fig.dim, fig.unit = dimAngle, degree
		}
		if fig.dim == dimAngle && rd.at(i-1).plays(LegAngle) {
			rd.alter(i-1, func(t *term) {
				t.roles = slices.DeleteFunc(slices.Clone(t.roles), func(r role) bool { return r.field == LegAngle })
			})
		}
	}
}

// tensionAtBlock says whether a block is named and how hard the rope pulls there:
// "angle 60 tension 5 kN block?".
func (rd *reading) tensionAtBlock() bool {
	return rd.anyAt(func(i int) bool { return rd.termAt(i).tension }) && rd.anyAt(func(i int) bool { return rd.elems[i].part() == partBlock })
}

// What two legs of a rope do with the angle between them, and what leads to what else
// they may make one with.
const (
	cueForms   cue = "forms"
	cueAgainst cue = "against"
)

// legsForm reads "the two legs make about 60 deg" as the angle between the legs at the
// block: what they make with anything else is another.
func (rd *reading) legsForm() {
	for i, e := range rd.elems {
		if e.fig == nil || e.fig.dim != dimAngle || e.fig.told != "" || rd.typedAfter(i, cueAgainst) || !rd.typedBefore(i, cueForms) {
			continue
		}
		e.fig.told = BlockAngle
		for k := range rd.elems[:i] {
			if next := rd.at(k + 1); rd.elems[k].fig.bare(2) && (next.marked(markTwins|markBridle|markCord) || next.plays(Legs)) {
				rd.elems[k] = element{start: rd.elems[k].start, end: rd.elems[k].end, term: &term{}} // both of them
			}
		}
		return
	}
}

// legsAsk asks about "legs at 40°" where the load on a block is asked: of two legs that
// bear the piece it is told above level, of those of the rope between them, and then the
// block sees more than twice as much.
func (rd *reading) legsAsk(q Question) *Ask {
	x, ok := q.Get(LegAngle)
	if !ok || !rd.legsOfRope() || q.Has(SecondLeg) {
		return nil
	}
	if rd.anyAt(func(i int) bool { return rd.elems[i].start == x.Start && rd.at(i+1).plays(LimbAngle) }) {
		return nil // "45° above level"
	}
	a := askAt(WhichAngle, rd.text, x.Start, x.End-x.Start)
	a.Fields = []Field{BlockAngle, LegAngle}
	return a
}

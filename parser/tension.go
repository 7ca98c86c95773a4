package parser

import "slices"

// The pull in a rope is told as what the line has in it. Where a block or a
// redirect turns that rope it is the load that is asked about, never the
// strength of the rope.

// tensions finds the masses and forces that are in the line.
func (rd *reading) tensions() {
	rd.heavyHands()
	if !rd.ropeTurned() || rd.anyAt(func(i int) bool { return rd.elems[i].plays(WinchPull) }) {
		return
	}
	for i, e := range rd.elems {
		if e.fig == nil || !e.fig.rates() || e.fig.told != "" || e.fig.sure != "" {
			continue
		}
		if s, _ := rd.strengthBeside(i-1, i+1); s == "" && rd.inLine(i) {
			e.fig.sure = Weight
		}
	}
}

// heavyHands reads "600 on the line" and "300 on the drum": so many are no people, but
// a load whose unit is asked for. "600 guys" stays what it says.
func (rd *reading) heavyHands() {
	for i, e := range rd.elems {
		next := rd.at(i + 1)
		if e.fig == nil || e.fig.dim != dimCount || !e.fig.rates() || e.fig.told != "" || !next.plays(People) {
			continue
		}
		if next.part() == partRope || next.marked(markStation|markGear) {
			e.fig.sure = Weight
			rd.alter(i+1, func(t *term) {
				t.roles = slices.DeleteFunc(slices.Clone(t.roles), func(r role) bool { return r.field == People })
			})
		}
	}
}

// ropeTurned says whether the message tells of a block that the rope goes
// over, or of how far it turns there.
func (rd *reading) ropeTurned() bool {
	return rd.anyAt(func(i int) bool {
		e := rd.elems[i]
		return e.marked(markDeflects) || e.term != nil && e.term.block != "" || e.fig != nil && (e.fig.told == Turn || e.fig.told == BlockAngle)
	})
}

// inLine reads "tension 5 kN", "900 lb of tension", "the line has 400 lb in it"
// and "1200 is in the line". "The line has 400 lb" alone could be its strength.
func (rd *reading) inLine(i int) bool {
	before := rd.back(i - 1)
	if rd.termAt(before).tension {
		return true
	}
	behind := rd.past(i+1, +1, markIs|markArticle)
	next := rd.at(behind)
	switch {
	case rd.termAt(behind).tension:
		return rd.termAt(behind+1).note == "" && !rd.termAt(behind+1).each && !rd.at(behind+1).plays(PersonPull)
	case next.marked(markIn) && next.part() == partRope: // "on the line"
		return true
	case !next.marked(markIn):
		return false
	}
	held := rd.at(rd.past(behind+1, +1, markArticle))
	return held.part() == partRope || held.marked(markPronoun) && rd.at(before).part() == partRope
}

// back passes over what only links a thing to its number: "has about".
func (rd *reading) back(i int) int {
	for rd.at(i).marked(markIs|markTrailing) || rd.termAt(i).note == "about" || rd.colon(i) {
		i--
	}
	return i
}

// pullsAtRedirect says whether "pull" is what a rope has in it at a redirect, and
// nothing tells of a lift: the load there is asked about.
func (rd *reading) pullsAtRedirect(q Question) bool {
	inRope := rd.anyAt(func(i int) bool { return rd.elems[i].fig != nil && rd.inLine(i) })
	return inRope && slices.ContainsFunc(q.Notes, Redirecting) && q.Has(Weight) && q.Species == nil && !q.Has(across...) && !q.Has(Parts, People, WinchPull, Length)
}

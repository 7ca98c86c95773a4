package parser

import "strings"

// A rope that slipped on the drum, or a piece that ran away, tells that the wraps
// it had were too few, whatever the figures say of them.

// slips notes it where the message is about wraps. Where it names a sling or a
// knot, that could be what slipped; where nothing is lowered, it says no more than
// that something happened.
func (rd *reading) slips() {
	onDrum := rd.asksFor(AskLower) || rd.worded(Wraps)
	for i := 0; i < len(rd.elems); i++ {
		switch {
		case !rd.termAt(i).slips || rd.tiedOn():
		case onDrum:
			rd.alter(i, func(t *term) { *t = term{note: slipped} })
		default:
			rd.pass(i, i+1)
			i--
		}
	}
}

// tiedOn says whether a sling, a connector or a knot is named.
func (rd *reading) tiedOn() bool {
	return rd.slingNamed() || rd.anyAt(func(i int) bool {
		return rd.elems[i].part() == partConnector || strings.HasSuffix(rd.termAt(i).note, "hitch")
	})
}

// tried passes over the wraps that are asked about without their word where
// others slipped, "do we go 4 or 5": how many to start with is answered.
func (rd *reading) tried() {
	if !rd.anyAt(func(i int) bool { return rd.termAt(i).note == slipped }) || !rd.worded(Wraps) {
		return
	}
	for i := 0; i < len(rd.elems); i++ {
		fig := rd.elems[i].fig
		tries := rd.cued(rd.at(i-1), cueTries) || rd.at(i-1).pause > 0 && rd.at(i+1).pause > 2
		if fig == nil || fig.dim != dimCount || fig.unit != nil || fig.high > mostWraps || !tries || !rd.alone(i) && !rd.cued(rd.at(i+1), cueTries) {
			continue
		}
		rd.pass(i, i+1)
		i--
	}
}

package parser

import "strings"

// How far the rope turns is told by eye, "40, 50 degrees", and of several
// redirects one behind the other.

// turnRanges reads "turns maybe 40, 50 degrees" as from 40 to 50 where one
// redirect is named: of several each number is one's own.
func (rd *reading) turnRanges() {
	const widest = 20 // degrees that somebody is in doubt about
	if !rd.redirected() || rd.anyAt(rd.severalRedirects) {
		return
	}
	for i := 0; i+2 < len(rd.elems); i++ {
		a, b := rd.elems[i].fig, rd.elems[i+2].fig
		if a == nil || b == nil || a.dim != dimCount || a.unit != nil || !a.degrees() || rd.elems[i+1].pause != 2 || b.dim != dimAngle {
			continue
		}
		if a.low < b.low && b.high <= a.low+widest && rd.turnedBefore(i) {
			whole := *b
			whole.low, whole.start = a.low, a.start
			rd.join(i, i+3, &whole)
		}
	}
}

// turnedBefore says whether the words of a turn lead to the number at i.
func (rd *reading) turnedBefore(i int) bool {
	j := rd.back(i - 1)
	return rd.at(j).marked(markDeflects) || rd.termAt(j).course && rd.at(j-1).part() == partRope
}

// severalRedirects says whether the element at i names more than one redirect.
func (rd *reading) severalRedirects(i int) bool {
	e := rd.elems[i]
	return e.term != nil && Redirecting(e.term.block) && (e.plays(Redirects) && rd.counted(i-1) || strings.HasSuffix(rd.word(e), "s"))
}

// eachTurn reads "give me the load on each" where the turns of several redirects
// are told: the answer has them all. Behind a number it says something of that.
func (rd *reading) eachTurn() {
	turns := 0
	for _, e := range rd.elems {
		if e.fig != nil && e.fig.told == Turn {
			turns++
		}
	}
	for i := range rd.elems {
		if turns > 1 && rd.termAt(i).each && i > 0 && rd.elems[i-1].fig == nil && !rd.at(rd.past(i+1, +1, markIs)).rates() {
			rd.alter(i, func(t *term) { t.ask, t.each = "", false })
		}
	}
}

// rates says whether the element is a number that can be a load.
func (e element) rates() bool { return e.fig != nil && e.fig.rates() }

// counted says whether the element at i is a bare number.
func (rd *reading) counted(i int) bool { return rd.at(i).fig != nil && rd.at(i).fig.dim == dimCount }

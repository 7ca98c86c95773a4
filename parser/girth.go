package parser

import "math"

// A tape goes round a stem, and not through it: a girth is π times as long as
// the piece is thick. Of a stem that is not round that is more than it is.

// leastAround is the least girth, in metres, that is told by "around" alone:
// what is less may be a thickness that is about so much.
const leastAround = 0.6

// girths turns the one girth of a message into the thickness that goes with it,
// where it stands right beside its word and no other thickness is told. What an
// anchor holds goes by its thinnest, which a tape round it does not tell.
func (rd *reading) girths() {
	rd.turnsAround()
	rd.bareGirth()
	word, last, fig := -1, -1, -1
	for i := 0; i < len(rd.elems); i++ {
		switch j := rd.girthAt(i); {
		case rd.termAt(i).ask == BreastHigh, rd.termAt(i).intent == AskAnchor, rd.roundAcross(i):
			return
		case !rd.girthWord(i):
		case word >= 0 && !rd.pairsUp(word, i, fig), j < 0 && word < 0:
			return
		case word < 0:
			word, last, fig = i, i, j
		default:
			last = i
		}
	}
	if word < 0 {
		return
	}
	rd.notAcross(max(last, fig))
	if rd.otherAcross(fig) {
		return
	}
	for i := range rd.elems {
		if rd.girthWord(i) {
			rd.alter(i, func(t *term) { *t = term{} })
		}
	}
	rd.divide(fig)
}

// girthWord says whether the element tells of a girth: by its word, or by
// "around" right behind a number.
func (rd *reading) girthWord(i int) bool {
	return rd.termAt(i).ask == Girth || rd.at(i).marked(markAround) && rd.at(i-1).fig != nil
}

// pairsUp says whether two words tell of the same girth: "girth 44 in around", "tape
// round it says 1.9 m, thats girth".
func (rd *reading) pairsUp(a, b, fig int) bool {
	k := fig + 1
	for a < fig && k < b && (rd.at(k).pause > 0 || rd.at(k).marked(markPronoun|markIs|markArticle) || rd.at(k).polite()) {
		k++
	}
	return a < fig && b == k
}

// girthAt finds the number of the girth whose word is at i, -1 where it has
// none or could have either of two.
func (rd *reading) girthAt(i int) int {
	if !rd.girthWord(i) {
		return -1
	}
	left, word := i-1, rd.elems[i].term
	behind := word.girthBehind && (rd.at(left).fig != nil || rd.at(left).pause > 0) // else "de contorno 66 in"
	if before := rd.fits(left); word.girthAround || behind || rd.elems[i].marked(markAround) {
		if before && (word.girthBehind || rd.plainlyAround(i)) {
			return left
		}
		return -1
	} else if right := rd.toGirth(i); before != rd.fits(right) {
		if before {
			return left
		}
		rd.feetOfGirth(right)
		return right
	}
	return -1
}

// plainlyAround says whether "around", or "around it", behind a number can only
// tell of a girth: not of what is about so thick, of a limb's trunk, or of a
// rope that goes round the stem.
func (rd *reading) plainlyAround(i int) bool {
	fig := rd.elems[i-1].fig
	if fig.high < leastAround || !rd.endsBreath(i+1) && !rd.at(i+1).polite() || rd.has(markCord) {
		return false
	}
	return !rd.termAt(i).girthAround || fig.unit.fine && !rd.shapedFrom(0, Limb)
}

// toGirth passes over what stands between the word at i and its number:
// "wrapped my tape round it and got".
func (rd *reading) toGirth(i int) int {
	const farthest = 4
	right := rd.past(i+1, +1, markIs|markAt|markAnd|markMade|markArticle)
	for (rd.at(right).polite() || rd.termAt(right).note == "about" || rd.cued(rd.at(right), cueStamped)) && right < i+farthest {
		right++
	}
	return right
}

// fits says whether the number at i can be a girth.
func (rd *reading) fits(i int) bool {
	fig := rd.at(i).fig
	return fig != nil && fig.dim == dimLength && !fig.pair && !fig.falling && !fig.rope && !fig.elsewhere && fig.low > 0 && fig.high <= thickest*math.Pi
}

// feetOfGirth joins the inches that go on from a girth in feet at i: "5 ft 3".
func (rd *reading) feetOfGirth(i int) {
	a, b := rd.elems[i].fig, rd.at(i+1).fig
	if a.unit != foot || b == nil {
		return
	}
	inches := *b
	if b.unit == nil && b.dim == dimCount && b.low == b.high && rd.endsBreath(i+2) {
		inches.lent(inch)
	}
	if !feetInches(a, &inches) {
		return
	}
	a.low, a.high, a.end = a.low+inches.low, a.high+inches.high, b.end
	rd.elems[i].end = b.end
	rd.elems = append(rd.elems[:i+1], rd.elems[i+2:]...)
}

// notAcross takes out "not the diameter" behind a girth, which says it again.
func (rd *reading) notAcross(i int) {
	if !rd.termAt(i + 1).denies {
		return
	}
	if j := rd.past(i+2, +1, markArticle); rd.at(j).plays(Diameter) && rd.endsBreath(j+1) {
		rd.alter(i+1, func(t *term) { *t = term{} })
		rd.alter(j, func(t *term) { *t = term{} })
	}
}

// otherAcross says whether anything else may tell how thick the piece is.
func (rd *reading) otherAcross(but int) bool {
	return rd.anyAt(func(i int) bool {
		e := rd.elems[i]
		if e.fig != nil {
			return i != but && e.fig.dim == dimLength && (e.fig.pair || e.fig.unit.fine && !e.fig.rope && !rd.at(i+1).plays(Length) && !rd.at(i-1).plays(Length))
		}
		return e.plays(Diameter) || e.plays(ButtDiameter) || e.plays(MidDiameter) || e.plays(TipDiameter)
	})
}

// divide makes the girth at i the thickness that it goes with.
func (rd *reading) divide(i int) {
	fig := rd.elems[i].fig
	fig.low, fig.high, fig.sure, fig.girth = fig.low/math.Pi, fig.high/math.Pi, Diameter, true
}

// turnsAround takes "90 degrees around it" for how far a rope goes round a stem,
// and for no girth.
func (rd *reading) turnsAround() {
	for i := 1; i < len(rd.elems); i++ {
		if fig := rd.elems[i-1].fig; fig != nil && fig.dim == dimAngle && rd.termAt(i).girthAround {
			rd.alter(i, func(t *term) { t.ask, t.girthAround = "", false })
		}
	}
}

// bareGirth lends the centimetre to a bare girth right beside its word where all
// lengths that are told are metric: "perímetro 140 y largo 2 m".
func (rd *reading) bareGirth() {
	const least, most = 60, 800
	for i, e := range rd.elems {
		if e.fig == nil || e.fig.dim != dimCount || e.fig.unit != nil || e.fig.pair || e.fig.low < least || e.fig.high > most {
			continue
		}
		if (rd.girthWord(i+1) || rd.girthWord(rd.past(i-1, -1, markIs))) && rd.only(Metric, dimLength) {
			e.fig.lent(centimetre)
		}
	}
}

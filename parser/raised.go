package parser

import (
	"math"
	"slices"
)

// A limb that is stood up is told by its lie and its tie in words that mean
// other things elsewhere: "level", "tied 12 ft out".

// raised claims both where a limb is stood up. Where only a block above the
// hinge tells of that, "level" may still be how a piece is to hang.
func (rd *reading) raised() {
	asked := rd.asksFor(AskRaise)
	if !asked && !rd.anyAt(func(i int) bool { return rd.beside(i, BlockHeight) }) {
		return
	}
	angled := rd.anyAt(func(i int) bool { return rd.elems[i].fig != nil && rd.elems[i].fig.dim == dimAngle })
	for i, e := range rd.elems {
		switch {
		case rd.tiedOut(i), asked && (rd.tiedAt(i) || rd.iTie(i)):
			rd.claim(i, Tie)
		case asked && (rd.blockAbove(i) || rd.far(i) && rd.overHinge(i)):
			rd.claim(i, BlockHeight)
		case asked && e.term != nil && e.term.level && !angled && rd.ofLimb(i):
			f := &figure{unit: degree, dim: dimAngle, start: e.start, end: e.end}
			rd.elems[i] = element{start: e.start, end: e.end, fig: f}
			rd.claim(i, LimbAngle)
			angled = true
		case asked && rd.measuresLong(i):
			rd.claim(i, Length)
		case asked && rd.tiedHalf(i):
			rd.share = &share{rd.elems[i].start, rd.elems[i].end, half}
			rd.elems[i].term = &term{}
		}
	}
	rd.hinged()
}

// ofLimb says whether the word at i tells how the limb lies, and not the ground
// or a roof: nothing that it could belong to stands right behind it, and no
// article before. "Flat" and "level" are said of much else, "horizontal" hardly.
func (rd *reading) ofLimb(i int) bool {
	next, only := rd.at(i+1), rd.elems[i].polite()
	if rd.cued(next, cueNow) {
		next = rd.at(i + 2) // "level now"
	}
	alone := next == (element{}) || next.pause > 0 || next.marked(markAnd) || next.fig != nil || only && next.polite() || next.term != nil && next.term.intent == AskRaise
	return alone && !rd.at(i-1).marked(markArticle)
}

// tiedOut reads "rope tied 12 ft out": out along the limb, from its cut.
func (rd *reading) tiedOut(i int) bool {
	words := rd.at(rd.back(i - 1))
	out := rd.at(i+1).marked(markOutward) && rd.at(i+1).marked(markAdverb)
	k := rd.past(i+2, +1, markRelation|markArticle)
	beyond := rd.at(i+2).marked(markRelation) && !rd.at(k).piece() // "out past the fork"
	return rd.elems[i].fig.far() && words.term != nil && words.term.tied && out && !beyond
}

// tiedAt reads "tied at 10 ft" of a limb whose block is told from its hinge: a
// hitch would be told from the ground, and no lower than the block is above the cut.
func (rd *reading) tiedAt(i int) bool {
	words := rd.at(rd.past(i-1, -1, markIs|markAt))
	if !rd.far(i) || words.term == nil || !words.term.tied || rd.goesOn(i+1) || rd.at(i+1).marked(markHigh|markUpward|markErect) {
		return false
	}
	if rd.anyAt(func(k int) bool { return rd.termAt(k).note == lowestWanted }) {
		return true // the block is not told, and could be no hitch either
	}
	longer := rd.anyAt(func(k int) bool {
		return rd.far(k) && rd.elems[k].fig.low > rd.elems[i].fig.high && (rd.at(k+1).plays(Length) || rd.at(k+1).piece() || rd.at(k-1).leadsTo(Length) || rd.at(k+1).plays(BlockHeight))
	})
	return longer && rd.anyAt(func(k int) bool { return rd.beside(k, BlockHeight) })
}

// blockAbove reads "block 10 ft above" with nothing behind it that it is above.
func (rd *reading) blockAbove(i int) bool {
	if over := rd.at(i + 1); !rd.far(i) || !rd.cued(over, cueAbove) && !rd.cued(over, cueOverHinge) || !rd.blockBefore(i) && !rd.blockAt(i-1) && !rd.anchorAt(rd.back(i-1)) {
		return false
	}
	next := rd.at(i + 2)
	ofIt := rd.cued(next, cueLoad) && rd.endsBreath(i+3) // "block 14 ft above it"
	return ofIt || rd.endsBreath(i+2) || next.polite() && !next.marked(markArticle|markPlace|markPronoun) || next.term != nil && next.term.note == tieWanted
}

// anchorAt says whether the words at i say where the line lowers from: "anchor point".
func (rd *reading) anchorAt(i int) bool {
	e := rd.at(i)
	return e.plays(HitchHeight) && e.looks(after) && e.part() != partRope
}

// iTie reads "polea 3 m encima del corte, amarro a 4 m", where no other tie is
// told, as how far along the limb.
func (rd *reading) iTie(i int) bool {
	told := rd.anyAt(func(k int) bool { return rd.beside(k, Tie) })
	return rd.far(i) && rd.cued(rd.at(i-1), cueTies) && rd.anyAt(func(k int) bool { return rd.beside(k, BlockHeight) }) &&
		!told && !rd.at(i+1).marked(markHigh|markUpward|markRelation)
}

// tellsOfHinge says whether a message speaks of what only a raise has: a hinge, a
// block above it, where to tie.
func (rd *reading) tellsOfHinge() bool {
	return rd.anyAt(func(i int) bool {
		t := rd.termAt(i)
		return t.intent == AskNotch || t.note == tieWanted || t.note == blocksMeet || rd.elems[i].plays(BlockHeight) || rd.beside(i, BlockHeight)
	})
}

// measuresLong reads "pesa 210 kg y mide 7 m": beside a weight, a length of the piece
// that says no more of itself.
func (rd *reading) measuresLong(i int) bool {
	j := i - 1
	for rd.termAt(j).note == "about" {
		j--
	}
	weighed := rd.anyAt(func(k int) bool { return rd.elems[k].fig != nil && rd.elems[k].fig.dim == dimMass })
	return weighed && rd.far(i) && rd.cued(rd.at(j), cueMeasures) && !rd.goesOn(i+1)
}

// tiedHalf reads "tied halfway" as where the tie is, and not as where a thickness
// was taken.
func (rd *reading) tiedHalf(i int) bool {
	words := rd.at(rd.past(i-1, -1, markIs|markAt|markArticle))
	return rd.cued(rd.elems[i], cueHalf) && words.term != nil && words.term.tied && rd.at(i+1).fig == nil && !rd.at(i+1).marked(markMade)
}

// share is the part of its length at which a limb is tied, and where that is said.
type share struct {
	start, end int
	of         float64
}

// thirdsAt is how many elements from i on are two thirds of a limb: "2/3 out", "dos
// tercios"; 0 for none.
func (rd *reading) thirdsAt(i int) int {
	fig := rd.elems[i].fig
	if fig == nil || fig.dim != dimCount || fig.unit != nil {
		return 0
	}
	if fig.bare(2) && rd.cued(rd.at(i+1), cueThird) {
		return 2
	}
	if out := rd.at(i + 1); math.Abs(fig.low-twoThirds) < 0.01 && fig.low == fig.high && (rd.endsBreath(i+1) || out.marked(markOutward)) {
		return 1
	}
	return 0
}

const twoThirds = 2.0 / 3

// tiedAtThirds takes two thirds for the tie where the limb is told to be tied there.
// Beside another tie they are one to choose from: "tip tie or 2/3 out?".
func (rd *reading) tiedAtThirds(i int) {
	n := rd.thirdsAt(i)
	if n == 0 {
		return
	}
	start, end := rd.elems[i].start, rd.elems[i+n-1].end
	words := rd.at(rd.past(i-1, -1, markIs|markAt|markArticle))
	t := &term{}
	if words.term != nil && words.term.tied {
		rd.share = &share{start, end, twoThirds}
	} else {
		t = &term{intent: AskRaise, note: tieWanted}
	}
	rd.elems = slices.Replace(rd.elems, i, i+n, element{start: start, end: end, term: t})
}

// tieAtShare makes the tie of its part of the length. Where the length is not told,
// the words are asked about.
func (rd *reading) tieAtShare(q *Question) *Ask {
	if rd.share == nil || q.Intent != AskRaise || q.Has(Tie) {
		return nil
	}
	long, ok := q.Get(Length)
	if !ok {
		return askAt(Twist, rd.text, rd.share.start, rd.share.end-rd.share.start)
	}
	tie := long
	tie.Field, tie.Low, tie.High, tie.Start, tie.End = Tie, long.Low*rd.share.of, long.High*rd.share.of, rd.share.start, rd.share.end
	q.Quantities = append(q.Quantities, tie)
	return nil
}

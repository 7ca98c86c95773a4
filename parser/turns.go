package parser

import (
	"slices"
	"strings"
)

// A rope that is redirected turns at a block by some angle, which is not the
// angle between its legs there: the two add up to 180°. Only a word that says
// which of them is meant makes an angle a turn.

// The blocks of a rope's path that crews name, as the word file does.
const (
	TopBlock      = "top-block"
	AnyBlock      = "block"
	RedirectBlock = "redirect"
	BaseBlock     = "base-block"
	NaturalCrotch = "natural-crotch"
)

// redirecting are the blocks whose mention is a fact by itself, and its note.
var redirecting = map[string]string{RedirectBlock: RedirectBlock, BaseBlock: BaseBlock}

// Redirecting says whether a block that was named leads the rope on, rather
// than carrying the load first.
func Redirecting(block string) bool { return redirecting[block] != "" }

// turns finds the numbers that say how far the rope turns. Once one is found,
// others of a list need no word of their own: "turns 180 at the top block, 20
// at the redirect".
func (rd *reading) turns() {
	found := false
	for i, e := range rd.elems {
		if fig := e.fig; fig != nil && fig.dim == dimCount && rd.at(i+1).marked(markDeflects) && rd.blockRight(i) != "" {
			fig.elsewhere = true // "half a turn at the top block" is no wrap on the drum
		}
		if !rd.angular(i) {
			continue
		}
		word := rd.turnWord(i)
		if word < 0 && !rd.rightAngle(i) {
			continue
		}
		found = true
		e.fig.told, e.fig.at = Turn, rd.turnedAt(i, word)
		if word >= 0 {
			rd.elems[word].term = &term{marks: markDeflects} // "turns" are no wraps here
		}
	}
	for i, e := range rd.elems {
		if !found || !rd.angular(i) || e.fig.told != "" {
			continue
		}
		if at := rd.listedAt(i); at != "" {
			e.fig.told, e.fig.at = Turn, at
		}
	}
}

// wordedTurns reads a turn that is told without a number, "the rope comes
// straight back out on itself", of a block that is named. Beside an angle the
// words could say another thing of the same rope, and are asked about. In what
// is lowered or lifted they only say how the rope runs.
func (rd *reading) wordedTurns() {
	worked := rd.asksFor(AskLower) || rd.asksFor(AskRope) || rd.asksFor(AskLift) || rd.asksFor(AskRaise)
	block := rd.anyAt(func(i int) bool { return rd.termAt(i).block != "" })
	for i, e := range rd.elems {
		if e.term != nil && e.term.square && rd.redirected() {
			rd.alter(i, func(t *term) { t.ask, t.turned = "", 90 })
			e = rd.elems[i]
		}
		if e.term == nil || e.term.turned == 0 || worked && !rd.redirected() || rd.squared(i) {
			continue
		}
		if !block || rd.anyAt(func(k int) bool { return rd.elems[k].fig != nil && rd.elems[k].fig.dim == dimAngle }) {
			rd.alter(i, func(t *term) { t.ask = Twist })
			continue
		}
		f := &figure{low: e.term.turned, high: e.term.turned, unit: degree, dim: dimAngle, told: Turn, at: rd.lastBlock(i), start: e.start, end: e.end}
		rd.elems[i] = element{start: e.start, end: e.end, fig: f}
	}
}

// squared passes over "square" beside the 90° that it says again.
func (rd *reading) squared(i int) bool {
	if !rd.termAt(i).square {
		return false
	}
	right := func(k int) bool {
		fig := rd.elems[k].fig
		return fig != nil && fig.low == 90 && fig.high == 90 && (fig.dim == dimAngle || fig.dim == dimCount && fig.unit == nil)
	}
	k := slices.IndexFunc(rd.elems, func(e element) bool { return e.fig != nil && e.fig.told == Turn })
	for n := range rd.elems {
		if right(n) {
			k = n
			if f := rd.elems[n].fig; f.told == "" {
				f.dim, f.unit, f.told, f.at = dimAngle, degree, Turn, rd.lastBlock(n)
			}
		}
	}
	return k >= 0
}

// lastBlock is the block that was named last before i, or the only one.
func (rd *reading) lastBlock(i int) string {
	for j := i - 1; j >= 0; j-- {
		if b := rd.termAt(j).block; b != "" {
			return b
		}
	}
	return rd.onlyBlock()
}

// redirected says whether a block is named that leads the rope on.
func (rd *reading) redirected() bool {
	return rd.anyAt(func(i int) bool { return Redirecting(rd.termAt(i).block) })
}

// angular says whether a number can be an angle; one without a unit can, unless
// the word behind it counts something: "2 people".
func (rd *reading) angular(i int) bool {
	fig := rd.elems[i].fig
	if fig == nil || fig.pair || fig.falling {
		return false
	}
	for _, r := range rd.termAt(i + 1).roles {
		if fig.dim == dimCount && counted[r.field] && r.side&before != 0 || dimensionOf[r.field] == dimAngle {
			return false
		}
	}
	return fig.dim == dimAngle || fig.dim == dimCount && fig.unit == nil
}

// turnWord returns the element that makes a number a turn: "turns 30°", "turns
// the rope by 30°", "a 30° turn"; -1 where there is none.
func (rd *reading) turnWord(i int) int {
	fig := rd.elems[i].fig
	for j := i - 1; j >= 0 && j > i-7; j-- {
		e := rd.elems[j]
		if e.marked(markDeflects) {
			if fig.dim == dimAngle || !e.plays(Wraps) || rd.blockRight(i) != "" || rd.termAt(j-1).block != "" || rd.redirected() && fig.degrees() && j > 0 && rd.elems[j-1].pause == 0 {
				return j
			}
			return -1 // "turns 3"
		}
		if !rd.passable(e) {
			break
		}
	}
	if at := rd.past(i-1, -1, markArticle); rd.ropeGoes(i, at) {
		return at
	}
	j := rd.past(i+1, +1, markIs)
	if k := rd.past(j+1, +1, markIs); fig.dim == dimAngle && rd.at(j).marked(markDeflects) && (rd.at(k).fig == nil || !rd.angular(k)) {
		return j
	}
	return -1
}

// ropeGoes reads "the line goes 90 there" and "makes a 90 there" at a redirect. What has no unit could
// be how far the rope runs, unless the words behind it name the place.
func (rd *reading) ropeGoes(i, at int) bool {
	fig, course := rd.elems[i].fig, rd.at(at)
	if course.term == nil || !course.term.course || rd.at(at-1).part() != partRope || !rd.redirected() {
		return false
	}
	there := rd.cued(rd.at(i+1), cueThere) || rd.blockRight(i) != ""
	return fig.dim == dimAngle || there && fig.degrees()
}

// degrees says whether a bare number can be how far a rope turns at a redirect,
// and no count of wraps.
func (f *figure) degrees() bool {
	const least, most = 20, 180
	return least <= f.low && f.high <= most
}

// ropeBeside says whether the breath of a number speaks of a rope or a block,
// and not of the piece.
func (rd *reading) ropeBeside(i int) bool {
	rope := false
	for _, step := range []int{-1, +1} {
		for j := i + step; j >= 0 && j < len(rd.elems) && rd.elems[j].pause == 0; j += step {
			if rd.elems[j].piece() {
				return false
			}
			rope = rope || rd.elems[j].part() == partRope || rd.termAt(j).block != ""
		}
	}
	return rope
}

// passable says whether an element may stand between a turn and its number.
func (rd *reading) passable(e element) bool {
	const small = markIs | markAt | markWhere | markArticle | markRelation | markPronoun | markAdjective | markAdverb | markGear | markLoaded
	if e.pause > 0 {
		return rd.text[e.start:e.end] == ":"
	}
	return e.term != nil && (e.marked(small) || e.term.block != "" || e.term.note == "about")
}

// rightAngle says whether the number is 90° at a redirect, where the turn and
// the angle between the legs are the same: right beside it, or the only angle.
func (rd *reading) rightAngle(i int) bool {
	fig := rd.elems[i].fig
	beside := redirecting[rd.termAt(i+1).block] != "" || redirecting[rd.termAt(rd.pastIs(i-1)).block] != ""
	alone := rd.endsBreath(i+1) && (i == 0 || rd.elems[i-1].pause > 0) // "500 lb on the line, 90 degrees"
	lone := rd.redirected() && (alone || rd.ropeBeside(i)) && !rd.slingNamed() && !rd.asksFor(AskRaise) && !rd.anyAt(func(k int) bool {
		other := rd.elems[k].fig
		return k != i && other != nil && other.dim == dimAngle || rd.termAt(k).block == TopBlock
	})
	return fig.dim == dimAngle && fig.low == 90 && fig.high == 90 && (beside || lone)
}

// turnedAt names the block of a turn: "turns at the redirect 20", "turns 20 at
// the redirect", "the redirect turns it 20".
func (rd *reading) turnedAt(i, word int) string {
	for j := i - 1; j > word && word >= 0; j-- {
		if b := rd.termAt(j).block; b != "" {
			return b
		}
	}
	if b := rd.blockRight(i); b != "" {
		return b
	}
	from := i - 1
	if word >= 0 && word < i {
		from = word - 1
	}
	for j := from; j >= 0 && j > from-6; j-- {
		if b := rd.termAt(j).block; b != "" {
			return b
		}
		if !rd.passable(rd.elems[j]) {
			break
		}
	}
	if b := rd.termAt(i + 1).block; b != "" {
		return b
	}
	return rd.onlyBlock()
}

// onlyBlock is the block that the message names, where it names one.
func (rd *reading) onlyBlock() string {
	only := ""
	for _, e := range rd.elems {
		switch {
		case e.term == nil || e.term.block == "" || e.term.block == only:
		case only != "":
			return ""
		default:
			only = e.term.block
		}
	}
	return only
}

// blockRight is the block that a number is "at".
func (rd *reading) blockRight(i int) string {
	led := false
	for j := i + 1; j < i+6; j++ {
		switch e := rd.at(j); {
		case e.term == nil:
			return ""
		case e.term.block != "":
			if words := fold(rd.text[e.start:e.end]); !led && !strings.HasPrefix(words, "at ") && !strings.HasPrefix(words, "en ") {
				return ""
			}
			return e.term.block
		case e.marked(markAt | markWhere | markRelation | markDeflects):
			led = true
		case !e.marked(markArticle | markAdjective | markIs | markPronoun | markGear):
			return ""
		}
	}
	return ""
}

// listedAt is the block of a number that stands in a list of turns.
func (rd *reading) listedAt(i int) string {
	if b := rd.blockRight(i); b != "" {
		return b
	}
	if !rd.at(i - 1).marked(markAt) {
		if b := rd.termAt(rd.pastIs(i - 1)).block; b != "" {
			return b
		}
	}
	if rd.elems[i].fig.dim == dimAngle {
		return rd.termAt(i + 1).block
	}
	return ""
}

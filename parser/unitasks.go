package parser

import (
	"math"
	"strings"
)

// A bare number is asked for its unit, and for what it is where no word tells: only
// what it can be is offered, "limit 700" a mass, "con 3 aguanto 700 lb" wraps or hands.

// unitAsk asks for the unit of a bare number, and for what it is where that is not
// told either.
func (rd *reading) unitAsk(i int, full bound, limb bool) *Ask {
	fig := rd.elems[i].fig
	a := fig.ask(NoUnit, rd.text)
	only := func(f Field) { a.Fields, a.Choices = []Field{f}, []Choice{{Field: f}} }
	beside, rigged := rd.roleBeside(i), rd.at(rd.past(i-1, -1, markIs)).rigged()
	switch {
	case rd.crossed(i, i+2) && !rd.crossed(i-2, i) && rd.at(i+2).fig.far() && rd.maybeFeet(i):
		a.Fields = []Field{Diameter, Length} // inches or feet
	case rd.crossed(i, i+2) && !rd.crossed(i-2, i):
		only(Diameter) // "weight of 22 by 9"
	case beside != nil:
		only(beside[0])
		a.Fields = beside
	case rigged != "":
		a.Fields = []Field{rigged}
	case rd.massBeside(i-1, i+1) == Payload:
		a.Fields = []Field{Payload}
	case rd.lifting() && !full.has(Weight) && fig.low > longestBare:
		only(Weight)
	case rd.toLower(i):
		a.Fields = []Field{Weight}
	case full.has(Weight) && rd.wrapsOrHands(i):
		a.Fields = []Field{Wraps, People}
	default:
		a.Fields = open(full, limb)
	}
	return a
}

// wrapsOrHands says whether a bare number of what is lowered is as few as wraps and
// people are, and is held with: "con 3 aguanto 700 lb", or told beside other wraps. No
// size is.
func (rd *reading) wrapsOrHands(i int) bool {
	const most = 8
	fig := rd.elems[i].fig
	few := fig.low == fig.high && fig.low == math.Trunc(fig.low) && fig.low >= 1 && fig.low <= most
	with := rd.cued(rd.at(i-1), cueTries) || rd.cued(rd.at(i-1), cueHaving)
	beside := rd.anyAt(func(k int) bool { return k != i && rd.elems[k].fig != nil && rd.at(k+1).plays(Wraps) })
	return few && (with || beside) && (rd.worded(Wraps) || rd.asksFor(AskLower))
}

// toLower says whether a bare number can only be what the piece weighs: it is
// lowered, and nothing is told of its size, "wraps for two hundred".
func (rd *reading) toLower(i int) bool {
	const least = 20 // whatever unit it has, less takes no drum
	return (rd.worded(Wraps) || rd.asksFor(AskLower)) && rd.elems[i].fig.low >= least && !rd.anyAt(func(k int) bool {
		return rd.elems[k].piece() || rd.lengthAt(k)
	})
}

// longestBare is more than any size of what is lifted, in feet, inches, metres or
// centimetres alike: a bare number above it is what it weighs.
const longestBare = 1000

// roleBeside is the field that a bare number right beside the words for it
// must be, where only its unit is missing: "limit 700", "hitch 70".
func (rd *reading) roleBeside(i int) []Field {
	beside := []int{rd.wordsBefore(i), i + 1}
	if rd.anyAt(rd.cuts) {
		beside = append(beside, i-1) // "cut lengths, max 250"
	}
	if rd.ofSize(i + 1) {
		beside[0], beside[1] = beside[1], beside[0] // "pedazo de 35 de grueso"
	}
	for _, at := range beside {
		if t := rd.at(at).term; t != nil {
			for _, r := range t.roles {
				facing := r.side&before != 0
				if at < i {
					facing = r.side&after != 0
				}
				if dim := dimensionOf[r.field]; facing && (dim == dimMass || dim == dimForce || dim == dimLength) {
					return []Field{r.field}
				}
			}
		}
	}
	return nil
}

// ofSize says whether the words at i go with the number before them: "de grueso".
func (rd *reading) ofSize(i int) bool {
	return rd.at(i).looks(before) && strings.HasPrefix(rd.word(rd.at(i)), "de ")
}

// wordsBefore finds the words that lead to the number at i: "butt about 14", "hitch
// is 35".
func (rd *reading) wordsBefore(i int) int {
	at := i - 1
	for (rd.at(at).marked(markIs|markBound) || rd.termAt(at).note == "about" && len(rd.termAt(at).roles) == 0) && !rd.at(at).plays(Weight) {
		at-- // "weighs" links, and is a weight's own word
	}
	return at
}

package parser

import (
	"math"
	"slices"
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
	case rd.thickOfCut(i, full):
		only(Diameter)
	case beside != nil && !(beside[0] == Length && rd.heavyPiece(i)):
		only(beside[0])
		a.Fields = beside
	case rigged != "":
		a.Fields = []Field{rigged}
	case rd.massBeside(i-1, i+1) == Payload:
		a.Fields = []Field{Payload}
	case rd.lifting() && !full.has(Weight) && fig.low > longestBare, !full.has(Weight) && rd.heavyPiece(i):
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

// heavyPiece reads "pieza de 1500": nothing is so long, whatever the unit, and a piece
// weighs so much.
func (rd *reading) heavyPiece(i int) bool {
	const least, most = 500, 20000
	fig := rd.elems[i].fig
	k := rd.past(i-1, -1, markMade|markIs|markRelation)
	return fig.low >= least && fig.high <= most && (rd.termAt(k).unnamed || rd.termAt(k).shape != "" || rd.cued(rd.at(k), cuePiece)) && (rd.endsBreath(i+1) || rd.at(i+1).polite() || rd.at(i+1).fig == nil && rd.termAt(i+1).intent != "") && !rd.anyAt(rd.inMillimetres)
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

// idleLength passes over how long a piece is that is lifted and whose weight is told,
// where the length has no unit: nothing hangs on it, "30 long weighs about 4".
func (rd *reading) idleLength(q *Question, asks []*Ask) []*Ask {
	weighed := q.Has(Weight) || slices.ContainsFunc(asks, func(a *Ask) bool { return a != nil && slices.Contains(a.Fields, Weight) })
	if q.Intent != AskLift || !weighed {
		return asks
	}
	return slices.DeleteFunc(asks, func(a *Ask) bool {
		idle := a != nil && a.Kind == NoUnit && len(a.Fields) == 1 && a.Fields[0] == Length
		if idle {
			q.Passed = append(q.Passed, Said[string]{Value: a.Words, Words: a.Words, Start: a.Start, End: a.End})
		}
		return idle
	})
}

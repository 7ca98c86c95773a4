package parser

import (
	"slices"
	"strings"
)

// "Not" turns most meanings round and is asked about. It does not where it
// only says again what stands right before it: "200 kg not lb", "a log not a
// limb", "14 in not 16".

// denials takes out what such a word puts aside, and says so of a number.
func (rd *reading) denials() {
	for i := 0; i < len(rd.elems); i++ {
		if !rd.termAt(i).denies {
			rd.deniedKind(i)
			continue
		}
		j, is := rd.past(i+1, +1, markArticle), i-1
		if rd.at(is).pause == 2 {
			is-- // "let it run, not snubbed"
		}
		switch {
		case rd.at(i+1).pause == 2:
			rd.corrected(i) // "el sauce no, el álamo"
		case rd.otherUnit(i-1, j), rd.unitPutAside(i, j), rd.otherKind(is, j), rd.otherKind(rd.kindAhead(j), j), rd.girthNotAcross(i-1, j):
			rd.alter(i, func(t *term) { *t = term{} })
			rd.alter(j, func(t *term) { *t = term{} })
		case rd.otherNumber(i-1, j), is < i-1 && rd.otherNumber(is, j) && rd.saidOut(j+1), rd.cued(rd.at(i-1), cueNow) && rd.otherNumber(i-2, j):
			rd.pass(i, j+1) // "max 180 now not 250"
		case rd.deniedTree(j), rd.otherTree(i-1, j):
			rd.pass(i, j+1)
		case rd.deniedNumber(i + 1):
			rd.pass(i, rd.past(i+1, +1, markIs|markArticle)+1)
		case rd.otherJob(i + 1):
			rd.alter(i, func(t *term) { *t = term{} })
			rd.alter(i+1, func(t *term) { *t = term{} })
		}
	}
}

// deniedKind takes out what "aint" and "isnt" put aside for what is so: "it isnt a limb
// its a log", "dead, it aint green".
func (rd *reading) deniedKind(i int) {
	if rd.termAt(i).turning != TurnsDenied || !rd.cued(rd.elems[i], cueNot) {
		return
	}
	j, is := rd.past(i+1, +1, markArticle), rd.past(i-1, -1, markPronoun)
	if rd.at(is).pause == 2 {
		is--
	}
	switch {
	case rd.otherKind(is, j), rd.otherKind(rd.kindAhead(j), j):
		rd.alter(i, func(t *term) { *t = term{} })
		rd.alter(j, func(t *term) { *t = term{} })
	case rd.deniedTree(j):
		rd.pass(i, j+1)
	}
}

// workings are what can be done with a piece.
var workings = []Intent{AskLower, AskLift, AskRaise, AskDrop}

// otherJob says whether what stands at i is a way of working that is put aside
// for another, named right behind it: "not lowering it, raising it", "not neg
// rigging just a straight lower". With a number in between it could be of either.
func (rd *reading) otherJob(i int) bool {
	out := rd.termAt(i)
	if !slices.Contains(workings, out.intent) || out.besides || out.stop != "" {
		return false
	}
	for j := i + 1; j < len(rd.elems); j++ {
		e, t := rd.elems[j], rd.termAt(j)
		switch {
		case e.pause > 2, e.fig != nil, t.denies, t.corrects, t.ask != "", e.piece():
			return false
		case t.intent != "" && !t.besides:
			return slices.Contains(workings, t.intent) && t.intent != out.intent && rd.nowhereElse(i, out.intent)
		case e.pause == 0 && !e.polite() && !e.marked(markAdverb) && !rd.saysNothing(j):
			return false
		}
	}
	return false
}

// nowhereElse says whether no other words ask for what is put aside at i.
func (rd *reading) nowhereElse(i int, in Intent) bool {
	return !rd.anyAt(func(k int) bool { return k != i && rd.termAt(k).intent == in })
}

// otherUnit says whether a number with its unit is told, and then another unit
// that it is not in.
func (rd *reading) otherUnit(i, j int) bool {
	fig, unit := rd.at(i).fig, rd.at(j)
	return fig != nil && fig.unit != nil && unit.marked(markUnit) && unit.fig == nil &&
		!strings.HasSuffix(strings.ToLower(fig.words(rd.text)), strings.ToLower(rd.text[unit.start:unit.end]))
}

// girthNotAcross says whether a girth is told, and then that it is no thickness:
// "75 in circumference, not diameter".
func (rd *reading) girthNotAcross(i, j int) bool {
	girth := rd.termAt(i).ask == Girth || rd.termAt(i).girthAround || rd.termAt(i).girthBehind
	return girth && rd.at(j).onlyPlays(Diameter) && rd.at(j+1).fig == nil
}

// unitPutAside says whether a message without a number names a unit, and then one of
// another system that is not wanted: "kilos from here on not pounds".
func (rd *reading) unitPutAside(i, j int) bool {
	system := func(k int) System {
		if e := rd.at(k); e.marked(markUnit) && e.fig == nil && rd.in.units[rd.word(e)] != nil {
			return rd.in.units[rd.word(e)].system
		}
		return rd.termAt(k).units
	}
	not := system(j)
	other := func(k int) bool {
		return k != j && system(k) != "" && system(k) != not && (rd.termAt(k).units != "" || !rd.measured())
	}
	return not != "" && rd.anyAt(other)
}

// otherKind says whether what a thing is stands at i, and at j the other that it is
// not: "a log not a limb", "dead, not green", "break not wll", "a run not a snub".
func (rd *reading) otherKind(i, j int) bool {
	is, not := rd.termAt(i), rd.termAt(j)
	if i < 0 || is.tree != nil || not.tree != nil || rd.at(j+1).fig != nil {
		return false
	}
	runs := is.note == letRun || rd.at(i).plays(RunLength) || rd.at(i).fig != nil && rd.at(i-1).plays(RunLength)
	return is.shape != "" && not.shape != "" && is.shape != not.shape ||
		is.condition != "" && not.condition != "" && is.condition != not.condition ||
		is.strength != "" && not.strength != "" && is.strength != not.strength ||
		runs && not.note == snubbed
}

// kindAhead is the place behind what is denied at j where the other that is so may
// stand, by its own article: "not a limb, a log", "its not green, its dead". It is -1
// where none stands there.
func (rd *reading) kindAhead(j int) int {
	k := j + 1
	if rd.at(k).pause == 2 {
		k++
	}
	from := k
	for rd.at(k).marked(markArticle|markPronoun) || rd.cued(rd.at(k), cueItIs) {
		k++
	}
	if k == from && rd.termAt(j).note != snubbed {
		return -1
	}
	return k
}

// otherNumber says whether a number is told, alone or with what it counts,
// and then another of its kind that has no place of its own: "3 wraps not 4".
func (rd *reading) otherNumber(i, j int) bool {
	not := rd.at(j).fig
	is := rd.at(i).fig
	counts := is == nil && len(rd.termAt(i).roles) > 0
	if counts {
		is = rd.at(i - 1).fig
	}
	switch {
	case is == nil || not == nil || is.pair || not.pair:
		return false
	case rd.termAt(j-1).corrects && not.in(is) > is.high:
		return false // "14 pulgadas no 16" may put it right
	case counts && rd.at(i).plays(People) && rd.at(j+1).plays(People) && not.unit == nil && not.dim == dimCount:
		return true // "two guys not one on the rope"
	case counts && not.unit != nil, (counts || is.unit != nil) && not.unit == nil && len(rd.termAt(j+1).roles) > 0:
		return false // "22 ft, not 3 wraps"
	}
	return not.unit == nil && not.dim == dimCount || not.unit == is.unit
}

// deniedNumber reads "no son 3, son 4 vueltas" and "it's not 14, it's 16 in" at the
// word behind "not": the number right behind the next such word is what is so.
func (rd *reading) deniedNumber(i int) bool {
	j := rd.past(i, +1, markIs|markArticle)
	k := j + 1
	for rd.at(k).pause == 2 || rd.at(k).marked(markPronoun) {
		k++
	}
	told := rd.past(k, +1, markIs)
	not, is := rd.at(j).fig, rd.at(told).fig
	return told > k && not != nil && is != nil && !not.pair && not.unit == nil && not.dim == dimCount && not.low != is.low &&
		(is.unit != nil || len(rd.termAt(told+1).roles) > 0)
}

package parser

import (
	"slices"
	"strings"
)

// A share of people is talk, and no part of a piece: "half the crew says tie it mid",
// "a few of the guys reckon", "third guy went for fuel".

// peopleShare leaves out the share at i, with those it is of, and says whether it is one
// of people. How many of them hold the rope stays in doubt.
func (rd *reading) peopleShare(i int) bool {
	if t := rd.turnedBy(i); t != TurnsPart && t != TurnsSeveral && t != TurnsPeople || rd.at(i-1).fig != nil {
		return false
	}
	who := rd.past(i+1, +1, markArticle|markRelation)
	_, to := rd.clause(i)
	switch folk := rd.ofPeople(i); {
	case folk && rd.opines(who):
	case rd.opines(i) && !rd.sizedBehind(i): // "half says butt"
		who = i
	case rd.restOfThem(i): // "half say yes, half no"
		who = i + 1
	case rd.opines(who) && !rd.sizedBehind(who) && (rd.at(who).marked(markPronoun) || rd.at(who).plays(Alike) || rd.termAt(who).chatter):
	case !folk, rd.termAt(i).each, rd.peopleBefore(i), rd.atRope(who, to), rd.anyWithin(who, to, func(k int) bool { return rd.elems[k].fig != nil }):
		return false // "half the guys are on the rope" is how many pull
	}
	rd.leaveOut(i, who+1)
	return true
}

// ofPeople says whether the word at i is a share, and of people.
func (rd *reading) ofPeople(i int) bool {
	t, who := rd.termAt(i), rd.past(i+1, +1, markArticle|markRelation)
	share := t.each || t.turning == TurnsPart || t.turning == TurnsSeveral || t.marks&markHalf != 0
	return share && who > i && (rd.who(who) || rd.at(who).plays(People) && rd.at(who).fig == nil)
}

// restOfThem says whether the word at i and a yes or no behind it are what others of some
// people say who were left out before.
func (rd *reading) restOfThem(i int) bool {
	said := rd.word(rd.elems[i])
	same := func(p Said[string]) bool { return p.End <= rd.elems[i].start && strings.HasPrefix(fold(p.Words), said) }
	next := rd.termAt(i + 1)
	return (next.corrects || next.denies || next.chatter) && rd.endsBreath(i+2) && slices.ContainsFunc(rd.passed, same)
}

// opines says whether a word of saying or wanting stands right behind the element at i.
func (rd *reading) opines(i int) bool {
	if i >= len(rd.elems) {
		return false
	}
	word, _ := nextWord(rd.text[rd.elems[i].end:])
	return rd.in.cues[cueOpines][word]
}

// sizedBehind says whether a number stands right behind the word that follows the
// element at i: "half of it say 10 ft".
func (rd *reading) sizedBehind(i int) bool {
	_, n := nextWord(rd.text[rd.elems[i].end:])
	end := rd.elems[i].end + n
	return rd.anyAt(func(k int) bool {
		return rd.elems[k].fig != nil && rd.elems[k].start >= end && rd.elems[k].start-end < 3
	})
}

// peopleBefore says whether people are counted before i.
func (rd *reading) peopleBefore(i int) bool {
	return rd.anyAt(func(k int) bool { return k < i && rd.elems[k].fig != nil && rd.at(k+1).plays(People) })
}

// atRope says whether the people at i, or what stands behind them up to another element,
// tell of who holds or pulls: "guys on the rope".
func (rd *reading) atRope(i, to int) bool {
	holds := func(w string) bool { return rd.in.cues[cueAtRope][w] }
	return slices.ContainsFunc(splitWords(rd.word(rd.at(i))), holds) || rd.anyWithin(i, to, func(k int) bool {
		e, t := rd.elems[k], rd.termAt(k)
		return e.plays(People) || e.plays(PersonPull) || e.plays(WinchPull) || holds(rd.word(e)) || rd.kit(k) || t.ropeEnd || t.others || e.marked(markGear|markTug)
	})
}

// pairOf reads "with a couple of wraps" and "a couple guys on the rope" as two, the
// least that it can be: fewer hold less. Of wood, and of what is put on or taken off, it
// stays in doubt.
func (rd *reading) pairOf(i int) {
	of := rd.past(i+1, +1, markRelation|markMade)
	prev, next := rd.at(rd.past(i-1, -1, markArticle)), rd.at(of)
	counts := func(f Field) bool {
		return next.plays(f) && next.fig == nil && !rd.anyAt(func(k int) bool { return rd.elems[k].fig != nil && rd.at(k+1).plays(f) })
	}
	had := i == 0 || prev.pause > 0 || rd.cued(prev, cueHaving) || rd.cued(prev, cueOwns)
	changed := rd.cued(rd.at(of+1), cueFewer) || rd.cued(rd.at(of+1), cueMore)
	words := splitWords(rd.word(next))
	spelled := func(w string) bool {
		return rd.in.cues[cueLine][w] || rd.in.cues[cuePulling][w] || rd.in.cues[cueHolds][w]
	}
	held := rd.cued(prev, cueOwns) || rd.atRope(of, rd.clauseEnd(of+1)) || slices.ContainsFunc(words, spelled)
	if counts(Wraps) && had && !changed || counts(People) && held && !rd.in.cues[cueHands][words[0]] {
		rd.join(i, of, &figure{low: 2, high: 2, start: rd.elems[i].start, end: rd.elems[of-1].end})
	}
}

// bothAnswers says whether "both" at i, or "each", only asks for two answers: "give me
// both", "what does it see each way".
func (rd *reading) bothAnswers(i int) bool {
	way := rd.cued(rd.at(i+1), cueWays)
	end := i + 1
	if way {
		end++
	}
	prev := rd.at(i - 1)
	if !rd.endsBreath(end) && !rd.at(end).polite() || prev.fig != nil || rd.at(i).pause > 0 {
		return false
	}
	before := splitWords(rd.text[:rd.elems[i].start])
	asked := len(before) > 0 && rd.in.cues[cueGivesBoth][before[len(before)-1]]
	if !way && (!asked || rd.termAt(i).each) || way && (prev.marked(markMoving|markTug|markCord) || rd.kit(i-1) || rd.asksFor(AskSwing)) {
		return false
	}
	rd.leaveOut(i, end)
	return true
}

package parser

import (
	"slices"
	"strings"
)

// A word that turns a meaning round turns what stands in its own clause. That
// begins with who does what is turned, and ends at a pause, at "because" and the
// like, and where another begins: "and i", "how many".

// clause returns where the clause of the word at i begins, and what stands behind
// its end.
func (rd *reading) clause(i int) (from, to int) {
	for from = i; from > 0 && rd.subject(from-1); {
		from--
	}
	for to = i + 1; to < len(rd.elems) && !(to > i+1 && rd.parts(to)) && rd.elems[to].pause == 0; {
		to++
	}
	return from, to
}

// turnedClause is the place in the text of the clause that the words asked about turn:
// none where it holds a number or a way of rigging, or says how wood or gear is.
func (rd *reading) turnedClause(a *Ask) (place [2]int) {
	i := slices.IndexFunc(rd.elems, func(e element) bool { return e.start >= a.Start && e.end <= a.End })
	if a.Kind != Twist || i < 0 {
		return place
	}
	from, to := rd.clause(i)
	before := rd.at(from - 1)
	begins := from == 0 || before.pause > 0 || before.marked(markAnd) || rd.cued(before, cueClause)
	if !begins || strings.TrimSpace(rd.text[before.end:rd.elems[from].start]) != "" {
		return place // "the rope is not new", "it does not run": it is told of something
	}
	for k := from; k < to; k++ {
		if k != i && rd.termAt(k).tree == nil && !rd.weightless(k) {
			return place
		}
	}
	return [2]int{rd.elems[from].start, rd.elems[to-1].end}
}

// parts says whether another clause begins at i.
func (rd *reading) parts(i int) bool {
	e := rd.elems[i]
	first, _, _ := strings.Cut(rd.word(e), " ")
	switch {
	case e.pause > 0, rd.cued(e, cueClause), rd.in.cues[cueAsks][first]:
		return true
	case e.marked(markAnd):
		next, _, _ := strings.Cut(rd.word(rd.at(i+1)), " ")
		return rd.who(i+1) || rd.in.cues[cueAsks][next]
	}
	return false
}

// subject says whether the element at i can stand between the beginning of a
// clause and the word that turns it.
func (rd *reading) subject(i int) bool {
	const small = markHello | markPronoun | markPlace | markPerson | markIs | markArticle | markAdverb | markAdjective
	return !rd.parts(i) && rd.elems[i].fig == nil && !rd.elems[i].marked(markAnd) && (rd.who(i) || rd.termAt(i).says(small) && rd.weightless(i))
}

// who says whether the element at i is somebody who does things.
func (rd *reading) who(i int) bool { return rd.person(i) || rd.cued(rd.at(i), cueWho) }

// weightless says whether nothing that is told, asked or used stands at i: what is
// said of it can only be talk.
func (rd *reading) weightless(i int) bool {
	e, t := rd.elems[i], rd.termAt(i)
	const kit = markGear | markLoaded | markStation | markCord | markDeflects | markUnit | markOverhead | markTaper | markContrast
	switch {
	case e.term == nil, e.piece(), e.marked(kit), e.marked(markPart) && !rd.cued(e, cueDown), e.part() != "", e.strength() != "":
		return false
	case t.ask != "" && !rd.idleWord(i), t.stop != "", t.intent != "", t.block != "", t.units != "", t.condition != "", t.note != "" && t.note != "about":
		return false
	case t.damaged, t.frail, t.harms, t.mayHarm, t.letFall, t.falls, t.slips, t.count > 0, t.turned > 0:
		return false
	}
	return true
}

// idleWord says whether the word at i is known only for what it says behind a
// denial.
func (rd *reading) idleWord(i int) bool {
	e := rd.elems[i]
	return e.term.own && rd.ofTalk(rd.word(e))
}

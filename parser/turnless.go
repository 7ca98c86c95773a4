package parser

import (
	"reflect"
	"slices"
	"strings"
	"unicode"
)

// Much that crews deny turns nothing round: "no me fío", "the boss doesn't want a
// mess", "no hay dónde poner otra arriba". Where all that a denial leads to, up to
// the end of its clause, is nothing that an answer hangs on, it is left out with its
// clause, and said back.

// idleDenials leaves out such clauses, and takes the doubt from a "no?" that only
// asks whether it is so.
func (rd *reading) idleDenials() {
	for i := 0; i < len(rd.elems); i++ {
		if rd.termAt(i).ask != Twist {
			continue
		}
		if rd.tagged(i) {
			rd.alter(i, func(t *term) { *t = term{} })
		} else if end := rd.clauseEnd(i + 1); rd.cued(rd.elems[i], cueDenying) && rd.idleClause(i, end) {
			rd.forget(i, end)
			rd.leaveOut(i, end)
		}
	}
}

// forget drops the unknown words of a clause that says what somebody wants or can,
// "no quiere que caiga nada en el agua": all of it is said back.
func (rd *reading) forget(from, to int) {
	if !rd.cued(rd.at(rd.past(from+1, +1, markPronoun|markArticle)), cueWilling) {
		return
	}
	start, end := rd.elems[from].start, rd.startOf(to)
	rd.asks = slices.DeleteFunc(rd.asks, func(a *Ask) bool {
		return a.Kind == Unknown && a.Start >= start && a.End <= end && rd.likeStop(a) == ""
	})
}

// tagged says whether the word at i only asks whether what stands before it is so:
// "jala menos, no?".
func (rd *reading) tagged(i int) bool {
	return i > 0 && rd.termAt(i).corrects && strings.HasPrefix(strings.TrimLeft(rd.text[rd.elems[i].end:], " "), "?")
}

// clauseEnd finds where the clause ends that goes on at i: at a pause, or at a word
// that begins another.
func (rd *reading) clauseEnd(i int) int {
	for i < len(rd.elems) && rd.elems[i].pause == 0 && !rd.elems[i].marked(markAnd) && !rd.cued(rd.elems[i], cueClause) {
		i++
	}
	return i
}

// idleClause says whether what the word at i denies, up to the element at end, is
// told, and nothing of it could turn an answer.
func (rd *reading) idleClause(i, end int) bool {
	first := rd.past(i+1, +1, markPronoun|markArticle)
	other := rd.cued(rd.at(first), cueOther) && first+1 == end // "es la de 10,000 lbs, no la otra"
	if !other && !(rd.termAt(first).order != "" && rd.countedBy(i-1)) && rd.deniesBack(i) {
		return false
	}
	if k := rd.past(i-1, -1, markPronoun|markIs); rd.at(k).marked(markPerson) && rd.termAt(k).human {
		return false // "el trepador no quiere bajar" may tell how they fare
	}
	told := rd.talkBehind(i)
	for k := i + 1; k < end; k++ {
		if !rd.turnless(k, i, end) {
			return false
		}
		told = told || !rd.elems[k].marked(markIs|markPronoun|markArticle) || rd.talkBehind(k)
	}
	return told
}

// deniesBack says whether the word at i may deny what stands right before it: a
// number, the piece or gear, "14 in no creo", "el freno no funciona".
func (rd *reading) deniesBack(i int) bool {
	for k := i - 1; k >= 0; k-- {
		e := rd.elems[k]
		switch {
		case e.pause > 0, e.marked(markAnd), rd.cued(e, cueClause):
			return false
		case e.fig != nil, rd.termAt(k).tree != nil, rd.countedBy(k), rd.kit(k), e.marked(markGear | markStation):
			return true
		case !e.polite() && !e.marked(markIs|markArticle|markPronoun|markAdjective):
			return len(rd.termAt(k).roles) > 0
		}
	}
	return false
}

// turnless says whether the element at k, of a clause from i to end that is denied,
// is nothing that an answer hangs on.
func (rd *reading) turnless(k, i, end int) bool {
	e := rd.elems[k]
	if e.term == nil || rd.kit(k) || rd.cued(e, cueReckons) || e.term.ask != "" && e.term.ask != Twist && !(e.term.order != "" && rd.termAt(i).corrects && rd.wrapsTold()) {
		return false
	}
	if in := e.term.intent; in != "" && in != AskWeight && !rd.askedOutside(i, end) {
		return false
	}
	if e.term.intent == "" && slices.ContainsFunc(e.term.roles, rd.binding) {
		return false
	}
	const talk = markHello | markArticle | markIs | markAt | markPronoun | markRelation | markWhere | markIn | markAdverb | markAdjective | markMade |
		markTrailing | markTall | markOffTree | markPlace | markObstacle | markStanding | markPerson | markMoving | markTug | markErect | markUpends | markHigh | markUpward | markOutward | markAside
	t := *e.term
	if t.tree == nil && (rd.wrapsTold() || !rd.anyWithin(i, end, func(n int) bool { return rd.termAt(n).intent == AskLower })) && rd.anyAt(func(n int) bool {
		return (n < i || n >= end) && (rd.heavy(n) || t.shape != "" && rd.termAt(n).shape == t.shape)
	}) {
		t.shape, t.unnamed, t.marks = "", false, t.marks&^markRound // told elsewhere, or weighed
	}
	t.marks &^= talk
	t.roles, t.intent, t.besides, t.ask, t.leads, t.turning = nil, "", false, "", false, ""
	t.employs, t.hung, t.hangs, t.chatter, t.overlook, t.perhaps, t.idle, t.someone, t.human, t.another, t.order = false, false, false, false, false, false, false, false, false, false, ""
	t.lifts, t.state, t.straight, t.beneath, t.strays, t.stays, t.comesDown, t.highEnd, t.lowEnd, t.topEnd = false, false, false, false, false, false, false, false, false, false
	return reflect.DeepEqual(t, term{})
}

// placing are the fields whose words behind a number tell where it is, and tell
// nothing where there is none.
var placing = map[Field]bool{Length: true, HitchHeight: true, DropHeight: true, Sideways: true, People: true, BlockHeight: true}

// binding says whether a role tells something even where no number stands by it. A
// winch is only told of with what it pulls.
func (rd *reading) binding(r role) bool {
	people := func(i int) bool { return rd.elems[i].plays(People) }
	switch {
	case r.field == Weight, r.side == before && placing[r.field]:
		return false
	}
	return r.field != WinchPull || !rd.anyAt(people)
}

// askedOutside says whether more than a weight is asked for, or told to lift with,
// than stands from one element to another.
func (rd *reading) askedOutside(from, to int) bool {
	return rd.anyAt(func(k int) bool {
		fig, t := rd.elems[k].fig, rd.termAt(k)
		return (k < from || k >= to) && (fig != nil && fig.dim == dimRatio || t.intent != "" && t.intent != AskWeight && !t.besides)
	})
}

// talkBehind says whether words stand right behind the element at k that are no
// element: talk, or what is not known and asked about.
func (rd *reading) talkBehind(k int) bool {
	return strings.ContainsFunc(rd.text[rd.elems[k].end:rd.startOf(k+1)], unicode.IsLetter)
}

// startOf is where the element at i starts, or the text ends.
func (rd *reading) startOf(i int) int {
	if i < len(rd.elems) {
		return rd.elems[i].start
	}
	return len(rd.text)
}

// leaveOut passes over the words from one element up to another, with the talk
// between them, and leaves their places to words that say nothing. What is known
// for its talk only is asked about no more.
func (rd *reading) leaveOut(from, to int) {
	start := rd.elems[from].start
	words := strings.TrimRightFunc(rd.text[start:rd.startOf(to)], func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
	rd.passed = slices.DeleteFunc(rd.passed, func(p Said[string]) bool { return p.Start >= start && p.End <= start+len(words) })
	rd.passed = append(rd.passed, Said[string]{Value: words, Words: words, Start: start, End: start + len(words)})
	rd.asks = slices.DeleteFunc(rd.asks, func(a *Ask) bool { return a.Start >= start && a.End <= start+len(words) && rd.ofTalk(fold(a.Words)) })
	for k := from; k < to; k++ {
		rd.elems[k] = element{start: rd.elems[k].start, end: rd.elems[k].end, term: &term{chatter: true}}
	}
}

// wontLeave reads "la vecina no quiere salir del patio": whoever is told of stays
// where a piece comes down.
func (rd *reading) wontLeave(i int) bool {
	who := rd.past(i-1, -1, markAdverb|markIs)
	if !rd.cued(rd.elems[i], cueDenying) && !rd.cued(rd.elems[i], cueNot) || !rd.present(who) || !rd.at(who-1).marked(markArticle) && !rd.termAt(who).someone {
		return false
	}
	end := i + 1
	for end < len(rd.elems) && end-i <= few && rd.elems[end].pause == 0 && rd.elems[end].fig == nil {
		end++
	}
	words := splitWords(rd.text[rd.elems[i].end:rd.startOf(end)])
	at := slices.IndexFunc(words, func(w string) bool { return rd.in.cues[cueLeaves][w] })
	return at >= 0 && !(at+1 < len(words) && rd.in.cues[cueOurs][words[at+1]])
}

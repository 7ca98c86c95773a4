package parser

import "strings"

// "More" and "less" turn a meaning round only beside what they could add to, take
// from or compare: "3 m más", "menos el de arriba", "más gruesa". Before a way that
// something goes they say nothing, "3 m más arriba del corte", nor behind what is
// asked, "¿pesa más mojado?".

// thither says whether the first of some words is "more" before a way, and what
// stands behind it is spelled out by itself: "más arriba del corte".
func (lx *lexicon) thither(words []string, found int, t *tongue) bool {
	if len(words) < 2 || !t.cues[cueMore][words[0]] || !t.cues[cueThither][words[1]] {
		return false
	}
	_, n := lx.find(words[1:], t)
	return n >= found
}

// more settles the word at i where nothing stands beside it that it could turn.
func (rd *reading) more(i int) {
	prev, next := rd.at(i-1), rd.at(i+1)
	switch plus := rd.cued(rd.elems[i], cueMore); {
	case prev.term != nil && prev.term.intent == AskWeight && next.fig == nil && !rd.compared(i+1):
		rd.alter(i, func(t *term) { *t = term{} }) // "pesa menos, verdad?"
	case plus && next.fig != nil && rd.addsOther(i):
		rd.alter(i, func(t *term) { *t = term{marks: markAnd} }) // "polea a 24 m, más 4 vueltas"
	case prev.fig != nil, next.fig != nil, rd.countedBy(i - 1), prev.piece(), next.piece(), rd.compared(i + 1):
	case prev.term != nil && len(prev.term.roles) > 0, next.term != nil && len(next.term.roles) > 0 && next.term.intent == "", rd.kit(i - 1), rd.kit(i + 1):
	case rd.byItself(i), next.term == nil && next.pause == 0 && i+1 < len(rd.elems), next.marked(markAdjective), !plus && !rd.endsBreath(i+1) && !next.polite() && !rd.tagged(i+1):
	default:
		rd.leaveOut(i, i+1)
	}
}

// byItself says whether nothing else is said in the breath of the word at i.
func (rd *reading) byItself(i int) bool {
	begins := i == 0 && strings.TrimSpace(rd.text[:rd.elems[i].start]) == "" || rd.at(i-1).pause > 0 && !rd.talkBehind(i-1)
	return begins && rd.endsBreath(i+1) && !rd.talkBehind(i)
}

// compared says whether the word at i tells how a piece is, so that "more" before it
// compares it with another: "más gruesa".
func (rd *reading) compared(i int) bool {
	e := rd.at(i)
	return e.marked(markAdjective|markThick|markTall) || e.plays(Diameter) || e.plays(Length) || e.plays(ButtDiameter)
}

// addsOther says whether the number behind "more" at i counts something else than
// any number before it, so that nothing is added up: "24 m de altura más 4 vueltas".
func (rd *reading) addsOther(i int) bool {
	if !rd.countedBy(i + 2) {
		return false
	}
	for k := range i {
		if rd.countedBy(k) && rd.at(i+2).plays(Wraps) == rd.at(k).plays(Wraps) {
			return false
		}
	}
	return i == 0 || rd.elems[i-1].fig == nil
}

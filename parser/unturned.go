package parser

// Some words turn only what stands right beside them: "barely 14 in", "both limbs",
// "twice the limb", "it's actually ash". Elsewhere they are talk: "the rope barely
// bends", "what does it actually weigh".

// unturned leaves out such words where nothing stands beside them that they turn.
func (rd *reading) unturned() {
	for i, e := range rd.elems {
		if rd.termAt(i).ask != Twist {
			continue
		}
		switch {
		case rd.eitherWords(i), rd.peopleShare(i), rd.bothAnswers(i), rd.reckonedShare(i):
		case rd.cued(e, cueDegree):
			rd.degree(i)
		case rd.cued(e, cueIndeed):
			rd.indeed(i)
		case rd.cued(e, cuePer) && rd.who(rd.past(i+1, +1, markArticle)):
			rd.leaveOut(i, rd.past(i+1, +1, markArticle)+1) // "per the office"
		case rd.cued(e, cuePer):
			rd.per(i)
		case rd.cued(e, cuePlus):
			rd.plus(i)
		case rd.cued(e, cueTwofold):
			rd.twofold(i)
		case rd.termAt(i).each:
			rd.eachOfAll(i)
		case rd.termAt(i).turning == TurnsCompared && rd.at(i+1).plays(Wraps):
			rd.lessWraps(i)
		case rd.termAt(i).turning == TurnsCompared:
			rd.lengthening(i)
		case rd.cued(e, cueBunch):
			rd.bunch(i)
		case rd.termAt(i).turning == TurnsSeveral:
			rd.several(i)
		}
	}
}

// degree leaves out "barely" before what a rope does at a block, and before what
// somebody sees or knows. Whatever else is told, the word turns: how somebody fares,
// and what a rope holds.
func (rd *reading) degree(i int) {
	word, _ := nextWord(rd.text[rd.elems[i].end:])
	if rd.at(i+1).marked(markDeflects) || rd.ofTalk(word) {
		rd.leaveOut(i, i+1)
	}
}

// indeed leaves out "actually" in the middle of what is asked or said, where it
// takes nothing back: no fact stands behind it, or none of its kind before it.
func (rd *reading) indeed(i int) {
	from, to := rd.clause(i)
	fact := rd.nextFact(i + 1)
	begins := from == i && (i == 0 || rd.at(i-1).pause > 0 || rd.parts(i-1))
	switch {
	case fact >= 0 && rd.toldBefore(i, fact), fact < 0 && rd.turnable(rd.past(i+1, +1, markArticle|markIs)):
	case begins && rd.anyAt(func(k int) bool { return k < i && rd.turnable(k) }):
	case begins && !rd.tellsPiece(), i+1 >= to && fact < 0 && begins:
	default:
		rd.alter(i, func(t *term) { *t = term{chatter: true} })
	}
}

// toldBefore says whether a fact of the kind of that at n is told before i.
func (rd *reading) toldBefore(i, n int) bool {
	fig := rd.at(n).fig
	return rd.anyAt(func(k int) bool {
		other := rd.elems[k].fig
		return k < i && (rd.otherTree(k, n) || fig != nil && other != nil && (other.dim == fig.dim || fig.unit == nil || other.unit == nil))
	})
}

// twofold leaves out what somebody says that a block bears, "does it see double the
// log": the answer tells.
func (rd *reading) twofold(i int) {
	borne := rd.anyAt(func(k int) bool { return rd.termAt(k).intent == AskBlockLoad })
	wraps := rd.anyAt(func(k int) bool { return rd.elems[k].plays(Wraps) })
	if borne && !wraps && rd.at(i+1).fig == nil && rd.at(i-1).fig == nil && !rd.at(rd.past(i+1, +1, markArticle|markMade)).marked(markPronoun) {
		rd.leaveOut(i, i+1)
	}
}

// plus takes the word at i for "and" before what adds to nothing that is told
// before it: "plus i guess 5 wraps".
func (rd *reading) plus(i int) {
	if rd.blockBefore(i) && (rd.termAt(rd.past(i+1, +1, markArticle)).block != "" || rd.secondAtBase(i)) {
		rd.alter(i, func(t *term) { *t = term{marks: markAnd} }) // blocks in a rope's path
		return
	}
	n := i + 1
	for n < len(rd.elems) && rd.elems[n].pause == 0 && rd.elems[n].fig == nil && (rd.elems[n].polite() || rd.elems[n].marked(markPronoun) || rd.termAt(n).note == "about") {
		n++
	}
	if rd.countedBy(n+1) && !rd.anyAt(func(k int) bool { return k < n && rd.countedBy(k) && rd.at(k).plays(Wraps) == rd.at(n+1).plays(Wraps) }) && rd.at(i-1).fig == nil {
		rd.alter(i, func(t *term) { *t = term{marks: markAnd} })
	}
}

// lengthening leaves out "do they get longer going up" of pieces that a cut is asked
// for: the answer tells how long those from either end are.
func (rd *reading) lengthening(i int) {
	word, _ := nextWord(rd.text[rd.elems[i].end:])
	if rd.asksFor(AskCutPlan) && !rd.turnable(i-1) && !rd.turnable(i+1) && !rd.at(i+1).marked(markPronoun) && !rd.in.cues[cueThan][word] {
		rd.leaveOut(i, i+1)
	}
}

// lessWraps leaves out "less" where how many wraps it takes is asked and none are told:
// "less wraps for me then?".
func (rd *reading) lessWraps(i int) {
	word, _ := nextWord(rd.text[rd.elems[i+1].end:])
	told := rd.anyAt(func(k int) bool { return rd.elems[k].plays(Wraps) && (rd.at(k-1).fig != nil || rd.at(k+1).fig != nil) })
	if rd.termAt(i+1).intent == AskLower && !told && rd.at(i-1).pause > 0 && rd.at(i+2).fig == nil && !rd.in.cues[cueThan][word] {
		rd.leaveOut(i, i+1)
	}
}

// bunch takes brush that is bundled up for a load like any, where its weight is all that
// is told: "brush bundle prolly 180 lb".
func (rd *reading) bunch(i int) {
	weights := 0
	for k, e := range rd.elems {
		switch {
		case rd.heavy(k):
			weights++
		case e.piece(), e.fig != nil && e.fig.dim == dimLength:
			return
		}
	}
	if weights == 1 {
		rd.alter(i, func(t *term) { *t = term{chatter: true} })
	}
}

// eachOfAll takes the doubt from what is asked of each block, or of each leg of two:
// the answer has them all. Behind a number it says something of that.
func (rd *reading) eachOfAll(i int) {
	next := rd.past(i+1, +1, markArticle)
	blocks := rd.termAt(next).block != "" && rd.redirected()
	legs := (rd.at(next).plays(Legs) || rd.at(next).marked(markTwins|markBridle)) && rd.anyAt(func(k int) bool {
		return k != next && (rd.elems[k].marked(markTwins|markBridle) || rd.elems[k].plays(Legs))
	})
	alone := rd.legsTold() && !rd.turnable(i-1) && !rd.turnable(next) // "does each one take the load"
	angled := rd.legsTold() && rd.at(next).fig != nil && rd.at(next).fig.dim == dimAngle
	if (blocks || legs || alone && rd.at(next).fig == nil || angled) && rd.at(i-1).fig == nil && rd.at(next+1).fig == nil {
		rd.alter(i, func(t *term) { t.ask, t.each = "", false })
	}
}

// legsTold says whether two legs bear the piece.
func (rd *reading) legsTold() bool {
	return rd.anyAt(func(k int) bool { return rd.elems[k].marked(markTwins|markBridle) || rd.elems[k].plays(Legs) })
}

// several leaves out "both" and "every" before words of talk.
func (rd *reading) several(i int) {
	next := i + 1
	if e := rd.at(next); e.fig == nil && (e.marked(markTwins|markBridle) || e.plays(Legs)) {
		rd.alter(i, func(t *term) { *t = term{marks: markArticle} }) // "both legs at 45°"
		return
	}
	talk := rd.talkBehind(i) || rd.at(next).pause == 0 && rd.termAt(next).chatter && !rd.who(next)
	if few := rd.cued(rd.elems[i], cueFew) && rd.asksFor(AskCutPlan) && !rd.turnable(next); talk && !rd.turnable(i-1) || few {
		rd.leaveOut(i, i+1)
	}
}

// turnable says whether something stands at i that a word beside it could turn.
func (rd *reading) turnable(i int) bool {
	e, t := rd.at(i), rd.termAt(i)
	counted := e.plays(Wraps) || e.plays(People) || e.plays(Parts) || e.plays(Legs) || e.plays(Redirects)
	return e.fig != nil || e.cross || e.piece() || t.unnamed || e.marked(markUnit) || counted || rd.kit(i) || t.block != "" || t.stop != "" || t.units != ""
}

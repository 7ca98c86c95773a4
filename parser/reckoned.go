package parser

// What somebody reckons that a pull comes to is talk where the answer tells the pull:
// "two parts so i pull half?", "does each leg take half the load".

// reckonedShare leaves out the share at i, with the load that it is of, and says whether
// it is such a one. What another line takes is no talk.
func (rd *reading) reckonedShare(i int) bool {
	if rd.turnedBy(i) != TurnsPart || !rd.pullAnswered() || rd.at(i-1).fig != nil {
		return false
	}
	before := rd.past(i-1, -1, markArticle|markAdverb|markTrailing)
	end := rd.past(i+1, +1, markRelation|markArticle|markPronoun)
	pulls, whole := rd.cued(rd.at(before), cueCarries), rd.cued(rd.at(end), cueBorne)
	if whole {
		end++
	}
	if !pulls && !whole || !rd.saidOut(end) || rd.talkBehind(i) || rd.onOtherLine(before) {
		return false
	}
	rd.leaveOut(i, end)
	return true
}

// pullAnswered says whether it is told of a lift, of a block or of two legs, so that the
// answer tells what is pulled or borne.
func (rd *reading) pullAnswered() bool {
	legs := func(i int) bool { return rd.elems[i].marked(markTwins | markBridle) }
	return rd.lifting() || rd.asksFor(AskBlockLoad) || rd.anyAt(legs)
}

// onOtherLine says whether what carries at i is gear that shares the load: "the tag line
// takes half".
func (rd *reading) onOtherLine(i int) bool {
	for k := i - 1; k >= 0 && !rd.parts(k); k-- {
		if e, in := rd.elems[k], rd.termAt(k).intent; in == AskBalance && !e.marked(markBridle) || in == AskSwing || rd.termAt(k).others || rd.termAt(k).another || rd.kit(k) || e.marked(markGear|markCord) && !e.marked(markTwins|markBridle) {
			return true
		}
	}
	return false
}

// offBys pass over how far a size may be off, "if im off by an inch": the answer tells
// what a thicker piece weighs.
func (rd *reading) offBys() {
	const most = 0.08
	for i, e := range rd.elems {
		before := splitWords(rd.text[:e.start])
		n := len(before)
		if e.fig == nil || n < 2 || e.fig.dim != dimLength || !e.fig.unit.fine || e.fig.high > most || !rd.endsBreath(i+1) {
			continue
		}
		if rd.in.cues[cueOffBy][before[n-2]+" "+before[n-1]] {
			rd.blank(i, i+1)
		}
	}
}

package parser

// What is wanted of a limb that is hung or stood up is told in many verbs and few
// nouns: where its sling goes, that it hangs level, that the blocks stay apart.

// few is how many words stand between those of such a turn.
const few = 5

// wanted reads all of them.
func (rd *reading) wanted() {
	for i := range rd.elems {
		switch {
		case rd.blocksAt(i):
			rd.blocksMeet(i)
		case rd.cued(rd.elems[i], cueWhere):
			rd.whereTied(i)
		case rd.cued(rd.elems[i], cueLevel):
			rd.hangsLevel(i)
		case rd.elems[i].marked(markErect) && !rd.elems[i].marked(markUpward):
			rd.wantedErect(i)
		case rd.termAt(i).ask == Twist && rd.cued(rd.elems[i], cueNot) && rd.within(i, cueSoThat):
			rd.purpose(i) // "so the tips don't drop into the roses"
		}
	}
}

// blocksAt says whether the element at i is the blocks of a tackle.
func (rd *reading) blocksAt(i int) bool { return rd.cued(rd.elems[i], cueBlocks) }

// within says whether a cue stands before the element at i, in the same breath
// and with no number between.
func (rd *reading) within(i int, c cue) bool {
	for k := i - 1; k >= 0 && i-k <= few && rd.elems[k].pause == 0 && rd.elems[k].fig == nil; k-- {
		if rd.cued(rd.elems[k], c) {
			return true
		}
	}
	return false
}

// blocksMeet reads "do the blocks come together" and "so the blocks won't smack":
// whether they do is asked about, in whatever words.
func (rd *reading) blocksMeet(i int) {
	j := i + 1
	for j-i <= few && (rd.at(j).polite() && rd.at(j).pause == 0 || rd.cued(rd.at(j), cueNot) || rd.termAt(j).note == "about") && !rd.cued(rd.at(j), cueMeets) {
		j++
	}
	after := rd.at(rd.past(j+1, +1, markArticle|markRelation|markIn))
	if !rd.cued(rd.at(j), cueMeets) || after.marked(markPlace|markStanding|markObstacle) || after.piece() {
		return
	}
	for k := i + 1; k < j; k++ {
		rd.elems[k].term = &term{}
	}
	rd.elems[j].term = &term{intent: AskRaise, note: blocksMeet}
}

// standingUp reads what is told and asked of a limb that is stood up, once its verbs
// are known.
func (rd *reading) standingUp() {
	for i := range rd.elems {
		if t := rd.termAt(i); t.intent == AskNotch && t.besides {
			rd.onHinge(i)
		}
	}
	for i := 0; i < len(rd.elems) && rd.asksFor(AskRaise); i++ {
		rd.tiedAtThirds(i)
	}
	rd.heightWanted()
}

// onHinge reads "lift the limb on its hinge" and "rama con bisagra, ¿dónde ato?" as a
// limb that is stood up. A hinge alone may be how wide its notch is to open.
func (rd *reading) onHinge(i int) {
	limb := func(k int) bool { return rd.termAt(k).shape == Limb }
	moved := func(k int) bool {
		t := rd.termAt(k)
		return t.intent == AskLift || t.intent == AskBalance && t.note == tieWanted || rd.elems[k].marked(markHoists)
	}
	on := rd.at(rd.past(i-1, -1, markArticle|markPronoun))
	if on.marked(markWhere) && rd.anyAt(limb) && rd.anyAt(moved) {
		rd.alter(i, func(t *term) { t.intent, t.besides = AskRaise, false })
	}
}

// whereTied reads "how far out do i put the sling" and "where's my tie".
func (rd *reading) whereTied(i int) {
	j := i + 1
	for j-i <= few && (rd.at(j).polite() && rd.at(j).pause == 0 || rd.at(j).marked(markArticle|markPronoun|markIs)) && !rd.cued(rd.at(j), cueSling) {
		j++
	}
	if !rd.cued(rd.at(j), cueSling) {
		j = rd.slungBefore(i)
	}
	if rd.cued(rd.at(j), cueSling) {
		rd.elems[j].term = &term{intent: AskBalance, note: tieWanted}
	}
}

// slungBefore is where "tie it off" stands before "how far out" at i, or what is no
// such word.
func (rd *reading) slungBefore(i int) int {
	j := i - 1
	for i-j <= few && rd.at(j).pause == 0 && !rd.cued(rd.at(j), cueSling) && (rd.at(j).polite() || rd.at(j).marked(markArticle|markPronoun|markRelation)) {
		j--
	}
	return j
}

// heightWanted reads "how high do i put the block" and "a qué altura va la polea" of
// a limb that is stood up: the height of its block above the hinge is asked for.
func (rd *reading) heightWanted() {
	if !rd.asksFor(AskRaise) && !rd.tellsOfHinge() {
		return
	}
	for i, e := range rd.elems {
		above := rd.cued(e, cueWhere) && rd.at(i+1).plays(BlockHeight) // "how far above the hinge"
		if (above || rd.cued(e, cueHowHigh)) && rd.blockFollows(i) {
			rd.alter(i, func(t *term) { *t = term{intent: AskRaise, note: lowestWanted} })
			return
		}
	}
}

// blockFollows says whether a block is named behind the words at i, in the same
// breath and with no number between.
func (rd *reading) blockFollows(i int) bool {
	const within = 8
	for j := i + 1; j-i <= within && rd.at(j).pause == 0 && rd.at(j).fig == nil; j++ {
		if rd.at(j).part() == partBlock || rd.blocksAt(j) {
			return true
		}
	}
	return false
}

// hangLevel is the note of a piece that is to hang level.
const hangLevel = "hang-level"

// hangsLevel reads "so it stays flat" and "to keep this log horizontal" as how
// the piece is to hang. How it lies is told in the same words, so that they must
// say what is wanted, or the question where it is tied.
func (rd *reading) hangsLevel(i int) {
	j := i - 1
	for i-j <= few && (rd.at(j).marked(markPronoun|markArticle|markErect|markAdverb) || rd.at(j).piece() || rd.at(j).polite() && rd.at(j).pause == 0) && !rd.cued(rd.at(j), cueHangs) {
		j--
	}
	next := rd.at(i + 1)
	if !rd.cued(rd.at(j), cueHangs) || next.marked(markIn|markWhere) || rd.asksFor(AskRaise) {
		return
	}
	ties := rd.anyAt(func(k int) bool { return rd.termAt(k).note == tieWanted || rd.termAt(k).intent == AskBalance })
	if !ties && !rd.within(j, cueAims) {
		return
	}
	rd.elems[j].term = &term{}
	rd.elems[i].term = &term{intent: AskBalance, note: hangLevel}
}

// wantedErect reads "i want it vertical before we cut" as a limb that is stood up. A
// log, or what is lowered, rather hangs so.
func (rd *reading) wantedErect(i int) {
	j := i - 1
	for i-j <= few && (rd.at(j).marked(markPronoun|markArticle|markAdverb|markIs) || rd.termAt(j).shape == Limb || rd.at(j).polite() && rd.at(j).pause == 0) && !rd.cued(rd.at(j), cueAims) {
		j--
	}
	if j == i-1 || !rd.cued(rd.at(j), cueAims) || rd.at(i+1).piece() || rd.at(i-1).marked(markArticle) {
		return
	}
	hangs := func(k int) bool {
		t := rd.termAt(k)
		return t.shape == Log || t.hung || t.intent == AskLower || t.intent == AskBlockLoad
	}
	for k := i + 1; k-i <= few && rd.at(k).pause == 0; k++ {
		if rd.cued(rd.at(k), cueHangs) {
			return // "vertical when it comes down"
		}
	}
	if !rd.anyAt(hangs) {
		rd.elems[i].term = &term{intent: AskRaise}
	}
}

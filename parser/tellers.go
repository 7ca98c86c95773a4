package parser

// How high somebody is who tells of a piece, "im 15 ft up in it", has no part in
// what the piece weighs or how long it may be. Where something hangs or runs, it
// could be the height of that, and is asked about.

// tellersHeight passes over such heights.
func (rd *reading) tellersHeight() {
	if !rd.asksFor(AskWeight) && !rd.asksFor(AskCutPlan) || rd.anyAt(rd.hangsOnHeight) {
		return
	}
	for i := 0; i < len(rd.elems); i++ {
		from, to := rd.selfUp(i)
		if from < 0 {
			continue
		}
		rd.pass(from, to)
		i = from
	}
}

// hangsOnHeight says whether the words at i ask for what a height has a part in.
func (rd *reading) hangsOnHeight(i int) bool {
	switch rd.termAt(i).intent {
	case AskLower, AskRope, AskSwing, AskDrop, AskRaise, AskBlockLoad, AskAnchor, AskLift:
		return true
	}
	return rd.elems[i].plays(Wraps)
}

// selfUp finds from where to where somebody tells how high he is: "im 15 ft up",
// "i'm up 15 ft"; -1 for none.
func (rd *reading) selfUp(i int) (from, to int) {
	fig := rd.elems[i].fig
	bare := fig != nil && fig.dim == dimCount && fig.unit == nil
	if !fig.far() && !bare {
		return -1, -1
	}
	up := func(e element) bool { return e.marked(markUpward|markErect) || e.looksBack(HitchHeight) }
	if k := rd.wordsOf(i-1, cueMeUp); k >= 0 && rd.endsBreath(i+1) {
		return k, i + 1
	}
	k := rd.back(i - 1)
	if rd.cued(rd.at(k), cueMe) && up(rd.at(i+1)) && !rd.at(i+2).marked(markRelation|markPlace) && !rd.at(i+2).piece() {
		return k, i + 2
	}
	return -1, -1
}

// wordsOf finds where the words of a cue begin that end at the element at i, -1 for
// nowhere.
func (rd *reading) wordsOf(i int, c cue) int {
	for k := i; k >= 0 && k > i-longestCue && rd.elems[k].pause == 0; k-- {
		if rd.in.cues[c][fold(rd.text[rd.elems[k].start:rd.elems[i].end])] {
			return k
		}
	}
	return -1
}

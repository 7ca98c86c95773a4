package parser

// Gear of which nobody can read what it bears, and gear that is kept for people,
// is told of in words that say nothing elsewhere: a tag, a stamp, climbing.

// wordsApart is how many words may stand between gear and what is told of it.
const wordsApart = 8

// unlabelled says whether the word at i tells that the label of gear is missing or
// cannot be read: "no stamp on the block", "the tag wore off the sling", "the other
// you cant read". A rope without a label is noted.
func (rd *reading) unlabelled(i int) bool {
	switch t := rd.termAt(i); {
	case t.unread:
		next := rd.at(rd.past(i+1, +1, markArticle|markAdjective))
		ends := next.term == nil || next.part() != "" || next.term.label || next.marked(markGear|markPronoun|markIn|markWhere|markAnd) || next.strength() != ""
		return ends && next.fig == nil && rd.nearKit(i, true)
	case t.label:
		return (rd.lacking(i) >= 0 || rd.worn(i) >= 0) && rd.nearKit(i, false)
	}
	return false
}

// lacking is what denies the label at i before it, -1 for nothing: "no stamp",
// "doesn't have a tag".
func (rd *reading) lacking(i int) int {
	const most = 4
	for k := i - 1; k >= 0 && i-k <= most && rd.elems[k].pause == 0 && rd.elems[k].fig == nil; k-- {
		if t := rd.termAt(k); t.lacks || t.ask == Twist && t.turning == TurnsDenied {
			return k
		}
	}
	return -1
}

// worn is what says beside the label at i that it is gone, -1 for nothing: "faded
// tag", "the tag on the sling is gone".
func (rd *reading) worn(i int) int {
	const most = 5
	if k := rd.past(i-1, -1, markArticle); rd.termAt(k).gone {
		return k
	}
	for k := i + 1; k <= i+most && rd.at(k).fig == nil && rd.at(k).pause == 0; k++ {
		if rd.termAt(k).gone && !rd.termAt(k-1).lacks {
			return k
		}
	}
	return -1
}

// ofLabel is what is said of the label at i, for the answer to name.
func (rd *reading) ofLabel(i int) (start, end int) {
	at := rd.lacking(i)
	if at < 0 {
		at = rd.worn(i)
	}
	at = max(at, 0)
	return rd.elems[min(at, i)].start, rd.elems[max(at, i)].end
}

// nearKit says whether gear that has a label is named around the word at i, in the
// same sentence; the label itself is enough beside what says that it cannot be read.
func (rd *reading) nearKit(i int, orLabel bool) bool {
	of := func(k int) bool { return rd.hardware(k) || orLabel && rd.termAt(k).label }
	for step := -1; step <= 1; step += 2 {
		for k := i + step; k >= 0 && k < len(rd.elems) && (k-i)*step <= wordsApart && rd.elems[k].pause < 4; k += step {
			if of(k) {
				return true
			}
		}
	}
	return false
}

// personal says whether the word at i puts climbing gear into the rigging: "my
// climbing biner", "lower it on my climbing line". Such a line hangs in the tree as
// well, and is no gear of ours there.
func (rd *reading) personal(i int) bool {
	if !rd.termAt(i).personal {
		return false
	}
	next, before := i+1, rd.past(i-1, -1, markMade|markAdjective|markArticle)
	switch {
	case rd.hardware(next) && !rd.rope(next), rd.hardware(before) && before < i-1:
		return true
	case rd.rope(next):
		return rd.employed(i, next)
	case rd.rope(before) && before < i-1:
		return rd.employed(before, i)
	}
	return rd.elems[i].marked(markPlace|markCord) && rd.employed(i, i)
}

func (rd *reading) rope(i int) bool { return rd.at(i).marked(markCord) || rd.at(i).part() == partRope }

// employed says whether it is told or asked around the words from to until that
// something is rigged with them: "using my", "lower it on my", "as the sling".
func (rd *reading) employed(from, until int) bool {
	const most = 3
	j := rd.past(from-1, -1, markArticle|markAdjective)
	if rd.termAt(j).employs || rd.termAt(j).intent == AskAnchor || rd.at(j).marked(markIn) && rd.at(j).polite() && rd.lowersBefore(j) {
		return true
	}
	for k := until + 1; k <= until+most && rd.at(k).fig == nil && rd.at(k).pause == 0; k++ {
		if rd.termAt(k).serves {
			return true
		}
	}
	return false
}

// lowersBefore reads "lower it on".
func (rd *reading) lowersBefore(i int) bool {
	k := rd.past(i-1, -1, markPronoun|markArticle)
	return rd.termAt(k).intent == AskLower || rd.at(k).piece() && rd.termAt(rd.past(k-1, -1, markArticle)).intent == AskLower
}

// storms says whether the word at i tells of a storm that is near: "storm rolling
// in", "i see lightning". What an old one left behind is none.
func (rd *reading) storms(i int) bool {
	const most = 3
	if rd.termAt(i).weather || rd.termAt(i).note == "gusty" {
		return !rd.measured() && rd.anyAt(func(k int) bool { return rd.termAt(k).carriesOn })
	}
	if !rd.termAt(i).storm {
		return false
	}
	for step := -1; step <= 1; step += 2 {
		for k := i + step; (k-i)*step <= most && rd.at(k).fig == nil && rd.at(k).pause == 0; k += step {
			if rd.termAt(k).nears {
				return true
			}
		}
	}
	return false
}

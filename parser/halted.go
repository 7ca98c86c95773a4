package parser

// What ends arithmetic by what it stands beside: a rope that does not run, a
// tree that falls somewhere, what is too frail for an anchor, the log.

// jammed reads "the rope is stuck" and "a jammed rope": what hangs on it is held
// by nobody's hand.
func (rd *reading) jammed(i int) bool {
	if !rd.termAt(i).jams {
		return false
	}
	k := i - 1
	for k >= 0 && i-k < 6 && !rd.kit(k) && !rd.onRope(k) && rd.tells(k) {
		k--
	}
	next := rd.past(i+1, +1, markArticle)
	hung := rd.elems[i].pause == 0 && rd.onRope(next) && !rd.wrapsTold() // "se trabó la pieza"
	return hung || rd.kit(k) || rd.at(next).part() == partRope || rd.at(i+1).marked(markCord) || rd.lodged(i, k)
}

// stuckPerson reads "el trepador quedó trabado" and "no se mueve nada el trepador".
func (rd *reading) stuckPerson(i int) bool {
	if next := rd.past(i+1, +1, markArticle); rd.termAt(next).human && rd.at(next).marked(markPerson) && rd.endsBreath(next+1) {
		return true
	}
	k := i - 1
	for k >= 0 && i-k < 5 && rd.tells(k) && !rd.person(k) && !rd.onRope(k) && !rd.kit(k) {
		k--
	}
	return !rd.onRope(k) && !rd.kit(k) && (rd.person(k) || rd.at(k).marked(markPerson))
}

// onRope says whether the word at i names what hangs on the rope: "the limb", "the
// piece".
func (rd *reading) onRope(i int) bool {
	return rd.at(i).piece() || rd.termAt(i).unnamed || rd.cued(rd.at(i), cuePiece)
}

// lodged reads "la rama quedó atorada en la horqueta": a piece that hangs by what
// nobody holds. One that only does not run with the wraps that are told hangs on its
// rope. The word at i is told of what stands at k.
func (rd *reading) lodged(i, k int) bool {
	in := (rd.at(i+1).marked(markIn|markBetween) || rd.termAt(i+1).oneEnd) && rd.at(i+1).fig == nil
	for n := i - 1; in && n >= 0 && rd.elems[n].pause == 0; n-- {
		if rd.at(n).piece() {
			return true
		}
	}
	return rd.onRope(k) && !rd.wrapsTold() || in && rd.termAt(rd.past(i+2, +1, markArticle)).block == NaturalCrotch
}

// wrapsTold says whether so many wraps are told.
func (rd *reading) wrapsTold() bool {
	return rd.anyAt(func(k int) bool { return rd.elems[k].fig != nil && rd.at(k+1).plays(Wraps) })
}

// lies reads "which way will this gum fall": a tree of which no piece is told.
func (rd *reading) lies(i int) bool {
	if rd.shaped() {
		return false
	}
	j := rd.past(i+1, +1, markArticle|markAdjective)
	if rd.termAt(j).comesDown {
		return rd.termAt(rd.past(j+1, +1, markArticle|markAdjective)).tree != nil // "hacia dónde cae el pino"
	}
	return rd.termAt(j).tree != nil && rd.termAt(j+1).comesDown
}

// anchorOf says whether something is anchored to what stands at i: "tie off to
// the railing", "use the fence post as an anchor".
func (rd *reading) anchorOf(i int) bool {
	return rd.anchorBeside(i, -1) || rd.anchorBeside(i, +1)
}

// anchorBeside looks past talk and whose it is, on one side.
func (rd *reading) anchorBeside(i, step int) bool {
	const words = 6
	for k := i + step; k >= 0 && k < len(rd.elems) && (k-i)*step <= words; k += step {
		e := rd.elems[k]
		switch {
		case rd.termAt(k).anchors, rd.termAt(k).intent == AskAnchor:
			return true
		case e.fig != nil, e.piece(), e.marked(markRelation|markAnd) || step > 0 && e.pause > 0 || step < 0 && rd.elems[k+1].pause > 0:
			return false
		case !e.polite() && !e.marked(markArticle|markAdjective|markPronoun|markIs|markAt|markIn):
			return false
		}
	}
	return false
}

// erased reads "delete that one from the log", with no number that a piece could
// be cut by.
func (rd *reading) erased(i int) bool {
	if rd.anyAt(func(k int) bool { return rd.elems[k].fig != nil }) {
		return false
	}
	for k := i + 1; k < len(rd.elems) && k-i <= 8; k++ {
		if rd.termAt(k).intent == AskLog || rd.termAt(k).shape == Log && rd.cued(rd.at(rd.past(k-1, -1, markArticle)), cueFrom) {
			return true
		}
	}
	return false
}

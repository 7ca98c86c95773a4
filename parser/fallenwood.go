package parser

// woodFell says whether the word at i, which tells of somebody's fall by itself,
// tells of a piece's: "subir un tronco que se cayó", "se cayó una rama". Where
// anybody else is told of, or nothing is to be lifted, it stays somebody's; so it does with a piece that
// somebody fell from or was at: "se cayó del tronco", "cortando la rama se cayó".
func (rd *reading) woodFell(i int) bool {
	if !rd.termAt(i).letFall || !rd.asksFor(AskLift) || rd.anyAt(rd.someoneElse) || rd.anyAt(func(k int) bool { return rd.cued(rd.elems[k], cueOnto) }) {
		return false
	}
	if rd.at(i + 1).marked(markArticle) {
		j := rd.past(i+1, +1, markArticle|markAdjective)
		if rd.at(j).piece() {
			return true
		}
	}
	k, told := i-1, false
	for rd.at(k).polite() && rd.at(k).pause == 0 && rd.cued(rd.at(k), cueSoThat) {
		k, told = k-1, true
	}
	if !rd.at(k).piece() {
		return false
	}
	first := rd.past(k-1, -1, markArticle|markAdjective)
	return first < 0 || rd.at(first).pause > 0 || told && (rd.at(first).marked(markMoving|markTug) || rd.termAt(first).lifts || rd.termAt(first).intent == AskLift)
}

// onSomebody says whether the word at i tells that a piece fell, and the same breath
// that it fell on somebody: "se le cayó la rama encima a juan".
func (rd *reading) onSomebody(i int) bool {
	if !rd.termAt(i).letFall {
		return false
	}
	for k := i + 1; k < len(rd.elems) && rd.elems[k].pause == 0; k++ {
		if rd.cued(rd.elems[k], cueOnto) {
			return !rd.at(rd.past(k+1, +1, markMade|markArticle|markRelation|markIs)).marked(markPlace | markObstacle)
		}
	}
	return false
}

// someoneElse says whether the element at i is somebody who may have fallen: who
// is counted is the crew that asks. An accent left out makes no "él" of "el", nor
// of what "pesa".
func (rd *reading) someoneElse(i int) bool {
	e := rd.at(i)
	if e.marked(markArticle) || e.plays(People) || rd.termAt(i).intent == AskWeight {
		return false
	}
	return rd.person(i) || e.marked(markPerson|markPronoun)
}

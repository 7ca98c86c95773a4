package parser

// People are spoken of by name, as kin or by what they do. Their numbers are
// none of the piece, and where they stand can be a danger.

// peopleBelow is the note of somebody who stands below the piece.
const peopleBelow = "people-below"

// fallen says whether the word at i says that somebody fell.
func (rd *reading) fallen(i int) bool {
	if !rd.termAt(i).falls {
		return false
	}
	j := rd.past(i-1, -1, markIs|markAdverb)
	return rd.termAt(j).someone || rd.at(j).marked(markPronoun|markPerson)
}

// underneath notes that somebody stands below the piece: "dave is underneath".
func (rd *reading) underneath(i int) {
	if rd.at(rd.past(i-1, -1, markMade|markIs|markArticle)).marked(markPlace | markRelation) {
		return // "la cerca del cliente está abajo"
	}
	if j := rd.past(i+1, +1, markIs|markAdverb); rd.termAt(j).beneath {
		rd.alter(j, func(t *term) { t.note = peopleBelow })
	}
}

// ofSomeone reads "dave is at 40 ft", "dave weighs 200 lb" and "dave 30 ft up".
// A number that names the piece is its own: "dave has a 14 in red oak limb".
func (rd *reading) ofSomeone(i int) bool {
	fig := rd.elems[i].fig
	k := i - 1
	for rd.at(k).marked(markIs | markTrailing | markAdverb | markErect) {
		k--
	}
	if !rd.termAt(k).someone || fig.dim == dimCount || rd.at(i+1).piece() || rd.at(i+1).fig != nil {
		return false
	}
	return k < i-1 || fig.far()
}

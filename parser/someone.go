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
// Who is down on the ground with the rope in hand stands nowhere near.
func (rd *reading) underneath(i int) {
	if of := rd.at(rd.past(i-1, -1, markMade|markIs|markArticle)); of.marked(markPlace|markRelation) && !of.marked(markAdjective) {
		return // "la cerca del cliente está abajo"
	}
	j := i + 1
	for j < i+4 && !rd.termAt(j).beneath && (rd.at(j).marked(markIs|markAdverb) || rd.at(j).pause == 0 && rd.at(j).polite()) {
		j++
	}
	counted, under := rd.at(i-1).fig != nil, rd.at(j+1).fig
	switch {
	case !rd.termAt(j).beneath || rd.hasRope(j+1) || rd.sharedOut():
	case counted, under != nil && under.dim == dimMass && rd.at(j+1).start-rd.at(j).end < 2:
		// "3 groundies below" are a crew, and "my guy is under 200 lb" is light
	case !rd.termAt(i).someone && (j == i+1 || rd.at(i).marked(markPronoun|markPerson)):
	default:
		rd.alter(j, func(t *term) {
			t.note = peopleBelow
			if under == nil {
				t.roles = nil // "under the load, 200 lb" sets no limit
			}
		})
	}
}

// sharedOut says whether it is told who is up the tree as well, and of no piece:
// "Luis y Beto abajo, yo trepo" says who is on the ground.
func (rd *reading) sharedOut() bool {
	return rd.anyAt(func(i int) bool { return rd.typedBefore(i, cueAloft) || rd.typedAfter(i, cueAloft) }) &&
		!rd.anyAt(func(i int) bool { return rd.elems[i].piece() || rd.termAt(i).unnamed })
}

// crewBelow takes those who are counted on the ground for the crew: "3 peones
// abajo".
func (rd *reading) crewBelow(i int) {
	if rd.at(i).plays(People) && rd.at(i-1).fig != nil {
		rd.alter(i, func(t *term) { t.note = "" })
	}
}

// hasRope says whether what stands at i is gear or the hold of a rope: "beto está
// abajo en el tambor".
func (rd *reading) hasRope(i int) bool {
	for n := 0; n < 4 && rd.at(i).marked(markIn|markAt|markIs|markArticle|markAnd|markMade|markRelation|markWhere|markHello) && !rd.termAt(i).ropeEnd && !rd.kit(i); n++ {
		i++
	}
	return rd.kit(i) || rd.termAt(i).ropeEnd
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

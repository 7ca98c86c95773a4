package parser

// A dead tree holds nothing: it is no piece where something is hung on it or tied to
// it, "the block in a dead elm", "colgar de un fresno muerto".

// deadHold says whether the dead wood at i is what something is to hang on.
func (rd *reading) deadHold(i int) bool {
	if rd.termAt(i).condition != Dead {
		return false
	}
	from, until, named := i, i, false
	for rd.deadName(from - 1) {
		from--
		named = named || rd.treeOrAnchor(from)
	}
	for rd.deadName(until + 1) {
		until++
		named = named || rd.treeOrAnchor(until)
	}
	shape := rd.shapeAt(from, until+1)
	if shape == "" {
		hung := rd.at(from - 1).plays(HitchHeight) // "ponemos la polea en el álamo seco"
		return named && (hung || rd.holdsAt(from-1, false) || rd.holdsAt(from-1, true))
	}
	return rd.holdsAt(from-1, true) || shape == Log && rd.blockOnSame(until+1)
}

// deadName says whether the element at i goes on with the name of dead wood.
func (rd *reading) deadName(i int) bool {
	t := rd.termAt(i)
	return rd.at(i).pause == 0 && rd.at(i).fig == nil && (t.tree != nil || t.condition == Dead || rd.at(i).marked(markArticle|markAdjective))
}

// shapeAt is the shape that is told from one element up to another.
func (rd *reading) shapeAt(from, until int) Shape {
	for k := from - 1; k <= until; k++ {
		if s := rd.termAt(k).shape; s != "" && rd.at(k).pause == 0 {
			return s
		}
	}
	return ""
}

// holdsAt says whether the words up to i tell that what follows holds a block or a
// drum, or, where none is asked for, whatever is tied, hung or anchored.
func (rd *reading) holdsAt(i int, block bool) bool {
	k := i
	for rd.at(k).pause == 0 && rd.at(k).fig == nil && rd.onto(k) {
		k--
	}
	part := rd.at(k).part()
	switch {
	case rd.at(k).pause > 0 || k == i && !rd.termAt(k).leads && !rd.termAt(k).anchors && !rd.termAt(k).employs:
		return false
	case block:
		return part == partBlock || part == partDrum || rd.at(k).marked(markStation) || rd.termAt(k).leads && rd.at(k).plays(HitchHeight) && !rd.termAt(k).tied
	}
	return part == partSling || rd.tiesOn(k)
}

// tiesOn says whether the element at i ties, hangs or anchors something.
func (rd *reading) tiesOn(i int) bool {
	t := rd.termAt(i)
	employs := t.employs && !rd.at(i).marked(markRelation)
	return t.tied || t.anchors || t.hung || employs || rd.cued(rd.at(i), cueHangFrom) || rd.cued(rd.at(i), cueAnchor)
}

// onto says whether the element at i leads from what is hung to what it hangs on.
func (rd *reading) onto(i int) bool {
	e := rd.at(i)
	return !rd.tiesOn(i) && e.part() == "" && (e.marked(markIn|markAt|markRelation|markIs|markArticle|markWhere) || rd.termAt(i).leads || e.polite())
}

// blockOnSame reads "a dead ash stem with the block on the same stem" behind the stem.
func (rd *reading) blockOnSame(i int) bool {
	const words = 3 // between the block's place and the stem
	for k := i + 1; k < len(rd.elems) && rd.elems[k].pause == 0; k++ {
		if rd.elems[k].part() != partBlock || !rd.at(k+1).marked(markIn) {
			continue
		}
		for j := k + 2; j < k+2+words && rd.at(j).pause == 0 && rd.at(j).fig == nil; j++ {
			if rd.at(j).marked(markStanding) {
				return true
			}
		}
	}
	return false
}

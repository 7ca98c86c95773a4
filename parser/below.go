package parser

// Whoever stands under a piece is in its way, whoever they are and in whatever order
// it is told: "hay un wey abajo de la rama", "under the log there's a dude".

// under says whether the place at i is under a piece, and somebody is told to be there.
func (rd *reading) under(i int) bool {
	of := rd.past(i+1, +1, markArticle|markAdjective|markMade|markIs)
	if !rd.termAt(i).beneath || rd.elems[i].pause > 0 || !rd.hungWood(of) {
		return false
	}
	return rd.whoBefore(i) || rd.whoBehind(of)
}

// hungWood says whether the element at i is what may come down on somebody.
func (rd *reading) hungWood(i int) bool {
	t := rd.termAt(i)
	return rd.at(i).pause == 0 && (t.shape != "" || t.unnamed || rd.at(i).plays(Weight) || rd.cued(rd.at(i), cueLoad))
}

// whoBefore reads "a lady is right" before a place. Who is denied is not there.
func (rd *reading) whoBefore(i int) bool {
	k := i - 1
	for k >= 0 && rd.at(k).pause == 0 && !rd.somebodyAt(k) && rd.linksPlace(k) {
		k--
	}
	return rd.at(k).pause == 0 && rd.somebodyAt(k) && !rd.absent(k) && !rd.ownerAt(k)
}

// whoBehind reads "there's a guy" behind a place: somebody who is only spoken to has
// nothing before them.
func (rd *reading) whoBehind(of int) bool {
	k := of + 1
	for k < len(rd.elems) && rd.at(k).pause == 0 && !rd.somebodyAt(k) && rd.linksPlace(k) {
		k++
	}
	return k > of+1 && rd.at(k).pause == 0 && rd.somebodyAt(k) && !rd.absent(k) && !rd.owns(k)
}

// linksPlace says whether the element at i may stand between somebody and where they are.
func (rd *reading) linksPlace(i int) bool {
	e := rd.at(i)
	return e.marked(markIs|markAdverb|markErect|markAdjective|markArticle|markAt) || rd.termAt(i).stays || rd.termAt(i).strays || rd.cued(e, cueOwns) || e.polite() || e.marked(markRelation) && rd.at(i+1).marked(markIs)
}

// somebodyAt says whether the element at i is somebody else than who speaks. What
// people are called to their face, "dude", is somebody only behind an article or a
// number.
func (rd *reading) somebodyAt(i int) bool {
	if rd.cued(rd.at(i), cueFolk) {
		return rd.at(i-1).marked(markArticle) || rd.at(i-1).fig != nil || rd.at(i-1).marked(markUnsure) || rd.cued(rd.at(i-1), cueOwns)
	}
	return rd.present(i) && !rd.at(i).marked(markPronoun|markGear) && !rd.cued(rd.at(i), cueUs)
}

// absent says whether the person at i is denied: "no guy", "no hay nadie".
func (rd *reading) absent(i int) bool {
	k := i - 1
	for rd.at(k).pause == 0 && (rd.at(k).marked(markArticle|markIs) || rd.cued(rd.at(k), cueOwns) && !rd.termAt(k).lacks || rd.at(k).polite()) {
		k--
	}
	return rd.at(k).pause == 0 && (rd.termAt(k).lacks || rd.termAt(k).denies)
}

// owns says whether what stands behind the person at i is theirs: "the guy's truck".
func (rd *reading) owns(i int) bool {
	return rd.at(i + 1).marked(markPlace | markObstacle | markStation)
}

// ownerAt reads "el carro del vecino": whose thing stands there.
func (rd *reading) ownerAt(i int) bool {
	k := rd.past(i-1, -1, markArticle|markIs)
	return k < i-1 && (rd.at(k).marked(markPlace|markObstacle|markStation) || rd.kit(k))
}

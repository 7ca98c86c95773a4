package parser

// What a tree stands in gives way before the tree does: "the roots are lifting",
// "fresh dirt at the base". So does a tree that moves under a load.

// wordsToFooting is how many words may stand between what gives way and how.
const wordsToFooting = 5

// givesWay says whether the word at i tells that the ground, the roots or the tree
// itself moved.
func (rd *reading) givesWay(i int) bool {
	switch t := rd.termAt(i); {
	case t.footing:
		return rd.stirredBeside(i, -1) || rd.stirredBeside(i, +1)
	case t.stirs:
		return rd.stoodThere(i)
	}
	return false
}

// stirredBeside says whether the ground or the roots at i are told to move, on one
// side of them and in the same breath.
func (rd *reading) stirredBeside(i, step int) bool {
	for k := i + step; k >= 0 && k < len(rd.elems) && (k-i)*step <= wordsToFooting && rd.elems[k].pause == 0; k += step {
		if rd.termAt(k).stirs || rd.termAt(k).upheaves || step > 0 && rd.termAt(k).lifts && rd.risesAlone(k) {
			return true
		}
	}
	return step > 0 && rd.termAt(rd.past(i+1, +1, markIs|markAdverb)).lifts // "roots are lifting"
}

// risesAlone says whether what lifts at i lifts nothing else: "root ball lifting".
func (rd *reading) risesAlone(i int) bool {
	next := rd.at(i + 1)
	return next.pause > 0 || next == (element{}) || !next.piece() && next.fig == nil && !next.marked(markArticle|markPronoun) && !rd.kit(i+1) && !rd.termAt(i+1).unnamed
}

// stoodThere says whether what moved is a tree, or an anchor, and no piece of it
// and no gear: "the tree moved when we loaded it".
func (rd *reading) stoodThere(i int) bool {
	switch next := rd.past(i+1, +1, markArticle); {
	case rd.kit(next), rd.termAt(next).shape != "":
		return false // "moved the log"
	case rd.treeOrAnchor(next):
		return true // "se movió el árbol"
	}
	for k := i - 1; k >= 0 && i-k <= wordsToFooting && rd.elems[k].pause == 0; k-- {
		standing := rd.elems[k].marked(markStanding)
		switch {
		case standing, rd.treeOrAnchor(k) && rd.termAt(k).shape == "":
			return true
		case rd.termAt(k).shape != "", rd.kit(k), rd.person(k), rd.elems[k].fig != nil:
			return false
		}
	}
	return false
}

// treeOrAnchor says whether the element at i is a tree, or what something is anchored to.
func (rd *reading) treeOrAnchor(i int) bool {
	t := rd.termAt(i)
	return rd.at(i).marked(markStanding) || t.tree != nil || t.anchors || t.intent == AskAnchor || rd.cued(rd.at(i), cueAnchor)
}

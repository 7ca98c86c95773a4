package stops

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// What a tree stands in gives way before the tree does: "the roots are lifting",
// "fresh dirt at the base". So does a tree that moves under a load.

// wordsToFooting is how many words may stand between what gives way and how.
const wordsToFooting = 5

// GivesWay says whether the word at i tells that the ground, the roots or the tree
// itself moved.
func GivesWay(rd *reading.Reading, i int) bool {
	switch t := rd.TermAt(i); {
	case t.Footing:
		return stirredBeside(rd, i, -1) || stirredBeside(rd, i, +1)
	case t.Stirs:
		return stoodThere(rd, i)
	}
	return false
}

// stirredBeside says whether the ground or the roots at i are told to move, on one
// side of them and in the same breath.
func stirredBeside(rd *reading.Reading, i, step int) bool {
	for k := i + step; k >= 0 && k < len(rd.Elems) && (k-i)*step <= wordsToFooting && rd.Elems[k].Pause == 0; k += step {
		if rd.TermAt(k).Stirs || rd.TermAt(k).Upheaves || step > 0 && rd.TermAt(k).Lifts && risesAlone(rd, k) {
			return true
		}
	}
	return step > 0 && rd.TermAt(rd.Past(i+1, +1, lexicon.MarkIs|lexicon.MarkAdverb)).Lifts // "roots are lifting"
}

// risesAlone says whether what lifts at i lifts nothing else: "root ball lifting".
func risesAlone(rd *reading.Reading, i int) bool {
	next := rd.At(i + 1)
	return next.Pause > 0 || next == (reading.Element{}) || !next.Piece() && next.Fig == nil && !next.Marked(lexicon.MarkArticle|lexicon.MarkPronoun) && !Kit(rd, i+1) && !rd.TermAt(i+1).Unnamed
}

// stoodThere says whether what moved is a tree, or an anchor, and no piece of it
// and no gear: "the tree moved when we loaded it".
func stoodThere(rd *reading.Reading, i int) bool {
	switch next := rd.Past(i+1, +1, lexicon.MarkArticle); {
	case Kit(rd, next), rd.TermAt(next).Shape != "":
		return false // "moved the log"
	case treeOrAnchor(rd, next):
		return true // "se movió el árbol"
	}
	for k := i - 1; k >= 0 && i-k <= wordsToFooting && rd.Elems[k].Pause == 0; k-- {
		standing := rd.Elems[k].Marked(lexicon.MarkStanding)
		switch {
		case standing, treeOrAnchor(rd, k) && rd.TermAt(k).Shape == "":
			return true
		case rd.TermAt(k).Shape != "", Kit(rd, k), Person(rd, k), rd.Elems[k].Fig != nil:
			return false
		}
	}
	return false
}

// treeOrAnchor says whether the element at i is a tree, or what something is anchored to.
func treeOrAnchor(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	return rd.At(i).Marked(lexicon.MarkStanding) || t.Tree != nil || t.Anchors || t.Intent == parser.AskAnchor || rd.Cued(rd.At(i), lexicon.CueAnchor)
}

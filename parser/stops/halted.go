package stops

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// What ends arithmetic by what it stands beside: a rope that does not run, a
// tree that falls somewhere, what is too frail for an anchor, the log.

// Jammed reads "the rope is stuck" and "a jammed rope": what hangs on it is held
// by nobody's hand.
func Jammed(rd *reading.Reading, i int) bool {
	if !rd.TermAt(i).Jams {
		return false
	}
	k := i - 1
	for k >= 0 && i-k < 6 && !Kit(rd, k) && !onRope(rd, k) && tells(rd, k) {
		k--
	}
	next := rd.Past(i+1, +1, lexicon.MarkArticle)
	hung := rd.Elems[i].Pause == 0 && onRope(rd, next) && !WrapsTold(rd) // "se trabó la pieza"
	return hung || Kit(rd, k) || gear.Part(rd.At(next)) == lexicon.PartRope || rd.At(i+1).Marked(lexicon.MarkCord) || lodged(rd, i, k)
}

// StuckPerson reads "el trepador quedó trabado" and "no se mueve nada el trepador".
func StuckPerson(rd *reading.Reading, i int) bool {
	if next := rd.Past(i+1, +1, lexicon.MarkArticle); rd.TermAt(next).Human && rd.At(next).Marked(lexicon.MarkPerson) && rd.EndsBreath(next+1) {
		return true
	}
	k := i - 1
	for k >= 0 && i-k < 5 && tells(rd, k) && !Person(rd, k) && !onRope(rd, k) && !Kit(rd, k) {
		k--
	}
	return !onRope(rd, k) && !Kit(rd, k) && (Person(rd, k) || rd.At(k).Marked(lexicon.MarkPerson))
}

// onRope says whether the word at i names what hangs on the rope: "the limb", "the
// piece".
func onRope(rd *reading.Reading, i int) bool {
	return rd.At(i).Piece() || rd.TermAt(i).Unnamed || rd.Cued(rd.At(i), lexicon.CuePiece)
}

// lodged reads "la rama quedó atorada en la horqueta": a piece that hangs by what
// nobody holds. One that only does not run with the wraps that are told hangs on its
// rope. The word at i is told of what stands at k.
func lodged(rd *reading.Reading, i, k int) bool {
	in := (rd.At(i+1).Marked(lexicon.MarkIn|lexicon.MarkBetween) || rd.TermAt(i+1).OneEnd) && rd.At(i+1).Fig == nil
	for n := i - 1; in && n >= 0 && rd.Elems[n].Pause == 0; n-- {
		if rd.At(n).Piece() {
			return true
		}
	}
	return onRope(rd, k) && !WrapsTold(rd) || in && rd.TermAt(rd.Past(i+2, +1, lexicon.MarkArticle)).Block == parser.NaturalCrotch
}

// WrapsTold says whether so many wraps are told.
func WrapsTold(rd *reading.Reading) bool {
	return rd.AnyAt(func(k int) bool { return rd.Elems[k].Fig != nil && rd.At(k+1).Plays(parser.Wraps) })
}

// Lies reads "which way will this gum fall": a tree of which no piece is told.
func Lies(rd *reading.Reading, i int) bool {
	if gear.Shaped(rd) {
		return false
	}
	j := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective)
	if rd.TermAt(j).ComesDown {
		return rd.TermAt(rd.Past(j+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective)).Tree != nil // "hacia dónde cae el pino"
	}
	return rd.TermAt(j).Tree != nil && rd.TermAt(j+1).ComesDown
}

// AnchorOf says whether something is anchored to what stands at i: "tie off to
// the railing", "use the fence post as an anchor".
func AnchorOf(rd *reading.Reading, i int) bool {
	return anchorBeside(rd, i, -1) || anchorBeside(rd, i, +1)
}

// anchorBeside looks past talk and whose it is, on one side.
func anchorBeside(rd *reading.Reading, i, step int) bool {
	const words = 6
	for k := i + step; k >= 0 && k < len(rd.Elems) && (k-i)*step <= words; k += step {
		e := rd.Elems[k]
		switch {
		case rd.TermAt(k).Anchors, rd.TermAt(k).Intent == parser.AskAnchor:
			return true
		case e.Fig != nil, e.Piece(), e.Marked(lexicon.MarkRelation|lexicon.MarkAnd) || step > 0 && e.Pause > 0 || step < 0 && rd.Elems[k+1].Pause > 0:
			return false
		case !e.Polite() && !e.Marked(lexicon.MarkArticle|lexicon.MarkAdjective|lexicon.MarkPronoun|lexicon.MarkIs|lexicon.MarkAt|lexicon.MarkIn):
			return false
		}
	}
	return false
}

// Erased reads "delete that one from the log", with no number that a piece could
// be cut by.
func Erased(rd *reading.Reading, i int) bool {
	if rd.AnyAt(func(k int) bool { return rd.Elems[k].Fig != nil }) {
		return false
	}
	for k := i + 1; k < len(rd.Elems) && k-i <= 8; k++ {
		if rd.TermAt(k).Intent == parser.AskLog || rd.TermAt(k).Shape == parser.Log && rd.Cued(rd.At(rd.Past(k-1, -1, lexicon.MarkArticle)), lexicon.CueFrom) {
			return true
		}
	}
	return false
}

package stops

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// WoodFell says whether the word at i, which tells of somebody's fall by itself,
// tells of a piece's: "subir un tronco que se cayó", "se cayó una rama". Where
// anybody else is told of, or nothing is to be lifted, it stays somebody's; so it does with a piece that
// somebody fell from or was at: "se cayó del tronco", "cortando la rama se cayó".
func WoodFell(rd *reading.Reading, i int) bool {
	if !rd.TermAt(i).LetFall || !gear.AsksFor(rd, parser.AskLift) && behindPiece(rd, i) < 0 || rd.AnyAt(rd.Is(someoneElse)) || rd.AnyAt(func(k int) bool { return rd.Cued(rd.Elems[k], lexicon.CueOnto) }) {
		return false
	}
	if rd.At(i + 1).Marked(lexicon.MarkArticle) {
		j := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective)
		if rd.At(j).Piece() {
			return true
		}
	}
	k, told := i-1, false
	for rd.At(k).Polite() && rd.At(k).Pause == 0 && rd.Cued(rd.At(k), lexicon.CueSoThat) {
		k, told = k-1, true
	}
	if !rd.At(k).Piece() {
		return false
	}
	first := rd.Past(k-1, -1, lexicon.MarkArticle|lexicon.MarkAdjective)
	return first < 0 || rd.At(first).Pause > 0 || told && (rd.At(first).Marked(lexicon.MarkMoving|lexicon.MarkTug) || rd.TermAt(first).Lifts || rd.TermAt(first).Intent == parser.AskLift)
}

// behindPiece is how far a piece fell that is named right behind the word for it, "se cayó
// el tronco 4 pies"; -1 where that is not told.
func behindPiece(rd *reading.Reading, i int) int {
	j := rd.Past(i+1, +1, lexicon.MarkArticle|lexicon.MarkAdjective)
	if j == i+1 || !rd.At(j).Piece() {
		return -1
	}
	return fallsBy(rd, j)
}

// FellSoFar is the number behind the word at i that tells how far a piece fell, -1 where
// it tells no such thing.
func FellSoFar(rd *reading.Reading, i int) int {
	switch {
	case PieceFell(rd, i):
		return fallsBy(rd, i)
	case WoodFell(rd, i):
		return behindPiece(rd, i)
	}
	return -1
}

// PieceFell says whether the word at i, which tells of a fall, tells how far a piece fell:
// "a 400 lb log fell 4 ft", "and it fell like 7 ft before the rope caught", of a piece that
// is told. Where anybody else is told of, or it fell on somebody, it may be theirs.
func PieceFell(rd *reading.Reading, i int) bool {
	if !rd.TermAt(i).Falls || fallsBy(rd, i) < 0 {
		return false
	}
	somebody := func(k int) bool {
		return Present(rd, k) && !rd.At(k).Marked(lexicon.MarkArticle) || rd.Cued(rd.Elems[k], lexicon.CueOnto)
	}
	return !rd.AnyAt(somebody) && pieceBefore(rd, i)
}

// fallsBy is the length behind the word for a fall at i, -1 for none.
func fallsBy(rd *reading.Reading, i int) int {
	j := i + 1
	for rd.At(j).Pause == 0 && (rd.TermAt(j).Note == "about" || rd.At(j).Marked(lexicon.MarkIs|lexicon.MarkAdverb|lexicon.MarkTrailing)) {
		j++
	}
	if fig := rd.At(j).Fig; fig == nil || fig.Dim != parser.DimLength {
		return -1
	}
	return j
}

// pieceBefore says whether what fell at i is a piece: named in its sentence, or "it" of
// one that is told.
func pieceBefore(rd *reading.Reading, i int) bool {
	told := rd.Before.Intent != "" || rd.AnyAt(func(k int) bool {
		return k < i && (rd.Elems[k].Piece() || rd.Elems[k].Fig != nil && rd.Elems[k].Fig.Dim == parser.DimMass)
	})
	for k := i - 1; k >= 0 && rd.Elems[k].Pause < 4; k-- {
		switch e := rd.Elems[k]; {
		case e.Piece():
			return true
		case rd.Cued(e, lexicon.CueThat) && e.Marked(lexicon.MarkPronoun):
			return told
		case rd.Cued(e, lexicon.CuePeople), e.Marked(lexicon.MarkPerson):
			return false
		}
	}
	return false
}

// OnSomebody says whether the word at i tells that a piece fell, and the same breath
// that it fell on somebody: "se le cayó la rama encima a juan".
func OnSomebody(rd *reading.Reading, i int) bool {
	if !rd.TermAt(i).LetFall {
		return false
	}
	for k := i + 1; k < len(rd.Elems) && rd.Elems[k].Pause == 0; k++ {
		if rd.Cued(rd.Elems[k], lexicon.CueOnto) {
			return !rd.At(rd.Past(k+1, +1, lexicon.MarkMade|lexicon.MarkArticle|lexicon.MarkRelation|lexicon.MarkIs)).Marked(lexicon.MarkPlace | lexicon.MarkObstacle)
		}
	}
	return false
}

// someoneElse says whether the element at i is somebody who may have fallen: who
// is counted is the crew that asks. An accent left out makes no "él" of "el", nor
// of what "pesa".
func someoneElse(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	if e.Marked(lexicon.MarkArticle) || e.Plays(parser.People) || rd.TermAt(i).Intent == parser.AskWeight {
		return false
	}
	return Person(rd, i) || e.Marked(lexicon.MarkPerson|lexicon.MarkPronoun)
}

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
	if !rd.TermAt(i).LetFall || !gear.AsksFor(rd, parser.AskLift) || rd.AnyAt(rd.Is(someoneElse)) || rd.AnyAt(func(k int) bool { return rd.Cued(rd.Elems[k], lexicon.CueOnto) }) {
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

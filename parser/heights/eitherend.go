package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// "Butt tied or tip tied, does it clear" asks what each does. How far a roof is below the
// piece is told beside it: the answer says how far the piece hangs down, and no more.

// eitherEnd notes the question at the second of the two ties, at the element at, and
// passes over what is told of things below the piece.
func eitherEnd(rd *reading.Reading, at int) {
	rd.Alter(at, func(t *scan.Term) { t.Note = parser.NoteEitherEnd })
	for i := 0; i < len(rd.Elems); i++ {
		if from, to := belowPiece(rd, i); to > 0 {
			rd.Pass(from, to)
			i = from - 1
		}
	}
	for i := range rd.Elems {
		if t := rd.TermAt(i); t.Intent == parser.AskSwing && t.Besides {
			rd.Elems[i].Term = &scan.Term{} // "does it clear": by how far it hangs down
		}
	}
}

// belowPiece is from where to where it is told how far a thing is below the piece, "roof is
// 10 feet under it", "5 ft above the ridge"; nought where the number at i tells no such
// thing.
func belowPiece(rd *reading.Reading, i int) (from, to int) {
	if !gear.Far(rd, i) {
		return 0, 0
	}
	k := rd.Past(i-1, -1, lexicon.MarkIs)
	next := rd.At(i + 1)
	under := rd.Cued(next, lexicon.CueBelow) || rd.Cued(next, lexicon.CueUnder)
	if under && gear.Obstacle(rd.At(k)) == parser.Thing {
		to = i + 2
		if rd.Cued(rd.At(to), lexicon.CueLoad) || rd.At(to).Marked(lexicon.MarkPronoun) {
			to++
		}
		return i, to
	}
	if under && rd.At(i+2).Marked(lexicon.MarkPronoun) && (rd.EndsBreath(i+3) || i+3 >= len(rd.Elems)) {
		return i, i + 3 // "there's only 4 m under it"
	}
	j := rd.Past(i+2, +1, lexicon.MarkArticle)
	if (rd.Cued(next, lexicon.CueAbove) || rd.Cued(next, lexicon.CueOver)) && gear.Obstacle(rd.At(j)) == parser.Thing {
		return i, j + 1
	}
	return 0, 0
}

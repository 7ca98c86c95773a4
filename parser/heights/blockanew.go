package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// BlockAnew reads "what about the block at 65 ft" as another height of the hitch: alone, a
// block is asked about in the place of wood.
func BlockAnew(rd *reading.Reading) {
	for i := range rd.Elems {
		if rd.TermAt(i).Note != parser.NoteOverBlock || !rd.At(i+1).Marked(lexicon.MarkAt) || !gear.Far(rd, i+2) || !rd.EndsBreath(i+3) {
			continue
		}
		rd.Elems[i].Term = &scan.Term{Marks: lexicon.MarkFollow}
		places.Claim(rd, i+2, parser.HitchHeight)
	}
}

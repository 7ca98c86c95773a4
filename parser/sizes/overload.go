package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// BlockOverLoad takes how far a block is above the piece that is lifted so far for how far
// the two blocks are apart: "block is only 4 ft over the limb, do they two block when we pick
// it up 5 ft".
func BlockOverLoad(rd *reading.Reading) {
	meets := rd.AnyAt(func(i int) bool {
		n := rd.TermAt(i).Note
		return n == parser.BlocksMeet || n == parser.TravelWanted
	})
	told := func(f parser.Field) bool {
		return rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil && rd.Elems[i].Fig.Told == f })
	}
	if !meets || !told(parser.Rise) || told(parser.Apart) {
		return
	}
	for i := range rd.Elems {
		if !gear.Far(rd, i) || rd.Elems[i].Fig.Told != "" || !rd.Cued(rd.At(i+1), lexicon.CueOverHinge) {
			continue
		}
		of, block := rd.Past(i+2, +1, lexicon.MarkArticle), rd.Past(rd.Back(i-1), -1, lexicon.MarkAdverb)
		if rd.At(of).Marked(lexicon.MarkRelation) && rd.TermAt(of).Shape == "" {
			of = rd.Past(of+1, +1, lexicon.MarkArticle) // "arriba de la"
		}
		over := rd.TermAt(of).Shape != "" || rd.TermAt(of).Unnamed || rd.Cued(rd.At(of), lexicon.CuePiece) || rd.Cued(rd.At(of), lexicon.CueLoad) || rd.At(of).Plays(parser.Tie)
		if over && (gear.Part(rd.At(block)) == lexicon.PartBlock || BlockAt(rd, block)) {
			rd.Elems[i].Fig.Told, rd.Elems[i].Fig.Elsewhere = parser.Apart, false
			rd.Alter(block, func(t *scan.Term) { t.Roles = nil })
			return
		}
	}
}

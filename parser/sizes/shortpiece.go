package sizes

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// ShortPieces leaves open what "a 16 in piece" tells by itself: how long a piece is where a
// thickness is told beside it, and most often how thick it is.
func ShortPieces(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if !rd.At(i-1).Fig.Short() || !e.LooksBack(parser.Length) {
			continue
		}
		rd.Alter(i, func(t *scan.Term) {
			t.Roles = slices.Clone(t.Roles)
			for n, r := range t.Roles {
				t.Roles[n].Soft = r.Soft || r.Field == parser.Length && rd.Cued(e, lexicon.CuePiece)
			}
		})
	}
}

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

// LongDropped takes what stands between a word for a fall and the piece for the piece's
// length: "dropping 4 ft pieces of 20 in pine". How far they fall is then not told.
func LongDropped(rd *reading.Reading) {
	for i := 1; i+1 < len(rd.Elems); i++ {
		next := rd.TermAt(i + 1)
		if !rd.Elems[i].Fig.Far() || rd.Elems[i].Fig.Told != "" || !rd.At(i-1).LeadsTo(parser.DropHeight) || next.Shape == "" && !next.Unnamed {
			continue
		}
		rd.Elems[i].Fig.Told = parser.Length
		rd.Alter(i-1, func(t *scan.Term) { *t = scan.Term{Intent: parser.AskDrop} })
	}
}

package senses

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// TopsLowered reads "lowering 250 lb tops" as what is lowered, where no other piece is
// told: treetops or the most of it, it is planned on as that heavy.
func TopsLowered(rd *reading.Reading) {
	for i := range rd.Elems {
		if !rd.Cued(rd.Elems[i], lexicon.CueTops) || !gear.Heavy(rd, i-1) || rd.TermAt(i-2).Intent != parser.AskLower || !rd.EndsBreath(i+1) {
			continue
		}
		other := func(k int) bool {
			return k != i && (rd.Elems[k].Piece() || rd.TermAt(k).Unnamed || k != i-1 && gear.Heavy(rd, k))
		}
		if !rd.AnyAt(other) {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Shape: parser.Limb} })
		}
	}
}

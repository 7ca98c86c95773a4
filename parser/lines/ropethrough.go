package lines

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Rope that is pulled "through" says nothing of how thick a piece is: "how much rope
// thru to lift 2 m".

// RopeThrough takes what it says elsewhere from such a word behind a rope, before
// what is done with it.
func RopeThrough(rd *reading.Reading) {
	for i, e := range rd.Elems {
		next := rd.TermAt(i + 1).Intent
		lifts := gear.AsksFor(rd, parser.AskRope) && (next == parser.AskLift || next == parser.AskRaise)
		roped := lifts || gear.Part(rd.At(i-1)) == lexicon.PartRope || rd.TermAt(i-1).Intent == parser.AskRope
		if places.OnlyPlays(e, parser.Diameter) && roped && rd.At(i-1).Fig == nil && rd.At(i+1).Fig == nil {
			rd.Alter(i, func(t *scan.Term) { t.Roles = nil })
		}
	}
}

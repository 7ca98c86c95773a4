package heights

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// How tall a stem stands is how long it is: "32 pulgadas abajo, 50 pies de alto". Behind a
// limb, or where it is asked how to lower, the same words tell how high the block hangs.

// Tall makes the one length of a message that of the stem, where a thickness is told and
// nothing is lowered.
func Tall(rd *reading.Reading) {
	at := rd.Only(rd.Is(gear.Far))
	if at < 0 || !rd.At(at+1).Marked(lexicon.MarkHigh) || !rd.At(at+1).Plays(parser.HitchHeight) || rd.At(at-1).Marked(lexicon.MarkAt) {
		return
	}
	thick := func(i int) bool { return rd.Elems[i].Fig.Short() && !gear.OfRope(rd, i) }
	if !rd.AnyAt(thick) || rd.AnyAt(rd.Is(lowersOrRigs)) || gear.ShapedFrom(rd, 0, parser.Limb) {
		return
	}
	rd.Alter(at+1, func(t *scan.Term) {
		t.Marks &^= lexicon.MarkHigh
		t.Roles = []scan.Role{{Field: parser.Length, Side: lexicon.Before, Soft: false}}
	})
}

// lowersOrRigs says whether the words at i tell of rigging, or ask for anything else than
// what wood weighs.
func lowersOrRigs(rd *reading.Reading, i int) bool {
	e, t := rd.Elems[i], rd.TermAt(i)
	other := t.Intent != "" && t.Intent != parser.AskWeight && t.Intent != parser.AskTree
	rigs := slices.ContainsFunc([]parser.Field{parser.Wraps, parser.People, parser.Parts}, e.Plays)
	return other || rigs || stops.Kit(rd, i) || t.Human || t.Someone
}

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

// TopTall reads "red oak top 25 ft tall" as how long the top is, where a thickness is told
// beside it: it stands on its cut. Where a limb is so tall, the block may hang there.
func TopTall(rd *reading.Reading) {
	for i := range rd.Elems {
		before, next := rd.At(rd.Back(i-1)), rd.At(i+1)
		if !gear.Far(rd, i) || rd.Elems[i].Fig.Told != "" || !rd.Cued(before, lexicon.CueCrown) || before.Term.Shape == "" || !next.Marked(lexicon.MarkTall) || !next.LooksBack(parser.Length) {
			continue
		}
		if rd.AnyAt(func(k int) bool { return rd.Elems[k].Fig.Short() && !gear.OfRope(rd, k) }) {
			rd.Elems[i].Fig.Told, rd.Elems[i].Fig.Elsewhere = parser.Length, false
			rd.Elems[i+1].Term = &scan.Term{}
		}
	}
}

// lowersOrRigs says whether the words at i tell of rigging, or ask for anything else than
// what wood weighs.
func lowersOrRigs(rd *reading.Reading, i int) bool {
	e, t := rd.Elems[i], rd.TermAt(i)
	other := t.Intent != "" && t.Intent != parser.AskWeight && t.Intent != parser.AskTree
	rigs := slices.ContainsFunc([]parser.Field{parser.Wraps, parser.People, parser.Parts}, e.Plays)
	return other || rigs || stops.Kit(rd, i) || t.Human || t.Someone
}

// leastTall is the least that a whole tree is told as tall, in metres.
const leastTall = 5

// TreeTold passes over how tall the tree itself is where its kind is told in the same breath,
// "the tree is a red oak, about 60 ft tall": that is no length of a piece, and would be one of
// all that is asked later.
func TreeTold(rd *reading.Reading) {
	for i := range rd.Elems {
		n := treesHeight(rd, i)
		if n == 0 || stemTold(rd, n) {
			continue
		}
		to := n + 1
		if next := rd.At(to); next.Marked(lexicon.MarkTall|lexicon.MarkHigh) && next.Pause == 0 {
			to++
		}
		from := i // "tree is 60 ft tall"
		if k := rd.Past(rd.Back(n-1), -1, lexicon.MarkArticle); k != i {
			from = rd.Back(n-1) + 1 // its kind is told
		}
		if rd.TermAt(to).Tree != nil {
			from = n // "tree is a 60 ft red oak"
		}
		rd.Pass(from, to)
		return
	}
}

// treesHeight finds the number that tells how tall the tree at i is, "tree is a red oak, 60 ft"
// or "tree is a 60 ft red oak", 0 where there is none.
func treesHeight(rd *reading.Reading, i int) int {
	is := rd.Past(i+1, +1, lexicon.MarkIs)
	if !rd.Cued(rd.At(i), lexicon.CueTheTree) || is == i+1 {
		return 0
	}
	tall := func(k int) bool {
		return gear.Far(rd, k) && rd.Elems[k].Fig.Low >= leastTall && rd.Elems[k].Fig.Told == ""
	}
	k := rd.Forth(rd.Past(is, +1, lexicon.MarkArticle))
	if tall(k) && (rd.TermAt(k+1).Tree != nil || rd.At(k+1).Marked(lexicon.MarkTall|lexicon.MarkHigh)) {
		return k
	}
	if rd.TermAt(k).Tree == nil {
		return 0
	}
	k++
	if rd.At(k).Pause == 2 {
		k++
	}
	if k = rd.Forth(k); tall(k) && (rd.EndsBreath(k+1) || rd.At(k+1).Marked(lexicon.MarkTall|lexicon.MarkHigh)) {
		return k
	}
	return 0
}

// stemTold says whether beside the number at n a thickness is told, and no other length: then
// it may be the stem that is to be cut, but never a limb.
func stemTold(rd *reading.Reading, n int) bool {
	thick := func(k int) bool { return rd.Elems[k].Fig.Short() && !gear.OfRope(rd, k) }
	other := func(k int) bool { return k != n && gear.Far(rd, k) }
	return rd.AnyAt(thick) && !rd.AnyAt(other) && !gear.ShapedFrom(rd, 0, parser.Limb)
}

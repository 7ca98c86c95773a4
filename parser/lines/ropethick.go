package lines

import (
	"math"
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
)

// Where metres are the custom a rope is told by its millimetres: "soga de 14",
// "cuerda de 16".

// RopeMillimetres says whether the bare number at i, right behind a rope, is how
// thick it is. Where it is asked how far the rope reaches, or a block has its
// height, it could be how long the rope is.
func RopeMillimetres(rd *reading.Reading, i int) bool {
	const thinnest, thickest = 8, 24
	fig, cord := rd.Elems[i].Fig, rd.Past(i-1, -1, lexicon.MarkMade|lexicon.MarkArticle)
	if !rd.In.Comma || fig.Low < thinnest || fig.High > thickest || fig.Low != math.Trunc(fig.Low) || cord == i-1 || !rd.At(cord).Marked(lexicon.MarkCord) {
		return false
	}
	if next := rd.At(i + 1); !rd.EndsBreath(i+1) && !next.Marked(lexicon.MarkWhere) && rd.TermAt(i+1).Strength == "" {
		return false
	}
	far := func(k int) bool {
		e := rd.Elems[k]
		return e.Term != nil && (e.Term.Intent == parser.AskRope || e.Term.Reaches || e.Plays(parser.HitchHeight) || e.Plays(parser.RopeLength) && gear.Far(rd, k-1)) || rd.ImperialLength(k)
	}
	return !rd.AnyAt(far) && (gear.AsksFor(rd, parser.AskGear) || rd.Worded(parser.Wraps) || gear.AsksFor(rd, parser.AskLower) || sizes.MassTold(rd, i) || rd.AnyAt(rd.Is(bearsAt)))
}

// bearsAt says whether the words at i ask what something holds, or tell it.
func bearsAt(rd *reading.Reading, i int) bool {
	return rd.Elems[i].Marked(lexicon.MarkRating) || rd.TermAt(i).Bears
}

// ThickByLong reads the two sizes of a rope that are told in one breath behind its name,
// "rope 1/2 x 200 ft", "cuerda 13 mm de 60 m": thick and long, and no piece is told by them.
func ThickByLong(rd *reading.Reading) {
	for i := 0; i < len(rd.Elems); i++ {
		fig := rd.Elems[i].Fig
		thin := fig != nil && fig.Told == "" && !fig.Pair && (fig.Unit == nil && rd.Fraction(fig) || fig.Short() && fig.High <= reading.ThickestRope)
		of := rd.Past(i-1, -1, lexicon.MarkMade|lexicon.MarkIs|lexicon.MarkArticle)
		if !thin || gear.Part(rd.At(of)) != lexicon.PartRope || !rd.At(of).Marked(lexicon.MarkCord) {
			continue
		}
		long := i + 1
		if by := rd.At(long); by.Cross || by.Marked(lexicon.MarkMade|lexicon.MarkAnd) {
			long++
		}
		if !gear.Far(rd, long) || rd.Elems[long].Fig.Low < shortestHand || rd.At(rd.Past(long+1, +1, lexicon.MarkMade)).Piece() || rd.At(long+1).Plays(parser.HitchHeight) {
			continue
		}
		rd.Elems[long].Fig.Told = parser.RopeLength
		rd.Elems = slices.Delete(rd.Elems, i+1, long)
	}
}

// RopeUp reads "the rope is 12 m up" as how high it hangs, and no length of it.
func RopeUp(rd *reading.Reading) {
	for i, e := range rd.Elems {
		at := rd.Past(i+1, +1, lexicon.MarkIs)
		up := rd.At(at + 1)
		if e.Plays(parser.RopeLength) && gear.Part(e) == lexicon.PartRope && gear.Far(rd, at) && up.LooksBack(parser.HitchHeight) && up.Marked(lexicon.MarkUpward|lexicon.MarkHigh) && rd.EndsBreath(at+2) {
			rd.Alter(i, func(t *scan.Term) { t.Roles = nil })
		}
	}
}

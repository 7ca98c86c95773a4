package lines

import (
	"math"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/sizes"
)

// Where metres are the custom a rope is told by its millimetres: "soga de 14",
// "cuerda de 16".

// RopeMillimetres says whether the bare number at i, right behind a rope, is how
// thick it is. Where it is asked how far the rope reaches, or a block has its
// height, it could be how long the rope is.
func RopeMillimetres(rd *reading.Reading, i int) bool {
	const thinnest, thickest = 8, 24
	fig, made := rd.Elems[i].Fig, rd.At(i-1)
	if !rd.In.Comma || fig.Low < thinnest || fig.High > thickest || fig.Low != math.Trunc(fig.Low) || !made.Marked(lexicon.MarkMade) || !rd.At(i-2).Marked(lexicon.MarkCord) {
		return false
	}
	if next := rd.At(i + 1); !rd.EndsBreath(i+1) && !next.Marked(lexicon.MarkWhere) && rd.TermAt(i+1).Strength == "" {
		return false
	}
	far := func(k int) bool {
		e := rd.Elems[k]
		return e.Term != nil && (e.Term.Intent == parser.AskRope || e.Term.Reaches || e.Plays(parser.HitchHeight) || e.Plays(parser.RopeLength) && gear.Far(rd, k-1)) || rd.ImperialLength(k)
	}
	return !rd.AnyAt(far) && (gear.AsksFor(rd, parser.AskGear) || rd.Worded(parser.Wraps) || sizes.MassTold(rd, i) || rd.AnyAt(rd.Is(bearsAt)))
}

// bearsAt says whether the words at i ask what something holds, or tell it.
func bearsAt(rd *reading.Reading, i int) bool {
	return rd.Elems[i].Marked(lexicon.MarkRating) || rd.TermAt(i).Bears
}

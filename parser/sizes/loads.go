package sizes

import (
	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// IsLoad says whether the bare number at i can only be a mass.
func IsLoad(rd *reading.Reading, i int) bool {
	fig, next := rd.Elems[i].Fig, rd.At(i+1)
	if fig.High < stops.LeastTold || fig.Pair || fig.Falling || !MassTold(rd, i) || rd.At(i-1).Cross || rd.At(rd.Back(i-1)).Fig != nil || next.Cross || next.Fig != nil || rd.AnyAt(rd.Is(InMillimetres)) {
		return false
	}
	if takenAsLength(rd, i) || countsWithRole(rd, next) {
		return false
	}
	at := rd.At(rd.Past(rd.Back(i-1), -1, lexicon.MarkMade|lexicon.MarkIs))
	switch {
	case gear.Part(at) == lexicon.PartRope || gear.Part(next) == lexicon.PartRope || next.Piece() && fig.High < stops.LeastLoad:
		return false
	case at.Piece() || rd.TermAt(rd.Back(i-1)).Unnamed:
		return fig.High >= stops.LeastLoad
	case at.Term != nil && (at.Term.Intent == parser.AskLower || at.Term.Intent == parser.AskLift), rd.Cued(rd.At(i-1), lexicon.CueFor), rd.At(rd.Back(i - 1)).Marked(lexicon.MarkRating):
		return true
	}
	return fig.High >= stops.LeastLoad && (rd.EndsBreath(i+1) || next.Polite())
}

// takenAsLength says whether the words beside the number are those of a length that
// it could be: nothing is hitched so high as 1500, whatever the unit, and beside pounds
// alone nothing is so long.
func takenAsLength(rd *reading.Reading, i int) bool {
	beside := bounds.RoleBeside(rd, i)
	if len(beside) == 0 || parser.DimensionOf[beside[0]] != parser.DimLength {
		return false
	}
	long := beside[0] == parser.HitchHeight || beside[0] == parser.Length && Only(rd, parser.Imperial, parser.DimMass)
	return !long || rd.Elems[i].Fig.High*scan.Foot.Factor <= Highest
}

// countsWithRole says whether words behind a number make it a count.
func countsWithRole(rd *reading.Reading, e reading.Element) bool {
	return e.Plays(parser.Wraps) || e.Plays(parser.People) || e.Plays(parser.Legs) || e.Plays(parser.Alike)
}

// InMillimetres says whether the number at i is a size in millimetres.
func InMillimetres(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	return fig != nil && fig.Unit == scan.Millimetre && fig.High > reading.ThickestRope
}

// LoadUnit is the unit of such a number: that of the other masses, and of forces in
// kilonewtons the kilogram in a language of the decimal comma.
func LoadUnit(rd *reading.Reading, i int) *scan.UnitWord {
	if u := massUnit(rd, i); u != nil && u.Dim == parser.DimMass {
		return u
	}
	inForce := !rd.AnyAt(func(k int) bool { return k != i && rd.Elems[k].Fig != nil && rd.Elems[k].Fig.Dim == parser.DimMass })
	if rd.In.Comma && inForce && Only(rd, parser.Metric, parser.DimForce) {
		return scan.UnitNamed["kilogram"]
	}
	return nil
}

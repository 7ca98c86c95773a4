package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Who measures in metres weighs in kilograms, and who weighs in kilograms
// measures in centimetres: a bare number of such a message is told in them too,
// in a language of the decimal comma. English mixes inches with kilograms, but no crew
// sets its limit in pounds that measures in nothing but metres.

// Kilograms is the kilogram for a bare mass at i where all lengths are metric and
// nothing else tells of a unit, nil elsewhere. A weight has its word before it:
// behind "2 metros 20" stands what is asked for.
func Kilograms(rd *reading.Reading, i int, f parser.Field) *scan.UnitWord {
	const least, most = 20, 20000 // less may be tonnes or people
	n := rd.Elems[i].Fig.High
	told := f == parser.Limit || f == parser.Weight && (rd.At(rd.Back(i-1)).Plays(parser.Weight) || rd.At(rd.WordsBefore(i)).Plays(parser.Weight))
	if !rd.In.Comma && (f != parser.Limit || !rd.First) || !told || n < least || n > most || !Only(rd, parser.Metric, parser.DimLength) {
		return nil
	}
	return scan.UnitNamed["kilogram"]
}

// ByMasses is the unit of a bare thickness that the masses alone leave: inches go
// with pounds, and in a language of the decimal comma centimetres with kilograms,
// where they are more than inches would be. Hundreds beside kilograms are millimetres.
func ByMasses(rd *reading.Reading, n float64) *scan.UnitWord {
	const thinnest, thickestInch, leastCentimetre, mostCentimetre, leastMillimetre, mostMillimetre = 8, 36, 30, 200, 250, 2000
	switch {
	case Only(rd, parser.Imperial, parser.DimMass) && n >= thinnest && n <= thickestInch:
		return scan.Inch
	case rd.In.Comma && Only(rd, parser.Metric, parser.DimMass) && n >= leastCentimetre && n <= mostCentimetre:
		return scan.Centimetre
	case Only(rd, parser.Metric, parser.DimMass) && n >= leastMillimetre && n <= mostMillimetre:
		return scan.Millimetre
	}
	return nil
}

// CutFrom says whether the number at i ends the name of what is cut up, and no
// other thickness is told: "encino de 24, qué largo corto".
func CutFrom(rd *reading.Reading, i int) bool {
	if !gear.AsksFor(rd, parser.AskCutPlan) || rd.ThicknessBeside(rd.Elems[i].Fig) {
		return false
	}
	if rd.TermAt(i + 1).LowEnd {
		return rd.EndsBreath(i + 2) // "tiene 50 abajo"
	}
	made := rd.At(i-1).Marked(lexicon.MarkMade) && rd.At(i-2).Piece()
	return made && (rd.EndsBreath(i+1) || rd.At(i+1).Marked(lexicon.MarkWhere) || rd.At(i+1).Polite())
}

// AnchorFrom says whether the number at i ends the name of what is anchored to, and
// no other thickness is told: "pino de 30 como anclaje".
func AnchorFrom(rd *reading.Reading, i int) bool {
	if !gear.AsksFor(rd, parser.AskAnchor) || !rd.In.Comma || rd.ThicknessBeside(rd.Elems[i].Fig) {
		return false
	}
	next := rd.TermAt(rd.Past(i+1, +1, lexicon.MarkMade|lexicon.MarkIs|lexicon.MarkArticle))
	return rd.At(i-1).Marked(lexicon.MarkMade) && rd.At(i-2).Piece() && (next.Intent == parser.AskAnchor || next.Anchors)
}

// Only says whether a number of the dimension is told in a unit of the system, or
// asked for in one, and nothing in any other system.
func Only(rd *reading.Reading, s parser.System, d parser.Dimension) bool {
	told := false
	for i, e := range rd.Elems {
		asked, unit := rd.TermAt(i).Units, e.Fig != nil && e.Fig.Unit != nil && e.Fig.Unit.System != ""
		switch {
		case asked != "" && asked != s, unit && e.Fig.Unit.System != s && !ThinRope(rd, e.Fig):
			return false
		case asked == s && d == parser.DimMass, unit && e.Fig.Unit.System == s && e.Fig.Dim == d && !ThinRope(rd, e.Fig):
			told = true
		case s == parser.Imperial && d == parser.DimLength && rd.Fraction(e.Fig):
			told = true
		}
	}
	return told
}

// ThinRope says whether a length is as thin as a rope, whose millimetres crews
// tell in whatever system they work.
func ThinRope(rd *reading.Reading, f *reading.Figure) bool {
	return f.Dim == parser.DimLength && f.Unit != nil && f.Unit.Fine && f.High < reading.ThickestRope
}

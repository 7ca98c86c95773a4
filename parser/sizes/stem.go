package sizes

import (
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Crews that measure in metres tell the two sizes of a stem in bare numbers: its
// thickness, then its length. "Tronco de 45 y 2 metros" is 45 cm across, and so is
// "40 x 1,5"; "40x200" is in centimetres on both sides.

const (
	thinStem  = 5   // the least in centimetres: less may be how many pieces
	thickStem = 200 // the most
)

// StemSizes lends their units to the two bare numbers of such a stem.
func StemSizes(rd *reading.Reading) {
	if !rd.In.Comma || rd.AnyAt(rd.ImperialLength) {
		return
	}
	for i := range rd.Elems {
		switch {
		case thenMetres(rd, i):
			rd.Elems[i].Fig.Lent(scan.Centimetre)
			lentIfBare(rd.Elems[i+2].Fig, scan.Metre)
		case thenHundredths(rd, i):
			rd.Elems[i+2].Fig.Lent(scan.Metre)
		case longCross(rd, i):
			rd.Elems[i].Fig.Lent(scan.Centimetre)
			rd.Elems[i+2].Fig.Lent(scan.Centimetre)
		case crossedComma(rd, i):
			rd.Elems[i+2].Fig.Lent(scan.Metre)
		case halfAcross(rd, i):
			rd.Elems[i+2].Fig.Lent(scan.Metre)
		case bareTaper(rd, i):
			rd.Elems[i].Fig.Lent(scan.Centimetre)
		}
	}
}

// bareStem says whether the number at i has no unit and could be how thick a stem
// is in centimetres.
func bareStem(rd *reading.Reading, i int) bool {
	fig := rd.At(i).Fig
	return fig != nil && fig.Dim == parser.DimCount && fig.Unit == nil && !fig.Pair && !fig.Falling && fig.Low >= thinStem && fig.High <= thickStem
}

// ofPieceAt says whether the number at i is told right behind a piece or a tree:
// "tronco de 45", "álamo 45", or behind how long it is: "rama 6 m de 25 a 8".
func ofPieceAt(rd *reading.Reading, i int) bool {
	k := rd.Past(i-1, -1, lexicon.MarkMade)
	return rd.At(k).Piece() || rd.TermAt(k).Unnamed || k < i-1 && gear.Far(rd, k)
}

// thenMetres reads "tronco de 45 y 2 metros", "de 70 y 2,20": nothing is so many
// metres across, and no thickness is told besides.
func thenMetres(rd *reading.Reading, i int) bool {
	long := rd.At(i + 2).Fig
	if !bareStem(rd, i) || !ofPieceAt(rd, i) || !rd.At(i+1).Marked(lexicon.MarkAnd) || long == nil || rd.ThicknessBeside(rd.Elems[i].Fig) {
		return false
	}
	named := rd.At(i+3).Marked(lexicon.MarkMade) && rd.At(i+4).Piece() // "de 70 y 2,20 de nogal"
	if !rd.EndsBreath(i+3) && !rd.At(i+3).Plays(parser.Length) && !named {
		return false
	}
	metres := long.Far() && long.Unit == scan.Metre || long.Dim == parser.DimCount && long.Unit == nil && metricShape.MatchString(long.Words(rd.Text))
	return metres && long.Low < thinStem*3
}

// thenHundredths reads the length of "fuste de 30 cm y 5,50".
func thenHundredths(rd *reading.Reading, i int) bool {
	const thinnest, longest = 0.05, 20
	fig, long := rd.At(i).Fig, rd.At(i+2).Fig
	if !fig.Short() || fig.Unit.System != parser.Metric || fig.Low < thinnest || !ofPieceAt(rd, i) || !rd.At(i+1).Marked(lexicon.MarkAnd) || !rd.EndsBreath(i+3) {
		return false
	}
	return long != nil && long.Dim == parser.DimCount && long.Unit == nil && long.High <= longest && reading.TwoPlaces(long.Words(rd.Text))
}

// longCross reads "40x200": a second number that large is no length in feet.
func longCross(rd *reading.Reading, i int) bool {
	const shortest, longest, thinnest = 100, 1200, 10
	long := rd.At(i + 2).Fig
	if !bareStem(rd, i) || !rd.Crossed(i, i+2) || rd.Crossed(i+2, i+4) || long == nil || long.Dim != parser.DimCount || long.Unit != nil {
		return false
	}
	fig := rd.Elems[i].Fig
	return fig.Low >= thinnest && fig.High < shortest && long.Low >= shortest && long.High <= longest && rd.AnyAt(func(k int) bool { return rd.Elems[k].Piece() })
}

// crossedComma reads "40 x 1,5": hardly anybody tells feet with a decimal comma.
// What is thinner could be inches all the same.
func crossedComma(rd *reading.Reading, i int) bool {
	const longest, thinnest = 20, 30
	long := rd.At(i + 2).Fig
	if !bareStem(rd, i) || !rd.Crossed(i, i+2) || rd.Crossed(i+2, i+4) || long == nil || long.Dim != parser.DimCount || long.Unit != nil {
		return false
	}
	return rd.Elems[i].Fig.Low >= thinnest && long.High <= longest && strings.Contains(long.Words(rd.Text), ",")
}

// halfAcross reads "medio metro x 3": no piece is cut shorter than a metre and named
// with so large a number behind it, but in metres.
func halfAcross(rd *reading.Reading, i int) bool {
	const widest, longest = 1, 12
	fig, long := rd.Elems[i].Fig, rd.At(i+2).Fig
	if !fig.Far() || fig.Unit != scan.Metre || fig.High >= widest || !rd.Crossed(i, i+2) || rd.Crossed(i+2, i+4) {
		return false
	}
	return long != nil && long.Dim == parser.DimCount && long.Unit == nil && !long.Pair && long.Low > widest && long.High <= longest && ofPieceAt(rd, i) && rd.EndsBreath(i+3)
}

// MassOfPiece says whether the bare number at i, behind the name of a piece, weighs
// it: beside what gear bears "troncos de 400" is no thickness. Beside a limit it
// could be one, in millimetres.
func MassOfPiece(rd *reading.Reading, i int) bool {
	e := rd.At(i - 1)
	named := rd.TermAt(i-1).Unnamed && strings.HasSuffix(rd.Word(e), " de") || e.Marked(lexicon.MarkMade) && (rd.At(i-2).Piece() || rd.TermAt(i-2).Unnamed)
	if rd.Elems[i].Fig.Low <= thickStem || !named || !rd.EndsBreath(i+1) || !MassTold(rd, i) {
		return false
	}
	sized := func(k int) bool {
		return places.LengthAt(rd, k) && !ThinRope(rd, rd.Elems[k].Fig) || rd.Elems[k].Plays(parser.Limit)
	}
	return !rd.AnyAt(sized)
}

// bareTaper reads "rama 5 m de 30 a 10" as thick and thin end.
func bareTaper(rd *reading.Reading, i int) bool {
	const least, thinnest = 1.25, 3
	fig := rd.Elems[i].Fig
	if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || !fig.Falling || fig.Pair {
		return false
	}
	next := rd.At(i + 1)
	counts := next.Plays(parser.Wraps) || next.Plays(parser.People) || next.Plays(parser.Parts) || next.Plays(parser.Weight)
	return !counts && fig.High <= thickStem && fig.Low >= thinnest && fig.High >= least*fig.Low && Only(rd, parser.Metric, parser.DimLength) && LengthTold(rd, i) && (ofPieceAt(rd, i) || gear.AsksFor(rd, parser.AskBalance))
}

// lentIfBare gives a number the unit where it has none.
func lentIfBare(f *reading.Figure, u *scan.UnitWord) {
	if f.Unit == nil {
		f.Lent(u)
	}
}

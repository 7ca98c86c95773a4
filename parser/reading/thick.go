package reading

import (
	"regexp"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/scan"
)

// JoinedToThick reads "un tronco de 70 y 2,20": how long a piece is, behind how thick.
func (rd *Reading) JoinedToThick(i int) bool {
	if k := i - 2; rd.At(i-1).Marked(lexicon.MarkAnd) && rd.At(k).Plays(parser.Diameter) && rd.At(k-1).Fig != nil {
		return true // "55 de diámetro y 1,30"
	}
	return rd.At(i-1).Marked(lexicon.MarkAnd) && rd.At(i-2).Fig != nil && (rd.At(i-2).Fig.Short() || rd.JoinedThick(i-2))
}

// JoinedThick reads the first number of "un tronco de 45 y 2 metros": more than any
// piece is long, right behind its name.
func (rd *Reading) JoinedThick(i int) bool {
	const thinnest, thickest = 15, 150
	fig, long := rd.Elems[i].Fig, rd.At(i+2).Fig
	if fig.Dim != parser.DimCount || fig.Unit != nil || fig.Low < thinnest || fig.High > thickest || fig.Pair || fig.Falling {
		return false
	}
	named := rd.At(rd.Past(i-1, -1, lexicon.MarkMade|lexicon.MarkIs)).Piece()
	metres := long.Far() && long.Unit.System == parser.Metric || long != nil && long.Dim == parser.DimCount && TwoPlaces(long.Words(rd.Text))
	return named && rd.At(i+1).Marked(lexicon.MarkAnd) && metres && !rd.ThicknessBeside(fig) && (rd.EndsBreath(i+3) || rd.At(i+3).Polite())
}

// TwoPlaces says whether a number is told as "1,10".
func TwoPlaces(words string) bool {
	_, places, ok := strings.Cut(words, ",")
	return ok && len(places) == 2 && scan.IsDigit(places[0]) && scan.IsDigit(places[1])
}

// ImperialLength says whether the number at i is in feet or inches.
func (rd *Reading) ImperialLength(i int) bool {
	f := rd.Elems[i].Fig
	return f != nil && f.Dim == parser.DimLength && f.Unit.System == parser.Imperial
}

// CrossedFine says whether the bare number at i is crossed with one that has
// the unit of both: "60x150 cm".
func (rd *Reading) CrossedFine(i int) bool {
	const thinnest = 10 // "3 x 40 cm" may be metres
	other := rd.At(i + 2).Fig
	return rd.Crossed(i, i+2) && other.Short() && other.Unit.System == parser.Metric && rd.Elems[i].Fig.Low >= thinnest
}

// A length that is told in feet and inches, as a text begins and as it ends.
var (
	beginsCompound = regexp.MustCompile(`^\d+\s*(?:'|′|’|ft|foot|feet)\s*\d`)
	endsCompound   = regexp.MustCompile(`\d\s*(?:'|′|’|ft|foot|feet)\s*\d+\s*(?:"|″|”|''|in|inch|inches)?$`)
)

// CrossedCompound says whether the bare number at i is crossed with a length in feet and
// inches, "4'6" x 17 1/2": who tells feet so would not leave them out of the other.
func (rd *Reading) CrossedCompound(i int) bool {
	const thinnest, thickest = 6, 60
	f, before, behind := rd.Elems[i].Fig, rd.At(i-2).Fig, rd.At(i+2).Fig
	if f.Pair || f.Falling || f.Low < thinnest || f.High > thickest {
		return false
	}
	return rd.Crossed(i-2, i) && before != nil && endsCompound.MatchString(rd.Text[:before.End]) || rd.Crossed(i, i+2) && behind != nil && beginsCompound.MatchString(rd.Text[behind.Start:])
}

// Fraction says whether a bare number is told as only inches are: "5/8 rope".
func (rd *Reading) Fraction(f *Figure) bool {
	return f != nil && f.Dim == parser.DimCount && f.Low < 2 && (strings.Contains(f.Words(rd.Text), "/") || rd.SpokenParts(f))
}

// SpokenParts says whether a bare number is told in words as only inches are: "five eighths".
func (rd *Reading) SpokenParts(f *Figure) bool {
	words := f.Words(rd.Text)
	return f.Dim == parser.DimCount && f.Unit == nil && f.Low == f.High && f.Low > 0 && f.Low < 1 && f.Low != scan.Half && !scan.IsDigit(words[0]) && !strings.ContainsAny(words, "/.,½¼¾⅛⅜⅝⅞")
}

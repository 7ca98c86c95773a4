package sizes

import (
	"math"
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Crews that write a decimal comma tell metres by it: "45 x 1,10".

// MetresByComma lends the metre to a bare length that has a decimal comma and
// two places, as nobody tells feet or inches: "45 x 1,10", "1,20 de largo".
func MetresByComma(rd *reading.Reading) {
	const longest, thinnest, thickest = 20, 0.3, 3
	for i, e := range rd.Elems {
		if e.Fig == nil || e.Fig.Dim != parser.DimCount || e.Fig.Unit != nil || e.Fig.Pair || e.Fig.High > longest || !reading.TwoPlaces(e.Fig.Words(rd.Text)) && !tenthsBeside(rd, i) {
			continue
		}
		if rd.AnyAt(rd.ImperialLength) {
			return
		}
		if rd.At(i+1).Plays(parser.Diameter) && strings.HasPrefix(rd.Word(rd.At(i+1)), "de ") && e.Fig.High >= thinnest && e.Fig.High <= thickest {
			e.Fig.Lent(scan.Metre) // "1,10 de diámetro"
			continue
		}
		crossed := rd.At(i-1).Cross && slices.ContainsFunc(rd.Elems[max(0, i-3):i-1], func(e reading.Element) bool { return e.Fig != nil })
		if crossed || rd.JoinedToThick(i) || rd.At(i-1).Piece() || rd.At(i+1).Plays(parser.Length) || aroundBeside(rd, i) {
			e.Fig.Lent(scan.Metre)
		}
	}
}

// tenthsBeside says whether the number at i is told in tenths, "1,5", "1.2", and
// crossed with a whole number that is too large for feet: what is half a foot may be
// told so too.
func tenthsBeside(rd *reading.Reading, i int) bool {
	const least = 38 // fewer may be inches
	words := rd.Elems[i].Fig.Words(rd.Text)
	_, tenths, comma := strings.Cut(words, ",")
	if !comma {
		_, tenths, _ = strings.Cut(words, ".")
	}
	if len(tenths) != 1 || !scan.IsDigit(tenths[0]) || !comma && tenths == "5" || !rd.At(i-1).Cross || Only(rd, parser.Imperial, parser.DimMass) {
		return false
	}
	for k := i - 2; k >= 0 && k >= i-3; k-- {
		if fig := rd.Elems[k].Fig; fig != nil {
			return fig.Short() || fig.Dim == parser.DimCount && fig.Low >= least && fig.Low == math.Trunc(fig.Low)
		}
	}
	return false
}

// aroundBeside says whether the words of a girth stand right beside the number at
// i, which is no less than a girth is: "1,57 de perímetro".
func aroundBeside(rd *reading.Reading, i int) bool {
	return rd.Elems[i].Fig.High >= leastAround && (rd.TermAt(i+1).Ask == parser.Girth || rd.TermAt(rd.Past(i-1, -1, lexicon.MarkIs)).Ask == parser.Girth)
}

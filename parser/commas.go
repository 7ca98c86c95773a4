package parser

import (
	"math"
	"slices"
	"strings"
)

// Crews that write a decimal comma tell metres by it: "45 x 1,10".

// metresByComma lends the metre to a bare length that has a decimal comma and
// two places, as nobody tells feet or inches: "45 x 1,10", "1,20 de largo".
func (rd *reading) metresByComma() {
	const longest, thinnest, thickest = 20, 0.3, 3
	for i, e := range rd.elems {
		if e.fig == nil || e.fig.dim != dimCount || e.fig.unit != nil || e.fig.pair || e.fig.high > longest || !twoPlaces(e.fig.words(rd.text)) && !rd.tenthsBeside(i) {
			continue
		}
		if rd.anyAt(rd.imperialLength) {
			return
		}
		if rd.at(i+1).plays(Diameter) && strings.HasPrefix(rd.word(rd.at(i+1)), "de ") && e.fig.high >= thinnest && e.fig.high <= thickest {
			e.fig.lent(metre) // "1,10 de diámetro"
			continue
		}
		crossed := rd.at(i-1).cross && slices.ContainsFunc(rd.elems[max(0, i-3):i-1], func(e element) bool { return e.fig != nil })
		if crossed || rd.joinedToThick(i) || rd.at(i-1).piece() || rd.at(i+1).plays(Length) || rd.aroundBeside(i) {
			e.fig.lent(metre)
		}
	}
}

// tenthsBeside says whether the number at i is told in tenths, "1,5", "1.2", and
// crossed with a whole number that is too large for feet: what is half a foot may be
// told so too.
func (rd *reading) tenthsBeside(i int) bool {
	const least = 38 // fewer may be inches
	words := rd.elems[i].fig.words(rd.text)
	_, tenths, comma := strings.Cut(words, ",")
	if !comma {
		_, tenths, _ = strings.Cut(words, ".")
	}
	if len(tenths) != 1 || !isDigit(tenths[0]) || !comma && tenths == "5" || !rd.at(i-1).cross || rd.only(Imperial, dimMass) {
		return false
	}
	for k := i - 2; k >= 0 && k >= i-3; k-- {
		if fig := rd.elems[k].fig; fig != nil {
			return fig.short() || fig.dim == dimCount && fig.low >= least && fig.low == math.Trunc(fig.low)
		}
	}
	return false
}

// joinedToThick reads "un tronco de 70 y 2,20": how long a piece is, behind how thick.
func (rd *reading) joinedToThick(i int) bool {
	if k := i - 2; rd.at(i-1).marked(markAnd) && rd.at(k).plays(Diameter) && rd.at(k-1).fig != nil {
		return true // "55 de diámetro y 1,30"
	}
	return rd.at(i-1).marked(markAnd) && rd.at(i-2).fig != nil && (rd.at(i-2).fig.short() || rd.joinedThick(i-2))
}

// joinedThick reads the first number of "un tronco de 45 y 2 metros": more than any
// piece is long, right behind its name.
func (rd *reading) joinedThick(i int) bool {
	const thinnest, thickest = 15, 150
	fig, long := rd.elems[i].fig, rd.at(i+2).fig
	if fig.dim != dimCount || fig.unit != nil || fig.low < thinnest || fig.high > thickest || fig.pair || fig.falling {
		return false
	}
	named := rd.at(rd.past(i-1, -1, markMade|markIs)).piece()
	metres := long.far() && long.unit.system == Metric || long != nil && long.dim == dimCount && twoPlaces(long.words(rd.text))
	return named && rd.at(i+1).marked(markAnd) && metres && !rd.thicknessBeside(fig) && (rd.endsBreath(i+3) || rd.at(i+3).polite())
}

// aroundBeside says whether the words of a girth stand right beside the number at
// i, which is no less than a girth is: "1,57 de perímetro".
func (rd *reading) aroundBeside(i int) bool {
	return rd.elems[i].fig.high >= leastAround && (rd.termAt(i+1).ask == Girth || rd.termAt(rd.past(i-1, -1, markIs)).ask == Girth)
}

// twoPlaces says whether a number is told as "1,10".
func twoPlaces(words string) bool {
	_, places, ok := strings.Cut(words, ",")
	return ok && len(places) == 2 && isDigit(places[0]) && isDigit(places[1])
}

// imperialLength says whether the number at i is in feet or inches.
func (rd *reading) imperialLength(i int) bool {
	f := rd.elems[i].fig
	return f != nil && f.dim == dimLength && f.unit.system == Imperial
}

// crossedFine says whether the bare number at i is crossed with one that has
// the unit of both: "60x150 cm".
func (rd *reading) crossedFine(i int) bool {
	const thinnest = 10 // "3 x 40 cm" may be metres
	other := rd.at(i + 2).fig
	return rd.crossed(i, i+2) && other.short() && other.unit.system == Metric && rd.elems[i].fig.low >= thinnest
}

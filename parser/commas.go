package parser

import (
	"slices"
	"strings"
)

// Crews that write a decimal comma tell metres by it: "45 x 1,10".

// metresByComma lends the metre to a bare length that has a decimal comma and
// two places, as nobody tells feet or inches: "45 x 1,10", "1,20 de largo".
func (rd *reading) metresByComma() {
	const longest, thinnest, thickest = 20, 0.3, 3
	for i, e := range rd.elems {
		if e.fig == nil || e.fig.dim != dimCount || e.fig.unit != nil || e.fig.pair || e.fig.high > longest || !twoPlaces(e.fig.words(rd.text)) {
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
		if crossed || rd.at(i+1).plays(Length) || rd.aroundBeside(i) {
			e.fig.lent(metre)
		}
	}
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

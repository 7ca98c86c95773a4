package parser

import (
	"slices"
	"strings"
)

// Of what stands, crews tell the thick end as the one below and the thin one as
// the one above: "28 abajo 18 arriba", "de 65 cm abajo a 35 arriba".

// standingEnds gives such a pair of thicknesses their places. Either word alone
// says much else: who is below, how high something is.
func (rd *reading) standingEnds() {
	for i, e := range rd.elems {
		if !e.fig.across() || !rd.termAt(i+1).lowEnd && !rd.termAt(i+1).highEnd {
			continue
		}
		j := i + 2
		for rd.at(j).pause > 0 && rd.at(j).pause < 4 || rd.at(j).marked(markAnd|markIs|markMade|markBy|markAt) {
			j++
		}
		other := rd.at(j)
		if !other.fig.across() {
			continue
		}
		low, high := i, j
		if rd.termAt(i + 1).highEnd {
			low, high = j, i
		}
		if !rd.termAt(low+1).lowEnd || !rd.termAt(high+1).highEnd || rd.elems[high].fig.in(rd.elems[low].fig) > rd.elems[low].fig.high {
			continue
		}
		rd.alter(low+1, func(t *term) { *t = term{roles: []role{{ButtDiameter, before, false}}} })
		rd.alter(high+1, func(t *term) { *t = term{roles: []role{{TipDiameter, before, false}}} })
	}
}

// across says whether a number can be a thickness: of inches, centimetres or
// the like, or bare and more than people who stand somewhere.
func (f *figure) across() bool {
	const thinnest = 5
	return f.short() || f != nil && f.dim == dimCount && f.unit == nil && !f.pair && f.low >= thinnest
}

// metresByComma lends the metre to a bare length that has a decimal comma and
// two places, as nobody tells feet or inches: "45 x 1,10", "1,20 de largo".
func (rd *reading) metresByComma() {
	const longest = 20
	for i, e := range rd.elems {
		if e.fig == nil || e.fig.dim != dimCount || e.fig.unit != nil || e.fig.pair || e.fig.high > longest || !twoPlaces(e.fig.words(rd.text)) {
			continue
		}
		if rd.anyAt(rd.imperialLength) {
			return
		}
		crossed := rd.at(i-1).cross && slices.ContainsFunc(rd.elems[max(0, i-3):i-1], func(e element) bool { return e.fig != nil })
		if crossed || rd.at(i+1).plays(Length) {
			e.fig.lent(metre)
		}
	}
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

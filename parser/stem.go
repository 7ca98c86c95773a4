package parser

import "strings"

// Crews that measure in metres tell the two sizes of a stem in bare numbers: its
// thickness, then its length. "Tronco de 45 y 2 metros" is 45 cm across, and so is
// "40 x 1,5"; "40x200" is in centimetres on both sides.

const (
	thinStem  = 5   // the least in centimetres: less may be how many pieces
	thickStem = 200 // the most
)

// stemSizes lends their units to the two bare numbers of such a stem.
func (rd *reading) stemSizes() {
	if !rd.in.comma || rd.anyAt(rd.imperialLength) {
		return
	}
	for i := range rd.elems {
		switch {
		case rd.thenMetres(i):
			rd.elems[i].fig.lent(centimetre)
			rd.elems[i+2].fig.lentIfBare(metre)
		case rd.thenHundredths(i):
			rd.elems[i+2].fig.lent(metre)
		case rd.longCross(i):
			rd.elems[i].fig.lent(centimetre)
			rd.elems[i+2].fig.lent(centimetre)
		case rd.crossedComma(i):
			rd.elems[i+2].fig.lent(metre)
		case rd.halfAcross(i):
			rd.elems[i+2].fig.lent(metre)
		case rd.bareTaper(i):
			rd.elems[i].fig.lent(centimetre)
		}
	}
}

// bareStem says whether the number at i has no unit and could be how thick a stem
// is in centimetres.
func (rd *reading) bareStem(i int) bool {
	fig := rd.at(i).fig
	return fig != nil && fig.dim == dimCount && fig.unit == nil && !fig.pair && !fig.falling && fig.low >= thinStem && fig.high <= thickStem
}

// ofPieceAt says whether the number at i is told right behind a piece or a tree:
// "tronco de 45", "álamo 45", or behind how long it is: "rama 6 m de 25 a 8".
func (rd *reading) ofPieceAt(i int) bool {
	k := rd.past(i-1, -1, markMade)
	return rd.at(k).piece() || rd.termAt(k).unnamed || k < i-1 && rd.far(k)
}

// thenMetres reads "tronco de 45 y 2 metros", "de 70 y 2,20": nothing is so many
// metres across, and no thickness is told besides.
func (rd *reading) thenMetres(i int) bool {
	long := rd.at(i + 2).fig
	if !rd.bareStem(i) || !rd.ofPieceAt(i) || !rd.at(i+1).marked(markAnd) || long == nil || rd.thicknessBeside(rd.elems[i].fig) {
		return false
	}
	named := rd.at(i+3).marked(markMade) && rd.at(i+4).piece() // "de 70 y 2,20 de nogal"
	if !rd.endsBreath(i+3) && !rd.at(i+3).plays(Length) && !named {
		return false
	}
	metres := long.far() && long.unit == metre || long.dim == dimCount && long.unit == nil && metricShape.MatchString(long.words(rd.text))
	return metres && long.low < thinStem*3
}

// thenHundredths reads the length of "fuste de 30 cm y 5,50".
func (rd *reading) thenHundredths(i int) bool {
	const thinnest, longest = 0.05, 20
	fig, long := rd.at(i).fig, rd.at(i+2).fig
	if !fig.short() || fig.unit.system != Metric || fig.low < thinnest || !rd.ofPieceAt(i) || !rd.at(i+1).marked(markAnd) || !rd.endsBreath(i+3) {
		return false
	}
	return long != nil && long.dim == dimCount && long.unit == nil && long.high <= longest && twoPlaces(long.words(rd.text))
}

// longCross reads "40x200": a second number that large is no length in feet.
func (rd *reading) longCross(i int) bool {
	const shortest, longest, thinnest = 100, 1200, 10
	long := rd.at(i + 2).fig
	if !rd.bareStem(i) || !rd.crossed(i, i+2) || rd.crossed(i+2, i+4) || long == nil || long.dim != dimCount || long.unit != nil {
		return false
	}
	fig := rd.elems[i].fig
	return fig.low >= thinnest && fig.high < shortest && long.low >= shortest && long.high <= longest && rd.anyAt(func(k int) bool { return rd.elems[k].piece() })
}

// crossedComma reads "40 x 1,5": hardly anybody tells feet with a decimal comma.
// What is thinner could be inches all the same.
func (rd *reading) crossedComma(i int) bool {
	const longest, thinnest = 20, 30
	long := rd.at(i + 2).fig
	if !rd.bareStem(i) || !rd.crossed(i, i+2) || rd.crossed(i+2, i+4) || long == nil || long.dim != dimCount || long.unit != nil {
		return false
	}
	return rd.elems[i].fig.low >= thinnest && long.high <= longest && strings.Contains(long.words(rd.text), ",")
}

// halfAcross reads "medio metro x 3": no piece is cut shorter than a metre and named
// with so large a number behind it, but in metres.
func (rd *reading) halfAcross(i int) bool {
	const widest, longest = 1, 12
	fig, long := rd.elems[i].fig, rd.at(i+2).fig
	if !fig.far() || fig.unit != metre || fig.high >= widest || !rd.crossed(i, i+2) || rd.crossed(i+2, i+4) {
		return false
	}
	return long != nil && long.dim == dimCount && long.unit == nil && !long.pair && long.low > widest && long.high <= longest && rd.ofPieceAt(i) && rd.endsBreath(i+3)
}

// massOfPiece says whether the bare number at i, behind the name of a piece, weighs
// it: beside what gear bears "troncos de 400" is no thickness. Beside a limit it
// could be one, in millimetres.
func (rd *reading) massOfPiece(i int) bool {
	e := rd.at(i - 1)
	named := rd.termAt(i-1).unnamed && strings.HasSuffix(rd.word(e), " de") || e.marked(markMade) && (rd.at(i-2).piece() || rd.termAt(i-2).unnamed)
	if rd.elems[i].fig.low <= thickStem || !named || !rd.endsBreath(i+1) || !rd.massTold(i) {
		return false
	}
	sized := func(k int) bool { return rd.lengthAt(k) && !rd.thinRope(rd.elems[k].fig) || rd.elems[k].plays(Limit) }
	return !rd.anyAt(sized)
}

// bareTaper reads "rama 5 m de 30 a 10" as thick and thin end.
func (rd *reading) bareTaper(i int) bool {
	const least, thinnest = 1.25, 3
	fig := rd.elems[i].fig
	if fig == nil || fig.dim != dimCount || fig.unit != nil || !fig.falling || fig.pair {
		return false
	}
	next := rd.at(i + 1)
	counts := next.plays(Wraps) || next.plays(People) || next.plays(Parts) || next.plays(Weight)
	return !counts && fig.high <= thickStem && fig.low >= thinnest && fig.high >= least*fig.low && rd.only(Metric, dimLength) && rd.lengthTold(i) && (rd.ofPieceAt(i) || rd.asksFor(AskBalance))
}

// lentIfBare gives a number the unit where it has none.
func (f *figure) lentIfBare(u *unitWord) {
	if f.unit == nil {
		f.lent(u)
	}
}

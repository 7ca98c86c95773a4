package parser

import (
	"regexp"
	"slices"
	"strings"
)

// Which size a number without a unit is, the words beside it tell, or the number
// that it is crossed with.

// labelled says whether the number stands right beside the words of a strength:
// "breaks at 14,000".
func (rd *reading) labelled(i int) bool {
	if rd.elems[i].fig.low < 100 {
		return false
	}
	if rd.behindThickness(i) {
		return true
	}
	s, _ := rd.strengthBeside(i-1, i+1)
	return s != ""
}

// behindThickness says whether the number stands behind how thick a rope is:
// "rope de 9/16 de 13000".
func (rd *reading) behindThickness(i int) bool {
	const weakest = 1000
	thick := rd.past(i-1, -1, markMade)
	cord := rd.at(rd.past(thick-1, -1, markMade))
	return rd.elems[i].fig.low >= weakest && thick == i-2 && rd.at(thick).fig != nil && rd.ofRope(thick) && cord.marked(markCord) && rd.endsBreath(i+1)
}

// sizedAs is the place that the words right beside the number at i give it, or
// the number that it is crossed with.
func (rd *reading) sizedAs(i int) Field {
	fields := rd.roleBeside(i)
	if f := rd.elems[i].fig.sure; thickness(f) {
		return f // "20 one end and 12 the other"
	}
	if f := rd.swingPlace(i); f != "" {
		return f
	}
	if f := rd.wallPlace(i); f != "" {
		return f
	}
	if f := rd.runPlace(i); f == HitchHeight || f == DrumAway {
		return f
	} else if f == RopeLength {
		return LineOut // of a unit they have the same
	}
	if rd.thinByNumber(i) {
		return RopeDiameter
	}
	if rd.at(i+1).looksBack(RopeLength) && rd.swung() {
		return LineOut // "22 of rope"
	}
	switch {
	case rd.crossed(i-2, i) && rd.at(i-2).fig.longStem() && !rd.crossed(i, i+2):
		return Diameter // "6 m x 50 límite 180"
	case rd.joinedThick(i), rd.tapersBare(i):
		return Diameter
	case rd.crossed(i-2, i) && rd.at(i-2).fig.wideStem() && !rd.crossed(i, i+2):
		return Length // "medio metro x 3"
	case fields != nil && !rd.anothersWords(i):
		return fields[0]
	case rd.termAt(rd.back(i-1)).hangs && rd.anyAt(rd.toTheSide) && rd.saidOut(i+1):
		return LineOut // "3 m de lado, cuelga 10"
	case rd.crossed(i, i+2) && (rd.at(i+2).fig.far() || rd.inHundredths(i+2)) && !rd.crossed(i-2, i):
		if rd.maybeFeet(i) {
			return ""
		}
		return Diameter // "14 x 22 ft"
	case rd.crossed(i-2, i) && (rd.at(i-2).fig.short() || rd.inHundredths(i)) && !rd.crossed(i, i+2):
		return Length // "34 cm x 1.8"
	case rd.massOfPiece(i):
		return Weight // "polea 50 kN para troncos de 400"
	case rd.stretchOf(i), rd.cutFrom(i), rd.anchorFrom(i):
		return Diameter // "6 pies de fresno de 20"
	case rd.namesOne(i) && !rd.at(i-1).cross && rd.lengthTold(i) && !rd.thicknessBeside(rd.elems[i].fig):
		return Diameter // "14 red oak limb 22 ft"
	}
	return ""
}

// stretchOf says whether the number at i ends the name of a piece that begins with
// how long it is.
func (rd *reading) stretchOf(i int) bool {
	const thickest = 200 // more may be a weight
	j := i - 1
	if !rd.at(j).marked(markMade) || rd.elems[i].fig.high > thickest || !rd.endsBreath(i+1) || !rd.at(j-1).piece() {
		return false
	}
	for rd.at(j - 1).piece() {
		j--
	}
	return rd.far(rd.past(j-1, -1, markMade))
}

// longStem says whether a number is in metres, and more than any piece is thick:
// what it is crossed with goes across.
func (f *figure) longStem() bool {
	const thickest = 2
	return f.far() && f.unit == metre && f.low > thickest
}

// maybeFeet says whether the number at i, crossed with feet, may be in feet as well:
// "3 by 4 ft".
func (rd *reading) maybeFeet(i int) bool {
	const thinnest = 6 // in inches
	return rd.at(i+2).fig.unit == foot && rd.elems[i].fig.low < thinnest
}

// thinByNumber reads "aguanta la cuerda de 16" where all is told in metres and
// nobody asks how far it reaches: in millimetres, as ropes are named there.
func (rd *reading) thinByNumber(i int) bool {
	const thinnest, thickest = 8, 24
	fig := rd.elems[i].fig
	plain := fig.dim == dimCount && fig.low == fig.high && fig.low >= thinnest && fig.high <= thickest && rd.endsBreath(i+1)
	return plain && rd.in.comma && (rd.ropeWords(i) || rd.at(i-1).marked(markMade) && rd.termAt(i-2).intent == AskGear) && rd.only(Metric, dimLength) && !rd.anyAt(rd.reachAsked)
}

// wideStem says whether a number is in metres, and no more than a piece is thick.
func (f *figure) wideStem() bool {
	const thickest = 1.3
	return f.far() && f.unit == metre && f.high <= thickest
}

// tapersBare says whether the number at i is of both ends of a piece: "rama de 5 m,
// de 30 a 10". What people, wraps and parts have is none.
func (rd *reading) tapersBare(i int) bool {
	const thinnest, least = 8, 1.25
	fig, next := rd.elems[i].fig, rd.at(i+1)
	if !fig.falling || fig.low < 2 || fig.high < thinnest || fig.high < least*fig.low || next.marked(markAt) || next.piece() || next.plays(Wraps) || next.plays(People) || next.plays(Parts) {
		return false
	}
	return rd.shaped() && rd.lengthTold(i) && !rd.thicknessBeside(fig)
}

// anothersWords says whether the words beside the number have another on their
// far side: "somos dos, límite 900 libras", "14 in butt 22".
func (rd *reading) anothersWords(i int) bool {
	told := func(k int) bool { // "10 butt 4 tip": the 4 has words behind it
		f := rd.at(k).fig
		return f != nil && (f.unit != nil || !rd.at(k+1).looks(before)) && !rd.sizedBy(k, i)
	}
	if rd.ofSize(i+1) || rd.labelFirst(i) {
		return false // "48 de diámetro 1,80 m"
	}
	left, right := rd.wordsBefore(i), rd.past(i+2, +1, markIs|markBound|markAt)
	own := rd.at(i + 1).looks(before)
	return !own && rd.at(left).looks(before) && told(left-1) || own && rd.at(i+1).looks(after) && told(right)
}

// sizedBy says whether the number at k is a length crossed with another, and that
// at i may weigh something: "6 m x 50 límite 180".
func (rd *reading) sizedBy(k, i int) bool {
	return rd.crossed(k-2, k) && rd.at(k).fig.dim == dimLength && rd.elems[i].fig.low >= lightest && rd.only(Metric, dimLength)
}

// labelFirst says whether the number at i goes with the words before it, because
// the first number of a row of words and numbers has none before its words, and
// the last none behind it: "butt 17 tip 13 11 ft long".
func (rd *reading) labelFirst(i int) bool {
	worded := func(k int) bool { return rd.at(k).looks(after) && rd.at(k+1).fig != nil }
	first, last := i, i
	for worded(first-3) && worded(first-1) {
		first -= 2
	}
	for worded(last + 1) {
		last += 2
	}
	return worded(i-1) && last > first && rd.at(first-2).fig == nil && !rd.at(last+1).looks(before)
}

// looks says whether the words of an element take the number on that side.
func (e element) looks(s side) bool {
	return e.term != nil && slices.ContainsFunc(e.term.roles, func(r role) bool { return r.side&s != 0 })
}

// namesOne says whether the number stands before the name of one piece: "14 red
// oak limb", not "10 oak logs".
func (rd *reading) namesOne(i int) bool {
	const thinnest = 8 // what is less may be how many
	j := i + 1
	for rd.at(j).piece() && rd.termAt(j).shape == "" {
		j++
	}
	e := rd.at(j)
	one := e.term == nil || e.term.shape == "" || !strings.HasSuffix(fold(rd.text[e.start:e.end]), "s")
	return j > i+1 && one && rd.elems[i].fig.low >= thinnest
}

// lengthTold says whether a number other than that at i is a long length.
func (rd *reading) lengthTold(but int) bool {
	return rd.anyAt(func(j int) bool { return j != but && rd.far(j) })
}

// metricShape is how a tape in metres is read off, and none in feet.
var metricShape = regexp.MustCompile(`^[0-9][.,][0-9]{2}$`)

// inHundredths says whether the bare number at i is a length as only metres are
// told: "60 de diámetro por 1.20 de largo".
func (rd *reading) inHundredths(i int) bool {
	fig := rd.at(i).fig
	if fig == nil || fig.dim != dimCount || !metricShape.MatchString(fig.words(rd.text)) {
		return false
	}
	beside := rd.roleBeside(i)
	return slices.Contains(beside, Length) || beside == nil && rd.crossed(i-2, i)
}

// shortestLimb is shorter than any limb that anybody asks about, in metres.
const shortestLimb = 0.6

// stubAsk asks about a limb of which nothing is told but a length that is rather its
// thickness: "limb 25 cm, what's a safe length".
func (rd *reading) stubAsk(q Question) *Ask {
	if !q.limb() || q.Has(across...) {
		return nil
	}
	for _, x := range q.Quantities {
		if x.Field == Length && x.High < shortestLimb && !rd.longBeside(x.Start) {
			a := askAt(TwoReadings, rd.text, x.Start, x.End-x.Start)
			a.Fields = []Field{ButtDiameter, Length}
			return a
		}
	}
	return nil
}

// longBeside says whether a word for how long the piece is stands right beside the
// number that starts there.
func (rd *reading) longBeside(start int) bool {
	return rd.anyAt(func(i int) bool {
		e := rd.elems[i]
		return e.fig != nil && e.start == start && (rd.at(i+1).plays(Length) || rd.at(rd.back(i-1)).plays(Length))
	})
}

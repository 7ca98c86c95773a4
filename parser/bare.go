package parser

import (
	"math"
	"regexp"
	"slices"
	"strings"
)

// A number without a unit has one reading where its place is told and the
// other numbers of the message leave that place a single unit: "16 at the butt"
// beside "12 ft" is in inches, "hitched at 35" beside them in feet.

// bareUnit is the unit of the bare number at i, nil where more than one, or
// none, is left.
func (rd *reading) bareUnit(i int) *unitWord {
	fig := rd.elems[i].fig
	if fig.low <= 0 || fig.pair || fig.falling || strings.ContainsAny(fig.words(rd.text), "/") {
		return nil
	}
	if rd.counts(i) {
		return nil
	}
	if rd.labelled(i) {
		return rd.capacityUnit(i)
	}
	f := rd.sizedAs(i)
	switch dimensionOf[f] {
	case dimMass, dimForce:
		if rd.massTold(i) || f == Limit || f == WinchPull || f == Payload {
			if u := rd.capacityUnit(i); u != nil {
				return u
			}
		}
		return rd.kilograms(i, f)
	case dimLength:
		if u := rd.lengthUnit(i, f); u != nil {
			return u
		}
		return rd.byPounds(i, f)
	}
	return nil
}

// capacityUnit is the unit of the most that something may bear, at i: that of the
// other masses, or else the pound beside inches and feet. Some crews measure in feet
// and weigh in kilograms; of the two the pound keeps the loads lighter.
func (rd *reading) capacityUnit(i int) *unitWord {
	if !rd.massTold(i) && rd.only(Imperial, dimLength) {
		return pound
	}
	return rd.massUnit(i)
}

// byPounds is the foot for a height beside pounds where no length has a unit:
// "600 lb limb hitched at 40". Some crews weigh in pounds and climb in metres;
// none of them has its rope so many metres up.
func (rd *reading) byPounds(i int, f Field) *unitWord {
	const least = 30
	fig := rd.elems[i].fig
	others := rd.anyAt(func(j int) bool { return rd.elems[j].fig != nil && rd.elems[j].fig.dim == dimLength })
	if f == HitchHeight && rd.surely(i, f) && !others && rd.massUnit(i) == pound && fig.low >= least && fig.high*foot.factor <= highest {
		return foot
	}
	return nil
}

// surely says whether the words right before the number are no others' too:
// "hitched at 40", not "top block 90", which may be how far the rope turns.
func (rd *reading) surely(i int, f Field) bool {
	return slices.Contains(rd.termAt(rd.past(i-1, -1, markIs|markBound)).roles, role{field: f, side: after})
}

// counts says whether the number could count what stands behind it: "2 long
// limbs", "limit 3 people", "3 or 4 wraps".
func (rd *reading) counts(i int) bool {
	if n := rd.elems[i].fig.low; rd.alone(i) || n != math.Trunc(n) {
		return false
	}
	for j := i + 1; j <= i+3; j++ {
		e := rd.at(j)
		switch {
		case e.piece() && j > i+1 && !rd.at(i+1).piece(), e.plays(People), e.plays(Wraps), e.plays(Parts), e.plays(Legs), e.plays(Alike):
			return true
		case e.pause > 0 || e.fig != nil || e.term == nil:
			return false
		}
	}
	return false
}

// alone says whether nothing follows the number that it could count.
func (rd *reading) alone(i int) bool { return i+1 >= len(rd.elems) || rd.elems[i+1].pause > 0 }

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
	switch {
	case rd.crossed(i-2, i) && rd.at(i-2).fig.longStem() && !rd.crossed(i, i+2):
		return Diameter // "6 m x 50 límite 180"
	case fields != nil && !rd.anothersWords(i):
		return fields[0]
	case rd.termAt(rd.back(i-1)).hangs && rd.anyAt(rd.toTheSide) && rd.saidOut(i+1):
		return LineOut // "3 m de lado, cuelga 10"
	case rd.crossed(i, i+2) && (rd.at(i+2).fig.far() || rd.inHundredths(i+2)) && !rd.crossed(i-2, i):
		return Diameter // "14 x 22 ft"
	case rd.crossed(i-2, i) && (rd.at(i-2).fig.short() || rd.inHundredths(i)) && !rd.crossed(i, i+2):
		return Length // "34 cm x 1.8"
	case rd.stretchOf(i), rd.cutFrom(i):
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

// massTold says whether any other mass or force has a unit.
func (rd *reading) massTold(but int) bool {
	return rd.anyAt(func(i int) bool {
		fig := rd.elems[i].fig
		return i != but && fig != nil && fig.unit != nil && (fig.dim == dimMass || fig.dim == dimForce)
	})
}

// massUnit is the one unit that all other masses and forces are told in.
func (rd *reading) massUnit(but int) (u *unitWord) {
	for i, e := range rd.elems {
		if i == but || e.fig == nil || e.fig.unit == nil || e.fig.dim != dimMass && e.fig.dim != dimForce {
			continue
		}
		if u != nil && u != e.fig.unit {
			return nil
		}
		u = e.fig.unit
	}
	if u == nil || u.factor > 1 && u.factor < 1000 || u.factor <= 1 {
		return u
	}
	return nil // "block 5 t, limit 2": thousands are no custom
}

// lengthUnit is the unit that is left for a length of the field.
func (rd *reading) lengthUnit(i int, f Field) *unitWord {
	fine, coarse, ok := rd.lengthUnits(i)
	if !ok {
		return nil
	}
	fig := rd.elems[i].fig
	switch {
	case thickness(f) && fine == nil && coarse == nil:
		return rd.byMasses(fig.high)
	case thickness(f):
		return thicknessIn(fig.high, fine, coarse)
	case f == Length && fine == centimetre && fig.high >= shortestCut && rd.at(i-1).fig == nil:
		return rd.shortCut(fig.high)
	case f == Length && (rd.has(markRound) || !rd.longEnough(fig, fine)):
		return nil // a round is inches thick
	case coarse == nil && fine != nil && fine.system == Imperial:
		coarse = foot
	case coarse == nil && fine != nil:
		coarse = metre
	}
	if f == DropHeight && coarse != nil && fig.high*coarse.factor > deepest {
		return nil
	}
	if coarse == nil || !tellable[f] || fig.high*coarse.factor > highest || fig.high < 1 {
		return nil
	}
	return coarse
}

// shortestCut is more than any log is long in metres.
const shortestCut = 40

// shortCut is the centimetre for how long a log is that would be longer than any
// in metres: "48 cm de diámetro y 90 de largo". A limb may be either.
func (rd *reading) shortCut(n float64) *unitWord {
	const longest = 400
	if rd.shapedFrom(0, Limb) || n > longest {
		return nil
	}
	return centimetre
}

// tellable are the lengths that go without their unit: of a rope and of what
// is small beside the rest, inches and feet are both told. A fall in feet is the
// harder one.
var tellable = map[Field]bool{HitchHeight: true, Length: true, BlockHeight: true, Tie: true, DropHeight: true, LineOut: true}

// highest is more than any tree that is climbed, in metres.
const highest = 90

// deepest is more than a piece falls into its rope, in metres: what is more is
// centimetres or inches.
const deepest = 5

// longEnough says whether a bare length can be no thickness of a round: "24 in
// log, 8 long", "33 cm, 2.2 long".
func (rd *reading) longEnough(fig *figure, fine *unitWord) bool {
	const shortestRound, longestLog = 10, 12 // a log may be cut as short as 12 in or cm
	switch {
	case fine == nil || rd.shapedFrom(0, Limb):
		return true
	case fine.system == Imperial:
		return fig.high <= shortestRound
	}
	return fig.high <= longestLog
}

// lengthUnits are the fine and the coarse unit that the other lengths are told
// in; false where they are of two systems, or of two fine units.
func (rd *reading) lengthUnits(but int) (fine, coarse *unitWord, ok bool) {
	for i, e := range rd.elems {
		if i == but || e.fig == nil || e.fig.dim != dimLength || e.fig.unit.fine && e.fig.high < thickestRope {
			continue
		}
		to := &coarse
		if e.fig.unit.fine {
			to = &fine
		}
		if *to != nil && *to != e.fig.unit {
			return nil, nil, false
		}
		*to = e.fig.unit
	}
	if fine == nil && coarse == nil && rd.anyAt(rd.inHundredths) {
		coarse = metre
	}
	return fine, coarse, (fine == nil || coarse == nil || fine.system == coarse.system) && rd.massesGoWith(fine, coarse)
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

// massesGoWith says whether no mass is told in the other system than the
// lengths: then their units are mixed, and none is left alone.
func (rd *reading) massesGoWith(units ...*unitWord) bool {
	return !rd.anyAt(func(i int) bool {
		fig := rd.elems[i].fig
		return fig != nil && fig.dim == dimMass && fig.unit != nil && slices.ContainsFunc(units, func(u *unitWord) bool { return u != nil && u.system != fig.unit.system })
	})
}

// thicknessIn is the unit of a thickness: the one that another was told in, or
// that which goes with the lengths. Beside metres, hundreds are millimetres.
func thicknessIn(n float64, fine, coarse *unitWord) *unitWord {
	const thinnest, thickestInch, thickestCentimetre, leastMillimetre = 2, 80, 200, 250
	switch {
	case fine == nil && coarse == nil:
		return nil
	case fine == nil && coarse.system == Imperial:
		fine = inch
	case fine == nil && n >= leastMillimetre:
		fine = millimetre
	case fine == nil:
		fine = centimetre
	}
	most := map[*unitWord]float64{inch: thickestInch, centimetre: thickestCentimetre, millimetre: 10 * thickestCentimetre}[fine]
	if n < thinnest || n > most {
		return nil
	}
	return fine
}

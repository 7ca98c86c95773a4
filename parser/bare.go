package parser

import (
	"math"
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
	if fig.low <= 0 || fig.pair || fig.falling && !rd.tapersBare(i) || strings.ContainsAny(fig.words(rd.text), "/") {
		return nil
	}
	if rd.counts(i) {
		return nil
	}
	if rd.labelled(i) {
		return rd.capacityUnit(i)
	}
	if rd.isLoad(i) {
		return rd.loadUnit(i)
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
		if f == RopeDiameter {
			return millimetre
		}
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
		case e.piece() && j > i+1 && !rd.at(i+1).piece() && !rd.oneNamed(i, j), e.plays(People), e.plays(Wraps), e.plays(Parts), e.plays(Legs), e.plays(Alike):
			return true
		case e.pause > 0 || e.fig != nil || e.term == nil || j == i+1 && rd.ofSize(j):
			return false // "45 de ancho de fresno"
		}
	}
	return false
}

// oneNamed says whether the piece whose name begins at j is one, and the number at i
// more: "20 long red oak limb".
func (rd *reading) oneNamed(i, j int) bool {
	for rd.at(j).piece() && rd.termAt(j).shape == "" {
		j++
	}
	return rd.elems[i].fig.low > 1 && rd.termAt(j).shape != "" && !rd.plural(j) && rd.at(i+1).looks(before)
}

// alone says whether nothing follows the number that it could count.
func (rd *reading) alone(i int) bool { return i+1 >= len(rd.elems) || rd.elems[i+1].pause > 0 }

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
	case f == RopeLength && coarse != nil && fig.low >= shortestRope && fig.high <= longestRope:
		return coarse // told long before it hangs
	case thickness(f) && fine == nil && coarse == metre && f != TipDiameter && fig.low >= thinnestTenths && fig.high < 1:
		return metre // "5.2 metres, 0.7 through the middle"
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

// thinnestTenths is the thinnest that a stem is told in tenths of a metre.
const thinnestTenths = 0.15

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
var tellable = map[Field]bool{HitchHeight: true, Length: true, BlockHeight: true, Tie: true, DropHeight: true, LineOut: true, Sideways: true,
	ObstacleOut: true, ObstacleHeight: true, DrumAway: true}

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

package sizes

import (
	"math"
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// CapacityUnit is the unit of the most that something may bear, at i: that of the
// other masses, or else the pound beside inches and feet. Some crews measure in feet
// and weigh in kilograms; of the two the pound keeps the loads lighter.
func CapacityUnit(rd *reading.Reading, i int) *scan.UnitWord {
	if !MassTold(rd, i) && (Only(rd, parser.Imperial, parser.DimLength) || gear.InchRope(rd)) {
		return scan.Pound
	}
	return massUnit(rd, i)
}

// ByPounds is the foot for a height beside pounds where no length has a unit:
// "600 lb limb hitched at 40". Some crews weigh in pounds and climb in metres;
// none of them has its rope so many metres up.
func ByPounds(rd *reading.Reading, i int, f parser.Field) *scan.UnitWord {
	const least = 30
	fig := rd.Elems[i].Fig
	others := rd.AnyAt(func(j int) bool { return rd.Elems[j].Fig != nil && rd.Elems[j].Fig.Dim == parser.DimLength })
	if f == parser.HitchHeight && Surely(rd, i, f) && !others && massUnit(rd, i) == scan.Pound && fig.Low >= least && fig.High*scan.Foot.Factor <= Highest {
		return scan.Foot
	}
	return nil
}

// Surely says whether the words right before the number are no others' too:
// "hitched at 40", not "top block 90", which may be how far the rope turns.
func Surely(rd *reading.Reading, i int, f parser.Field) bool {
	return slices.Contains(rd.TermAt(rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkBound)).Roles, scan.Role{Field: f, Side: lexicon.After})
}

// Counts says whether the number could count what stands behind it: "2 long
// limbs", "limit 3 people", "3 or 4 wraps".
func Counts(rd *reading.Reading, i int) bool {
	const most = 100 // of anything: "550 dia red oak" is none
	if n := rd.Elems[i].Fig.Low; Alone(rd, i) || n != math.Trunc(n) || n > most {
		return false
	}
	for j := i + 1; j <= i+3; j++ {
		e := rd.At(j)
		switch {
		case e.Piece() && j > i+1 && !rd.At(i+1).Piece() && !oneNamed(rd, i, j), e.Plays(parser.People), e.Plays(parser.Wraps), e.Plays(parser.Parts), e.Plays(parser.Legs), e.Plays(parser.Alike):
			return true
		case e.Pause > 0 || e.Fig != nil || e.Term == nil || j == i+1 && places.OfSize(rd, j):
			return false // "45 de ancho de fresno"
		}
	}
	return false
}

// oneNamed says whether the piece whose name begins at j is one, and the number at i
// more: "20 long red oak limb".
func oneNamed(rd *reading.Reading, i, j int) bool {
	for rd.At(j).Piece() && rd.TermAt(j).Shape == "" {
		j++
	}
	return rd.Elems[i].Fig.Low > 1 && rd.TermAt(j).Shape != "" && !Plural(rd, j) && rd.At(i+1).Looks(lexicon.Before)
}

// Alone says whether nothing follows the number that it could count.
func Alone(rd *reading.Reading, i int) bool { return i+1 >= len(rd.Elems) || rd.Elems[i+1].Pause > 0 }

// MassTold says whether any other mass or force has a unit.
func MassTold(rd *reading.Reading, but int) bool {
	return rd.AnyAt(func(i int) bool {
		fig := rd.Elems[i].Fig
		return i != but && fig != nil && fig.Unit != nil && (fig.Dim == parser.DimMass || fig.Dim == parser.DimForce)
	})
}

// massUnit is the one unit that all other masses and forces are told in. "Rope breaks at
// 3600, block 50 kN, limit 180 kilos": nothing here takes so many kilonewtons or tonnes. Who
// tells tonnes beside pounds speaks of both, and may mean kilograms.
func massUnit(rd *reading.Reading, but int) (u *scan.UnitWord) {
	const tooMany, thousand = 300, 1000
	var tonnes *scan.UnitWord
	for i, e := range rd.Elems {
		if i == but || e.Fig == nil || e.Fig.Unit == nil || e.Fig.Dim != parser.DimMass && e.Fig.Dim != parser.DimForce {
			continue
		}
		if fig := rd.At(but).Fig; fig != nil && fig.Unit == nil && fig.Low >= tooMany && e.Fig.Unit.Factor >= thousand {
			if e.Fig.Dim == parser.DimMass {
				tonnes = e.Fig.Unit
			}
			continue
		}
		if u != nil && u != e.Fig.Unit {
			return nil
		}
		u = e.Fig.Unit
	}
	if u != nil && tonnes != nil && u.System != tonnes.System {
		return nil
	}
	if u == nil || u.Factor > 1 && u.Factor < 1000 || u.Factor <= 1 {
		return u
	}
	return nil // "block 5 t, limit 2": thousands are no custom
}

// ThinnestTenths is the thinnest that a stem is told in tenths of a metre.
const ThinnestTenths = 0.15

// ShortestCut is more than any log is long in metres.
const ShortestCut = 40

// ShortCut is the centimetre for how long a log is that would be longer than any
// in metres: "48 cm de diámetro y 90 de largo". A limb may be either.
func ShortCut(rd *reading.Reading, n float64) *scan.UnitWord {
	const longest = 400
	if gear.ShapedFrom(rd, 0, parser.Limb) || n > longest {
		return nil
	}
	return scan.Centimetre
}

// Tellable are the lengths that go without their unit: of a rope and of what
// is small beside the rest, inches and feet are both told. A fall in feet is the
// harder one.
var Tellable = map[parser.Field]bool{parser.HitchHeight: true, parser.Length: true, parser.BlockHeight: true, parser.Tie: true, parser.DropHeight: true, parser.LineOut: true, parser.Sideways: true,
	parser.ObstacleOut: true, parser.ObstacleHeight: true, parser.DrumAway: true}

// Highest is more than any tree that is climbed, in metres.
const Highest = 90

// Deepest is more than a piece falls into its rope, in metres: what is more is
// centimetres or inches.
const Deepest = 5

// LongEnough says whether a bare length can be no thickness of a round: "24 in
// log, 8 long", "33 cm, 2.2 long".
func LongEnough(rd *reading.Reading, fig *reading.Figure, fine *scan.UnitWord) bool {
	const shortestRound, longestLog = 10, 12 // a log may be cut as short as 12 in or cm
	switch {
	case fine == nil || gear.ShapedFrom(rd, 0, parser.Limb):
		return true
	case fine.System == parser.Imperial:
		return fig.High <= shortestRound
	}
	return fig.High <= longestLog
}

// LengthUnits are the fine and the coarse unit that the other lengths are told
// in; false where they are of two systems, or of two fine units.
func LengthUnits(rd *reading.Reading, but int) (fine, coarse *scan.UnitWord, ok bool) {
	for i, e := range rd.Elems {
		if i == but || e.Fig == nil || e.Fig.Dim != parser.DimLength || e.Fig.Unit.Fine && e.Fig.High < reading.ThickestRope {
			continue
		}
		to := &coarse
		if e.Fig.Unit.Fine {
			to = &fine
		}
		if *to != nil && *to != e.Fig.Unit {
			return nil, nil, false
		}
		*to = e.Fig.Unit
	}
	if fine == nil && coarse == nil && rd.AnyAt(rd.Is(InHundredths)) {
		coarse = scan.Metre
	}
	return fine, coarse, (fine == nil || coarse == nil || fine.System == coarse.System) && massesGoWith(rd, fine, coarse)
}

// massesGoWith says whether no mass is told in the other system than the
// lengths: then their units are mixed, and none is left alone.
func massesGoWith(rd *reading.Reading, units ...*scan.UnitWord) bool {
	return !rd.AnyAt(func(i int) bool {
		fig := rd.Elems[i].Fig
		return fig != nil && fig.Dim == parser.DimMass && fig.Unit != nil && slices.ContainsFunc(units, func(u *scan.UnitWord) bool { return u != nil && u.System != fig.Unit.System })
	})
}

// ThicknessIn is the unit of a thickness: the one that another was told in, or
// that which goes with the lengths. Beside metres, hundreds are millimetres.
func ThicknessIn(n float64, fine, coarse *scan.UnitWord) *scan.UnitWord {
	const thinnest, thickestInch, thickestCentimetre, mostAlone, leastMillimetre = 2, 80, 200, 120, 250
	switch {
	case fine == nil && coarse == nil:
		return nil
	case fine == nil && coarse.System == parser.Imperial:
		fine = scan.Inch
	case fine == nil && n > mostAlone && n < leastMillimetre:
		return nil // "200 at the cut" may be either
	case fine == nil && n >= leastMillimetre:
		fine = scan.Millimetre
	case fine == nil:
		fine = scan.Centimetre
	}
	most := map[*scan.UnitWord]float64{scan.Inch: thickestInch, scan.Centimetre: thickestCentimetre, scan.Millimetre: 10 * thickestCentimetre}[fine]
	if n < thinnest || n > most {
		return nil
	}
	return fine
}

// Plural says whether the words at i begin with one for more than one: "trozos de".
func Plural(rd *reading.Reading, i int) bool {
	e := rd.Elems[i]
	return strings.HasSuffix(strings.Fields(scan.Fold(rd.Text[e.Start:e.End]))[0], "s")
}

// RatingAsk asks what a number beside gear is, where it has no word for it.
func RatingAsk(rd *reading.Reading, i int) *parser.Ask {
	fig := rd.Elems[i].Fig
	if !gear.Rates(fig) {
		return nil
	}
	fields := []parser.Field{fig.Sure}
	if fig.Sure == "" {
		p := gear.PartBeside(rd, i-1, i+1)
		if p == "" && strings.HasPrefix(rd.TermAt(i-1).Note, "rope-") {
			p = lexicon.PartRope // "9/16 double braid 13k"
		}
		if p == "" {
			return nil
		}
		fields = gear.Both(p)
	}
	a := fig.Ask(parser.WhichStrength, rd.Text)
	a.Fields = fields
	if fig.Dim == parser.DimCount {
		scan.InUnit(a, CapacityUnit(rd, i))
	}
	return a
}

package sizes

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// ThinnestEnd is thinner than any end of a piece is told, in metres: "350 at the butt,
// leaning 1.2 at the tip" has no tip of 1.2 mm.
const ThinnestEnd = 0.01

// Drawn is the millimetre where all sizes are told in it but the number at i,
// which is too large for any other unit: "600 mm beech round, 400 long".
func Drawn(rd *reading.Reading, i int) (u *scan.UnitWord) {
	const least, millimetre, thinnest = 100, 0.001, 0.1 // what is thinner is rope
	if rd.Elems[i].Fig.Low < least {
		return nil
	}
	for _, e := range rd.Elems {
		switch {
		case !e.Fig.Short(), e.Fig.Unit.Factor == millimetre && e.Fig.High < thinnest:
		case e.Fig.Unit.Factor != millimetre:
			return nil
		default:
			u = e.Fig.Unit
		}
	}
	return u
}

// MillimetresAcross reads "spar 600 dia 1.2 long" and "butt is 460, its 3.2 long": so many of
// anything else are across no piece, and no other system is spoken.
func MillimetresAcross(rd *reading.Reading, i int) bool {
	const least, most = 400, 2000
	fig := rd.Elems[i].Fig
	told := func(k int) bool {
		return k != i && rd.Elems[k].Fig != nil && rd.Elems[k].Fig.Unit != nil && rd.Elems[k].Fig.Unit.System != parser.Metric
	}
	across := func(e reading.Element) bool {
		return e.Pause == 0 && (e.Plays(parser.Diameter) || e.Plays(parser.ButtDiameter))
	}
	behind := across(rd.At(i+1)) && rd.At(i+2).Fig != nil
	beside := (across(rd.At(i+1)) || across(rd.At(rd.Back(i-1)))) && rd.AnyAt(func(k int) bool { return k != i && metresLong(rd, k) })
	return fig.Low >= least && fig.High <= most && (behind || beside) && !rd.AnyAt(told)
}

// metresLong says whether the number at k tells how long a piece is as nobody tells feet,
// with a point or a comma: "3.2 long".
func metresLong(rd *reading.Reading, k int) bool {
	fig := rd.Elems[k].Fig
	if fig == nil || !strings.ContainsAny(fig.Words(rd.Text), ".,") || fig.Low != fig.High {
		return false
	}
	long := rd.At(k+1).Plays(parser.Length) || rd.At(rd.Back(k-1)).Plays(parser.Length)
	return long && (fig.Unit == nil && fig.Dim == parser.DimCount && fig.High < mostMetresLong || fig.Far() && fig.Unit.System == parser.Metric)
}

// mostMetresLong is longer than any piece is in metres.
const mostMetresLong = 40

// Angled says whether the words of an element stand behind an angle and
// nothing else.
func Angled(e reading.Element) bool {
	if e.Term == nil || e.Marked(lexicon.MarkPlace) { // "two trees 30 apart"
		return false
	}
	for _, r := range e.Term.Roles {
		if (r.Field == parser.BlockAngle || r.Field == parser.LimbAngle) && r.Side&lexicon.Before != 0 {
			return true
		}
	}
	return false
}

// ThicknessUnit is the unit that another end of the piece was told in, nil for
// none, or for several.
func ThicknessUnit(rd *reading.Reading, but int) (u *scan.UnitWord) {
	for i, e := range rd.Elems {
		if i == but || !places.FineAt(rd, i) || !endBeside(rd, i) {
			continue
		}
		if u != nil && u != e.Fig.Unit {
			return nil
		}
		u = e.Fig.Unit
	}
	return u
}

// endBeside says whether the words of an end of the piece stand right beside a
// number.
func endBeside(rd *reading.Reading, i int) bool {
	for _, e := range []reading.Element{rd.At(rd.Past(i+1, +1, lexicon.MarkAt|lexicon.MarkWhere|lexicon.MarkArticle)), rd.At(rd.Past(i-1, -1, lexicon.MarkIs))} {
		if e.Plays(parser.TipDiameter) || e.Plays(parser.ButtDiameter) || e.Plays(parser.MidDiameter) {
			return true
		}
	}
	return false
}

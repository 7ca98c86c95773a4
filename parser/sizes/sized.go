package sizes

import (
	"regexp"
	"slices"
	"strings"

	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// Which size a number without a unit is, the words beside it tell, or the number
// that it is crossed with.

// Labelled says whether the number stands right beside the words of a strength:
// "breaks at 14,000".
func Labelled(rd *reading.Reading, i int) bool {
	if rd.Elems[i].Fig.Low < 100 {
		return false
	}
	if behindThickness(rd, i) {
		return true
	}
	s, _ := gear.StrengthBeside(rd, i-1, i+1)
	return s != ""
}

// behindThickness says whether the number stands behind how thick a rope is:
// "rope de 9/16 de 13000".
func behindThickness(rd *reading.Reading, i int) bool {
	const weakest = 1000
	thick := rd.Past(i-1, -1, lexicon.MarkMade)
	cord := rd.At(rd.Past(thick-1, -1, lexicon.MarkMade))
	return rd.Elems[i].Fig.Low >= weakest && thick == i-2 && rd.At(thick).Fig != nil && gear.OfRope(rd, thick) && cord.Marked(lexicon.MarkCord) && rd.EndsBreath(i+1)
}

// StretchOf says whether the number at i ends the name of a piece that begins with
// how long it is.
func StretchOf(rd *reading.Reading, i int) bool {
	const thickest = 200 // more may be a weight
	j := i - 1
	if !rd.At(j).Marked(lexicon.MarkMade) || rd.Elems[i].Fig.High > thickest || !rd.EndsBreath(i+1) || !rd.At(j-1).Piece() {
		return false
	}
	for rd.At(j - 1).Piece() {
		j--
	}
	return gear.Far(rd, rd.Past(j-1, -1, lexicon.MarkMade))
}

// LongStem says whether a number is in metres, and more than any piece is thick:
// what it is crossed with goes across.
func LongStem(f *reading.Figure) bool {
	const thickest = 2
	return f.Far() && f.Unit == scan.Metre && f.Low > thickest
}

// MaybeFeet says whether the number at i, crossed with feet, may be in feet as well:
// "3 by 4 ft".
func MaybeFeet(rd *reading.Reading, i int) bool {
	const thinnest = 6 // in inches
	return rd.At(i+2).Fig.Unit == scan.Foot && rd.Elems[i].Fig.Low < thinnest
}

// WideStem says whether a number is in metres, and no more than a piece is thick.
func WideStem(f *reading.Figure) bool {
	const thickest = 1.3
	return f.Far() && f.Unit == scan.Metre && f.High <= thickest
}

// TapersBare says whether the number at i is of both ends of a piece: "rama de 5 m,
// de 30 a 10". What people, wraps and parts have is none.
func TapersBare(rd *reading.Reading, i int) bool {
	const thinnest, least = 8, 1.25
	fig, next := rd.Elems[i].Fig, rd.At(i+1)
	if !fig.Falling || fig.Low < 2 || fig.High < thinnest || fig.High < least*fig.Low || next.Marked(lexicon.MarkAt) || next.Piece() || next.Plays(parser.Wraps) || next.Plays(parser.People) || next.Plays(parser.Parts) {
		return false
	}
	return gear.Shaped(rd) && LengthTold(rd, i) && !rd.ThicknessBeside(fig)
}

// AnothersWords says whether the words beside the number have another on their
// far side: "somos dos, límite 900 libras", "14 in butt 22".
func AnothersWords(rd *reading.Reading, i int) bool {
	told := func(k int) bool { // "10 butt 4 tip": the 4 has words behind it
		f := rd.At(k).Fig
		return f != nil && (f.Unit != nil || !rd.At(k+1).Looks(lexicon.Before)) && !sizedBy(rd, k, i)
	}
	if places.OfSize(rd, i+1) || bounds.LabelFirst(rd, i) {
		return false // "48 de diámetro 1,80 m"
	}
	left, right := rd.WordsBefore(i), rd.Past(i+2, +1, lexicon.MarkIs|lexicon.MarkBound|lexicon.MarkAt)
	own := rd.At(i + 1).Looks(lexicon.Before)
	if own && acrossFirst(rd, i, right) {
		return false
	}
	return !own && rd.At(left).Looks(lexicon.Before) && told(left-1) || own && rd.At(i+1).Looks(lexicon.After) && told(right)
}

// acrossFirst reads "70 dia 1m" as how thick and how long: the bare number at i would be
// longer than any log in the unit of that at k, or that thicker than any.
func acrossFirst(rd *reading.Reading, i, k int) bool {
	fig, long := rd.Elems[i].Fig, rd.At(k).Fig
	if k != i+2 || !places.OnlyPlays(rd.At(i+1), parser.Diameter) || !long.Far() || rd.At(k+1).Looks(lexicon.Before) && !rd.At(k+1).Plays(parser.Length) {
		return false
	}
	return fig.Low >= ShortestCut && long.Unit == scan.Metre || long.Low > reading.Roundest
}

// sizedBy says whether the number at k is a length crossed with another, and that
// at i may weigh something: "6 m x 50 límite 180".
func sizedBy(rd *reading.Reading, k, i int) bool {
	return rd.Crossed(k-2, k) && rd.At(k).Fig.Dim == parser.DimLength && rd.Elems[i].Fig.Low >= stops.Lightest && Only(rd, parser.Metric, parser.DimLength)
}

// NamesOne says whether the number stands before the name of one piece: "14 red
// oak limb", not "10 oak logs".
func NamesOne(rd *reading.Reading, i int) bool {
	const thinnest = 8 // what is less may be how many
	j := i + 1
	for rd.At(j).Piece() && rd.TermAt(j).Shape == "" {
		j++
	}
	e := rd.At(j)
	one := e.Term == nil || e.Term.Shape == "" || !strings.HasSuffix(scan.Fold(rd.Text[e.Start:e.End]), "s")
	return j > i+1 && one && rd.Elems[i].Fig.Low >= thinnest
}

// LengthTold says whether a number other than that at i is a long length.
func LengthTold(rd *reading.Reading, but int) bool {
	return rd.AnyAt(func(j int) bool { return j != but && gear.Far(rd, j) })
}

// metricShape is how a tape in metres is read off, and none in feet.
var metricShape = regexp.MustCompile(`^[0-9][.,][0-9]{2}$`)

// InHundredths says whether the bare number at i is a length as only metres are
// told: "60 de diámetro por 1.20 de largo".
func InHundredths(rd *reading.Reading, i int) bool {
	fig := rd.At(i).Fig
	if fig == nil || fig.Dim != parser.DimCount || !metricShape.MatchString(fig.Words(rd.Text)) {
		return false
	}
	beside := bounds.RoleBeside(rd, i)
	return slices.Contains(beside, parser.Length) || beside == nil && rd.Crossed(i-2, i)
}

// shortestLimb is shorter than any limb that anybody asks about, in metres.
const shortestLimb = 0.6

// StubAsk asks about a limb of which nothing is told but a length that is rather its
// thickness: "limb 25 cm, what's a safe length".
func StubAsk(rd *reading.Reading, q parser.Question) *parser.Ask {
	if !q.Limb() || q.Has(parser.Across...) {
		return nil
	}
	for _, x := range q.Quantities {
		if x.Field == parser.Length && x.High < shortestLimb && !longBeside(rd, x.Start) {
			a := reading.AskAt(parser.TwoReadings, rd.Text, x.Start, x.End-x.Start)
			a.Fields = []parser.Field{parser.ButtDiameter, parser.Length}
			return a
		}
	}
	return nil
}

// longBeside says whether a word for how long the piece is stands right beside the
// number that starts there.
func longBeside(rd *reading.Reading, start int) bool {
	return rd.AnyAt(func(i int) bool {
		e := rd.Elems[i]
		return e.Fig != nil && e.Start == start && (rd.At(i+1).Plays(parser.Length) || rd.At(rd.Back(i-1)).Plays(parser.Length))
	})
}

// Fallings reads "8 in to 2 in" as butt and tip where the message has a length
// besides: no range is told from its high end so far down.
func Fallings(rd *reading.Reading) {
	const least = 1.25 // times the tip
	for i, e := range rd.Elems {
		if next := rd.At(i + 1); next.Plays(parser.Wraps) || next.Plays(parser.People) || next.Plays(parser.Parts) {
			continue
		}
		if fig := e.Fig; fig != nil && fig.Falling && fig.Short() && fig.High >= least*fig.Low && LengthTold(rd, i) {
			fig.Pair, fig.Falling = true, false
		}
	}
}

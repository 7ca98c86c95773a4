package heights

import (
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/turning"
)

// How far the rope turns is told by eye, "40, 50 degrees", and of several
// redirects one behind the other.

// TurnRanges reads "turns maybe 40, 50 degrees" as from 40 to 50 where one
// redirect is named: of several each number is one's own.
func TurnRanges(rd *reading.Reading) {
	const widest = 20 // degrees that somebody is in doubt about
	if !turning.Redirected(rd) || rd.AnyAt(rd.Is(severalRedirects)) {
		return
	}
	for i := 0; i+2 < len(rd.Elems); i++ {
		a, b := rd.Elems[i].Fig, rd.Elems[i+2].Fig
		if a == nil || b == nil || a.Dim != parser.DimCount || a.Unit != nil || !Degrees(a) || rd.Elems[i+1].Pause != 2 || b.Dim != parser.DimAngle {
			continue
		}
		if a.Low < b.Low && b.High <= a.Low+widest && turnedBefore(rd, i) {
			whole := *b
			whole.Low, whole.Start = a.Low, a.Start
			rd.Join(i, i+3, &whole)
		}
	}
}

// turnedBefore says whether the words of a turn lead to the number at i.
func turnedBefore(rd *reading.Reading, i int) bool {
	j := rd.Back(i - 1)
	return rd.At(j).Marked(lexicon.MarkDeflects) || rd.TermAt(j).Course && gear.Part(rd.At(j-1)) == lexicon.PartRope
}

// severalRedirects says whether the element at i names more than one redirect.
func severalRedirects(rd *reading.Reading, i int) bool {
	e := rd.Elems[i]
	return e.Term != nil && parser.Redirecting(e.Term.Block) && (e.Plays(parser.Redirects) && counted(rd, i-1) || strings.HasSuffix(rd.Word(e), "s"))
}

// EachTurn reads "give me the load on each" where the turns of several redirects
// are told: the answer has them all. Behind a number it says something of that.
func EachTurn(rd *reading.Reading) {
	turns := 0
	for _, e := range rd.Elems {
		if e.Fig != nil && e.Fig.Told == parser.Turn {
			turns++
		}
	}
	for i := range rd.Elems {
		if turns > 1 && rd.TermAt(i).Each && i > 0 && rd.Elems[i-1].Fig == nil && !rates(rd.At(rd.Past(i+1, +1, lexicon.MarkIs))) {
			rd.Alter(i, func(t *scan.Term) { t.Ask, t.Each = "", false })
		}
	}
}

// rates says whether the element is a number that can be a load.
func rates(e reading.Element) bool { return e.Fig != nil && gear.Rates(e.Fig) }

// counted says whether the element at i is a bare number.
func counted(rd *reading.Reading, i int) bool {
	return rd.At(i).Fig != nil && rd.At(i).Fig.Dim == parser.DimCount
}

package gear

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// ThinRated says whether the number at i stands on the label of the rope that is told by
// its thickness right before it, "12 mm line 32 kN", "14 mm at 48 kN", "1/2 in rope 9000
// lb". In kilonewtons it can be nothing else; a mass is a load unless no rope so thick may
// work at it; the unit is that of a bare number. Which of the two figures of the label it
// is, the thickness may settle.
func ThinRated(rd *reading.Reading, i int, unit *scan.UnitWord) bool {
	const least = 1000 // a bare number; less may be what hangs on the rope
	fig, k := rd.Elems[i].Fig, i-1
	for k >= 0 && ropeLinks(rd, k) {
		k--
	}
	thin := rd.At(k).Fig
	if thin == nil || !OfRope(rd, k) && !(kilonewtons(rd, i) && thinAsGear(rd, k)) {
		return false
	}
	if kilonewtons(rd, i) {
		thin.Rope = true
		return true
	}
	if fig.Dim != parser.DimCount {
		unit = fig.Unit
	}
	end := i + 1
	for rd.At(end).Pause == 0 && rd.At(end).Polite() {
		end++
	}
	enough := fig.Dim != parser.DimCount || fig.Low >= least
	return unit != nil && enough && rd.EndsBreath(end) && k < i-1 && overworks(fig, unit, thickest(rd))
}

// ropeLinks says whether the element at i may stand between how thick a rope is and what
// stands on its label.
func ropeLinks(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	return e.Fig == nil && (e.Pause == 2 || strings.HasPrefix(rd.TermAt(i).Note, "rope-") || cordOr(rd, i) == lexicon.PartRope ||
		e.Marked(lexicon.MarkIs|lexicon.MarkAt|lexicon.MarkRating|lexicon.MarkArticle) && !e.Plays(parser.Weight) && Part(e) == "")
}

package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// BareBends reads "180 bend vs 90 with 500 lb line tension": where a pull in a line is
// told or a force is asked for, a bare number right before the bend is in degrees, and so
// is another that it is held against. Few turns of that many are wraps.
func BareBends(rd *reading.Reading) {
	pulled := func(i int) bool { return rd.TermAt(i).Tension || rd.Cued(rd.Elems[i], lexicon.CueForce) }
	if !rd.AnyAt(pulled) && !gear.AsksFor(rd, parser.AskBlockLoad) {
		return
	}
	for i := 0; i < len(rd.Elems); i++ {
		if !bareBend(rd, i) || !rd.At(i+1).Marked(lexicon.MarkDeflects) {
			continue
		}
		rd.Elems[i].Fig.Unit, rd.Elems[i].Fig.Dim = scan.Degree, parser.DimAngle
		if rd.Cued(rd.At(i+2), lexicon.CueVersus) && bareBend(rd, i+3) {
			a, b := rd.Elems[i].Fig, rd.Elems[i+3].Fig
			whole := *a
			whole.Low, whole.High, whole.End = min(a.Low, b.Low), max(a.High, b.High), b.End
			to := i + 4
			if rd.At(to).Marked(lexicon.MarkDeflects) {
				to++
			}
			word := rd.Elems[i+1]
			rd.Join(i, to-1, &whole)
			rd.Elems[i+1] = word
		}
	}
}

// bareBend says whether the number at i can be degrees that go without their unit.
func bareBend(rd *reading.Reading, i int) bool {
	const least, most = 20, 180
	fig := rd.At(i).Fig
	return fig != nil && (fig.Dim == parser.DimCount && fig.Unit == nil || fig.Dim == parser.DimAngle) && fig.Low >= least && fig.High <= most
}

// RedirectTurns reads "redirect on the next oak turns 120, 400 lb": so many turns a redirect
// makes of no rope, and how far it turns it needs no unit. The comma of "use a pulley as a
// redirect, turns 45" leaves open what turns.
func RedirectTurns(rd *reading.Reading) {
	for i := 1; i < len(rd.Elems); i++ {
		if !rd.At(i-1).Plays(parser.Wraps) || !rd.At(i-1).Marked(lexicon.MarkDeflects) || !bareBend(rd, i) || !redirectBefore(rd, i-1) {
			continue
		}
		fig := rd.Elems[i].Fig
		fig.Unit, fig.Dim = scan.Degree, parser.DimAngle
		rd.Alter(i-1, func(t *scan.Term) { t.Roles, t.Intent = nil, parser.AskBlockLoad })
	}
}

// redirectBefore says whether a redirect is what the verb at i is said of: named before it in
// the same breath, with no number between.
func redirectBefore(rd *reading.Reading, i int) bool {
	for k := i - 1; k >= 0 && rd.At(k).Pause == 0 && rd.At(k).Fig == nil; k-- {
		if parser.Redirecting(rd.TermAt(k).Block) {
			return true
		}
	}
	return false
}

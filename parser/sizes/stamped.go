package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// What a label says is of the gear that it is on, and never what a piece weighs: "the
// strap says 500 lb", "truck winch, it says 3.6 t". What a load cell reads in a jerk is
// a force in the line, and no weight either.

// Stamped gives the numbers that gear is marked with to that gear: a winch its pull,
// the rest is asked about, for either figure may be marked.
func Stamped(rd *reading.Reading) {
	for i := range rd.Elems {
		if !gear.Heavy(rd, i) || rd.Elems[i].Fig.Sure != "" || rd.Elems[i].Fig.Told != "" || rd.At(i+1).Piece() || gear.Strength(rd.At(i+1)) != "" {
			continue
		}
		k := labelledGear(rd, i)
		if k < 0 || gear.RatedBesideWorking(rd, i) != "" {
			continue
		}
		for n := k + 1; n < i; n++ {
			if rd.At(n).Plays(parser.Weight) {
				rd.Alter(n, func(t *scan.Term) { t.Roles = nil })
			}
		}
		if p := gear.Part(rd.At(k)); p != "" {
			gear.AsksStrength(rd, rd.Elems[i].Fig, p)
		} else {
			rd.Elems[i].Fig.Sure = parser.WinchPull
		}
	}
}

// labelledGear finds the gear of which the words before the number at i say that it is
// marked with it, -1 for none. "The guy on the winch says 500 lb" tells of no gear.
func labelledGear(rd *reading.Reading, i int) int {
	k, told := i-1, false
	for ; k >= 0; k-- {
		says := rd.Cued(rd.At(k), lexicon.CueStamped)
		told = told || says
		if rd.At(k).Pause > 0 && rd.At(k+1).Marked(lexicon.MarkPronoun) {
			continue
		}
		if !says && !rd.At(k).Marked(lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkPronoun|lexicon.MarkWhere) && !(rd.At(k).Polite() && gear.Part(rd.At(k)) == "") && rd.TermAt(k).Note != "about" && !(told && thickOf(rd, k)) {
			break
		}
	}
	e := rd.At(k)
	marked := gear.Part(e) == lexicon.PartSling || gear.Part(e) == lexicon.PartBlock || gear.Part(e) == lexicon.PartRope || gear.Part(e) == "" && e.Plays(parser.WinchPull)
	if !told || !marked {
		return -1
	}
	for n := k - 1; n >= 0 && rd.Elems[n].Pause == 0; n-- {
		if n == k-1 && rd.At(n).Marked(lexicon.MarkArticle) {
			continue // "el" is who says it, and an article as well
		}
		if stops.Person(rd, n) || rd.At(n).Plays(parser.People) {
			return -1
		}
	}
	return k
}

// thickOf says whether the element at k stands between gear and what it is marked with
// as how thick it is: "cuerda de 1/2 que dice 8,000 lb".
func thickOf(rd *reading.Reading, k int) bool {
	e := rd.At(k)
	small := e.Fig.Short() || e.Fig != nil && (e.Fig.Rope || e.Fig.Dim == parser.DimCount && e.Fig.Low < 1)
	return small || e.Marked(lexicon.MarkMade) || rd.TermAt(k).HowMuch && rd.TermAt(k).Intent == ""
}

// Metered leaves to be asked what a load cell read: a force, or a mass where a fall is
// told of. It was in the line, and need not be what hung there.
func Metered(rd *reading.Reading) {
	if !rd.AnyAt(func(i int) bool { return rd.Cued(rd.Elems[i], lexicon.CueMeter) }) {
		return
	}
	for i, e := range rd.Elems {
		if gear.Heavy(rd, i) && (e.Fig.Dim == parser.DimForce || gear.AsksFor(rd, parser.AskDrop)) && e.Fig.Sure == "" && e.Fig.Told == "" && !rd.At(i+1).Piece() && !gear.PieceIs(rd, i) {
			e.Fig.Elsewhere = true
		}
	}
}

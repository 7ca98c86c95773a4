package reading

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/scan"
)

// Some numbers are told as they are spoken: "un metro veinte", "30 cm x 3 m
// kilos?".

// SpacedCentimetres reads "35 cm por 1 metro 20" and "un metro veinte" as metres
// and centimetres, where how thick the piece is has been told and nothing more
// is said of the number.
func (rd *Reading) SpacedCentimetres() {
	for i := 0; i+1 < len(rd.Elems); i++ {
		rd.metreAndMore(i)
		rd.oneWithTwenty(i)
		a, b := rd.Elems[i].Fig, rd.At(i+1).Fig
		if !a.wholeMetres() || !b.ofMetre() || !rd.SaidOut(i+2) && (rd.TermAt(i+2).Intent != parser.AskWeight || !rd.SaidOut(i+3)) {
			continue
		}
		if spoken := rd.Crossed(i-2, i) || scan.LetterAt(rd.Text, b.Start); (!spoken || !rd.ThicknessBeside(b)) && !rd.acrossTold(i) && !(rd.spelledOut(a) && rd.ThicknessBeside(b)) {
			continue
		}
		whole := *a
		whole.Low, whole.End = a.Low+b.Low/100, b.End
		whole.High = whole.Low
		rd.Join(i, i+2, &whole)
	}
}

// metreAndMore reads the name of the metre at i with centimetres behind it as one metre
// and so much: "metro veinte", "metro 80 de largo".
func (rd *Reading) metreAndMore(i int) {
	e, b := rd.Elems[i], rd.At(i+1).Fig
	u := rd.In.Units[rd.Word(e)]
	if last := rd.At(i - 1).Fig; u == nil || u.Dim != parser.DimLength || u.Factor != 1 || !e.Marked(lexicon.MarkUnit) || strings.HasSuffix(rd.Word(e), "s") || !b.ofMetre() || last != nil && last.Unit == nil {
		return
	}
	if next := rd.At(i + 2); next.Fig != nil || len(rd.TermAt(i+2).Roles) > 0 && !next.Plays(parser.Length) {
		return
	}
	size := 1 + b.Low/100
	rd.Join(i, i+2, &Figure{Unit: u, Dim: u.Dim, Low: size, High: size, Start: e.Start, End: b.End})
}

// oneWithTwenty reads "1 con 20 de largo" and "40 cm x 1 con 20" as metres and
// centimetres, where nothing else is counted there.
func (rd *Reading) oneWithTwenty(i int) {
	const most = 9
	a, b, end := rd.Elems[i].Fig, rd.At(i+2).Fig, i+3
	if a == nil || a.Unit != nil || a.Dim != parser.DimCount || a.Low != a.High || a.Low < 1 || a.Low > most || a.Low != float64(int(a.Low)) || !b.ofMetre() || !rd.Cued(rd.At(i+1), lexicon.CueWithCentimetres) {
		return
	}
	named := rd.At(end).Marked(lexicon.MarkUnit) && rd.In.Units[rd.Word(rd.At(end))] == scan.UnitNamed["metre"]
	if named {
		end++
	}
	if !named && !rd.At(end).Plays(parser.Length) && !(rd.SaidOut(end) && rd.ThicknessBeside(b)) {
		return
	}
	size, u := a.Low+b.Low/100, scan.UnitNamed["metre"]
	rd.Join(i, end, &Figure{Unit: u, Dim: u.Dim, Low: size, High: size, Start: a.Start, End: rd.Elems[end-1].End})
}

// spelledOut says whether the unit of a number is named in full right behind it, "3
// metros": who speaks so goes on in centimetres.
func (rd *Reading) spelledOut(f *Figure) bool {
	const least = 5 // letters of the name of a metre
	word := f.Words(rd.Text)
	return len(word)-strings.LastIndexAny(word, " 0123456789")-1 >= least
}

// GluedKilos takes the unit off the centimetres of "1m80 kilos?": a number that is
// typed on to its metres weighs nothing, and the unit behind it is what is asked for.
func (rd *Reading) GluedKilos() {
	for i := 0; i+1 < len(rd.Elems); i++ {
		a, b := rd.Elems[i].Fig, rd.At(i+1).Fig
		if !a.wholeMetres() || b == nil || b.Unit != scan.UnitNamed["kilogram"] || b.Start != a.End || !scan.LetterBefore(rd.Text, b.Start) || b.Low != b.High || b.Low < 10 || b.Low >= 100 || !rd.SaidOut(i+2) {
			continue
		}
		whole := *a
		whole.Low, whole.End = a.Low+b.Low/100, b.End
		whole.High = whole.Low
		rd.Join(i, i+2, &whole)
	}
}

// acrossTold says whether a number before the one at i is told to be how thick the
// piece is, so that none that follows is an end of it: "48 de diámetro, 1 metro 80".
func (rd *Reading) acrossTold(i int) bool {
	return rd.AnyAt(func(k int) bool {
		return k < i && rd.Elems[k].Fig != nil && (rd.At(k+1).Plays(parser.Diameter) || rd.At(rd.Past(k-1, -1, lexicon.MarkIs)).Plays(parser.Diameter))
	})
}

// wholeMetres says whether the number is so many metres.
func (f *Figure) wholeMetres() bool {
	return f != nil && f.Dim == parser.DimLength && f.Unit.Factor == 1 && f.Low == f.High && f.Low >= 1 && f.Low == float64(int(f.Low))
}

// ofMetre says whether a bare number can be the centimetres behind metres: two
// figures of them.
func (f *Figure) ofMetre() bool {
	return f != nil && f.Dim == parser.DimCount && f.Unit == nil && f.Low == f.High && f.Low >= 10 && f.Low < 100 && f.Low == float64(int(f.Low))
}

// AnswerUnits reads "30 cm x 3 m kilos?" as what the answer is wanted in. Of a
// length that nothing is crossed with, "600 ft lbs" is another unit.
func (rd *Reading) AnswerUnits() {
	for i, e := range rd.Elems {
		u := rd.In.Units[scan.Fold(rd.Text[e.Start:e.End])]
		if u == nil || u.Dim != parser.DimMass || u.Unsure || e.Fig != nil || !e.Marked(lexicon.MarkUnit) || i == 0 {
			continue
		}
		fig := rd.Elems[i-1].Fig
		if fig != nil && fig.Dim == parser.DimLength && rd.Crossed(i-3, i-1) && fig.Unit.System == u.System && rd.SaidOut(i+1) {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Units: u.System} })
		}
	}
}

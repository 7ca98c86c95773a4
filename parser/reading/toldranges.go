package reading

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/scan"
)

// GiveOrTake reads "110 kilos give or take 10" as 100 to 120 kilos.
func (rd *Reading) GiveOrTake(i int) {
	const most = 0.5 // of the number itself
	a, b := rd.At(i-1).Fig, rd.At(i+1).Fig
	if a == nil || b == nil || a.Unit == nil || a.Low != a.High || b.Low != b.High || !rd.SaidOut(i+2) {
		return
	}
	if b.Unit != a.Unit && (b.Unit != nil || b.Dim != parser.DimCount) {
		return
	}
	step := b.In(a)
	if step <= 0 || step > most*a.Low {
		return
	}
	whole := *a
	whole.Low, whole.High, whole.End = a.Low-step, a.High+step, b.End
	rd.Join(i-1, i+2, &whole)
}

// SaidOut says whether nothing but courtesy follows from the element at i on
// before a breath.
func (rd *Reading) SaidOut(i int) bool {
	for rd.At(i).Polite() {
		i++
	}
	return rd.EndsBreath(i)
}

// Join puts one number in the place of the elements from one up to another.
func (rd *Reading) Join(from, to int, f *Figure) {
	rd.Elems[from] = Element{Start: f.Start, End: f.End, Fig: f}
	rd.Elems = append(rd.Elems[:from+1], rd.Elems[to:]...)
}

// EitherWraps reads the bare number that stands beside another of wraps, "2
// wraps or 3", as the other end of a range: what is planned on is the fewer.
func (rd *Reading) EitherWraps(i int) {
	a, j := rd.At(i-1).Fig, rd.orElse(i+1)
	if b := rd.At(j).Fig; j > 0 && a.wound() && b.wound() && (rd.SaidOut(j+1) || rd.onMass(j+1)) {
		whole := *a
		whole.Low, whole.High = min(a.Low, b.Low), max(a.High, b.High)
		rd.Elems[i-1].Fig = &whole
		rd.Elems = append(rd.Elems[:i+1], rd.Elems[j+1:]...)
	}
}

// onMass says whether the words at i lead to a mass: "3 wraps or 4 on 700 lb", "for 1200",
// which counts nothing and is asked for its unit.
func (rd *Reading) onMass(i int) bool {
	const leastBare = 100
	fig := rd.At(i + 1).Fig
	return rd.At(i).Marked(lexicon.MarkIn|lexicon.MarkWhere) && fig != nil && (fig.Dim == parser.DimMass || fig.Dim == parser.DimCount && fig.Unit == nil && fig.Low >= leastBare)
}

// wound says whether a bare number can count wraps.
func (f *Figure) wound() bool {
	return f != nil && f.Unit == nil && f.Dim == parser.DimCount && f.Low == f.High && f.Low > 0 && f.High <= MostWraps
}

// orElse finds the number behind "or", or behind who says another, from i on;
// -1 where none is said so, or something else is counted before it.
func (rd *Reading) orElse(i int) int {
	const farthest = 8 // "2 wraps are enough for the piece i say 3"
	for j := i; j < len(rd.Elems) && j <= i+farthest; j++ {
		e := rd.Elems[j]
		switch {
		case e.Fig != nil && rd.TermAt(j-1).ISay:
			return j
		case e.Fig != nil || e.Pause > 2 || e.Term != nil && len(e.Term.Roles) > 0:
			return -1
		}
	}
	return -1
}

// QuarterOf reads the quarter of a unit at i, right behind what can hold no part
// of the number: "one and a quarter tonne" is more.
func (rd *Reading) QuarterOf(i int) {
	const part = 0.25
	e := rd.At(i + 1)
	u := rd.In.Units[scan.Fold(rd.Text[e.Start:e.End])]
	if u == nil || u.Unsure || !e.Marked(lexicon.MarkUnit) || !rd.SaidOut(i+2) && !rd.At(i+2).Piece() {
		return
	}
	if j := rd.Past(i-1, -1, lexicon.MarkArticle); j >= 0 && rd.At(j).Pause == 0 && !rd.At(j).Marked(lexicon.MarkIs|lexicon.MarkWhere) && rd.TermAt(j).Intent == "" {
		return
	}
	start := rd.Elems[i].Start
	rd.Join(i, i+2, &Figure{Unit: u, Dim: u.Dim, Low: part * u.Factor, High: part * u.Factor, Start: start, End: e.End})
}

// ShapedOrNamed says whether the message names a piece.
func (rd *Reading) ShapedOrNamed() bool {
	return rd.AnyAt(func(k int) bool { return rd.Elems[k].Piece() })
}

package sizes

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// A standing stem is told by how thick it is at two heights: "28 in at the ground and 14 in
// at 45 ft". What lies between them is the piece: its butt, its tip, and the difference of
// the heights as its length.

// taped is a thickness of a standing stem and the height that it is told at.
type taped struct {
	thick    *reading.Figure
	high     *reading.Figure // nil at the ground
	from, to int
}

// EndsAtHeights makes a piece of such a stem. Of limbs the heights tell where each grows.
func EndsAtHeights(rd *reading.Reading) {
	if gear.ShapedFrom(rd, 0, parser.Limb) || rd.AnyAt(func(i int) bool {
		return rd.Elems[i].Piece() && rd.TermAt(i).Tree == nil && Plural(rd, i) && !rd.Elems[i].Marked(lexicon.MarkRound)
	}) {
		return
	}
	for i := range rd.Elems {
		a, ok := tapedAt(rd, i)
		if !ok {
			continue
		}
		j := a.to
		for rd.At(j).Pause == 2 || rd.At(j).Marked(lexicon.MarkAnd|lexicon.MarkIs|lexicon.MarkTaper) && rd.At(j).Fig == nil {
			j++
		}
		if b, ok := tapedAt(rd, j); ok && oneStem(rd, &a, &b) {
			stemBetween(rd, a, b)
			return
		}
	}
}

// tapedAt reads one thickness with its height at i.
func tapedAt(rd *reading.Reading, i int) (taped, bool) {
	single := func(f *reading.Figure) bool {
		return f != nil && f.Told == "" && !f.Pair && !f.Falling && f.Low == f.High && f.Low > 0
	}
	bare := func(f *reading.Figure) bool { return f.Dim == parser.DimCount && f.Unit == nil }
	fig := rd.At(i).Fig
	if !single(fig) || !fig.Short() && !bare(fig) {
		return taped{}, false
	}
	t := taped{thick: fig, from: i, to: i + 2}
	if rd.TermAt(i+1).LowEnd || fig.Short() && rd.At(i+1).Plays(parser.ButtDiameter) && rd.At(i+2).Pause == 2 {
		return t, true // "70 cm at butt, 45 at 14 m"
	}
	t.high = rd.At(i + 2).Fig
	if !rd.At(i+1).Marked(lexicon.MarkAt) || !single(t.high) || !t.high.Far() && !bare(t.high) {
		return taped{}, false
	}
	for t.to = i + 3; rd.At(t.to).LooksBack(parser.HitchHeight) || rd.At(t.to).Marked(lexicon.MarkUpward|lexicon.MarkHigh); {
		t.to++ // "4 m up"
	}
	return t, true
}

// oneStem says whether two such places are of one stem, the thicker one below, and lends
// their units to the numbers that have none.
func oneStem(rd *reading.Reading, a, b *taped) bool {
	var fine, coarse *scan.UnitWord
	for _, t := range []*taped{a, b} {
		if t.thick.Short() {
			fine = t.thick.Unit
		}
		if t.high.Far() {
			coarse = t.high.Unit
		}
	}
	if coarse == nil {
		return false
	}
	for _, t := range []*taped{a, b} {
		if t.high != nil && t.high.Unit == nil && t.high.Low*coarse.Factor > Highest {
			return false
		}
		if u := ThicknessIn(t.thick.High, fine, coarse); t.thick.Unit == nil && u == nil {
			return false
		}
	}
	for _, t := range []*taped{a, b} {
		lentIfBare(t.thick, ThicknessIn(t.thick.High, fine, coarse))
		if t.high != nil {
			lentIfBare(t.high, coarse)
		}
	}
	if a.height() > b.height() {
		*a, *b = *b, *a
	}
	return a.height() < b.height() && a.thick.Low > b.thick.Low
}

// height is how high the place is, in metres.
func (t taped) height() float64 {
	if t.high == nil {
		return 0
	}
	return t.high.Low
}

// stemBetween puts the piece in place of what was told of its ends. How far down it is cut
// is passed over: the plan is of all of it.
func stemBetween(rd *reading.Reading, low, high taped) {
	low.thick.Told, high.thick.Told = parser.ButtDiameter, parser.TipDiameter
	long := *high.high
	long.Low, long.High, long.Told = high.height()-low.height(), high.height()-low.height(), parser.Length
	if low.high != nil { // both heights tell it
		long.Start, long.End = min(low.high.Start, high.high.Start), max(low.high.End, high.high.End)
	}
	first, last := low, high
	if first.from > last.from {
		first, last = last, first
	}
	var pieces []reading.Element
	for _, f := range []*reading.Figure{low.thick, high.thick, high.high} {
		pieces = append(pieces, reading.Element{Start: f.Start, End: f.End, Fig: f})
	}
	pieces[2].Fig = &long
	slices.SortFunc(pieces, func(a, b reading.Element) int { return a.Start - b.Start })
	rd.Elems = slices.Replace(rd.Elems, first.from, last.to, pieces...)
	for k := first.from + len(pieces); k < len(rd.Elems); k++ {
		if rd.Elems[k].Marked(lexicon.MarkTaper) && gear.Far(rd, k+1) && rd.Elems[k+1].Fig.High < high.height() {
			rd.Pass(k, k+2) // "down to 30 ft"
			return
		}
	}
}

package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// CutterAt reads "how big a top can he take, he's at 26 cm" as how thick the piece is
// where who cuts it stands: nobody is so few inches or centimetres up.
func CutterAt(rd *reading.Reading) {
	const thinnest, thickest = 0.08, 1.5
	for i, e := range rd.Elems {
		if !e.Fig.Short() || e.Fig.Rope || e.Fig.Pair || e.Fig.Told != "" || e.Fig.Low < thinnest || e.Fig.High > thickest || !rd.EndsBreath(i+1) || rd.ThicknessBeside(e.Fig) {
			continue
		}
		if at := rd.At(i - 1); at.Marked(lexicon.MarkPerson) && at.Marked(lexicon.MarkPlace) {
			e.Fig.Told = parser.AcrossField(gear.ShapedFrom(rd, 0, parser.Limb))
			return
		}
	}
}

// CutAt reads "a top, 35 ft, cut at 11 inch" as how thick the top is where it is cut:
// its butt, whatever is asked of its tip. Logs and rounds are cut at a length as well.
func CutAt(rd *reading.Reading) {
	top := rd.AnyAt(func(i int) bool { return rd.TermAt(i).Shape == parser.Limb })
	if !top || gear.AsksFor(rd, parser.AskCutPlan) || !rd.AnyAt(rd.Is(gear.Far)) {
		return
	}
	for i, e := range rd.Elems {
		at := rd.At(i - 1)
		behind := rd.At(i + 1)
		if e.Fig == nil || !e.Fig.Short() || e.Fig.Rope || e.Fig.Pair || e.Fig.High <= reading.ThickestRope || e.Fig.Told != "" || behind.Looks(lexicon.Before) || behind.Cross {
			continue
		}
		if at.Marked(lexicon.MarkAt) && rd.Cued(rd.At(i-2), lexicon.CueCutting) {
			e.Fig.Told = parser.ButtDiameter
			return
		}
	}
}

// CutLong reads "cut it at 3 ft" and "corto a 90 cm" of a piece whose thickness is told
// beside it or was before as how long the piece is then: a cut is so far from the end. What
// is told in inches or centimetres is so only where no length is known, or where the piece
// is not that thick; much more, or of a stem, is rather how high somebody cuts.
func CutLong(rd *reading.Reading) {
	const longest = 2.5
	stands := func(i int) bool {
		return rd.TermAt(i).Shape == parser.Limb || rd.Cued(rd.Elems[i], lexicon.CueTheTrunk)
	}
	if gear.AsksFor(rd, parser.AskCutPlan) || rd.AnyAt(stands) {
		return
	}
	for i, e := range rd.Elems {
		f := e.Fig
		if f == nil || f.Dim != parser.DimLength || f.Unit == nil || f.Rope || f.Pair || f.Told != "" || f.High > longest || !saidThere(rd, i+1) {
			continue
		}
		at := rd.Past(i-1, -1, lexicon.MarkAt|lexicon.MarkPronoun|lexicon.MarkArticle)
		if rd.At(i-1).Marked(lexicon.MarkAt) && rd.Cued(rd.At(at), lexicon.CueCutting) && longCut(rd, i) {
			f.Told = parser.Length
			return
		}
	}
}

// longCut says whether the number at i behind "cut at" can only be how long the piece is.
func longCut(rd *reading.Reading, i int) bool {
	const thicker = 1.2 // than a piece that was measured by eye
	f := rd.Elems[i].Fig
	across, told := thickBefore(rd)
	length := rd.Before.Has(parser.Length)
	here := rd.AnyAt(func(k int) bool { return k != i && rd.Elems[k].Fig.Short() && !rd.Elems[k].Fig.Rope })
	far := rd.AnyAt(func(k int) bool { return k != i && gear.Far(rd, k) })
	switch {
	case far || !here && !told:
		return false
	case f.Far(), here && !length:
		return true
	}
	return told && (!length || f.Low > thicker*across)
}

// thickBefore is how thick the piece of the talk is.
func thickBefore(rd *reading.Reading) (float64, bool) {
	for _, f := range []parser.Field{parser.ButtDiameter, parser.Diameter, parser.MidDiameter} {
		if q, ok := rd.Before.Get(f); ok {
			return q.High, true
		}
	}
	return 0, false
}

// saidThere says whether what is told before the element at i is told whole: a breath ends
// there, or something is asked.
func saidThere(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	return rd.EndsBreath(i) || rd.Cued(rd.At(i), lexicon.CueClause) || t.Intent != "" && !t.Besides || t.HowMuch
}

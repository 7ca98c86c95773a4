package senses

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// A talk that has told how long a stem is, or how thick, asks for its ends, and a crew tells
// both in one breath and without a unit: "24 bottom 13 top", "60 abajo 40 arriba".

// EndsInTalk tells the two bare numbers of such a message as the thicknesses at those ends, in
// the units of the talk.
func EndsInTalk(rd *reading.Reading, before parser.Question) {
	var at []int
	for i, e := range rd.Elems {
		if e.Fig != nil {
			at = append(at, i)
		}
	}
	if len(at) != 2 || !before.Has(parser.Length) && !before.Has(parser.Across...) || !onlyEnds(rd) {
		return
	}
	low, up := lowAndUp(rd, at[0], at[1])
	if low < 0 || !bareEnd(rd.Elems[low].Fig) || !bareEnd(rd.Elems[up].Fig) || rd.Elems[low].Fig.High < rd.Elems[up].Fig.High {
		return
	}
	u := unitOfTalk(rd.Elems[low].Fig.High, before)
	if u == nil {
		return
	}
	for i, f := range map[int]parser.Field{low: parser.ButtDiameter, up: parser.TipDiameter} {
		told := *rd.Elems[i].Fig
		told.Lent(u)
		told.Told, told.Elsewhere, told.Claimed = f, false, ""
		rd.Elems[i].Fig = &told
	}
	ofEnd(rd)
}

// bareEnd says whether a number can be how thick an end is, and only its unit is not told.
func bareEnd(f *reading.Figure) bool {
	return f.Dim == parser.DimCount && f.Unit == nil && !f.Pair && !f.Falling && f.Told == ""
}

// onlyEnds says whether nothing is told or asked besides ends and numbers.
func onlyEnds(rd *reading.Reading) bool {
	return !rd.AnyAt(func(i int) bool {
		t := rd.TermAt(i)
		return t.Tree != nil || t.Intent != "" || t.Block != "" || t.Part != "" || t.Denies || t.Human || t.Someone
	})
}

// lowAndUp are which of two numbers is told of the thick end and which of the thin one, by the
// words behind each of them, or else before each; -1 where they do not tell.
func lowAndUp(rd *reading.Reading, a, b int) (low, up int) {
	for _, step := range []int{+1, -1} {
		switch x, y := endBeside(rd, a, step), endBeside(rd, b, step); {
		case x == parser.ButtDiameter && y == parser.TipDiameter:
			return a, b
		case x == parser.TipDiameter && y == parser.ButtDiameter:
			return b, a
		}
	}
	return -1, -1
}

// endBeside is the end that the words right behind the number at i name, or those right before
// it; "" for none, or both.
func endBeside(rd *reading.Reading, i, step int) parser.Field {
	named := rd.At(rd.Past(i+step, step, lexicon.MarkAt|lexicon.MarkArticle|lexicon.MarkWhere|lexicon.MarkIs))
	typed := rd.TypedBefore
	if step > 0 {
		typed = rd.TypedAfter
	}
	says := func(f parser.Field, cues ...scan.Cue) bool {
		for _, c := range cues {
			if typed(i, c) {
				return true
			}
		}
		return named.Plays(f)
	}
	low := says(parser.ButtDiameter, lexicon.CueLowEnd, lexicon.CueThickEnd)
	up := says(parser.TipDiameter, lexicon.CueUpEnd, lexicon.CueFarEnd)
	switch {
	case low == up:
		return ""
	case low:
		return parser.ButtDiameter
	}
	return parser.TipDiameter
}

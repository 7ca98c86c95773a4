package senses

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/sizes"
)

// Once a cut plan is asked for, the crew tells the stem's two ends one by one: "20 at the
// bottom", then "9 up top". There, up and down are the ends of the stem, and no place of a
// block.

// EndInTalk tells the one number of such a message as the thickness at that end, in the
// units of the talk.
func EndInTalk(rd *reading.Reading, before parser.Question) {
	if before.Intent != parser.AskCutPlan || !before.Has(parser.Length) && !before.Has(parser.Across...) {
		return
	}
	at := rd.Only(func(i int) bool { return rd.Elems[i].Fig != nil })
	if at < 0 || !endAlone(rd, at) {
		return
	}
	fig := rd.Elems[at].Fig
	up, down := atEnd(rd, at, lexicon.CueUpEnd), atEnd(rd, at, lexicon.CueLowEnd)
	if up == down || fig.Pair || fig.Falling || fig.Told != "" || !fig.Short() && (fig.Dim != parser.DimCount || fig.Unit != nil) {
		return
	}
	if fig.Unit == nil {
		u := unitOfTalk(fig.Low, before)
		if u == nil {
			return
		}
		fig.Lent(u)
	}
	fig.Told, fig.Elsewhere, fig.Claimed = parser.ButtDiameter, false, ""
	if up {
		fig.Told = parser.TipDiameter
	}
	for i := range rd.Elems {
		if t := rd.Elems[i].Term; t != nil && len(t.Roles) > 0 {
			rd.Elems[i].Term = &scan.Term{}
		}
	}
}

// endAlone says whether nothing is told beside the number at i but an end.
func endAlone(rd *reading.Reading, at int) bool {
	return !rd.AnyAt(func(i int) bool {
		e, t := rd.Elems[i], rd.TermAt(i)
		end := at-2 <= i && i <= at+2 // "18 down at the bottom"
		return i != at && e.Pause == 0 && (t.Tree != nil || t.Shape != "" && !end || t.Intent != "" || t.Block != "" || t.Part != "" || t.Denies || len(t.Roles) > 0 && !end)
	})
}

// atEnd says whether the words of an end stand right beside the number at i.
func atEnd(rd *reading.Reading, i int, end scan.Cue) bool {
	return rd.TypedAfter(i, end) || rd.TypedBefore(i, end)
}

// unitOfTalk is the unit of a bare thickness, by what a talk has told of the stem; nil where
// it would be none.
func unitOfTalk(n float64, before parser.Question) *scan.UnitWord {
	told, ok := before.Get(parser.Length)
	for _, f := range parser.Across {
		if x, across := before.Get(f); across {
			told, ok = x, true
		}
	}
	switch {
	case !ok:
		return nil
	case told.System == parser.Metric:
		return sizes.ThicknessIn(n, nil, scan.Metre)
	}
	return sizes.ThicknessIn(n, scan.Inch, nil)
}

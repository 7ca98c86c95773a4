package senses

import (
	"slices"

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
// units of the talk. In other talks only words that no block stands beside tell of an end,
// "about 5 at the far end", and only a number that goes with the thickness that was told.
func EndInTalk(rd *reading.Reading, before parser.Question) {
	plan := before.Intent == parser.AskCutPlan && (before.Has(parser.Length) || before.Has(parser.Across...))
	if !plan && !before.Has(parser.Across...) {
		return
	}
	at := rd.Only(func(i int) bool { return rd.Elems[i].Fig != nil })
	if at < 0 || !endAlone(rd, at) {
		return
	}
	fig := rd.Elems[at].Fig
	far, thick := rd.EverTyped(lexicon.CueFarEnd), rd.EverTyped(lexicon.CueThickEnd)
	plan = plan || before.Has(parser.TipDiameter) && !before.Has(parser.HitchHeight, parser.BlockHeight)
	up, down := far || plan && atEnd(rd, at, lexicon.CueUpEnd), thick || plan && atEnd(rd, at, lexicon.CueLowEnd)
	if up == down || fig.Pair || fig.Falling || fig.Told != "" || !fig.Short() && (fig.Dim != parser.DimCount || fig.Unit != nil) {
		return
	}
	told := *fig
	if told.Unit == nil {
		u := unitOfTalk(fig.Low, before)
		if u == nil {
			return
		}
		told.Lent(u)
	}
	told.Told, told.Elsewhere, told.Claimed = parser.ButtDiameter, false, ""
	if up {
		told.Told = parser.TipDiameter
	}
	if !plan && !goesWith(told, before) {
		return
	}
	rd.Elems[at].Fig = &told
	ofEnd(rd)
}

// goesWith says whether a thickness can be that of one end where the talk has told another:
// the thin end is the thinner, and the thick one not much thicker.
func goesWith(end reading.Figure, before parser.Question) bool {
	const most = 2.5 // a trunk is seldom that much thicker at its foot; common practice, no source
	for _, f := range parser.Across {
		was, ok := before.Get(f)
		if ok && f != end.Told && (end.Told == parser.TipDiameter && end.High > was.High || end.Told == parser.ButtDiameter && (end.Low < was.Low || end.High > most*was.High)) {
			return false
		}
	}
	return true
}

// ofEnd takes the meaning from the words beside a thickness that tell of an end, and the
// doubt from those of them that are not known else, "further".
func ofEnd(rd *reading.Reading) {
	for i, e := range rd.Elems {
		top := rd.TermAt(i).Shape != "" && rd.SaidTo(lexicon.CueUpEnd, e.Start) >= 0 // "the top is 30"
		if t := e.Term; t != nil && (len(t.Roles) > 0 || top) {
			rd.Elems[i].Term = &scan.Term{}
		}
	}
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool {
		return a.Kind == parser.Unknown && (rd.SaidTo(lexicon.CueFarEnd, a.Start) >= 0 || rd.SaidTo(lexicon.CueThickEnd, a.Start) >= 0)
	})
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

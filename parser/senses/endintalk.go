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
	if !plan && (!goesWith(told, before) || rd.AnyAt(func(i int) bool { return i != at && saysMore(rd, i) })) {
		return
	}
	rd.Elems[at].Fig = &told
	ofEnd(rd)
}

// goesWith says whether a thickness can be that of one end where the talk has told another:
// the thin end is the thinner, and neither is told anew as something far from it.
func goesWith(end reading.Figure, before parser.Question) bool {
	const most = 2.5 // a trunk is seldom that much thicker at its foot; common practice, no source
	for _, f := range parser.Across {
		was, ok := before.Get(f)
		thin := end.Told == parser.TipDiameter
		switch far := end.Low > most*was.High || was.Low > most*end.High; {
		case !ok:
		case f == end.Told && far, f != end.Told && thin && end.High > was.High, f != end.Told && !thin && (end.Low < was.Low || far):
			return false
		}
	}
	return true
}

// saysMore says whether the element at i tells of anything but an end and how thick it is:
// "4 guys at the far end", "lands 8 by the stump".
func saysMore(rd *reading.Reading, i int) bool {
	e, t := rd.Elems[i], rd.TermAt(i)
	if t.Note == "about" {
		return false // "i guess"
	}
	other := func(r scan.Role) bool {
		return !parser.Thickness(r.Field) && r.Field != parser.Length && r.Field != parser.HitchHeight
	}
	who := t.Human || t.Someone || e.Marked(lexicon.MarkPerson)
	return e.Marked(lexicon.MarkPlace|lexicon.MarkGear) || t.Machine || rd.Cued(e, lexicon.CueOwns) || who && !measuredEnd(rd, i) || slices.ContainsFunc(t.Roles, other)
}

// measuredEnd says whether the words at i name the thick end of what is measured, "el de
// abajo mide más": else "el de abajo" may be a man.
func measuredEnd(rd *reading.Reading, i int) bool {
	e := rd.Elems[i]
	named := rd.SaidTo(lexicon.CueThickEnd, e.Start) >= 0 || i > 0 && rd.SaidTo(lexicon.CueThickEnd, rd.At(i-1).Start) >= e.End
	return named && rd.EverTyped(lexicon.CueMeasures)
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

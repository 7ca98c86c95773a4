package bounds

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// What a piece may weigh is told as what none of them is, too: "so no piece is over 500",
// "none of em go over 400 lb", "pa que ninguna pase de 700". It denies nothing else.

// NoneOver makes the number at i the limit where the words before it say that no piece is
// more, and asks for the cut of wood whose length is told. It says whether it did.
func NoneOver(rd *reading.Reading, i int) bool {
	from, start := noneThan(rd, i, lexicon.CueExceeds)
	if from < 0 || ofGear(rd, i+1) {
		return false
	}
	leads := func(words string) bool {
		return rd.CuedAs(words, lexicon.CueNoneOver) || rd.CuedAs(words, lexicon.CueExceeds)
	}
	within := func(a, b int) bool { return a >= start && b <= rd.Elems[i].Start }
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool { return a.Kind == parser.Unknown && within(a.Start, a.End) && leads(a.Words) })
	rd.Passed = slices.DeleteFunc(rd.Passed, func(p parser.Said[string]) bool { return within(p.Start, p.End) && leads(p.Words) })
	cut := !gear.AsksFor(rd, parser.AskCutPlan) && rd.AnyAt(rd.Is(gear.Far))
	if LimitAt(rd, from, i); cut && from < i-1 {
		rd.Elems[from].Term = &scan.Term{Intent: parser.AskCutPlan, Besides: true}
	}
	return true
}

// NoneUnder asks about the least that a piece may weigh, "so nothing weighs under 400 lb":
// no piece is cut by that, and it is the contrary of a limit. It says whether it did.
func NoneUnder(rd *reading.Reading, i int) bool {
	from, start := noneThan(rd, i, lexicon.CueFewerThan)
	if from < 0 {
		return false
	}
	rd.Asks = append(rd.Asks, reading.AskAt(parser.Twist, rd.Text, start, rd.Elems[i].End-start))
	return true
}

// noneThan finds the element that begins to say, in the breath of the number at i, that
// no piece is over it, or under, by the cue of that, and where its words begin; -1 where
// that is said of no piece.
func noneThan(rd *reading.Reading, i int, than scan.Cue) (from, start int) {
	const most = 9 // "so none of the chunks weigh more than about 400 lb"
	from = i
	for from > 0 && i-from < most && rd.At(from-1).Pause == 0 && rd.At(from-1).Fig == nil && ofWeights(rd, from-1) {
		from--
	}
	none, over := -1, false
	for at := reachBack(rd, from); at < rd.Elems[i].Start; at++ {
		if scan.LetterBefore(rd.Text, at) {
			continue
		}
		switch {
		case rd.SaidTo(lexicon.CueNoneOver, at) >= 0:
			none, over = at, false
		case rd.SaidTo(lexicon.CueOutcome, at) >= 0:
			none = -1 // "none of them went over 500 lb" tells what was
		}
		over = over || leadsThan(rd, at, i, than)
	}
	if none < 0 || !over {
		return -1, 0
	}
	for from < i-1 && rd.Elems[from].End <= none {
		from++
	}
	return from, none
}

// leadsThan says whether the words at a place in the text say "more than", or what else the
// cue does, and nothing but what links them to the number at i stands behind them.
func leadsThan(rd *reading.Reading, at, i int, than scan.Cue) bool {
	end := rd.SaidTo(than, at)
	if end < 0 {
		return false
	}
	links := func(k int) bool {
		return rd.At(k).Marked(lexicon.MarkArticle|lexicon.MarkRelation|lexicon.MarkMade) || rd.TermAt(k).Note == "about"
	}
	for k := i - 1; k >= 0 && rd.Elems[k].Start >= end; k-- {
		if !links(k) {
			return false
		}
	}
	return true
}

// ofWeights says whether the word at i can stand where it is told what pieces may weigh: it
// is of no gear and nobody, and leads to nothing but a weight.
func ofWeights(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	weighs := rd.At(i).Plays(parser.Weight) || t.Intent == parser.AskWeight || t.Note == "about"
	return weighs && !stops.Kit(rd, i) || ofPieces(rd, i)
}

// ofGear says whether it is gear that the number before i is told of: "nothing over 500 lb
// on the block".
func ofGear(rd *reading.Reading, i int) bool {
	on := rd.Past(i, +1, lexicon.MarkArticle|lexicon.MarkWhere|lexicon.MarkIn|lexicon.MarkRelation)
	return gear.Part(rd.At(on)) != "" || rd.At(on).Marked(lexicon.MarkLoaded) || rd.TermAt(on).Anchors || rd.TermAt(i).Anchors
}

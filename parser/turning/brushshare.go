package turning

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// BrushShare notes "heavy brush on the last half" at the share i, where it is asked how a
// limb balances, and says whether it did: no part of the limb is meant, but where it is
// heavy.
func BrushShare(rd *reading.Reading, i int) bool {
	const within = 7
	share := TurnedBy(rd, i) == parser.TurnsPart || TurnedBy(rd, i) == parser.TurnsPeople // "the last half, butcher"
	if !share || !balances(rd) || rd.At(i-1).Fig != nil {
		return false
	}
	for k := i - 1; k >= 0 && i-k <= within && rd.Elems[k].Pause == 0 && rd.Elems[k].Fig == nil; k-- {
		if !rd.TermAt(k).Leafed && !rd.Elems[k].Marked(lexicon.MarkPart) || !outerShare(rd, k, i) {
			continue
		}
		start, end := rd.Elems[k].Start, rd.Elems[i].End
		rd.Passed = slices.DeleteFunc(rd.Passed, func(p parser.Said[string]) bool { return p.Start >= start && p.Start <= end })
		rd.Elems[i].Term = &scan.Term{Note: parser.TipHeavy}
		if heavy := rd.At(k - 1); heavy.Plays(parser.Weight) && rd.At(k-2).Fig == nil {
			rd.Elems[k-1].Term = &scan.Term{} // "heavy brush" asks for no weight
		}
		return true
	}
	return false
}

// outerShare says whether words between the brush at one element and the share at another,
// or right behind that, say that it is the share at the tip.
func outerShare(rd *reading.Reading, from, i int) bool {
	outer := func(w string) bool { return rd.In.Cued(w, lexicon.CueOuter) }
	behind, _ := scan.NextWord(rd.Text[rd.Elems[i].End:])
	second := scan.SplitWords(rd.Text[rd.Elems[i].End:])
	between := scan.SplitWords(rd.Text[rd.Elems[from].Start:rd.Elems[i].Start])
	return slices.ContainsFunc(between, outer) || outer(behind) || len(second) > 1 && outer(second[1])
}

// BrushOut passes over how much of its end a limb has its brush on, "most of the brush is
// out in the last 10 ft": it tells no length of the limb, but where it is heavy.
func BrushOut(rd *reading.Reading) {
	for i := range rd.Elems {
		if !rd.Elems[i].Fig.Far() || !rd.TypedBefore(i, lexicon.CueOutmost) || rd.At(i+1).Piece() {
			continue
		}
		k := i - 1
		for k >= 0 && rd.Elems[k].Pause == 0 && rd.Elems[k].Fig == nil && !brushAt(rd, k) {
			k--
		}
		if k < 0 || !brushAt(rd, k) {
			continue
		}
		if Blank(rd, i, i+1); balances(rd) {
			rd.Elems[i].Term = &scan.Term{Note: parser.TipHeavy}
		}
	}
}

// brushAt says whether the word at i names leaves and twigs.
func brushAt(rd *reading.Reading, i int) bool { return rd.At(i).Marked(lexicon.MarkPart) }

// balances says whether it is asked how a piece balances.
func balances(rd *reading.Reading) bool {
	return rd.AnyAt(func(k int) bool { return rd.TermAt(k).Intent == parser.AskBalance })
}

package turning

import (
	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// "Isnt that too much for 2 wraps" and "wont it be over 500 lb" ask, and deny nothing:
// who is asked of stands behind the denial, which begins what is said.

// asksNegated says whether the denial at i asks so of nothing but wraps, people and what
// a piece may weigh. What it would be taken for of sizes, trees, wood and gear, "isnt it
// 14 in", nobody has told.
func asksNegated(rd *reading.Reading, i int) bool {
	e, next := rd.Elems[i], rd.At(i+1)
	if !rd.Cued(e, lexicon.CueNot) || rd.TermAt(i).Denies || rd.TermAt(i).Purpose || i > 0 && rd.At(i-1).Pause == 0 && !rd.Cued(rd.At(i-1), lexicon.CueClause) {
		return false
	}
	wraps := next.Fig != nil && rd.At(i+2).Plays(parser.Wraps) // "isnt 3 wraps too much"
	if !wraps && (!rd.Cued(next, lexicon.CueUs) && !next.Marked(lexicon.MarkPronoun|lexicon.MarkArticle) || next.Fig != nil) {
		return false
	}
	asks := false
	for k := i + 1; k < len(rd.Elems) && rd.Elems[k].Pause == 0; k++ {
		el, t := rd.Elems[k], rd.TermAt(k)
		counted := CountedBy(rd, k+1) || bounds.Mass(rd, k) && (rd.At(k-1).Plays(parser.Limit) || rd.At(k-1).Marked(lexicon.MarkBound)) || wraps && bounds.Mass(rd, k)
		switch {
		case el.Fig != nil && !counted, el.Fig == nil && (t.Tree != nil || t.Condition != "" || t.Note != "" && t.Note != "about" || t.Damaged || t.Frail || t.Ask != "" || gear.Strength(el) != ""):
			return false
		}
		asks = asks || el.Fig != nil
	}
	return asks
}

// notEnough says whether the denial at i only doubts the wraps that are told right before
// it, which the answer judges: "is 3 wraps not enough for 900 lb", "the boss says 3 wraps
// aint enough".
func notEnough(rd *reading.Reading, i int) bool {
	next := rd.At(rd.Past(i+1, +1, lexicon.MarkIs))
	denies := rd.TermAt(i).Denies || rd.Cued(rd.Elems[i], lexicon.CueNot)
	wraps := rd.At(i-1).Plays(parser.Wraps) && rd.At(i-1).Fig == nil && rd.At(i-2).Fig != nil
	return wraps && denies && rd.Cued(next, lexicon.CueEnough)
}

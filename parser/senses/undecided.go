package senses

import (
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/stops"
	"heft/parser/turning"
)

// Who cannot tell which of two it is says no more than "or" does: "cant tell if its ash
// or elm", "willow or poplar, not sure from here", "cant tell, 14 or 16 in". Of two
// trees nobody can say which then, and the heavier is planned on.

// Undecided leaves such words out.
func Undecided(rd *reading.Reading) {
	tree, b, ok := EitherTrees(rd)
	if !ok || !OrBetween(rd, tree, b) {
		tree = -1
	}
	for i := range rd.Elems {
		switch end := doubtEnd(rd, i, tree); {
		case end < 0:
		case rd.At(end).Fig != nil && rd.At(end).Fig.Low < rd.At(end).Fig.High:
			turning.LeaveOut(rd, i, end)
		case tree >= 0 && (end == tree || rd.EndsBreath(end)):
			turning.LeaveOut(rd, i, end)
			rd.Heavier = true
		}
	}
}

// doubtEnd finds what stands behind words of doubt at i and what says nothing more: a
// number, the first of two trees, or a pause; -1 where they are of anything else.
func doubtEnd(rd *reading.Reading, i, tree int) int {
	n := stops.Doubts(rd, i)
	if n == 0 {
		return -1
	}
	k := i + 1
	for ; k < len(rd.Elems) && rd.Elems[k].Pause == 0 && rd.Elems[k].Fig == nil && k != tree; k++ {
		e := rd.Elems[k]
		said := e.Start < rd.Elems[i].Start+n
		small := e.Polite() && rd.TermAt(k).Condition == "" && gear.Strength(e) == "" || rd.TermAt(k).OfThese || rd.Cued(e, lexicon.CueDown) || e.Marked(lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkPronoun|lexicon.MarkUnsure|lexicon.MarkRelation|lexicon.MarkPlace)
		if !said && !small {
			return -1
		}
	}
	return k
}

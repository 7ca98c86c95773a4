package turning

import (
	"slices"

	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// Who holds the rope may never have held one: "my new groundie has never run a drum". It
// changes no figure, as none rests on a practised hand, and it is said back.

// untriedEnd finds where what is told at the denial at i ends, where it is what somebody
// has never done with a rope; 0 elsewhere. With a number in it, it may be told of that, and
// of gear, "this rope has never held that", it says what it bears.
func untriedEnd(rd *reading.Reading, i int) int {
	if !somebodyBefore(rd, i) {
		return 0
	}
	end := i + 1
	for end < len(rd.Elems) && rd.Elems[end].Pause == 0 && !rd.Elems[end].Marked(lexicon.MarkAnd) && !rd.Cued(rd.Elems[end], lexicon.CueClause) {
		if e, t := rd.Elems[end], rd.TermAt(end); e.Fig != nil || t.Stop != "" || t.Tree != nil || t.Denies || t.Corrects {
			return 0
		}
		if end > i+1 && rd.TermAt(end).Intent != "" && rd.TermAt(end).HowMuch {
			break
		}
		end++
	}
	for end > i+2 && rd.Elems[end-1].Polite() {
		end-- // courtesy behind it is none of it
	}
	const mostLead = 3
	words := scan.SplitWords(rd.Text[rd.Elems[i].End:startOf(rd, end)])
	words = words[:min(mostLead, len(words))]
	if !slices.ContainsFunc(words, func(w string) bool { return rd.CuedAs(w, lexicon.CueExperience) }) {
		return 0
	}
	return end
}

// somebodyBefore says whether the denial at i is told of somebody, who stands before it
// with nothing between them but how it is joined: what is joined by "and" is of whom the
// rest is told, "he weighs 130 and has never held a rope".
func somebodyBefore(rd *reading.Reading, i int) bool {
	joined := false
	for k := i - 1; k >= 0 && rd.Elems[k].Pause == 0; k-- {
		e, t := rd.Elems[k], rd.TermAt(k)
		joined = joined || e.Marked(lexicon.MarkAnd)
		switch {
		case t.Human, t.Someone, Who(rd, k):
			return true
		case e.Piece(), t.Tree != nil, gear.Part(e) != "", stops.Kit(rd, k):
			return false
		case !joined && (e.Fig != nil || !e.Polite() && !e.Marked(lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkAdverb|lexicon.MarkMade)):
			return false
		}
	}
	return false
}

package gear

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Unrated are the kinds of gear that a message names and tells no strength of, by the
// strength that each is told by: the weakest may be among them. What something is only
// on, "sling on the block", is a place.
func Unrated(rd *reading.Reading, q parser.Question) []parser.Field {
	var out []parser.Field
	for i := range rd.Elems {
		p := Part(rd.Elems[i])
		f := Field(p, lexicon.Breaking)
		if p == lexicon.PartBlock || p == lexicon.PartConnector {
			f = Field(p, lexicon.Working)
		}
		if p == "" || p == lexicon.PartDrum || q.Has(Both(p)...) || slices.Contains(out, f) || on(rd, i) {
			continue
		}
		out = append(out, f)
	}
	return out
}

// PartAt is where gear of a kind is named last before the element at i, -1 for nowhere.
func PartAt(rd *reading.Reading, i int, p scan.Part) int {
	for i--; i >= 0; i-- {
		if Part(rd.Elems[i]) == p {
			break
		}
	}
	return i
}

// Listed are the other kinds of gear that a strength is told of, where the gear at k that
// has it ends a list that begins what is said: "block and sling good for 1 t WLL".
func Listed(rd *reading.Reading, k int) (all []scan.Part) {
	begin := func(k int) int { return rd.Past(k-1, -1, lexicon.MarkArticle) }
	j := begin(k)
	if k < 0 || !rd.At(j).Marked(lexicon.MarkAnd) {
		return nil
	}
	for rd.At(j).Marked(lexicon.MarkAnd) || len(all) > 0 && rd.At(j).Pause == 2 {
		p := Part(rd.At(j - 1))
		if p == "" && rd.At(j).Pause == 2 {
			return all // the list begins behind the comma: "ok so, sling and block"
		}
		if p == "" || p == Part(rd.At(k)) {
			return nil
		}
		all = append(all, p)
		j = begin(j - 1)
	}
	if j >= 0 && rd.At(j).Pause == 0 && !rd.TermAt(j).Chatter && !rd.At(j).Polite() {
		return nil // "a log on the block and a sling WLL 4000"
	}
	return all
}

package lines

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// AtHand claims "got 200 ft" for the rope, in a talk about how much rope it takes: nothing
// hangs on it there, and what somebody has is the rope.
func AtHand(rd *reading.Reading, before parser.Question) {
	if before.Intent != parser.AskRope || !before.Pieceless() || rd.AnyAt(func(i int) bool { return rd.Elems[i].Piece() }) {
		return
	}
	for i, e := range rd.Elems {
		owner := owner(rd, i)
		said := rd.EndsBreath(i+1) || rd.At(i+1).Polite() || rd.Cued(rd.At(i+1), lexicon.CueEnough)
		if e.Fig == nil || e.Fig.Told != "" || e.Fig.Elsewhere || !rd.Cued(rd.At(owner), lexicon.CueOwns) || !said {
			continue
		}
		if bareRope(e.Fig) {
			e.Fig.Sure = parser.RopeLength // "we only got a 120": its unit is the talk's
			rd.Elems = append(rd.Elems, reading.Element{Start: e.End, End: e.End, Term: &scan.Term{Intent: parser.AskRope}})
			return
		}
		if gear.Far(rd, i) {
			places.Claim(rd, i, parser.RopeLength)
			rd.Elems = append(rd.Elems, reading.Element{Start: e.End, End: e.End, Term: &scan.Term{Intent: parser.AskRope}})
			return
		}
	}
}

// owner is where it stands who has the rope that is so long as the number at i tells: "got",
// before "only a 120", "one of 120" or "one that is 120".
func owner(rd *reading.Reading, i int) int {
	k := i - 1
	for !rd.Cued(rd.At(k), lexicon.CueOwns) && leadsToRope(rd, k) {
		k--
	}
	return k
}

// leadsToRope says whether the word at k only leads from who has a rope to how long it is.
func leadsToRope(rd *reading.Reading, k int) bool {
	const linking = lexicon.MarkArticle | lexicon.MarkAdverb | lexicon.MarkMade | lexicon.MarkIs
	e := rd.At(k)
	return e.Marked(linking) || e.Polite() || rd.TermAt(k).Note == "about" || rd.Cued(e, lexicon.CueMerely) || rd.Cued(e, lexicon.CueOneLike) || rd.Cued(e, scan.CuePartOf)
}

// bareRope says whether a number without a unit may be how long a rope is.
func bareRope(fig *reading.Figure) bool {
	return fig.Dim == parser.DimCount && fig.Unit == nil && !fig.Pair && shortestRope <= fig.Low && fig.High <= longestRope
}

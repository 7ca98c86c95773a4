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
		owner := rd.Past(i-1, -1, lexicon.MarkArticle|lexicon.MarkAdverb)
		for rd.TermAt(owner).Note == "about" || rd.Cued(rd.At(owner), lexicon.CueMerely) && !rd.Cued(rd.At(owner), lexicon.CueOwns) {
			owner--
		}
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

// bareRope says whether a number without a unit may be how long a rope is.
func bareRope(fig *reading.Figure) bool {
	return fig.Dim == parser.DimCount && fig.Unit == nil && !fig.Pair && shortestRope <= fig.Low && fig.High <= longestRope
}

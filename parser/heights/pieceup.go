package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Where a load swings or is pulled aside, how high the piece itself is tells how far its
// block is above it: "block at 48 ft, limb is at 35 ft", "hitch is fifty feet up and the
// piece is hanging at twenty five". It is no hitch, and no length.

// PieceUp tells such a height where that of the block is told beside it, or was before.
func PieceUp(rd *reading.Reading, before parser.Question) {
	goesOn := before.Intent == parser.AskSwing || before.Intent == parser.AskBalance && (before.Has(parser.Sideways) || before.Noted(parser.TagPull))
	goesOn = goesOn && before.Has(parser.HitchHeight, parser.BlockHeight)
	block := blockUpAt(rd)
	told := block >= 0 && !gear.AsksFor(rd, parser.AskLift) && !rd.Worded(parser.Parts) // neither is how long the piece is
	if !goesOn && !told && !(Swung(rd) || tugged(rd)) || gear.AsksFor(rd, parser.AskRaise) || gear.AsksFor(rd, parser.AskDrop) {
		return
	}
	at := rd.Only(rd.Is(pieceAt))
	if at < 0 || block < 0 && !goesOn {
		return
	}
	fig := rd.Elems[at].Fig
	if fig.Dim == parser.DimCount {
		if block < 0 || rd.Elems[block].Fig.Unit == nil {
			return // its unit is asked for
		}
		fig.Lent(rd.Elems[block].Fig.Unit)
	}
	fig.Told, fig.Elsewhere, fig.Claimed = parser.PieceHeight, false, ""
	for k := rd.Past(at-1, -1, lexicon.MarkIs|lexicon.MarkAt); rd.TermAt(k).Level; k-- {
		rd.Elems[k].Term = &scan.Term{} // "limb is level at 40 ft" says how it lies
	}
}

// blockUpAt is the one number that tells how high the block is, above the ground or above
// the piece; -1 for none.
func blockUpAt(rd *reading.Reading) int {
	return rd.Only(func(i int) bool {
		fig := rd.Elems[i].Fig
		if !gear.Far(rd, i) || pieceAt(rd, i) {
			return false
		}
		k := rd.Past(rd.Back(i-1), -1, lexicon.MarkIs|lexicon.MarkAt|lexicon.MarkUpward)
		return gear.BlockNoun(rd, k) || fig.Told == parser.BlockHeight || fig.Told == parser.HitchHeight
	})
}

// pieceAt says whether the number at i is how high the piece, or its cut, is: "limb is at
// 35 ft", "cut at 40", "the piece is hanging at 25 ft up".
func pieceAt(rd *reading.Reading, i int) bool {
	fig := rd.Elems[i].Fig
	far := fig.Far() || fig != nil && fig.Dim == parser.DimCount && fig.Unit == nil && fig.Low >= 5
	if !far || fig.Pair || fig.Falling || fig.Told != "" || !rd.At(i-1).Marked(lexicon.MarkAt) {
		return false
	}
	end := i + 1
	if rd.At(end).Marked(lexicon.MarkUpward | lexicon.MarkHigh) {
		end++
	}
	if !breathEnds(rd, end) {
		return false
	}
	k := i - 1
	for ; k >= 0; k-- {
		e := rd.At(k)
		lies := e.Marked(lexicon.MarkIs|lexicon.MarkAt|lexicon.MarkPronoun|lexicon.MarkAdverb|lexicon.MarkUpward) || rd.TermAt(k).Level || rd.TermAt(k).Hung || rd.Cued(e, lexicon.CueNow) || rd.TermAt(k).Note == "about"
		lies = lies || asideAt(rd, k) || e.Marked(lexicon.MarkAside) && e.Fig == nil || rd.Cued(e, lexicon.CueOut) // "limb is 6 m out to the east at 10 m up"
		if e.Pause > 0 || !lies {
			break
		}
	}
	e := rd.At(k)
	return rd.TermAt(k).Shape != "" && !e.Marked(lexicon.MarkStanding) || rd.TermAt(k).Unnamed || rd.Cued(e, lexicon.CueCutting) || rd.Cued(e, lexicon.CuePiece)
}

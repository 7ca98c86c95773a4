package gear

import (
	"math"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Where a thing stands to one side, it is told from the piece or from the block, and so is
// where the piece starts: "anchor's 4 m left, fence is 6 m left of the limb" is a fence 2 m
// past the block. What stands on the side that the piece starts from is come back to.

// sideTold is the side that is told right behind the number at i: "3.5 m right".
func sideTold(rd *reading.Reading, i int) scan.Cue {
	for _, side := range []scan.Cue{lexicon.CueLeft, lexicon.CueRight} {
		if rd.TypedAfter(i, side) {
			return side
		}
	}
	return ""
}

// startSided is the number other than that at i that tells to which side the piece
// starts, or the block is; -1 for none.
func startSided(rd *reading.Reading, i int) int {
	return rd.Only(func(k int) bool {
		aside := rd.At(k+1).Plays(parser.Sideways) || rd.Elems[k].Fig != nil && rd.Elems[k].Fig.Told == parser.Sideways
		return k != i && Far(rd, k) && sideTold(rd, k) != "" && aside
	})
}

// bySides makes how far the thing is to one side, the number at i, how far it is from
// the block's plumb line; else it is asked what it is far from.
func bySides(rd *reading.Reading, i int) (f parser.Field, unclear parser.Kind) {
	k := startSided(rd, i)
	if k < 0 {
		return "", parser.FromWhere
	}
	thing, start := rd.Elems[i].Fig, rd.Elems[k].Fig
	same, fromBlock := sideTold(rd, i) == sideTold(rd, k), ofBlock(rd, k)
	ref := seenFrom(rd, i)
	if ref == "" && !fromBlock {
		if same {
			return "", parser.FromWhere // of two things on one side, nobody can tell
		}
		ref = lexicon.PartBlock // "starts 8 ft left, wall 12 ft right"
	}
	past := 1.0 // to which side of the block, the far one being positive
	if same != fromBlock {
		past = -1
	}
	switch {
	case ref == "other", thing.Low != thing.High || start.Low != start.High:
		return "", parser.FromWhere
	case ref == lexicon.PartBlock && past > 0:
		return parser.ObstacleOut, ""
	case ref == lexicon.PartBlock:
		past *= thing.Low
	default:
		past = past*thing.Low - start.Low
	}
	return fromPlumb(rd, i, past, start.Low)
}

// fromPlumb tells the thing at i that is so far past the block, or where that is less
// than nought on the side that the piece starts from, and there beyond the piece.
func fromPlumb(rd *reading.Reading, i int, past, start float64) (parser.Field, parser.Kind) {
	if past <= 0 && -past <= start {
		return "", parser.FromWhere // between the piece and the block
	}
	f := *rd.Elems[i].Fig
	f.Low, f.High = math.Abs(past), math.Abs(past)
	rd.Elems[i].Fig = &f
	if past < 0 {
		rd.Elems[i+1].Term = &scan.Term{Note: parser.NoteStartSide}
	}
	return parser.ObstacleOut, ""
}

// ofBlock says whether the number at i tells where the block is, and not the piece.
func ofBlock(rd *reading.Reading, i int) bool {
	for j := i - 1; j >= 0 && rd.At(j).Pause == 0; j-- {
		switch e := rd.At(j); {
		case BlockNoun(rd, j):
			return true
		case e.Piece(), e.Marked(lexicon.MarkPronoun):
			return false
		}
	}
	return false
}

// BlockNoun says whether the element at i names the block, or what it hangs on: "the
// rigging point", "anchor's".
func BlockNoun(rd *reading.Reading, i int) bool {
	e := rd.At(i)
	high := e.LeadsTo(parser.HitchHeight) && !rd.In.Leads[rd.Word(e)] && !rd.TermAt(i).Tied
	return Part(e) == lexicon.PartBlock || rd.Cued(e, lexicon.CueAnchor) || high
}

// seenFrom is what the side behind the number at i is seen from: the block, "piece" for
// the piece and its cut, "other" for anything else, "" where nothing is said.
func seenFrom(rd *reading.Reading, i int) scan.Part {
	k := i + 2
	for rd.At(k).Marked(lexicon.MarkRelation|lexicon.MarkMade|lexicon.MarkArticle|lexicon.MarkIs) || rd.Cued(rd.At(k), lexicon.CueWhere) {
		k++
	}
	switch e := rd.At(k); {
	case k == i+2:
		return ""
	case Part(e) == lexicon.PartBlock, rd.Cued(e, lexicon.CueAnchor):
		return lexicon.PartBlock
	case rd.TermAt(k).Shape == parser.Limb, rd.TermAt(k).Unnamed, rd.Cued(e, lexicon.CueCutting), rd.TermAt(k).Tied, e.Marked(lexicon.MarkPronoun), rd.Cued(e, lexicon.CueItIs):
		return "piece"
	}
	return "other"
}

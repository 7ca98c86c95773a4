package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// How far to the side a piece is, or shall go, is told by more than "out": by the block
// that it is past, by how level it was measured, and by whom it shall come to.

// startsPast reads "the limb is 4 m past the block". What it may strike stands past the
// block as well, and what it ends at is no start.
func startsPast(rd *reading.Reading, i int) bool {
	k := rd.Past(i-1, -1, lexicon.MarkIs)
	past := rd.At(i+1).Marked(lexicon.MarkOutward) && rd.At(i+1).Marked(lexicon.MarkPlace) && rd.EndsBreath(i+2)
	if !past || k == i-1 || rd.At(i-1).Marked(lexicon.MarkAt) || rd.TermAt(k).Shape == "" && !rd.TermAt(k).Unnamed {
		return false
	}
	before := rd.At(rd.Past(k-1, -1, lexicon.MarkArticle))
	return (before.Term == nil || before.Pause > 0) && !struckNamed(rd)
}

// struckNamed says whether something is named that a swing may strike.
func struckNamed(rd *reading.Reading) bool {
	return rd.AnyAt(func(k int) bool { return gear.Obstacle(rd.Elems[k]) != "" && !rd.Elems[k].Marked(lexicon.MarkOutward) })
}

// outLevel reads "the tie off is 4 m out horizontally": so far along a limb it is tied
// where that is not told to be level.
func outLevel(rd *reading.Reading, i int) bool {
	return rd.Cued(rd.At(i+1), lexicon.CueOut) && rd.Cued(rd.At(i+2), lexicon.CueLevel) && rd.Cued(rd.At(i+2), lexicon.CueAside) && breathEnds(rd, i+3) && !struckNamed(rd)
}

// towardsTeller reads "need it 1.5 m toward me", where a tag line is spoken of.
func towardsTeller(rd *reading.Reading, i int) bool {
	j := rd.Past(i-1, -1, lexicon.MarkPronoun|lexicon.MarkArticle)
	for rd.At(j).Piece() || rd.TermAt(j).Unnamed {
		j = rd.Past(j-1, -1, lexicon.MarkArticle)
	}
	moved := rd.At(j).Marked(lexicon.MarkTug|lexicon.MarkMoving) || rd.Cued(rd.At(j), lexicon.CueShifts)
	towards := rd.Cued(rd.At(i+1), lexicon.CueTowards) && rd.TermAt(i+2).Human && breathEnds(rd, i+3)
	return tugged(rd) && moved && towards
}

// toOneSide reads "swing the limb 8 ft left": no piece of a swing is so long to one side.
func toOneSide(rd *reading.Reading, i int) bool {
	return rd.Elems[i].Fig.Far() && rd.At(i+1).Marked(lexicon.MarkAside) && breathEnds(rd, i+2) && !rd.Worded(parser.Sideways) && !struckBefore(rd, i) && !inOtherTree(rd)
}

// struckBefore says whether what a swing may strike stands right before the number at i:
// "the wall is 8 ft left".
func struckBefore(rd *reading.Reading, i int) bool {
	return gear.Obstacle(rd.At(rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkAt))) != ""
}

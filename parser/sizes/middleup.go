package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// MiddleUp finds how far the middle of a piece is above the block that it falls past:
// "center of the piece is 4 ft above the block", and "above it" where a block was named
// and no other gear.
func MiddleUp(rd *reading.Reading) {
	for i := range rd.Elems {
		blockUnderMiddle(rd, i)
		next := rd.At(i + 1)
		over := rd.Cued(next, lexicon.CueHigher) || rd.Cued(next, lexicon.CueOver) || rd.Cued(next, lexicon.CueAbove)
		if !places.LengthAt(rd, i) || !over || !middleBefore(rd, i) {
			continue
		}
		block := rd.Past(i+2, +1, lexicon.MarkArticle)
		if gear.Part(rd.At(block)) != lexicon.PartBlock {
			if block = i + 2; !rd.At(block).Marked(lexicon.MarkPronoun) || !onlyBlock(rd, i) {
				continue
			}
		}
		rd.Elems[i].Fig.Told = parser.MiddleAbove
		rd.Elems[i+1].Term, rd.Elems[block].Term = &scan.Term{Intent: parser.AskDrop}, &scan.Term{}
	}
}

// blockUnderMiddle reads "block 3 ft under the center of the piece": the same from below.
func blockUnderMiddle(rd *reading.Reading, i int) {
	under := rd.Cued(rd.At(i+1), lexicon.CueBelow) || rd.TermAt(i+1).Beneath
	middle := rd.Past(i+2, +1, lexicon.MarkArticle|lexicon.MarkMade)
	if places.LengthAt(rd, i) && under && rd.Cued(rd.At(middle), lexicon.CuePieceMiddle) && gear.BlockBefore(rd, i) {
		rd.Elems[i].Fig.Told, rd.Elems[i].Fig.Elsewhere = parser.MiddleAbove, false
		rd.Elems[i+1].Term = &scan.Term{Intent: parser.AskDrop}
	}
}

// middleBefore says whether the words before the number at i name the middle of a piece.
func middleBefore(rd *reading.Reading, i int) bool {
	k := i - 1
	for k >= 0 && !rd.Cued(rd.At(k), lexicon.CuePieceMiddle) && (rd.At(k).Marked(lexicon.MarkIs|lexicon.MarkAdverb) || rd.At(k).Polite() || rd.TermAt(k).Note == "about") {
		k--
	}
	return rd.Cued(rd.At(k), lexicon.CuePieceMiddle)
}

// onlyBlock says whether the one gear that is named before i is a block.
func onlyBlock(rd *reading.Reading, i int) bool {
	named := false
	for k := range i {
		switch gear.Part(rd.Elems[k]) {
		case "":
		case lexicon.PartBlock:
			named = true
		default:
			return false
		}
	}
	return named
}

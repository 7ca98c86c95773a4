package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// TiedNear passes over how far from its block a piece is tied, where it is asked how much
// rope it takes: "amarrada como a 4 pies de la polea", "tied 4 ft below the block". The rope
// goes up to the block, so that it asks for no more. What swings hangs from there.
func TiedNear(rd *reading.Reading) {
	if gear.Swings(rd) || !gear.AsksFor(rd, parser.AskRope) && !(rd.Before.Intent == parser.AskRope && rd.Before.Pieceless()) {
		return
	}
	for i := range rd.Elems {
		if !places.LengthAt(rd, i) || rd.Elems[i].Fig.High > farthestBelow {
			continue
		}
		end, from := blockBehind(rd, i+1), tiedBefore(rd, i)
		if end > 0 && from >= 0 {
			rd.Pass(from, end)
			onlyLowers(rd)
			return
		}
	}
}

// onlyLowers takes "we lower it to the ground" for no question of its own there, where no
// wraps are asked for.
func onlyLowers(rd *reading.Reading) {
	if rd.Worded(parser.Wraps) {
		return
	}
	for i := range rd.Elems {
		if t := rd.TermAt(i); t.Intent == parser.AskLower && !rd.Cued(rd.Elems[i], lexicon.CueHolds) {
			rd.Alter(i, func(t *scan.Term) { t.Intent = "" })
		}
	}
}

// blockBehind is the end of "from the block" or "below the block" at i, 0 for none.
func blockBehind(rd *reading.Reading, i int) int {
	if rd.TermAt(i).BelowBlock {
		return i + 1
	}
	k := i
	for rd.At(k).Marked(lexicon.MarkRelation|lexicon.MarkMade|lexicon.MarkArticle) || rd.Cued(rd.At(k), lexicon.CueBelow) || rd.Cued(rd.At(k), lexicon.CueFrom) || rd.Cued(rd.At(k), lexicon.CueDown) {
		k++
	}
	if k == i || gear.Part(rd.At(k)) != lexicon.PartBlock || !rd.EndsBreath(k+1) && !rd.At(k+1).Marked(lexicon.MarkAnd) {
		return 0
	}
	return k + 1
}

// tiedBefore is the word that ties the piece so far away as the number at i tells, -1 for
// none.
func tiedBefore(rd *reading.Reading, i int) int {
	k := i - 1
	for rd.TermAt(k).Note == "about" || rd.At(k).Marked(lexicon.MarkAt) && !rd.TermAt(k).Tied || rd.At(k).Marked(lexicon.MarkIs) && !rd.TermAt(k).Tied {
		k--
	}
	if k >= 0 && (rd.TermAt(k).Tied || rd.TermAt(k).Anchors) && gear.Part(rd.At(k)) == "" {
		return k
	}
	return -1
}

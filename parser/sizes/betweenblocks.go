package sizes

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// BetweenBlocks reads "14 ft between the two blocks" as how far these are apart, as it is
// without the number: nothing of what hangs on them is 14 ft long.
func BetweenBlocks(rd *reading.Reading) {
	for i, e := range rd.Elems {
		j := rd.Past(i+1, +1, lexicon.MarkArticle)
		blocks := rd.TermAt(j+1).Blocks || blockWord(rd, min(j+1, len(rd.Elems)-1)) || rd.Cued(rd.At(j+1), lexicon.CueBlocks)
		if !e.Marked(lexicon.MarkBetween) || !places.Bare(rd.At(j).Fig, 2) || !blocks {
			continue
		}
		apart := &scan.Term{Roles: []scan.Role{{Field: parser.Apart, Side: lexicon.Before | lexicon.After}}}
		whole := reading.Element{Start: e.Start, End: rd.At(j + 1).End, Term: apart}
		rd.Elems = append(append(rd.Elems[:i:i], whole), rd.Elems[j+2:]...)
		return
	}
}

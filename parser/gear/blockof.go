package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// BlockOf takes "a block of 4,000 lb working load" for the block: with the word for a
// strength behind its number it is no block of wood, and the number nobody else's.
func BlockOf(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if !rd.Cued(e, lexicon.CueBlockOf) || !Heavy(rd, i+1) {
			continue
		}
		j := rd.Past(i+2, +1, lexicon.MarkIn|lexicon.MarkMade|lexicon.MarkArticle)
		if Strength(rd.At(j)) == "" && !rd.TermAt(j).Rated {
			continue
		}
		rd.Elems[i].Term = &scan.Term{Part: lexicon.PartBlock, Block: parser.AnyBlock}
	}
}

// StrongWhenNew is the rope, where the number at i is what it broke at as it left the
// shop: "rope's 14 mm, 6 tonne new". Which of its two figures that is, is not told.
func StrongWhenNew(rd *reading.Reading, i int) scan.Part {
	next := i + 1
	if rd.Cued(rd.At(next), lexicon.CueIf) || rd.At(next).Polite() {
		next++ // "when new"
	}
	if !rd.Cued(rd.At(next), lexicon.CueWhenNew) || !rd.EndsBreath(next+1) || !Rates(rd.Elems[i].Fig) {
		return ""
	}
	for k := i - 1; k >= 0 && rd.At(k).Pause < 4; k-- {
		e := rd.Elems[k]
		switch {
		case Part(e) == lexicon.PartRope:
			return lexicon.PartRope
		case Part(e) != "", e.Piece(), e.Fig != nil && Rates(e.Fig):
			return ""
		}
	}
	return ""
}

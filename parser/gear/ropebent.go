package gear

import (
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// RopeBent says whether the word at i is said of a rope right before it: what ruins a shackle,
// to be bent, every rope is at its block. "La línea doblada pa abajo."
func RopeBent(rd *reading.Reading, i int) bool {
	k := i - 1
	for k >= 0 && rd.At(k).Pause == 0 && (rd.At(k).Marked(lexicon.MarkIs) || rd.At(k).Polite()) && Part(rd.At(k)) == "" {
		k--
	}
	of := rd.At(rd.Past(k-1, -1, lexicon.MarkArticle)) // "el gancho de la cuerda está doblado"
	other := Part(of) != "" || of.Marked(lexicon.MarkMade|lexicon.MarkIn|lexicon.MarkRelation)
	return rd.Cued(rd.At(i), lexicon.CueBent) && Part(rd.At(k)) == lexicon.PartRope && rd.Cued(rd.At(k), lexicon.CueRopeName) && !other
}

// RopesBent takes such a word for nothing more where it is told where the rope goes then:
// down, or to the drum. Else it may be doubled, and is asked about.
func RopesBent(rd *reading.Reading) {
	const near = 4
	for i := range rd.Elems {
		if !RopeBent(rd, i) {
			continue
		}
		for k := i + 1; k <= i+near && rd.At(k).Pause == 0; k++ {
			if rd.Cued(rd.At(k), lexicon.CueDown) || Part(rd.At(k)) == lexicon.PartDrum {
				rd.Elems[i].Term = &scan.Term{}
				break
			}
		}
	}
}

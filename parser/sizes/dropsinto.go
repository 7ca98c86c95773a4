package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// DropsInto reads "drop a 450 lb log into the block" as a fall, however far: what a piece is
// dropped into catches it, and sees far more than where it is lowered.
func DropsInto(rd *reading.Reading) {
	const most = 10
	for i, e := range rd.Elems {
		if !e.LeadsTo(parser.DropHeight) || e.LeadsTo(parser.RunLength) || e.Term.Intent == parser.AskDrop {
			continue
		}
		for k := i + 1; k <= i+most && rd.At(k).Pause == 0 && k < len(rd.Elems); k++ {
			into := gear.Part(rd.At(rd.Past(k+1, +1, lexicon.MarkArticle)))
			if rd.At(k).Marked(lexicon.MarkIn) && (into == lexicon.PartBlock || into == lexicon.PartSling) {
				rd.Alter(i, func(t *scan.Term) { t.Intent, t.Besides = parser.AskDrop, false })
				return
			}
		}
	}
}

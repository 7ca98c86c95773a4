package heights

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// LowOnAnother takes a block that hangs low on another tree for one that the rope is led
// aside by: no load hangs from it, "the rope goes through a pulley low on the next tree".
func LowOnAnother(rd *reading.Reading) {
	for i := range rd.Elems {
		if rd.TermAt(i).Block != parser.AnyBlock {
			continue
		}
		low := rd.Past(i+1, +1, lexicon.MarkIs)
		tree := low + 1
		for tree < low+3 && rd.At(tree).Pause == 0 && rd.At(tree).Fig == nil && !rd.Cued(rd.At(tree), lexicon.CueOtherTree) {
			tree++
		}
		if rd.Cued(rd.At(low), lexicon.CueLowDown) && rd.Cued(rd.At(tree), lexicon.CueOtherTree) {
			rd.Alter(i, func(t *scan.Term) { t.Block, t.Roles = parser.RedirectBlock, nil })
		}
	}
}

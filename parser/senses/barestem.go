package senses

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// BareStem takes a piece of which no shape is told, and which has no branches on it, for a
// bare stem: "red oak 14 in 8 ft, no limbs on it". Whatever a limb without its brush
// weighs, it is no heavier than that. Without its leaves alone it may be a limb.
func BareStem(rd *reading.Reading) {
	bare, tree := -1, false
	for i, e := range rd.Elems {
		t := rd.TermAt(i)
		if t.Shape != "" {
			return
		}
		tree = tree || t.Tree != nil
		if rd.Cued(e, lexicon.CueNoBranches) && endsSaid(rd, i+1) {
			bare = i
		}
	}
	if bare >= 0 && (tree || rd.First) {
		rd.Alter(bare, func(t *scan.Term) { t.Shape = parser.Log })
	}
}

// endsSaid says whether what is said ends before i, or goes on with a size, a tree or what
// is asked: "no limbs in the way" tells of other wood.
func endsSaid(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	return rd.EndsBreath(i) || rd.At(i).Fig != nil || t.Tree != nil || t.Intent != "" || rd.At(i).Marked(lexicon.MarkAnd)
}

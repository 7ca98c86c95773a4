package senses

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// CutOffTrunk takes where a piece is cut for what it is, where the longest is asked for
// and no other wood is named: "the longest I can go on the trunk". Otherwise the
// limb of the question before would be cut once more.
func CutOffTrunk(rd *reading.Reading) {
	trunk, asked := -1, false
	for i, e := range rd.Elems {
		t := rd.TermAt(i)
		switch {
		case t.Shape != "":
			return
		case t.Intent == parser.AskCutPlan:
			asked = true
		case rd.Cued(e, lexicon.CueCutOnTrunk) && rd.At(i-1).Fig == nil: // not “3 ft off the trunk”
			trunk = i
		}
	}
	if asked && trunk >= 0 {
		rd.Alter(trunk, func(t *scan.Term) { *t = scan.Term{Shape: parser.Log} })
	}
}

package pulls

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// How many parts of line a tackle has hangs on the block that the rope to pull leaves:
// "the end comes out the top one". There, top and bottom are blocks, and no piece of wood.

// RopeLeaves reads it, where a lift is spoken of or the blocks of one are counted.
func RopeLeaves(rd *reading.Reading) {
	if _, counted := groupOf(rd); !counted && rd.Before.Intent != parser.AskLift && !liftAsked(rd) {
		return
	}
	for i := 0; i < len(rd.Elems); i++ {
		rope := rd.SaidTo(lexicon.CueRopeEnd, rd.Elems[i].Start)
		if rope < 0 {
			continue
		}
		out := rd.SaidTo(lexicon.CueComesOut, rope)
		if out < 0 {
			continue
		}
		if the := rd.SaidTo(lexicon.CueThe, out); the >= 0 {
			out = the
		}
		if end := rd.SaidTo(lexicon.CueTopBlock, out); end >= 0 {
			rd.Instead(rd.Elems[i].Start, end, &scan.Term{Note: parser.HaulDown})
		} else if end := rd.SaidTo(lexicon.CueLoadBlock, out); end >= 0 {
			rd.Instead(rd.Elems[i].Start, end, &scan.Term{Note: parser.HaulUp})
		}
	}
}

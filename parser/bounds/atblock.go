package bounds

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// What the block may see is no limit of the piece: lowered steady it sees twice as much,
// and far more where the piece falls. "how long to stay under 5 kN at the block".

// AtBlock takes the most that a block may see, where it is asked how a piece is cut, for
// what the block may carry.
func AtBlock(rd *reading.Reading) {
	if !gear.AsksFor(rd, parser.AskCutPlan) {
		return
	}
	for i := range rd.Elems {
		if gear.Heavy(rd, i) && rd.Elems[i].Fig.Claimed == "" && (rd.TypedAfter(i, lexicon.CueAtBlock) || blockSees(rd, i)) {
			places.Claim(rd, i, parser.BlockWorking)
			if rd.At(i - 1).Marked(lexicon.MarkBound) {
				rd.Elems[i-1].Term = &scan.Term{} // "less than" says that it is the most
			}
		}
	}
}

// blockSees reads "so the block sees less than" before the number at i.
func blockSees(rd *reading.Reading, i int) bool {
	const most = 4 // words: "sees no more than"
	for k := i - 1; k >= 0 && i-k <= most && rd.Elems[k].Pause == 0 && rd.Elems[k].Fig == nil; k-- {
		if rd.TermAt(k).Intent == parser.AskBlockLoad {
			return true
		}
	}
	return false
}

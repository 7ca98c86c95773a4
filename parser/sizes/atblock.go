package sizes

import (
	"heft/parser"
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// What the block may see is no limit of the piece: lowered steady it sees twice as much,
// and far more where the piece falls. "how long to stay under 5 kN at the block".

// AtBlock takes the most that a block may see, where it is asked how a piece is cut, for
// what the block may carry.
func AtBlock(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if e.Fig != nil && e.Fig.Told == parser.BlockWorking && rd.At(i-1).Spent {
			undeny(rd, i) // "dont want more than 4000 lb on the block"
		}
	}
	if !gear.AsksFor(rd, parser.AskCutPlan) {
		return
	}
	for i := range rd.Elems {
		if !bounds.Mass(rd, i) || rd.Elems[i].Fig.Claimed != "" || !rd.TypedAfter(i, lexicon.CueAtBlock) && !blockSees(rd, i) {
			continue
		}
		bound := rd.At(i - 1).Marked(lexicon.MarkBound)
		if fig := rd.Elems[i].Fig; bound && fig.Unit == nil {
			fig.Lent(CapacityUnit(rd, i)) // "no more than 4000 on the block"
		}
		if !gear.Heavy(rd, i) {
			continue
		}
		places.Claim(rd, i, parser.BlockWorking)
		if bound {
			undeny(rd, i) // "less than" says that it is the most
		}
	}
}

// undeny takes the bound right before the number at i for the most that it is, with what denies it.
func undeny(rd *reading.Reading, i int) {
	for k := deniedPut(rd, i-1); k < i; k++ {
		rd.Elems[k].Term = &scan.Term{}
	}
}

// deniedPut is where what denies the bound at i begins, "wont put more than", "dont want over";
// the bound itself where nothing does.
func deniedPut(rd *reading.Reading, i int) int {
	for k := i - 1; k >= 0 && i-k <= stops.Few && rd.Elems[k].Pause == 0 && rd.Elems[k].Fig == nil && !rd.Elems[k].Piece() && gear.Part(rd.Elems[k]) == ""; k-- {
		if Denial(rd, k) || rd.TermAt(k).Purpose {
			return k
		}
	}
	return i
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

package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// MachineAsked notes that beside what a piece weighs it is asked whether a machine takes it,
// "weight? and can the mini take it": that no figure here says, and it is said so. Nothing
// is lifted there by hand.
func MachineAsked(rd *reading.Reading) {
	weighs := func(i int) bool { return rd.TermAt(i).Intent == parser.AskWeight && !rd.TermAt(i).Besides }
	if !rd.AnyAt(weighs) {
		return
	}
	for i := range rd.Elems {
		if !rd.TermAt(i).Machine {
			continue
		}
		if bears := bearsBeside(rd, i); bears >= 0 {
			rd.Elems[bears].Term = &scan.Term{}
			rd.Elems[i].Term = &scan.Term{Note: parser.MachineAsked}
		}
	}
}

// bearsBeside finds the word that makes the machine at i bear something, in the same breath
// and with no number that tells how much; -1 where there is none.
func bearsBeside(rd *reading.Reading, i int) int {
	const farthest = 4
	for _, step := range []int{+1, -1} {
		for n := 1; n <= farthest; n++ {
			k := i + n*step
			e, t := rd.At(k), rd.TermAt(k)
			if e.Term == nil || e.Marked(lexicon.MarkAnd) || gear.Part(e) != "" {
				break
			}
			if t.Bears || t.Lifts || t.Intent == parser.AskLift {
				if rd.At(k+1).Fig != nil || rd.At(k-1).Fig != nil {
					return -1
				}
				return k
			}
		}
	}
	return -1
}

package turning

import (
	"strings"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// "Can i go lighter than 3 wraps for a 150 lb limb" asks how many it takes: none are told.

// FewerThan leaves out so many wraps, where it is asked whether it can be fewer. Who tells
// that there are fewer on is asked how many.
func FewerThan(rd *reading.Reading) {
	for i := range rd.Elems {
		fig := rd.At(i).Fig
		if fig == nil || fig.Unit != nil || fig.Dim != parser.DimCount || !rd.TypedBefore(i, lexicon.CueFewerThan) {
			continue
		}
		from, to := fewerFrom(rd, i), i+1
		worded := rd.At(from).Plays(parser.Wraps)
		if rd.At(to).Plays(parser.Wraps) {
			worded, to = true, to+1
		}
		for k := from; k < i; k++ {
			worded = worded || rd.At(k).Plays(parser.Wraps)
		}
		if !worded || !canAsked(rd, from) {
			continue
		}
		LeaveOut(rd, from, to)
		rd.Elems[to-1].Term = &scan.Term{Intent: parser.AskLower, Chatter: true}
	}
}

// fewerFrom is the element that begins the words of fewer wraps right before the number at
// i: "fewer wraps than".
func fewerFrom(rd *reading.Reading, i int) int {
	from := i
	for k := i - 1; k >= 0 && i-k <= reading.LongestCue && rd.At(k).Pause == 0; k-- {
		if rd.CuedAs(strings.TrimSpace(rd.Text[rd.Elems[k].Start:rd.Elems[i].Start]), lexicon.CueFewerThan) {
			from = k
		}
	}
	return from
}

// canAsked says whether it is asked in the breath before the element at from what can be
// done: "can i get by with".
func canAsked(rd *reading.Reading, from int) bool {
	for k := from - 1; k >= 0 && rd.At(k).Pause == 0 && rd.At(k).Fig == nil; k-- {
		first, _ := scan.NextWord(rd.Text[rd.Elems[k].Start:])
		if rd.In.Cued(first, lexicon.CueCan) || rd.In.Cued(first, lexicon.CueAsks) || rd.Cued(rd.Elems[k], lexicon.CueCan) {
			return true
		}
	}
	return false
}

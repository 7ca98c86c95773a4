package pulls

import (
	"slices"

	"heft/parser"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/turning"
)

// OrWinch passes over a winch that is only the other way of lifting: "can 3 of us pick up
// 900 lb or should i get the winch". The number before it is none of its own, and the
// answer says what a winch would have to pull.
func OrWinch(rd *reading.Reading) {
	pullers := rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil && rd.At(i+1).Plays(parser.People) })
	if !pullers {
		return
	}
	last := -1
	for i, e := range rd.Elems {
		switch {
		case e.Fig != nil:
			last = i
		case last >= 0 && e.Plays(parser.WinchPull) && rd.At(i+1).Fig == nil && orBetween(rd, last, i):
			turning.Blank(rd, i, i+1)
		}
	}
}

// orBetween says whether an "or" is typed between two elements.
func orBetween(rd *reading.Reading, from, to int) bool {
	words := scan.SplitWords(rd.Text[rd.Elems[from].End:rd.Elems[to].Start])
	return slices.ContainsFunc(words, func(w string) bool { return rd.In.Joins[w] == scan.Or })
}

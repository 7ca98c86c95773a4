package bounds

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// "How much can I cut lengthwise" and "38 cm, cuánto puedo cortar de largo" ask how long a
// piece may be. The word for a length says there what is asked for: a number that stands
// before the question is never told to be long by it.

// LengthAsked takes such words from the numbers.
func LengthAsked(rd *reading.Reading) {
	for i, e := range rd.Elems {
		long := e.Fig == nil && e.Plays(parser.Length) || rd.Cued(e, lexicon.CueLengthwise)
		if long && (asksBefore(rd, i) || asksBehind(rd, i)) && rd.At(rd.Forth(i+1)).Fig == nil {
			rd.Elems[i].Term = &scan.Term{}
			rd.Passed = slices.DeleteFunc(rd.Passed, func(p parser.Said[string]) bool { return p.Start == e.Start })
		}
	}
}

// asksBefore says whether it is asked how wood is cut in the breath before the element at
// i, with no number between.
func asksBefore(rd *reading.Reading, i int) bool {
	for k := i - 1; k >= 0 && i-k <= stops.Few && rd.Elems[k].Pause == 0 && rd.Elems[k].Fig == nil; k-- {
		if Cuts(rd, k) {
			return true
		}
	}
	return false
}

// asksBehind says whether the element at i begins what is asked so: "…, de largo cuánto
// puedo cortar".
func asksBehind(rd *reading.Reading, i int) bool {
	return (i == 0 || rd.At(i-1).Pause > 0) && Cuts(rd, rd.Past(i+1, +1, lexicon.MarkAdverb))
}

package turning

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// AddsWraps passes over how many wraps somebody would put on beside those that are told,
// "keeps slipping with 3 wraps on, add one or two": where those slipped, how many it takes
// is what is answered.
func AddsWraps(rd *reading.Reading) {
	const most = 3
	if !rd.AnyAt(func(i int) bool { return rd.TermAt(i).Note == "slipped" }) {
		return
	}
	for i := range rd.Elems {
		fig := rd.At(i + 1).Fig
		if !rd.TermAt(i).Adds || fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.High > most {
			continue
		}
		end := i + 2
		for rd.Cued(rd.At(end), lexicon.CueMore) || rd.At(end).Plays(parser.Wraps) {
			end++
		}
		told := func(k int) bool {
			return (k < i || k > end) && rd.Elems[k].Fig != nil && rd.At(k+1).Plays(parser.Wraps)
		}
		if rd.EndsBreath(end) && rd.AnyAt(told) {
			rd.Pass(i, end)
			return
		}
	}
}

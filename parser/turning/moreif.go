package turning

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// MoreIf passes over how many there would be "if" somebody else comes, "3 of us, well 4 if
// the boss comes": it is planned on those who are there, and what is left out is said. Fewer
// than that would change the plan, and stay in doubt.
func MoreIf(rd *reading.Reading) {
	const most = 12
	there := 0.0
	for i := 0; i < len(rd.Elems); i++ {
		fig := rd.Elems[i].Fig
		if fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil {
			continue
		}
		if rd.At(i+1).Plays(parser.People) || rd.At(i-1).LeadsTo(parser.People) {
			there = fig.Low
			continue
		}
		end := i + 1
		for end < len(rd.Elems) && rd.At(end).Pause == 0 && rd.At(end).Fig == nil && !rd.At(end).Piece() {
			end++
		}
		if there == 0 || fig.Low <= there || fig.High > most || !rd.Cued(rd.At(i+1), lexicon.CueIf) || rd.At(end).Fig != nil || rd.At(end).Piece() {
			there = 0 // what is counted now may go on: "3 wraps, 4 if it is wet"
			continue
		}
		e := reading.Element{Start: rd.Elems[i].Start, End: rd.Elems[end-1].End, Term: &scan.Term{Chatter: true}}
		rd.Pass(i, end, e)
	}
}

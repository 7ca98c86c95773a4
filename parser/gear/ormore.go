package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// SameOrMore passes over the number of "if the limb is 300 lb, does the block feel 300 or
// more": it is asked whether the load told is all that the block gets, and no other is told.
func SameOrMore(rd *reading.Reading) {
	for i := range rd.Elems {
		fig, end := rd.Elems[i].Fig, i+1
		if rd.TermAt(end).ISay {
			end++ // "or"
		}
		if fig == nil || !Rates(fig) || fig.Dim == parser.DimForce || end == i+1 || !rd.Cued(rd.At(end), lexicon.CueMore) && !rd.TermAt(end).Doubles {
			continue
		}
		told := func(k int) bool { return k != i && rd.Elems[k].Fig != nil && sameFigure(rd.Elems[k].Fig, fig) }
		if rd.AnyAt(told) {
			rd.Pass(i, end+1)
			return
		}
	}
}

// sameFigure says whether two numbers are one, the unit of one of them being left out or not.
func sameFigure(a, b *reading.Figure) bool {
	written := func(f *reading.Figure) float64 {
		if f.Unit == nil {
			return f.Low
		}
		return f.Low / f.Unit.Factor
	}
	const near = 1e-6
	d := written(a) - written(b)
	return Rates(a) && d < near && d > -near && (a.Unit == nil || b.Unit == nil || a.Unit == b.Unit)
}

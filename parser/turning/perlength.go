package turning

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// PerLength passes over a weight that is told by the foot or the metre, "about 50 lb a foot":
// no piece weighs that, and a foot is not how long it is. What it comes to we work out from
// the tree and the sizes.
func PerLength(rd *reading.Reading) {
	for i := range rd.Elems {
		if !gear.Heavy(rd, i) {
			continue
		}
		if to := lengthBehind(rd, i+1); to > 0 {
			Blank(rd, i, to)
		}
	}
}

// lengthBehind is where "a foot", "per running metre" and "/ft" at i end, 0 where nothing of
// that kind stands there.
func lengthBehind(rd *reading.Reading, i int) int {
	unit := i
	for unit < i+3 && (rd.Cued(rd.At(unit), lexicon.CueByThe) || rd.At(unit).Pause > 0 && rd.Text[rd.At(unit).Start:rd.At(unit).End] == "/") {
		unit++
	}
	u := rd.In.Units[rd.Word(rd.At(unit))]
	if unit == i || rd.At(unit).Fig != nil || u == nil || u.Dim != parser.DimLength || u.Fine {
		return 0
	}
	return unit + 1
}

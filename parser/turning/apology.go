package turning

import (
	"heft/parser"
	"heft/parser/reading"
)

// onlySorry says whether the word at i stands alone, and nothing of the kind of the fact
// behind it was told before: "elm, 18 in. sorry. 5 ft long".
func onlySorry(rd *reading.Reading, i int) bool {
	if !rd.First || i == 0 || rd.At(i-1).Pause < 2 || i+1 < len(rd.Elems) && rd.At(i+1).Pause < 2 || TalkBehind(rd, i) || TalkBehind(rd, i-1) {
		return false
	}
	n := nextFact(rd, i+2)
	fig := rd.At(n).Fig
	return n < 0 || !rd.AnyAt(func(k int) bool {
		return k < i && (OtherTree(rd, k, n) || fig != nil && rd.Elems[k].Fig != nil && oneKind(rd, k, n))
	})
}

// oneKind says whether the numbers at two places may tell the same of a piece: lengths
// of one sort, or counts of one thing.
func oneKind(rd *reading.Reading, a, b int) bool {
	x, y := rd.Elems[a].Fig, rd.Elems[b].Fig
	switch {
	case CountedBy(rd, a+1) || CountedBy(rd, b+1):
		return rd.At(a+1).Plays(parser.Wraps) == rd.At(b+1).Plays(parser.Wraps) && CountedBy(rd, a+1) == CountedBy(rd, b+1)
	case x.Unit == nil && rd.TermAt(a+1).Ask == parser.Girth:
		return y.Unit == nil || y.Short()
	case x.Unit == nil || y.Unit == nil:
		return true
	}
	return x.Dim == y.Dim && x.Unit.Fine == y.Unit.Fine
}

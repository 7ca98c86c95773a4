package asking

import (
	"math"
	"strings"

	"heft/parser/bounds"
	"heft/parser/reading"
)

// Who dictates leaves out the hundred: "log is two fifty", "pesa uno ochenta". Of a
// weight it is that; of a length it may be metres and centimetres, and "two fifty kilo
// logs" may be two: these stay asked about.

// SpokenHundreds puts one number in the place of two that are spoken so.
func SpokenHundreds(rd *reading.Reading) {
	for i := 0; i+1 < len(rd.Elems); i++ {
		a, b := rd.Elems[i].Fig, rd.Elems[i+1].Fig
		if !runsOn(rd, i) || !hundredsOf(a) || b.Low != b.High || strings.Trim(rd.Text[a.End:b.Start], " ") != "" || a.End == b.Start || !bounds.WeighedSo(rd, i) {
			continue
		}
		scale := 1.0
		if b.Unit != nil {
			scale = b.Unit.Factor
		}
		if n := math.Round(b.Low / scale); n < 10 || n >= 100 || math.Abs(n*scale-b.Low) > 1e-9 {
			continue
		}
		whole := *b
		whole.Low, whole.Start = b.Low+100*a.Low*scale, a.Start
		whole.High = whole.Low
		rd.Join(i, i+2, &whole)
	}
}

// hundredsOf says whether a number can be so many hundreds: two in "two fifty", twelve in
// "twelve fifty".
func hundredsOf(f *reading.Figure) bool {
	return f.Between(1, 99) && (f.Low < 10 || int(f.Low)%10 != 0)
}

// SpokenRanges reads "seven eight inches" and "four five hundred pounds", a number and the
// one that follows it: somewhere between both. Before several pieces the first may count
// them, "two three inch limbs".
func SpokenRanges(rd *reading.Reading) {
	for i := 0; i+1 < len(rd.Elems); i++ {
		a, b := rd.Elems[i].Fig, rd.Elems[i+1].Fig
		if !runsOn(rd, i) || b.Unit == nil || b.Low != b.High || a.Low != a.High || strings.Trim(rd.Text[a.End:b.Start], " ") != "" || a.End == b.Start {
			continue
		}
		if bounds.PluralAt(rd, i+2) || rd.TermAt(i+2).Tree != nil && bounds.PluralAt(rd, i+3) {
			continue
		}
		low := a.Low * b.Unit.Factor
		if n := b.Low / b.Unit.Factor; n >= 200 && math.Mod(n, 100) == 0 {
			low *= 100
		}
		step := low / a.Low
		if math.Abs(b.Low-low-step) > 1e-6*step || a.Low < 3 && step == b.Unit.Factor {
			continue
		}
		whole := *b
		whole.Low, whole.Start = low, a.Start
		rd.Join(i, i+2, &whole)
	}
}

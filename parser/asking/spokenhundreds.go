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
		if !runsOn(rd, i) || !a.Between(1, 9) || b.Low != b.High || strings.Trim(rd.Text[a.End:b.Start], " ") != "" || a.End == b.Start || !bounds.WeighedSo(rd, i) {
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

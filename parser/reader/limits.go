package reader

import (
	"heft/parser/bounds"
	"heft/parser/gear"
	"heft/parser/reading"
	"heft/parser/turning"
)

// What a piece may weigh is told as what nobody wants more of: "no quiero que nadie
// pase de 250 kilos", "we don't lower anything over 400 lb".

// deniedLimits reads the number behind such words as the limit.
func deniedLimits(rd *reading.Reading) {
	for i := range rd.Elems {
		if !gear.Heavy(rd, i) && !bounds.ManyBare(rd.Elems[i].Fig) || turning.CountedBy(rd, i+1) || rd.Elems[i].Fig.Claimed != "" {
			continue
		}
		if bounds.NoneUnder(rd, i) {
			continue
		}
		if from := bounds.DeniedFrom(rd, i); from >= 0 && bounds.Exceeds(rd, from, i) {
			bounds.LimitAt(rd, from, i)
			continue
		}
		bounds.NoneOver(rd, i)
	}
}

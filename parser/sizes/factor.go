package sizes

import (
	"slices"
	"strconv"
	"strings"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// FactorTold makes a bare number right behind the words of a design factor that factor,
// whatever it is of: "safety factor 10 on the rope" tells of no people.
func FactorTold(rd *reading.Reading) {
	shareOfBreak(rd)
	for i, e := range rd.Elems {
		words := rd.At(rd.Back(i - 1))
		if e.Fig != nil && e.Fig.Dim == parser.DimCount && e.Fig.Unit == nil && e.Fig.Told == "" && words.LeadsTo(parser.DesignFactor) {
			e.Fig.Told = parser.DesignFactor
		}
	}
}

// Design factors that are told as a share of what gear breaks at: "use 1/10".
const leastFactor, mostFactor = 5, 20

// shareOfBreak reads "1/10" where gear's breaking strength is told as that design factor.
// No size is told in tenths, and a date has no part in a strength.
func shareOfBreak(rd *reading.Reading) {
	if !rd.AnyAt(func(i int) bool { return gear.Strength(rd.Elems[i]) == lexicon.Breaking }) {
		return
	}
	for n, a := range rd.Asks {
		share, ok := strings.CutPrefix(a.Words, "1/")
		v, err := strconv.Atoi(share)
		if a.Kind != parser.TwoReadings || !ok || err != nil || v < leastFactor || v > mostFactor {
			continue
		}
		at := 0
		for at < len(rd.Elems) && rd.Elems[at].Start < a.Start {
			at++
		}
		fig := &reading.Figure{Dim: parser.DimRatio, Low: float64(v), High: float64(v), Sure: parser.DesignFactor, Start: a.Start, End: a.End}
		rd.Elems = slices.Insert(rd.Elems, at, reading.Element{Start: a.Start, End: a.End, Fig: fig})
		rd.Asks = slices.Delete(rd.Asks, n, n+1)
		return
	}
}

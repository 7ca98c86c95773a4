package sizes

import (
	"heft/parser"
	"heft/parser/reading"
)

// FactorTold makes a bare number right behind the words of a design factor that factor,
// whatever it is of: "safety factor 10 on the rope" tells of no people.
func FactorTold(rd *reading.Reading) {
	for i, e := range rd.Elems {
		words := rd.At(rd.Back(i - 1))
		if e.Fig != nil && e.Fig.Dim == parser.DimCount && e.Fig.Unit == nil && e.Fig.Told == "" && words.LeadsTo(parser.DesignFactor) {
			e.Fig.Told = parser.DesignFactor
		}
	}
}

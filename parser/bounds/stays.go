package bounds

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Stays takes the doubt from "stay" before the most that a piece may weigh, "stay below
// 250 lb": nobody stays under anything there.
func Stays(rd *reading.Reading) {
	for i := range rd.Elems {
		if !rd.TermAt(i).Stays || !rd.At(i+1).LeadsTo(parser.Limit) {
			continue
		}
		fig := rd.At(i + 2).Fig
		limit := rd.At(rd.Past(i+2, +1, lexicon.MarkArticle)).Plays(parser.Limit)
		if fig == nil && !limit || fig != nil && fig.Dim != parser.DimMass && fig.Dim != parser.DimForce && (fig.Dim != parser.DimCount || fig.Unit != nil) {
			continue
		}
		rd.Alter(i, func(t *scan.Term) { t.Ask = "" })
	}
}

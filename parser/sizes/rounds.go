package sizes

import (
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
)

// RoundThick says whether a bare number is how thick a round is: "25 de alto", "rodajas
// de 30".
func RoundThick(rd *reading.Reading, i int) bool {
	return rd.Has(lexicon.MarkRound) && (rd.At(i+1).Marked(lexicon.MarkHigh) || places.BehindRound(rd, i))
}

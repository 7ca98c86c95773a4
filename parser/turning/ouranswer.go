package turning

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// A weight that we gave is no weight that the crew tells: "the numbers behind the 740 lb
// you gave", "dijiste 390 kg". Read as theirs it would be answered as if they had weighed it.

// OurAnswer passes over it. What names the piece right behind it is told by the crew. The
// wraps that we gave they go on with.
func OurAnswer(rd *reading.Reading) {
	for i := 0; i < len(rd.Elems); i++ {
		if wrapsGiven(rd, i) {
			rd.Elems[i].Fig.Told = parser.Wraps
			continue
		}
		if !answered(rd, i) || rd.At(i+1).Piece() || rd.TermAt(i+1).Unnamed {
			continue
		}
		if rd.TypedBefore(i, lexicon.CueWeSaid) || rd.TypedAfter(i, lexicon.CueWeGave) {
			rd.Pass(i, i+1)
			i--
		}
	}
}

// wrapsGiven says whether the bare number at i is the wraps of our answer, in a talk about
// them: "de 3 a 4 dices, cuerda nueva".
func wrapsGiven(rd *reading.Reading, i int) bool {
	const most = 12
	fig := rd.Elems[i].Fig
	if rd.Before.Intent != parser.AskLower || fig == nil || fig.Dim != parser.DimCount || fig.Unit != nil || fig.Sure != "" || fig.Pair || fig.High > most {
		return false
	}
	return rd.EndsBreath(i+1) && rd.TypedBefore(i, lexicon.CueWeSaid) || rd.TypedAfter(i, lexicon.CueWeGave)
}

// answered says whether the number at i may be a weight of an answer: a mass, or so large
// a count of nothing else.
func answered(rd *reading.Reading, i int) bool {
	const least = 20
	fig := rd.Elems[i].Fig
	if fig == nil || fig.Pair {
		return false
	}
	bare := fig.Dim == parser.DimCount && fig.Unit == nil && fig.Low >= least && rd.EndsBreath(i+1)
	return bare || fig.Dim == parser.DimMass && gear.Heavy(rd, i)
}

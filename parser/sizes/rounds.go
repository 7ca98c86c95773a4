package sizes

import (
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// RoundThick says whether a bare number is how thick a round is: "25 de alto", "rodajas
// de 30".
func RoundThick(rd *reading.Reading, i int) bool {
	return rd.Has(lexicon.MarkRound) && (rd.At(i+1).Marked(lexicon.MarkHigh) || places.BehindRound(rd, i))
}

// RoundUnit is the unit of a bare number that tells how high a round stands, "80 cm across and
// 40 high": that of its thickness, where the number would be far too high in feet or metres.
// It is nil where several are told, and where it could be either.
func RoundUnit(rd *reading.Reading, i int) (u *scan.UnitWord) {
	const leastFine, highest = 6, 2 // nobody stands 6 ft of wood on end and calls it a round
	next := rd.At(rd.Past(i+1, +1, lexicon.MarkMade))
	high := next.Marked(lexicon.MarkTall|lexicon.MarkHigh) || rd.Cued(next, lexicon.CueStandsHigh)
	if !rd.Has(lexicon.MarkRound) || !high || rd.Elems[i].Fig.Low < leastFine {
		return nil
	}
	for _, e := range rd.Elems {
		switch {
		case !e.Fig.Short() || e.Fig.High <= reading.ThickestRope:
		case u != nil && u != e.Fig.Unit:
			return nil
		default:
			u = e.Fig.Unit
		}
	}
	if u == nil || rd.Elems[i].Fig.High*u.Factor > highest {
		return nil
	}
	return u
}

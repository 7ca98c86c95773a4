package senses

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Of what stands, crews tell the thick end as the one below and the thin one as
// the one above: "28 abajo 18 arriba", "de 65 cm abajo a 35 arriba", "30 en la base
// que va a 24 arriba".

// StandingEnds gives such a pair of thicknesses their places. Either word alone
// says much else: who is below, how high something is.
func StandingEnds(rd *reading.Reading) {
	for i, e := range rd.Elems {
		endsBehind(rd, i)
		if !across(e.Fig) || !lowEnd(rd, i+1) && !rd.TermAt(i+1).HighEnd {
			continue
		}
		j := i + 2
		for rd.At(j).Pause > 0 && rd.At(j).Pause < 4 || rd.At(j).Marked(lexicon.MarkAnd|lexicon.MarkIs|lexicon.MarkMade|lexicon.MarkBy|lexicon.MarkAt) || goesTo(rd, j) {
			j++
		}
		other := rd.At(j)
		if !across(other.Fig) {
			continue
		}
		low, high := i, j
		if rd.TermAt(i + 1).HighEnd {
			low, high = j, i
		}
		if !lowEnd(rd, low+1) || !rd.TermAt(high+1).HighEnd || rd.Elems[high].Fig.In(rd.Elems[low].Fig) > rd.Elems[low].Fig.High {
			continue
		}
		for k := i + 2; k < j; k++ {
			if rd.Cued(rd.Elems[k], lexicon.CueEndsIn) {
				rd.Elems[k].Term = &scan.Term{}
			}
		}
		rd.Alter(low+1, func(t *scan.Term) {
			*t = scan.Term{Roles: []scan.Role{{Field: parser.ButtDiameter, Side: lexicon.Before, Soft: false}}}
		})
		rd.Alter(high+1, func(t *scan.Term) {
			*t = scan.Term{Roles: []scan.Role{{Field: parser.TipDiameter, Side: lexicon.Before, Soft: false}}}
		})
	}
}

// lowEnd says whether the words at i are those of the thick end.
func lowEnd(rd *reading.Reading, i int) bool {
	return rd.TermAt(i).LowEnd || rd.At(i).LooksBack(parser.ButtDiameter) || rd.At(i).Plays(parser.ButtDiameter) && rd.At(i+1).Fig == nil
}

// goesTo says whether the word at i leads from one end to the other: "que va a", "y
// acaba en".
func goesTo(rd *reading.Reading, i int) bool {
	ends := func(i int) bool { return rd.TermAt(i).Leads || rd.Cued(rd.At(i), lexicon.CueEndsIn) }
	return ends(i) || rd.TermAt(i).HowMuch && ends(i+1) || rd.At(i).Marked(lexicon.MarkIn) && rd.Cued(rd.At(i-1), lexicon.CueEndsIn)
}

// endsBehind reads such a pair where each word stands before its number: "abajo 60
// y arriba 35 cm".
func endsBehind(rd *reading.Reading, i int) {
	first, second := rd.TermAt(i), 0
	a := rd.Past(i+1, +1, lexicon.MarkIs|lexicon.MarkMade|lexicon.MarkAt)
	if !first.LowEnd && !first.HighEnd || rd.At(i-1).Fig != nil || !across(rd.At(a).Fig) {
		return
	}
	for second = a + 1; rd.At(second).Pause > 0 && rd.At(second).Pause < 4 || rd.At(second).Marked(lexicon.MarkAnd); second++ {
	}
	b := rd.Past(second+1, +1, lexicon.MarkIs|lexicon.MarkMade|lexicon.MarkAt)
	low, high, thick, thin := i, second, a, b
	if first.HighEnd {
		low, high, thick, thin = second, i, b, a
	}
	if !rd.TermAt(low).LowEnd || !rd.TermAt(high).HighEnd || !across(rd.At(b).Fig) || rd.TermAt(b+1).LowEnd || rd.TermAt(b+1).HighEnd {
		return
	}
	if rd.Elems[thin].Fig.In(rd.Elems[thick].Fig) > rd.Elems[thick].Fig.In(rd.Elems[thin].Fig) {
		return
	}
	rd.Alter(low, func(t *scan.Term) {
		*t = scan.Term{Roles: []scan.Role{{Field: parser.ButtDiameter, Side: lexicon.After, Soft: false}}}
	})
	rd.Alter(high, func(t *scan.Term) {
		*t = scan.Term{Roles: []scan.Role{{Field: parser.TipDiameter, Side: lexicon.After, Soft: false}}}
	})
}

// across says whether a number can be a thickness: of inches, centimetres or
// the like, or bare and more than people who stand somewhere.
func across(f *reading.Figure) bool {
	const thinnest = 5
	return f.Short() || f != nil && f.Dim == parser.DimCount && f.Unit == nil && !f.Pair && f.Low >= thinnest
}

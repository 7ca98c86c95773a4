package lines

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// "Rope length" tells how long a rope is where a number stands beside it. By itself,
// "rope length please, hitch is at 60 ft", it is what is asked for: how much it takes.

// lengthWanted makes such words ask, where nothing else is asked for and no piece told.
func lengthWanted(rd *reading.Reading) {
	other := func(i int) bool {
		t := rd.TermAt(i)
		return rd.Elems[i].Piece() || t.Intent != "" && !t.Besides && t.Intent != parser.AskRope && t.Intent != parser.AskLift && t.Intent != parser.AskLower
	}
	if rd.AnyAt(other) || rd.AnyAt(rd.Is(Sized)) {
		return
	}
	for i, e := range rd.Elems {
		if !rd.Cued(e, lexicon.CueRopeLong) || e.Term.Intent != "" {
			continue
		}
		behind := rd.Past(i+1, +1, lexicon.MarkIs|lexicon.MarkArticle|lexicon.MarkMade|lexicon.MarkAdverb)
		for rd.Colon(behind) {
			behind++
		}
		if rd.At(behind).Fig != nil || rd.At(i-1).Fig != nil {
			continue // it has its number
		}
		rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Intent: parser.AskRope} })
	}
}

// lengthOfRope takes a length that is asked for where the talk is of a rope and of no piece
// for the rope's: "what length do i need then" is no cut plan.
func lengthOfRope(rd *reading.Reading) {
	if rd.Before.Intent != parser.AskRope || !rd.Before.Pieceless() || rd.Before.Has(parser.Limit) {
		return
	}
	other := func(i int) bool {
		return rd.Elems[i].Piece() || rd.Elems[i].Fig != nil && rd.Elems[i].Fig.Dim != parser.DimLength
	}
	if rd.AnyAt(other) {
		return
	}
	for i, e := range rd.Elems {
		if rd.Cued(e, lexicon.CueAsksLength) && e.Term.Intent == parser.AskCutPlan {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Intent: parser.AskRope} })
		}
	}
}

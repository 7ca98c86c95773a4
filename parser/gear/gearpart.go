package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// PartOf finds the gear that a strength is of: named before it in the same
// breath, or behind it, or in the breath before where that tells of nothing
// but gear ("5/8 double braid, bowline, 16,000 lb break").
func PartOf(rd *reading.Reading, left, right int, used map[int]bool) (scan.Part, int) {
	if k := right + 1; rd.At(left).Marked(lexicon.MarkArticle) && Strength(rd.At(right)) != "" && Part(rd.At(k)) != "" && !used[k] {
		return Part(rd.At(k)), k // "with 900 kg on the block is a 2 t WLL sling ok"
	}
	j := left
	for ; j >= 0 && !ends(rd, j); j-- {
		p := Part(rd.Elems[j])
		if p == "" && rd.Elems[j].Plays(parser.RopeLength) {
			p = lexicon.PartRope // "la cuerda es de 7 toneladas de ruptura"
		}
		if p != "" && !used[j] && !ledTo(rd, j) {
			return p, j
		}
	}
	for k := right; k < len(rd.Elems) && !ends(rd, k); k++ {
		if p := Part(rd.Elems[k]); p != "" && !used[k] {
			return p, k
		}
	}
	for ; j >= 0; j-- {
		e := rd.Elems[j]
		switch p := Part(e); {
		case p != "" && ledTo(rd, j): // "40 ft of rope to the drum, breaks at 10,000 lb"
		case p != "" && !used[j]:
			return p, j
		case p != "", e.Fig != nil && !ofGear(e.Fig), e.Piece(), e.Pause > 2:
			return "", -1
		}
	}
	return "", -1
}

// ledTo says whether the drum at i is only where a rope leads that is named
// before it: "rope to the drum".
func ledTo(rd *reading.Reading, i int) bool {
	k := rd.Past(i-1, -1, lexicon.MarkArticle)
	e := rd.Elems[i]
	leads := rd.At(k).Marked(lexicon.MarkRelation|lexicon.MarkTaper) || rd.At(i-1).Marked(lexicon.MarkRelation) // "al tambor"
	if Part(e) != lexicon.PartDrum || !leads {
		return false
	}
	for ; k >= 0 && rd.Elems[k].Pause == 0; k-- {
		if Part(rd.Elems[k]) == lexicon.PartRope {
			return true
		}
	}
	return false
}

// RatedBefore is the gear of the number before, where that told the other
// figure of its label and nothing else stands between: "rope 16,000 lb break,
// 1,600 lb WLL".
func RatedBefore(rd *reading.Reading, j int, s scan.Strength) scan.Part {
	for ; j >= 0; j-- {
		e := rd.Elems[j]
		switch {
		case e.Fig != nil:
			for _, p := range []scan.Part{lexicon.PartRope, lexicon.PartBlock, lexicon.PartSling, lexicon.PartConnector, lexicon.PartDrum} {
				if e.Fig.Sure == Field(p, other(s)) {
					return p
				}
			}
			return ""
		case Strength(e) == "" && e.Pause == 0 && !e.Marked(lexicon.MarkIs|lexicon.MarkRating|lexicon.MarkArticle|lexicon.MarkAnd):
			return ""
		}
	}
	return ""
}

// ends says whether a breath ends at an element.
func ends(rd *reading.Reading, i int) bool {
	e := rd.Elems[i]
	return e.Fig != nil && Rates(e.Fig) || e.Pause > 0 && !rd.Colon(i) || e.Marked(lexicon.MarkAnd) || e.Piece()
}

// ofGear says whether a number can tell how thick a rope or a sling is, or
// how it is rigged.
func ofGear(f *reading.Figure) bool {
	return f.Dim == parser.DimAngle || f.Dim == parser.DimRatio || f.Dim == parser.DimCount && f.Low < 100 || f.Dim == parser.DimLength && f.Unit.Fine
}

// PartBeside is the gear right beside a number: "3 ton shackle", "sling rated
// for 4,000 lb".
func PartBeside(rd *reading.Reading, left, right int) scan.Part {
	if p := Part(rd.At(right)); p != "" {
		return p
	}
	return Part(rd.At(rd.Past(PastIs(rd, left), -1, lexicon.MarkRating|lexicon.MarkIs)))
}

// GearAsked is the strength of the one piece of gear that is asked about, where none
// is told: of hardware its working load, which is marked on it.
func GearAsked(rd *reading.Reading, q parser.Question) parser.Field {
	if q.Intent != parser.AskGear || q.Has(parser.Ratings...) {
		return ""
	}
	p := PartMeant(rd)
	if p == "" {
		p = holder(rd)
	}
	if q.Noted(parser.NoteOnBlock) && p == "" {
		p = lexicon.PartSling // "3000 lb on the block, will the sling hold"
	}
	switch p {
	case lexicon.PartSling:
		return parser.SlingBreak
	case lexicon.PartBlock, lexicon.PartConnector, lexicon.PartDrum:
		return Field(p, lexicon.Working)
	}
	return ""
}

// holder is the gear that it is asked of whether it holds, where other gear is named too:
// "will the sling hold for the top block". "" for none.
func holder(rd *reading.Reading) scan.Part {
	for i, e := range rd.Elems {
		if !rd.Cued(e, lexicon.CueHolds) && !(rd.TermAt(i).Bears && rd.TermAt(i).Intent == parser.AskGear) {
			continue
		}
		for k := i - 1; k >= 0 && rd.Elems[k].Pause == 0; k-- {
			if p := Part(rd.Elems[k]); p != "" {
				return p
			}
		}
	}
	return ""
}

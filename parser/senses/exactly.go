package senses

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Exactly takes "dead" for no more than "right" where it says where gear is, "block 4 up from
// the tie, dead above the main fork": no wood is told of there. Of wood it is how it is, "the
// oak is dead above 30 ft".
func Exactly(rd *reading.Reading) {
	for i, e := range rd.Elems {
		next := rd.At(i + 1)
		where := next.Pause == 0 && next.Fig == nil && (next.Marked(lexicon.MarkRelation|lexicon.MarkWhere|lexicon.MarkIn) || next.Plays(parser.BlockHeight) || next.Plays(parser.HitchHeight))
		if rd.Cued(e, lexicon.CueExactly) && rd.TermAt(i).Condition == parser.Dead && where && gearPlaced(rd, i) {
			rd.Elems[i].Term = &scan.Term{Chatter: true}
			rd.Passed = slices.DeleteFunc(rd.Passed, func(p parser.Said[string]) bool { return p.Start == e.Start })
		}
	}
}

// gearPlaced says whether gear is told of before the element at i, with no wood and no full
// stop between.
func gearPlaced(rd *reading.Reading, i int) bool {
	for k := i - 1; k >= 0 && rd.Elems[k].Pause < 4; k-- {
		e, t := rd.Elems[k], rd.TermAt(k)
		switch {
		case gear.Part(e) != "", t.Block != "", e.Marked(lexicon.MarkStation), e.LeadsTo(parser.HitchHeight):
			return true
		case t.Tree != nil, t.Shape != "", t.Unnamed:
			return false
		}
	}
	return false
}

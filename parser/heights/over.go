package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Where a block stands is told from the piece as well as the other way round:
// "block is 15 ft over from the limb". Under the block or beside it, that is how
// far the piece is to the side.

// BlockOver finds such numbers where a block was named before them in the same
// breath.
func BlockOver(rd *reading.Reading) {
	for i := range rd.Elems {
		if !gear.Far(rd, i) || rd.Elems[i].Fig.Told != "" || !gear.BlockBefore(rd, i) && !(blockSubject(rd, i) && gear.AsksFor(rd, parser.AskSwing)) || gear.AsksFor(rd, parser.AskRaise) {
			continue
		}
		if last := overFrom(rd, i); last > 0 {
			rd.Elems[i].Fig.Told, rd.Elems[i].Fig.Elsewhere = parser.Sideways, false
			for k := i + 1; k < last; k++ {
				rd.Elems[k].Term = &scan.Term{}
			}
		}
	}
}

// overFrom reads "over from the limb" and "over toward the house from where i
// cut" behind the number at i, and returns where the words for it end.
func overFrom(rd *reading.Reading, i int) int {
	j := i + 1
	if !rd.Cued(rd.At(j), lexicon.CueOver) {
		return 0
	}
	if rd.Cued(rd.At(j+1), lexicon.CueTowards) {
		k := rd.Past(j+2, +1, lexicon.MarkArticle|lexicon.MarkAdjective)
		if gear.Obstacle(rd.At(k)) == "" {
			return 0
		}
		j = k
	}
	if rd.At(j+1).Plays(parser.Sideways) && j > i+1 {
		return j + 2 // "from where i cut"
	}
	k := rd.Past(j+2, +1, lexicon.MarkArticle)
	if rd.Cued(rd.At(j+1), lexicon.CueFrom) && (rd.TermAt(k).Shape != "" || rd.TermAt(k).Unnamed) && rd.EndsBreath(k+1) {
		return k
	}
	return 0
}

// cutBefore says whether the number at i is told of the cut or of the piece.
func cutBefore(rd *reading.Reading, i int) bool {
	e := rd.At(rd.Back(i - 1))
	return e.Piece() || rd.Cued(e, lexicon.CueCutting)
}

// hungBelow reads "limb hangs 35 ft below" where a block is named before it, and
// nothing else that it could be below.
func hungBelow(rd *reading.Reading, i int) bool {
	below := rd.Cued(rd.At(i+1), lexicon.CueBelow)
	return below && rd.EndsBreath(i+2) && rd.TermAt(rd.Back(i-1)).Hung && rd.AnyAt(func(k int) bool { return k < i && gear.Part(rd.Elems[k]) == lexicon.PartBlock })
}

// hungUnder reads "hanging under 6 m of rope".
func hungUnder(rd *reading.Reading, i int) bool {
	return rd.Cued(rd.At(i-1), lexicon.CueUnder) && rd.TermAt(rd.Back(i-2)).Hung && rd.At(i+1).Plays(parser.RopeLength)
}

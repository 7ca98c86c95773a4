package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// woodOfBlock takes the one thickness of "theres only a 120 mm branch to put it on" and
// "the block is on a 5 in limb" for that of the wood that holds, and never for the butt of
// a piece: what hangs there is heavier than a branch as thin as its anchor. Where other wood
// or another number of a piece is told, it says nothing.
func woodOfBlock(rd *reading.Reading) {
	thick := rd.Only(func(i int) bool { return rd.Elems[i].Fig != nil && !placedUp(rd, i) })
	wood := rd.Only(func(i int) bool { return rd.TermAt(i).Shape != "" || rd.At(i).Marked(lexicon.MarkStanding) })
	if thick < 0 || wood < 0 || !rd.Elems[thick].Fig.Short() || rd.Elems[thick].Fig.Rope || rd.TermAt(wood).Shape == "" || !besideWood(rd, thick, wood) || !rd.EverTyped(lexicon.CueHoldsUp) {
		return
	}
	note := parser.NoteAnchorSpar
	if rd.TermAt(wood).Shape == parser.Limb {
		note = parser.NoteAnchorLimb
	}
	rd.Alter(wood, func(t *scan.Term) { *t = scan.Term{Intent: parser.AskAnchor, Note: note} })
	rd.Elems[thick].Fig.Sure = parser.Diameter
	elsewhereStrong(rd, wood)
}

// placedUp says whether the number at i is how high something is: "to hang it on at 20 ft".
func placedUp(rd *reading.Reading, i int) bool {
	return rd.Elems[i].Fig.Far() && (rd.At(i-1).Marked(lexicon.MarkAt) || rd.At(i+1).Plays(parser.HitchHeight))
}

// besideWood says whether the thickness is told of the wood: right before it but for which
// tree it is, or behind it with nothing told between.
func besideWood(rd *reading.Reading, thick, wood int) bool {
	if wood < thick {
		for k := wood + 1; k < thick; k++ {
			if rd.At(k).Pause > 1 {
				return false
			}
		}
		return true
	}
	for k := thick + 1; k < wood; k++ {
		if rd.TermAt(k).Tree == nil && rd.TermAt(k).Condition == "" && !rd.At(k).Marked(lexicon.MarkAdjective|lexicon.MarkMade|lexicon.MarkTrailing) {
			return false
		}
	}
	return true
}

package stops

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// The colour of a sling says which one is meant, and nothing of how good it is; that
// of wood may say that it rots.

// Colours passes over what tells the colour of gear: "the red sling", "my rope is
// green".
func Colours(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if rd.Cued(e, lexicon.CueColour) && ofKitAlone(rd, i-1, i+1) {
			gear.Said(rd, e.Start, e.End)
			rd.Elems[i].Term = &scan.Term{Chatter: true}
		}
	}
	rd.Asks = slices.DeleteFunc(rd.Asks, func(a *parser.Ask) bool {
		prev, next, _ := Around(rd, a)
		colour := a.Kind == parser.Unknown && (rd.CuedAs(a.Words, lexicon.CueColour) && ofKitAlone(rd, prev, next) || ofBark(rd, a, prev, next))
		if colour {
			gear.Said(rd, a.Start, a.End)
		}
		return colour
	})
}

// ofBark says whether what is asked about is a colour that sound bark has, right beside
// it: "smooth gray bark" may tell somebody which tree it is. Black it may be of rot or fire.
func ofBark(rd *reading.Reading, a *parser.Ask, prev, next int) bool {
	behind := rd.At(next)
	before := rd.At(rd.Past(prev, -1, lexicon.MarkIs|lexicon.MarkAdjective))
	bark := rd.Cued(behind, lexicon.CueBark) && behind.Pause == 0 || rd.Cued(before, lexicon.CueBark)
	return bark && rd.CuedAs(a.Words, lexicon.CueBarkColour)
}

// ofKitAlone says whether what stands between two elements is said of gear, and of no
// wood and no number.
func ofKitAlone(rd *reading.Reading, prev, next int) bool {
	of := gear.PastIs(rd, prev)
	if rd.At(prev).Fig != nil || rd.At(next).Fig != nil || Wooden(rd, of) || Wooden(rd, next) {
		return false
	}
	return Rigs(rd, of) || Rigs(rd, next) || rd.TermAt(next).Intent == parser.AskGear
}

// Wooden says whether the element at i is a tree, a piece or a part of it.
func Wooden(rd *reading.Reading, i int) bool {
	part := rd.At(i).Marked(lexicon.MarkPart) && !rd.Cued(rd.At(i), lexicon.CueDown)
	return rd.At(i).Piece() || part || rd.Cued(rd.At(i), lexicon.CueTree) || rd.Cued(rd.At(i), lexicon.CueWood)
}

// Rigs says whether the element at i is gear that holds the load.
func Rigs(rd *reading.Reading, i int) bool {
	return gear.Part(rd.At(i)) != "" || rd.At(i).Marked(lexicon.MarkCord)
}

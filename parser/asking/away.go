package asking

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// Away says whether a number in question is told from a place in the tree, "600 from the
// block", "hay como 2 de la polea a la pieza": whatever is waited for, it is no weight, no
// strength and no count.
func Away(rd *reading.Reading, a *parser.Ask) bool {
	i := rd.Only(func(k int) bool { return rd.Elems[k].Fig != nil && rd.Elems[k].Fig.Start == a.Start })
	if i >= 0 && lengthBehind(rd.At(i+1)) {
		return true
	}
	if i < 0 || !rd.At(i+1).Marked(lexicon.MarkRelation) || rd.At(i+1).Marked(lexicon.MarkTaper) {
		return false
	}
	from := rd.Past(i+2, +1, lexicon.MarkArticle|lexicon.MarkAdjective)
	return gear.Part(rd.At(from)) == lexicon.PartBlock || gear.Part(rd.At(from)) == lexicon.PartDrum || rd.TermAt(from).Shape != "" || rd.At(from).Marked(lexicon.MarkStanding) || rd.Cued(rd.At(from), lexicon.CueHinge)
}

// lengthBehind says whether the words of an element take the number before them, and for
// nothing but how far two things in the tree are apart: "from block to the middle".
func lengthBehind(e reading.Element) bool {
	if e.Term == nil || len(e.Term.Roles) == 0 {
		return false
	}
	for _, r := range e.Term.Roles {
		if r.Side&lexicon.Before == 0 || !slices.Contains(betweenTwo, r.Field) {
			return false
		}
	}
	return true
}

// betweenTwo are the distances between two things in the tree.
var betweenTwo = []parser.Field{parser.MiddleAbove, parser.HitchToBlock, parser.HitchAbove, parser.BlockBelow, parser.BlockHeight}

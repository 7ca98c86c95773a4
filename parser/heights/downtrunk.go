package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// DownTrunk takes the trunk that a limb is lowered along for its way, "lower it straight down
// the stem", where the message tells of a limb, or the talk does and no other size is told:
// it makes no log of that. A trunk that is itself cut down in blocks stays one.
func DownTrunk(rd *reading.Reading) {
	sized := func(i int) bool { return rd.Elems[i].Fig != nil && rd.Elems[i].Fig.Dim == parser.DimLength }
	spoken := !rd.First && rd.Before.Shape != nil && rd.Before.Shape.Value == parser.Limb && !rd.AnyAt(sized)
	lowered := gear.AsksFor(rd, parser.AskLower) || gear.AsksFor(rd, parser.AskBlockLoad)
	if !lowered || !spoken && !gear.ShapedFrom(rd, 0, parser.Limb) || gear.AsksFor(rd, parser.AskDrop) || gear.AsksFor(rd, parser.AskCutPlan) {
		return
	}
	for i, e := range rd.Elems {
		if rd.TermAt(i).Shape != parser.Log || !rd.Cued(e, lexicon.CueTheTrunk) || rd.At(i+1).Fig != nil && rd.At(i+1).Pause == 0 {
			continue
		}
		k := rd.Past(i-1, -1, lexicon.MarkArticle)
		if !rd.TypedBefore(k+1, lexicon.CueDownAlong) {
			continue
		}
		rd.Elems[i].Term = &scan.Term{}
		return
	}
}

package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
	"heft/parser/scan"
)

// A load that hangs on two lines, or from two trees, pulls on each of them as on the
// legs of a bridle, where the angle between the lines is told: "1,000 lb hung from two
// trees, 120 degrees between the lines".

// TwoLines reads it so where nothing runs over a block or round a drum.
func TwoLines(rd *reading.Reading) {
	angle := func(i int) bool {
		fig := rd.Elems[i].Fig
		return fig != nil && fig.Dim == parser.DimAngle && rd.At(i+1).Plays(parser.BlockAngle)
	}
	other := func(i int) bool {
		e := rd.Elems[i]
		return rd.TermAt(i).Block != "" || gear.Part(e) == lexicon.PartBlock || e.Marked(lexicon.MarkStation|lexicon.MarkDeflects) || e.Plays(parser.Wraps)
	}
	if !rd.AnyAt(angle) || rd.AnyAt(other) || !rd.AnyAt(rd.Is(gear.Heavy)) {
		return
	}
	for i := range rd.Elems {
		next, lead := rd.At(i+1), rd.At(i-1)
		if !places.Bare(rd.Elems[i].Fig, 2) || !rd.Cued(next, lexicon.CueLines) || !lead.Marked(lexicon.MarkIn|lexicon.MarkRelation|lexicon.MarkMade|lexicon.MarkWhere|lexicon.MarkBetween) && !rd.Cued(lead, lexicon.CueHangFrom) {
			continue
		}
		places.Claim(rd, i, parser.Lines)
		rd.Elems[i+1].Term = &scan.Term{Note: parser.Bridled, Marks: lexicon.MarkBridle, Intent: parser.AskBalance}
		return
	}
}

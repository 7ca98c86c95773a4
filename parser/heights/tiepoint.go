package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// TiePointHigh reads "tie point is at 40 ft and I got 120 ft of rope" as how high the rope is
// hitched, where nothing swings or is stood up: there it may be how far along a limb.
func TiePointHigh(rd *reading.Reading) {
	rope := rd.AnyAt(func(k int) bool {
		fig := rd.Elems[k].Fig
		return fig != nil && fig.Told == parser.RopeLength || rd.Elems[k].Plays(parser.RopeLength) && (gear.Far(rd, k-1) || gear.Far(rd, k+1)) || rd.TermAt(k).Intent == parser.AskRope
	})
	if !rope || Swung(rd) || gear.AsksFor(rd, parser.AskRaise) || rd.Worded(parser.HitchHeight) || rd.AnyAt(func(k int) bool { return gear.Obstacle(rd.Elems[k]) != "" }) {
		return
	}
	at := rd.Only(func(i int) bool {
		fig := rd.Elems[i].Fig
		return fig.Far() && !fig.Pair && fig.Told == "" && rd.At(i-1).Marked(lexicon.MarkAt) && rd.TermAt(rd.Back(i-1)).Tied && breathEnds(rd, i+1)
	})
	if at >= 0 {
		rd.Elems[at].Fig.Told, rd.Elems[at].Fig.Elsewhere = parser.HitchHeight, false
	}
}

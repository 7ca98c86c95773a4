package sizes

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// CutterAt reads "how big a top can he take, he's at 26 cm" as how thick the piece is
// where who cuts it stands: nobody is so few inches or centimetres up.
func CutterAt(rd *reading.Reading) {
	const thinnest, thickest = 0.08, 1.5
	for i, e := range rd.Elems {
		if !e.Fig.Short() || e.Fig.Rope || e.Fig.Pair || e.Fig.Told != "" || e.Fig.Low < thinnest || e.Fig.High > thickest || !rd.EndsBreath(i+1) || rd.ThicknessBeside(e.Fig) {
			continue
		}
		if at := rd.At(i - 1); at.Marked(lexicon.MarkPerson) && at.Marked(lexicon.MarkPlace) {
			e.Fig.Told = parser.AcrossField(gear.ShapedFrom(rd, 0, parser.Limb))
			return
		}
	}
}

// CutAt reads "a top, 35 ft, cut at 11 inch" as how thick the top is where it is cut:
// its butt, whatever is asked of its tip. Logs and rounds are cut at a length as well.
func CutAt(rd *reading.Reading) {
	top := rd.AnyAt(func(i int) bool { return rd.TermAt(i).Shape == parser.Limb })
	if !top || gear.AsksFor(rd, parser.AskCutPlan) || !rd.AnyAt(rd.Is(gear.Far)) {
		return
	}
	for i, e := range rd.Elems {
		at := rd.At(i - 1)
		behind := rd.At(i + 1)
		if e.Fig == nil || !e.Fig.Short() || e.Fig.Rope || e.Fig.Pair || e.Fig.High <= reading.ThickestRope || e.Fig.Told != "" || behind.Looks(lexicon.Before) || behind.Cross {
			continue
		}
		if at.Marked(lexicon.MarkAt) && rd.Cued(rd.At(i-2), lexicon.CueCutting) {
			e.Fig.Told = parser.ButtDiameter
			return
		}
	}
}

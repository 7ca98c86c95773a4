package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// StemTall makes the one length of a message that tells both ends of a stem its length,
// whichever way it is told: "26 abajo y 18 arriba, 40 pies de alto", "un palo de 9 metros".
// What is cut in place stands as tall as it is long, and hangs nowhere.
func StemTall(rd *reading.Reading) {
	at := rd.Only(rd.Is(gear.Far))
	if at < 0 || !bothEnds(rd) || gear.ShapedFrom(rd, 0, parser.Limb) || rd.At(at-1).Marked(lexicon.MarkAt) || rd.At(at-1).Plays(parser.HitchHeight) {
		return
	}
	before, next := rd.At(rd.Back(at-1)), rd.At(at+1)
	alone := before.Pause > 0 || before.Piece() || before.Marked(lexicon.MarkAnd)
	stands := gear.AsksFor(rd, parser.AskCutPlan) || rd.Has(lexicon.MarkStanding)
	if alone && stands && next.Marked(lexicon.MarkHigh|lexicon.MarkAdjective) && next.Plays(parser.HitchHeight) { // "40 ft up" is where a log is
		rd.Elems[at].Fig.Told, rd.Elems[at+1].Term = parser.Length, &scan.Term{}
	}
	k := rd.Past(at-1, -1, lexicon.MarkMade)
	if k < at-1 && rd.Cued(rd.At(k), lexicon.CueTheTrunk) && rd.At(k).Marked(lexicon.MarkPlace) {
		rd.Elems[k].Term = &scan.Term{Shape: parser.Log, Marks: lexicon.MarkStanding}
	}
}

// bothEnds says whether a message tells how thick a piece is at its butt and at its tip.
func bothEnds(rd *reading.Reading) bool {
	told := func(f parser.Field) bool {
		return rd.AnyAt(func(i int) bool {
			return rd.Elems[i].Plays(f) && (rd.At(i-1).Fig != nil || rd.At(i+1).Fig != nil)
		})
	}
	low := func(i int) bool { return rd.TermAt(i).LowEnd && rd.At(i-1).Fig != nil }
	high := func(i int) bool { return rd.TermAt(i).HighEnd && rd.At(i-1).Fig != nil }
	return (told(parser.ButtDiameter) || rd.AnyAt(low)) && (told(parser.TipDiameter) || rd.AnyAt(high))
}

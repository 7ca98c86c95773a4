package senses

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Loading takes "pa subirla al camión" and "to lift it on the truck" for what a weight is
// asked for, where it is: what is loaded hangs on no rope that is told of.
func Loading(rd *reading.Reading) {
	if !gear.AsksFor(rd, parser.AskWeight) || rd.Worded(parser.Parts) || rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil && rd.Elems[i].Fig.Dim == parser.DimRatio }) {
		return
	}
	for i := range rd.Elems {
		if rd.TermAt(i).Intent != parser.AskLift {
			continue
		}
		onto := rd.Past(i+1, +1, lexicon.MarkPronoun|lexicon.MarkAt|lexicon.MarkIn|lexicon.MarkRelation|lexicon.MarkWhere|lexicon.MarkArticle)
		if onto > i+1 && rd.Cued(rd.At(onto), lexicon.CueVehicle) {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Chatter: true} })
		}
	}
}

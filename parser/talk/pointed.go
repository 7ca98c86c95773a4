package talk

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// What the next message of a talk says with a bare number hangs on the words around it:
// "next one is fatter, 16" tells a thickness, "too many cuts, 700" a limit, and "why, we
// always did 2" changes nothing.

// Stated says whether a number is said to be so, or asked to be changed to: "its only 20",
// "mide 20", "make it 20". "Why does 2 ft make it so heavy" does neither.
func Stated(rd *reading.Reading) bool {
	asked := false
	return rd.AnyAt(func(i int) bool {
		asked = asked || rd.Elems[i].Marked(lexicon.MarkFollow)
		return rd.Elems[i].Fig != nil && (asked || rd.TypedBefore(i, lexicon.CueStates))
	})
}

// pointers are the words that say of what a bare number is.
var pointers = []struct {
	cue   scan.Cue
	field parser.Field
}{{lexicon.CueFatter, parser.Diameter}, {lexicon.CueLengthier, parser.Length}, {lexicon.CueManyCuts, parser.Limit}}

// PointsTo is what words of a message say that its one number is of, which has neither a
// unit nor a word of its own; "" where none do, or they say several things.
func PointsTo(rd *reading.Reading) (f parser.Field) {
	at := rd.Only(func(i int) bool { return rd.Elems[i].Fig != nil })
	if at < 0 || rd.Elems[at].Fig.Unit != nil || rd.Elems[at].Fig.Told != "" {
		return ""
	}
	for _, p := range pointers {
		if !Typed(rd, p.cue) {
			continue
		}
		if f != "" {
			return ""
		}
		f = p.field
	}
	return f
}

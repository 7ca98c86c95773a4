package stops

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// "La línea" is the rope where it runs to a block or a drum, carries so much, is so
// thick or where a speed line is told of. Anywhere else, and wherever a wire is told of, it may be a power line.

// RopeLines takes such words for the rope.
func RopeLines(rd *reading.Reading) {
	wire := func(i int) bool {
		return rd.TermAt(i).Stop == parser.PowerLine && !rd.Cued(rd.Elems[i], lexicon.CueLine)
	}
	if rd.AnyAt(wire) {
		return
	}
	span := rd.AnyAt(func(i int) bool { return rd.TermAt(i).Stop == parser.SpanLine })
	for i := range rd.Elems {
		if rd.Cued(rd.Elems[i], lexicon.CueLine) && (rd.TermAt(i).Stop == parser.PowerLine || rd.TermAt(i).Own) && (span || isRope(rd, i)) {
			rd.Elems[i].Term = &scan.Term{Part: lexicon.PartRope, Marks: lexicon.MarkCord | lexicon.MarkGear}
		}
	}
}

// isRope says whether the line at i is one that is rigged.
func isRope(rd *reading.Reading, i int) bool {
	led := rd.Past(i-1, -1, lexicon.MarkArticle)
	if gear.Heavy(rd, led) || rd.At(led).Marked(lexicon.MarkIn) && gear.Heavy(rd, led-1) || rd.At(led).Plays(parser.Parts) || rd.TermAt(led).Employs {
		return true // "900 libras en la línea", "pongo la línea"
	}
	if made := rd.Past(i+1, +1, lexicon.MarkMade); made > i+1 && (rd.At(made).Fig.Short() || rd.At(made).Fig != nil && rd.At(made).Fig.Rope) {
		return true // "línea de 1/2"
	}
	for k := i + 1; k-i <= Few && k < len(rd.Elems); k++ {
		switch e := rd.Elems[k]; {
		case Kit(rd, k):
			return k > i+1
		case !rd.Cued(e, lexicon.CueRuns) && !e.Marked(lexicon.MarkArticle) && !(e.Polite() && e.Pause == 0):
			return false
		}
	}
	return false
}

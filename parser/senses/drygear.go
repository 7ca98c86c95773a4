package senses

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/stops"
)

// Rope is dry as well as wood, and what is asked to be "wet or dry" is neither: no
// piece is dead by that.

// DryGear takes such a word for nothing of the piece.
func DryGear(rd *reading.Reading) {
	for i, e := range rd.Elems {
		if rd.TermAt(i).Condition != parser.Dead || !rd.Cued(e, lexicon.CueDryToo) {
			continue
		}
		before := rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkArticle)
		gear := ropeOrDrum(rd, i+1) || before >= 0 && ropeOrDrum(rd, before)
		if gear || wetAt(rd, i-1) || wetAt(rd, i-2) || wetAt(rd, i+1) || wetAt(rd, i+2) {
			rd.Alter(i, func(t *scan.Term) { t.Condition = "" })
		}
	}
}

func ropeOrDrum(rd *reading.Reading, i int) bool {
	return rd.At(i).Pause == 0 && (stops.Rope(rd, i) || gear.Part(rd.At(i)) == lexicon.PartDrum)
}

// wetAt says whether the element at i tells of what is wet.
func wetAt(rd *reading.Reading, i int) bool { return rd.At(i).Pause == 0 && rd.TermAt(i).Note == "wet" }

package gear

import (
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// StrengthNamed is the gear whose strength a number is told to be by that name, right
// before or behind it: "6,000 lb rope strength", "a block strength of 8,000 lb". Which of
// the two strengths on its label is meant is asked; the number is no piece's weight.
func StrengthNamed(rd *reading.Reading, i int) scan.Part {
	p, end := strengthNamed(rd, i+1, +1)
	if p != "" && rd.At(rd.Past(end+1, +1, lexicon.MarkIs|lexicon.MarkRelation)).Fig == nil {
		return p // the number behind would be the strength
	}
	p, _ = strengthNamed(rd, rd.Past(i-1, -1, lexicon.MarkIs|lexicon.MarkRelation|lexicon.MarkArticle), -1)
	return p
}

// strengthNamed is the gear of "rope strength" that begins at i, or ends there, read forth or
// back, and where it ends.
func strengthNamed(rd *reading.Reading, i, step int) (scan.Part, int) {
	named := func(k int) bool { return rd.Cued(rd.At(k), lexicon.CueStrength) }
	switch e := rd.At(i); {
	case Part(e) != "" && e.Marked(lexicon.MarkRating) && named(i):
		return Part(e), i
	case step > 0 && Part(e) != "" && named(i+1):
		return Part(e), i + 1
	case step < 0 && named(i) && Part(rd.At(i-1)) != "":
		return Part(rd.At(i - 1)), i - 1
	}
	return "", i
}

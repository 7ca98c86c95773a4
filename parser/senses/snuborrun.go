package senses

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// SnubOrRun says whether a line held fast and one that is let run are weighed against
// each other, "let it run 15 ft vs lock it off", with nothing but the run told between.
func SnubOrRun(rd *reading.Reading) bool {
	snub, run := -1, -1
	for i, e := range rd.Elems {
		switch {
		case rd.TermAt(i).Note == parser.Snubbed && snub < 0:
			snub = i
		case rd.TermAt(i).Note == parser.Snubbed || e.Plays(parser.RunLength) && e.Fig == nil && run >= 0:
			return false
		case e.Plays(parser.RunLength) && e.Fig == nil:
			run = i
		}
	}
	if snub < 0 || run < 0 {
		return false
	}
	first, last := min(snub, run), max(snub, run)
	for k := first + 1; k < last; k++ {
		if rd.Elems[k].Pause > 2 || rd.Elems[k].Piece() || rd.Elems[k].Fig != nil && (first != run || k > first+1) {
			return false
		}
	}
	either := 0
	for _, word := range scan.SplitWords(rd.Text[rd.Elems[first].End:rd.Elems[last].Start]) {
		j, join := rd.In.Joins[scan.Fold(word)]
		if join && j == scan.Or || rd.In.Cued(scan.Fold(word), lexicon.CueVersus) {
			either++
		}
	}
	return either == 1
}

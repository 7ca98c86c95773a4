package turning

import (
	"slices"

	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// Such takes the doubt from words that name a length said before, "call it that length",
// where none does: without a word that points to it, or with a length told beside them.
func Such(rd *reading.Reading) {
	told := rd.AnyAt(rd.Is(gear.Far))
	for i, e := range rd.Elems {
		points := func(word string) bool { return rd.In.Cued(word, lexicon.CueSuch) }
		if rd.TermAt(i).Turning == parser.TurnsSuch && (told || !slices.ContainsFunc(scan.SplitWords(rd.Text[e.Start:e.End]), points)) {
			rd.Alter(i, func(t *scan.Term) { t.Ask, t.Turning = "", "" })
		}
	}
}

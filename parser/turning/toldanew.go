package turning

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/places"
	"heft/parser/reading"
)

// In a talk the words that take back stand for what was told before: "scratch that, the sling
// is rated 900 lb", "i mean it turns by 45°". What is told behind them takes its place, as it
// would without them.

// tellsAnew says whether the words at i begin a message of a talk that tells behind them no
// two numbers in one unit, so that each is plainly one of what was told before.
func tellsAnew(rd *reading.Reading, i int) bool {
	t := rd.TermAt(i)
	if rd.First || t.Denies || t.Lacks || !begins(rd, i) || !toldBehind(rd, i) {
		return false
	}
	for k := i + 1; k < len(rd.Elems); k++ {
		for n := k + 1; n < len(rd.Elems); n++ {
			if a, b := rd.Elems[k].Fig, rd.Elems[n].Fig; a != nil && b != nil && a.Unit == b.Unit && a.Dim == b.Dim {
				return false
			}
		}
	}
	return true
}

// measurePutAside finds where what the denial at i puts aside ends, where that is no more
// than the name of a measure and another is told with its number in the same breath: "the
// rope turns by 45, not the angle between the legs". It is 0 elsewhere.
func measurePutAside(rd *reading.Reading, i int) int {
	if rd.TermAt(i).Lacks && !rd.At(i+1).Marked(lexicon.MarkArticle) {
		return 0 // "no hitch height"
	}
	told := false
	for k := i - 1; k >= 0 && rd.Elems[k].Pause < 4 && !told; k-- {
		told = rd.Elems[k].Fig != nil
	}
	named, end := false, i+1
	for ; end < len(rd.Elems) && rd.Elems[end].Pause == 0; end++ {
		e, t := rd.Elems[end], rd.TermAt(end)
		measure := len(t.Roles) > 0 && t.Ask == "" && t.Stop == "" && t.Tree == nil
		legs := places.Bare(e.Fig, 2) && rd.At(end+1).Plays(parser.Legs) // "the angle between the two legs"
		if !measure && !legs && (e.Fig != nil || !Weightless(rd, end)) {
			return 0
		}
		named = named || measure
	}
	if !told || !named {
		return 0
	}
	return beforeCourtesy(rd, i, end)
}

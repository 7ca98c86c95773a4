package heights

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// CutPlaces passes over where a limb is cut, "cut it 2 ft from the trunk": that is no tie,
// and what comes off is as long as it was told to be at most. It is said back.
func CutPlaces(rd *reading.Reading) {
	for i := 0; i < len(rd.Elems); i++ {
		if !gear.Far(rd, i) || rd.Elems[i].Fig.Told != "" {
			continue
		}
		if end := offStem(rd, i+1); end > 0 && cutsBefore(rd, i) {
			rd.Pass(i, end)
			i--
		}
	}
}

// cutsBefore says whether the number at i is where something is cut.
func cutsBefore(rd *reading.Reading, i int) bool {
	for k := i - 1; k >= 0 && i-k <= 6 && rd.At(k).Pause == 0 && rd.At(k).Fig == nil; k-- {
		e := rd.At(k)
		switch {
		case rd.Cued(e, lexicon.CueCutting):
			return true
		case e.Marked(lexicon.MarkPronoun | lexicon.MarkArticle | lexicon.MarkMade | lexicon.MarkAt | lexicon.MarkAdverb), e.Piece(), rd.TermAt(k).Unnamed, rd.TermAt(k).Note == "about", rd.Cued(e, lexicon.CueOut):
		default:
			return false
		}
	}
	return false
}

// offStem is the end of "out from the trunk" from the element at i on, 0 where it does
// not stand there.
func offStem(rd *reading.Reading, i int) int {
	for rd.Cued(rd.At(i), lexicon.CueOut) {
		i++
	}
	if e := rd.At(i); e.Plays(parser.Tie) && e.LooksBack(parser.Tie) || rd.Cued(e, lexicon.CueOffTrunk) {
		return i + 1
	}
	k := rd.Past(i+1, +1, lexicon.MarkArticle)
	if rd.At(i).Marked(lexicon.MarkMade|lexicon.MarkRelation) && rd.TermAt(k).Shape == parser.Log && rd.Cued(rd.At(k), lexicon.CueTheTrunk) {
		return k + 1
	}
	return 0
}

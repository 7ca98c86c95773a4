package turning

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// limitAnew says whether the word at i, which begins a message, only takes back the limit
// before for the one that is told behind it: "no, make the limit 600 lb". Nothing may be
// told besides: "no, limit 600 lb and 4 wraps" is asked about.
func limitAnew(rd *reading.Reading, i int) bool {
	if !begins(rd, i) || rd.At(i+1).Pause == 0 {
		return false
	}
	told := false
	for k := i + 1; k < len(rd.Elems); k++ {
		e, t := rd.Elems[k], rd.TermAt(k)
		switch {
		case rd.Cued(e, lexicon.CueReason):
			return told
		case e.Fig != nil && (told || !limitBefore(rd, k)), t.Denies, t.Lacks, t.Tree != nil, e.Piece():
			return false
		}
		told = told || e.Fig != nil
	}
	return told
}

// limitPutRight takes the doubt from the word at i. What leans on what was said before,
// "change that", leans on the limit and no more.
func limitPutRight(rd *reading.Reading, i int) {
	rd.Changed = true
	clearDoubt(rd, i, i+1)
	for k := i + 1; k < len(rd.Elems); k++ {
		if rd.At(k).Marked(lexicon.MarkFollow) {
			rd.Elems[k].Term = &scan.Term{}
		}
	}
}

// limitBefore says whether the number at i is a limit by the words before it.
func limitBefore(rd *reading.Reading, i int) bool {
	bare := rd.Elems[i].Fig.Unit == nil && rd.Elems[i].Fig.Dim == parser.DimCount
	return (bare || gear.Heavy(rd, i)) && rd.At(rd.WordsBefore(i)).Plays(parser.Limit)
}

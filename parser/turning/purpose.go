package turning

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// "So it doesn't hit the fence" says why something is asked, and turns nothing
// round. What it names is no question of its own, unless it is how blocks meet.

// Purpose takes the doubt from the words at i where no number stands in what
// they lead to, up to the next pause.
func Purpose(rd *reading.Reading, i int) {
	end := i + 1
	for ; end < len(rd.Elems) && rd.Elems[end].Pause == 0 && !rd.Elems[end].Marked(lexicon.MarkAnd); end++ {
		if e := rd.Elems[end]; e.Fig != nil || e.Cross || e.Piece() {
			return
		}
		if purposeEnds(rd, end) {
			end++
			break
		}
	}
	for k := i + 1; k < end; k++ {
		if t := rd.TermAt(k); t.Stop == "" && t.Ask == "" && t.Intent != parser.AskRaise && !t.Perhaps {
			rd.Alter(k, func(t *scan.Term) { *t = scan.Term{} })
		}
	}
	rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Purpose: true} }) // what it is told of ends there
}

// purposeEnds says whether what shall not be hit is named at i and words that
// lead to a number of their own begin behind it: "para que no toque el tejado lo
// tengo que desplazar 2 m".
func purposeEnds(rd *reading.Reading, i int) bool {
	next := rd.At(i + 1)
	return rd.Elems[i].Marked(lexicon.MarkPlace|lexicon.MarkObstacle) && next.Looks(lexicon.After) && !next.Looks(lexicon.Before) && !next.Marked(lexicon.MarkIs|lexicon.MarkAt|lexicon.MarkWhere|lexicon.MarkRelation)
}

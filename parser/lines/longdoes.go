package lines

import (
	"heft/parser"
	"heft/parser/gear"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
)

// longDoes reads "will 120 ft do" and "is 60 m enough", where nothing else is told: what
// is as long as that, and may be enough, is a rope.
func longDoes(rd *reading.Reading, l *lexicon.Layout) {
	at := -1
	for i, e := range rd.Elems {
		switch {
		case e.Fig == nil && !e.Piece() && rd.TermAt(i).Tree == nil && rd.TermAt(i).Intent == "" && len(rd.TermAt(i).Roles) == 0:
		case e.Fig == nil || at >= 0:
			return
		default:
			at = i
		}
	}
	if at < 0 || rd.Has(lexicon.MarkFollow) {
		return
	}
	fig := rd.Elems[at].Fig
	asked := l.DoesRope.MatchString(rd.Text[:fig.Start] + lexicon.NumberHere + rd.Text[fig.End:])
	if !gear.Far(rd, at) || fig.Low < shortestHand || fig.Told != "" || fig.Pair || fig.Falling || !asked {
		return
	}
	fig.Told = parser.RopeLength
	rd.Elems = append(rd.Elems, reading.Element{Start: fig.End, End: fig.End, Term: &scan.Term{Intent: parser.AskRope}})
}

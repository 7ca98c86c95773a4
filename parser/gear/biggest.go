package gear

import (
	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// BiggestAsked says whether it is asked how heavy a piece may be, in words that elsewhere
// ask how to cut one, where the gear is told and nothing of a tree: "rope breaks at 10,400
// lb, bowline, biggest piece I can lower". The weakest of the gear sets it; what falls or is
// snubbed is another question.
func BiggestAsked(rd *reading.Reading, q parser.Question) bool {
	asked := func(i int) bool { return rd.Cued(rd.Elems[i], lexicon.CueBiggest) }
	moved := q.Has(parser.Limit, parser.DropHeight, parser.RunLength, parser.BlockBelow, parser.Wraps, parser.People, parser.WinchPull)
	return q.Intent == parser.AskCutPlan && q.Pieceless() && q.Has(parser.Ratings...) && !moved && !q.Noted(parser.Snubbed) && rd.AnyAt(asked)
}

package gear

import (
	"regexp"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
)

// BiggestAsked says whether it is asked how heavy a piece may be, in words that elsewhere
// ask how to cut one, where the gear is told and nothing of a tree: "rope breaks at 10,400
// lb, bowline, biggest piece I can lower". The weakest of the gear sets it; what falls or is
// snubbed is another question: see BiggestFalls.
func BiggestAsked(rd *reading.Reading, q parser.Question) bool {
	asked := func(i int) bool { return rd.Cued(rd.Elems[i], lexicon.CueBiggest) }
	moved := q.Has(parser.Limit, parser.DropHeight, parser.RunLength, parser.BlockBelow, parser.Wraps, parser.People, parser.WinchPull)
	falls := func(i int) bool { return rd.TermAt(i).Intent == parser.AskDrop && !rd.TermAt(i).Besides }
	return !rd.AnyAt(falls) && q.Intent == parser.AskCutPlan && q.Pieceless() && q.Has(parser.Ratings...) && !moved && !q.Noted(parser.Snubbed) && rd.AnyAt(asked)
}

// BiggestFalls says whether it is asked how heavy a piece may be that falls onto its rope,
// "biggest log I can negative rig on it": no figure of one lowered steady answers that. How
// hard a piece pulls is worked out for one that is told. What a block may see sets how to cut:
// see parser.Question.CutForFall.
func BiggestFalls(rd *reading.Reading, q parser.Question) bool {
	falls := func(i int) bool { return rd.TermAt(i).Intent == parser.AskDrop && !rd.TermAt(i).Besides }
	asked := func(i int) bool { return rd.Cued(rd.Elems[i], lexicon.CueBiggest) }
	return q.Intent == parser.AskCutPlan && q.Pieceless() && q.Has(parser.Ratings...) && !q.Has(parser.Limit, parser.BlockBreak, parser.BlockWorking) && rd.AnyAt(falls) && rd.AnyAt(asked)
}

// SizedOnly says whether a message tells nothing but how large a sling, a block or a connector
// is, "sling is 5/8": what it carries its label tells, and is asked for.
func SizedOnly(rd *reading.Reading, q parser.Question) bool {
	p := PartMeant(rd)
	only := q.Intent == parser.AskWeight && q.Empty() && len(q.Passed) == 1 && !rd.AnyAt(func(i int) bool { return rd.Elems[i].Fig != nil })
	return only && (p == lexicon.PartSling || p == lexicon.PartConnector || p == lexicon.PartBlock) && sizeWords.MatchString(q.Passed[0].Words)
}

// sizeWords are a size and no more: "5/8", "3/4 in", "50 mm".
var sizeWords = regexp.MustCompile(`^[0-9]+([ /.,-][0-9/]+)* *\p{L}*\.?$`)

// SizeOnly says whether it is asked how much a rope may carry of which only its thickness is
// told: its label has to say what it breaks at.
func SizeOnly(q parser.Question) bool {
	return q.Intent == parser.AskWeight && q.Pieceless() && q.Noted(parser.MostWanted) && q.Has(parser.RopeDiameter) && !q.Has(parser.Ratings...)
}

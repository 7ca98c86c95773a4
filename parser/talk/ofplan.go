package talk

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/senses"
)

// ofOnePiece are the questions that may be asked of one piece of a cut plan.
var ofOnePiece = []parser.Intent{parser.AskWeight, parser.AskLower, parser.AskBlockLoad, parser.AskCutPlan}

// OfPlan reads what is asked of the heaviest piece of the cut plan that a talk stands at:
// "what does the biggest one weigh". A message that tells a number or a tree speaks of
// another piece.
func OfPlan(rd *reading.Reading, before parser.Question) (parser.Question, bool) {
	if before.Intent != parser.AskCutPlan || !before.Has(parser.Length) || !Typed(rd, lexicon.CueBiggestOne) {
		return parser.Question{}, false
	}
	told := rd.AnyAt(func(i int) bool {
		return rd.Elems[i].Fig != nil || rd.TermAt(i).Tree != nil || rd.TermAt(i).Turning == parser.TurnsCompared && !rd.Cued(rd.Elems[i], lexicon.CueBiggestOne)
	})
	asked, besides, _ := senses.Intents(rd)
	other := func(in parser.Intent) bool { return !slices.Contains(ofOnePiece, in) }
	if told || slices.ContainsFunc(asked, other) || slices.ContainsFunc(besides, other) {
		return parser.Question{}, false
	}
	return parser.Question{Intent: parser.AskCutPlan, Asks: true, FollowUp: true, Language: rd.Language, Notes: []string{parser.PlanHeaviest}}, true
}

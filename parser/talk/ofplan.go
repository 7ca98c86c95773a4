package talk

import (
	"slices"

	"heft/parser"
	"heft/parser/lexicon"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/senses"
)

// ofOnePiece are the questions that may be asked of one piece of a cut plan.
var ofOnePiece = []parser.Intent{parser.AskWeight, parser.AskLower, parser.AskBlockLoad, parser.AskCutPlan}

// planOne is one piece of a plan, by the words for it.
type planOne struct {
	cue  scan.Cue
	note string
}

// planOnes are the pieces of a cut plan that are asked about by what they are, in the order in
// which a message that names several is read.
var planOnes = []planOne{
	{lexicon.CueBiggestOne, parser.PlanHeaviest}, {lexicon.CueTopOne, parser.PlanTop}, {lexicon.CueBottomOne, parser.PlanBottom},
}

// OfPlan reads what is asked of the heaviest piece of the cut plan that a talk stands at, or of
// its top or bottom one: "what does the biggest one weigh", "top piece how many wraps". A
// message that tells a number or a tree speaks of another piece.
func OfPlan(rd *reading.Reading, before parser.Question) (parser.Question, bool) {
	k := slices.IndexFunc(planOnes, func(o planOne) bool { return Typed(rd, o.cue) })
	if before.Intent != parser.AskCutPlan || !before.Has(parser.Length) || k < 0 {
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
	return parser.Question{Intent: parser.AskCutPlan, Asks: true, FollowUp: true, Language: rd.Language, Notes: []string{planOnes[k].note}}, true
}

package bot

import (
	"slices"

	"heft/parser"
)

// tieOfTalk is an ask about a length that has no word, in a talk about where to tie a limb: it
// is rather how far out that is than anything else, "he can only get out to 7 ft".
func (t Turn) tieOfTalk(ask *parser.Ask) *parser.Ask {
	tied := t.question.Has(parser.Tie, parser.TieAlong)
	if !t.known || t.question.Intent != parser.AskBalance || tied || ask == nil || ask.Kind != parser.Loose || ask.Metres <= 0 || slices.Contains(ask.Fields, parser.Tie) {
		return ask
	}
	if long, ok := t.question.Get(parser.Length); ok && ask.Metres > long.High {
		return ask
	}
	of := *ask
	of.Fields = append([]parser.Field{parser.Tie}, ask.Fields...)
	return &of
}

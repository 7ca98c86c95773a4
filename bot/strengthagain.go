package bot

import (
	"slices"

	"heft/parser"
)

// "16000 lb rope", and before anybody says whether it breaks at that: "50 ft of line to the
// drum". The talk still lacks what was asked, and nothing else may be told for it: that is
// asked again with its choices, and not as if no strength had been told.

// strengthAgain asks once more which strength a figure of gear is, where the next message
// leaves that missing. False where it was not asked, or is missing no more.
func (d *Desk) strengthAgain(a *answer, ev Event, before Turn, said, q parser.Question, ask *parser.Ask) (Turn, bool) {
	was := before.pending
	if was == nil || was.Kind != parser.WhichStrength || len(was.Fields) == 0 || len(before.choices) == 0 || ask.Kind != parser.Missing || !a.leaned || ev.tried > 0 {
		return Turn{}, false
	}
	same := func(f parser.Field) bool { return partOf(f) != "" && partOf(f) == partOf(was.Fields[0]) }
	if !slices.ContainsFunc(ask.Fields, same) {
		return Turn{}, false
	}
	d.askBack(a, was)
	turn := Turn{question: said, known: true, pending: was, which: before.which, open: before.open}
	return turn.offering(a.choices, turn), true
}

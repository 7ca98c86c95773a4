package talk

import (
	"slices"

	"heft/parser"
	"heft/parser/reading"
	"heft/parser/scan"
	"heft/parser/senses"
)

// logOver is the note of what asks which pieces went over the limit.
const logOver = "log-over"

// OverSaid takes "over the limit" for what was just answered, and not for a call for the
// log, where it is asked besides how long a piece may be or how it is lowered: "over the
// limit eh, how long can i go then".
func OverSaid(rd *reading.Reading) {
	asked, _, _ := senses.Intents(rd)
	if !slices.Contains(asked, parser.AskCutPlan) && !slices.Contains(asked, parser.AskLower) {
		return
	}
	for i := range rd.Elems {
		if t := rd.TermAt(i); t.Intent == parser.AskLog && t.Note == logOver {
			rd.Alter(i, func(t *scan.Term) { *t = scan.Term{Chatter: true} })
		}
	}
}

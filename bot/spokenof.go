package bot

import "heft/parser"

// spokenOf is the tree that was spoken of, where a message names it by a name that others
// share: the name that was asked about and answered, or, in a message that tells nothing of
// a piece by itself, one that goes with it: "wraps for the fir", of a doug fir. Nil where it
// may be another.
func (t Turn) spokenOf(q parser.Question, ask *parser.Ask) *parser.Said[parser.Species] {
	was := t.question.Species
	if !t.known || was == nil || ask == nil || ask.Kind != parser.WhichTree || ask.Either || ask.Heavier || !oneOf(ask, was.Value) {
		return nil
	}
	if !t.sameName(ask) && (q.Shape != nil || len(q.Quantities) > 0) {
		return nil
	}
	return was
}

package bot

import (
	"slices"
	"strings"
	"unicode"

	"heft/calc/limits"
	"heft/parser"
)

// Where a word that is not known may change what is told, no figures follow. What was
// understood beside it does: a crew sees what it need not type again.

// tellSoFar says what is told beside the words that are not known, before the choices.
func (a *answer) tellSoFar(ask *parser.Ask) {
	got := a.besideUnknown(ask)
	if len(got) == 0 {
		return
	}
	line := a.voice.say("So far: %s.", strings.Join(got, ", "))
	at := max(1, len(a.lines)-len(a.choices))
	a.lines = slices.Insert(a.lines, at, line)
}

// besideUnknown words the piece and what else is told, nothing where there is neither.
func (a *answer) besideUnknown(ask *parser.Ask) []string {
	q, v := a.question, a.voice
	var said []string
	if !q.Pieceless() || q.Shape != nil {
		said = append(said, a.piece())
	}
	for _, x := range q.Quantities {
		if noun[x.Field] != "" && !inPiece(x.Field) && certain(x, ask) {
			said = append(said, v.soFarOf(x))
		}
	}
	return said
}

// soFarOf is a quantity with what a crew calls it. A tie that was told as a part of the
// length says itself what it is: "tied in the middle".
func (s speaker) soFarOf(x parser.Quantity) string {
	switch {
	case x.Along != nil && x.Along.Short.Field == "":
		return trimQuote(x.Words)
	case x.Along != nil:
		return s.word(noun[parser.TieAlong]) + " " + trimQuote(x.Words)
	}
	return s.word(noun[x.Field]) + " " + trimQuote(x.Words)
}

// certain says whether what a number is hardly hangs on the word: it does not stand
// right beside it, "5 or 6 slack", and has a unit where it could be a size.
func certain(x parser.Quantity, ask *parser.Ask) bool {
	const beside = 2
	apart := x.End+beside < ask.Start || ask.End+beside < x.Start
	counts := x.Field == parser.People || x.Field == parser.Wraps || x.Field == parser.Legs
	return apart && (counts || strings.ContainsFunc(x.Words, unicode.IsLetter) && !strings.Contains(x.Words, " to "))
}

// inPiece says whether a field is told with the piece itself.
func inPiece(f parser.Field) bool {
	return f == parser.Length || f == parser.Weight || slices.Contains(acrossFields, f)
}

// needless says whether what is missing cannot be asked for yet: a word is not known, or
// turns the meaning, and nothing is told of a piece that its tree or size could be missing
// of.
func (a *answer) needless(ask *parser.Ask, f parser.Field) bool {
	q := a.question
	if a.inTalk && isSize(f) {
		return true // the talk told it
	}
	unclear := ask.Kind == parser.Unknown || ask.Kind == parser.Twist
	return unclear && (q.Empty() && !q.Asks || isSize(f) && q.Pieceless() && q.Shape == nil)
}

// gotSoFar says what is told beside what is missing: the piece, and what else the question
// is answered by. What the job told is not said again.
func (a *answer) gotSoFar() []string {
	v, q := a.voice, a.question
	got := []string{a.soFar()}
	if got[0] == v.word("piece") || got[0] == v.word("anchor") {
		got = nil
	}
	if q.Intent != parser.AskAnchor {
		for _, x := range q.Quantities {
			if noun[x.Field] != "" && !inPiece(x.Field) && ofFallSaid[x.Field] == "" && !slices.Contains(a.ofJob, x.Field) && !slices.Contains(a.kept, string(x.Field)) {
				got = append(got, v.asTold(limits.Quantity(x.Field), x))
			}
		}
	}
	if len(got) == 0 {
		return nil
	}
	return []string{v.say("So far: %s.", strings.Join(got, ", "))}
}

package bot

import (
	"errors"
	"slices"
	"strings"

	"heft/parser"
)

// A talk waits for what was asked back. The next message may tell it, tell something else
// of what the talk stands at, or begin anew.

// asked is the turn after an ask-back. What the ask is about is dropped, so
// that no later message can complete the question with the doubtful reading;
// where nothing would then be missing, the whole question is.
func asked(q parser.Question, ask *parser.Ask) Turn {
	drop := ask.Fields
	if ask.Kind == parser.Girth || ask.Kind == parser.BreastHigh {
		drop = acrossFields
	}
	if slices.Contains(drop, parser.SpeciesField) {
		q.Species = nil
	}
	if slices.Contains(drop, parser.ShapeField) {
		q.Shape = nil
	}
	if slices.Contains(drop, parser.ConditionField) {
		q.Condition = nil
	}
	q.Quantities = slices.DeleteFunc(slices.Clone(q.Quantities), func(x parser.Quantity) bool {
		return slices.Contains(drop, x.Field)
	})
	if ask.Kind == parser.Twist || len(q.Missing()) == 0 && !gearAsk(ask) {
		return Turn{}
	}
	return Turn{question: q, known: true, pending: ask}
}

// unsettled is the turn after a follow-up that is in doubt: the talk stands where it
// stood, and waits for what it waited for.
func (t Turn) unsettled(ask *parser.Ask, text string) Turn {
	open := t.open
	if typedNumber.MatchString(text) {
		open = text
	}
	if t.pending != nil && ofWords(ask) {
		ask = t.pending
	}
	return Turn{question: t.question, known: true, pending: ask, open: open}
}

// stillNeeded is what an answer in the making found to be missing, nil where nothing is.
func (a *answer) stillNeeded() *parser.Ask {
	if a.status != Needs || len(a.needs) == 0 {
		return nil
	}
	return &parser.Ask{Kind: parser.Missing, Fields: a.needs}
}

// openWith is what is still open of a talk after a message: one before with a number that
// was not understood, until a message tells that number, or what was asked about it.
func (t Turn) openWith(q parser.Question) string {
	if t.open == "" {
		return ""
	}
	told := func(x parser.Quantity) bool {
		number := typedNumber.FindString(x.Words)
		return number != "" && slices.Contains(typedNumber.FindAllString(t.open, -1), number) || t.wants(x.Field) ||
			t.pending != nil && t.pending.Kind == parser.WhichAngle && isAngle(x.Field)
	}
	if slices.ContainsFunc(q.Quantities, told) {
		return ""
	}
	return t.open
}

// leftOpen says that an answer goes on without what is open.
func (a *answer) leftOpen(open string) {
	if open != "" && a.leaned && a.status == Answered {
		a.problems = append(a.problems, a.voice.say("%s is NOT in these figures: I did not understand it.", quote(open)))
	}
}

// ofWords says whether an ask is about words in doubt rather than a fact: a message that
// tells of a piece is no answer to it.
func ofWords(ask *parser.Ask) bool { return ask.Kind == parser.Twist || ask.Kind == parser.Unknown }

// weighs says whether a message tells the piece of a question that stands
// without one, and asks for nothing else: "red oak limb 14 in, 30 ft", once it
// was said where the blocks meet.
func (t Turn) weighs(q parser.Question) bool {
	wanted := t.question.OfPlaces() || t.pending != nil && t.question.WeightWanted()
	return wanted && q.Intent == parser.AskWeight && (!q.Asks || q.Has(parser.Weight)) && len(q.MissingPiece()) == 0
}

// wants says whether a fact was asked for, and not told yet.
func (t Turn) wants(f parser.Field) bool {
	return t.pending != nil && slices.Contains(t.pending.Fields, f)
}

// stillWhich asks again which tree it is, where that was asked and only the tree is
// missing: the choices, not the bare name.
func (t Turn) stillWhich(ask *parser.Ask) *parser.Ask {
	if ask == nil || t.pending == nil || t.pending.Kind != parser.WhichTree || len(ask.Fields) != 1 || ask.Fields[0] != parser.SpeciesField {
		return ask
	}
	which := *t.pending
	which.Start, which.End = 0, 0 // its words stand in an earlier message
	return &which
}

// reread helps an answer to an ask-back: a single word completes the name that
// was asked about ("silver", to "which maple?").
func (t Turn) reread(r crewReader, text string) (parser.Question, error) {
	q, err := r.ReadAfter(text, t.question)
	if full, ok := t.filled(r, text, q, err); ok {
		return full, nil
	}
	if err == nil || t.pending == nil || t.pending.Kind != parser.WhichTree {
		return q, err
	}
	for _, whole := range named(text, t.pending.Words) {
		full, err2 := r.Read(whole)
		ask, _ := errors.AsType[*parser.Ask](err2)
		closer := ask != nil && ask.Kind == parser.WhichTree && len(ask.Words) > len(t.pending.Words)
		if err2 == nil && full.Species != nil || closer {
			return full, err2
		}
	}
	return q, err
}

// named are the ways in which the words of an answer may go with the name that was asked
// about: before it, "silver", or behind it, "rojo"; and one of them alone, "the red one".
func named(text, name string) []string {
	words := strings.Fields(text)
	var out []string
	for i, w := range words[:min(len(words), longestAnswer)] {
		for _, both := range []string{w + " " + name, name + " " + w} {
			whole := slices.Clone(words)
			whole[i] = both
			out = append(out, strings.Join(whole, " "))
		}
	}
	return append(out, text+" "+name)
}

// longestAnswer is how many words an answer to one question has at most.
const longestAnswer = 4

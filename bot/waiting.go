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
// until it is told, each answer says that it is in no figure. A word that stands beside nothing
// it could change was left out, and matters no more.
func asked(q parser.Question, ask *parser.Ask, text string) Turn {
	if ask.Kind == parser.Twist && ask.Denied[1] == 0 || ask.LikeStop != "" {
		return Turn{}
	}
	q = without(q, ask)
	turn := Turn{question: q, known: true, pending: ask}
	if q.Which != nil {
		which := *q.Which
		which.Start, which.End = 0, 0 // its words stand in an earlier message
		turn.which = &which
	}
	if ask.Kind == parser.WhichTree {
		turn.which = ask
	} else if ask.Start < ask.End && !ask.AsTree && !ask.Spare {
		turn.open = []string{doubtful(ask, text)}
	}
	if q.Empty() && ask.Kind == parser.Twist {
		return Turn{}
	}
	return turn
}

// withTold is the turn after a message of a talk whose number may be two things, or says one
// thing twice: what the talk told of these before stands, and what it asked.
func (t Turn) withTold(before Turn, q parser.Question, ask *parser.Ask) Turn {
	if !t.known || ask.Kind != parser.TwoReadings && ask.Kind != parser.Conflict {
		return t
	}
	if !q.Asks {
		t.question.Intent = before.question.Intent
	}
	t.question.Quantities = slices.Clone(t.question.Quantities)
	for _, x := range before.question.Quantities {
		if slices.Contains(ask.Fields, x.Field) && !t.question.Has(x.Field) && !replaced(x.Field, t.question) {
			t.question.Quantities = append(t.question.Quantities, x)
		}
	}
	return t
}

// without is a question without what an ask is about, and what a denial takes back.
func without(q parser.Question, ask *parser.Ask) parser.Question {
	drop := ask.Fields
	if ask.Kind == parser.Girth || ask.Kind == parser.BreastHigh {
		drop = acrossFields
	}
	denied := func(at int) bool { return ask.Denied[0] <= at && at < ask.Denied[1] }
	if slices.Contains(drop, parser.SpeciesField) || q.Species != nil && denied(q.Species.Start) {
		q.Species = nil
	}
	if slices.Contains(drop, parser.ShapeField) || q.Shape != nil && denied(q.Shape.Start) {
		q.Shape = nil
	}
	if slices.Contains(drop, parser.ConditionField) || q.Condition != nil && denied(q.Condition.Start) {
		q.Condition = nil
	}
	q.Quantities = slices.DeleteFunc(slices.Clone(q.Quantities), func(x parser.Quantity) bool {
		return slices.Contains(drop, x.Field)
	})
	return q
}

// doubtful are the words of a message that an ask is about: of a denial all that it denies.
func doubtful(ask *parser.Ask, text string) string {
	if from, to := ask.Denied[0], ask.Denied[1]; from < to && to <= len(text) {
		return text[from:to]
	}
	return ask.Words
}

// unsettled is the turn after a follow-up that is in doubt: the talk stands where it
// stood, and waits for what it waited for.
func (t Turn) unsettled(ask *parser.Ask, text string) Turn {
	open := t.open
	if typedNumber.MatchString(text) || ofTape[ask.Kind] || bareNumber(ask) { // in figures or in words
		open = append(slices.Clone(open), text)
	}
	if t.pending != nil && ofWords(ask) {
		ask = t.pending
	}
	return Turn{question: t.question, known: true, pending: ask, which: t.which, open: open, cutTo: t.cutTo, wraps: t.wraps, gear: t.gear}
}

// goesOnFrom says whether a talk goes on from where it stood behind a message in doubt that
// tells nothing for sure, "block is 40 ft" of a limb 22 ft long, or with words in doubt less
// than a piece: "shorter by 2 ft". Neither is another piece.
func (t Turn) goesOnFrom(q parser.Question, ask *parser.Ask) bool {
	if !t.known || ask.Final() || q.Intent != parser.AskWeight || q.Species != nil || q.Which != nil {
		return false
	}
	nothing := ask.Kind != parser.Missing && ask.Kind != parser.WhichTree && !tellsPiece(q) && len(q.Quantities) == 0
	return nothing || ofWords(ask) && !q.Has(parser.Weight) && len(q.MissingPiece()) > 1
}

// unheard is the turn after a message in doubt that tells that a piece falls, or is held fast,
// though without a number: figures for lowering it steady say that this is in none of them.
func (t Turn) unheard(q parser.Question, text string) Turn {
	falls := q.Intent == parser.AskDrop || q.Noted(parser.Snubbed) || q.Noted(parser.CutFalls)
	if falls && !slices.Contains(t.open, text) {
		t.open = append(slices.Clone(t.open), text)
	}
	return t
}

// stillNeeded is what an answer in the making found to be missing, nil where nothing is.
func (a *answer) stillNeeded() *parser.Ask {
	if a.status != Needs || len(a.needs) == 0 {
		return nil
	}
	return &parser.Ask{Kind: parser.Missing, Fields: a.needs}
}

// openWith is what is still open of a talk after a message: words before that were not
// understood, until a message tells their number, or what was asked about them.
func (t Turn) openWith(q parser.Question) (open []string) {
	for _, words := range t.open {
		told := func(x parser.Quantity) bool {
			number := typedNumber.FindString(x.Words)
			same := number != "" && slices.Contains(typedNumber.FindAllString(words, -1), number)
			return same && (x.Field != parser.Parts || strings.Contains(words, x.Words)) || t.wants(x.Field) && !t.eitherAsked() ||
				t.pending != nil && t.pending.Kind == parser.WhichAngle && isAngle(x.Field)
		}
		if !slices.ContainsFunc(q.Quantities, told) {
			open = append(open, words)
		}
	}
	return open
}

// eitherAsked says whether it was asked which of several a number is: telling one of them
// does not tell what that number was.
func (t Turn) eitherAsked() bool { return bareNumber(t.pending) && len(t.pending.Fields) > 1 }

// leftOpen says that an answer goes on without what is open.
func (a *answer) leftOpen(open []string) {
	if len(open) > 0 && a.leaned && a.status == Answered {
		a.problems = append(a.problems, a.notInFigures(open)...)
	}
}

// stillOpen says of what else is asked that it goes on without what is open.
func (a *answer) stillOpen(open []string) {
	if len(open) > 0 && a.leaned {
		quoted := make([]string, len(open))
		for i, words := range open {
			quoted[i] = quote(words)
		}
		a.problems = append(a.problems, a.voice.say("Still open: %s, which I did not understand.", a.voice.and(quoted)))
	}
}

// notInFigures says of words that were not understood that they are in no figure.
func (a *answer) notInFigures(open []string) (lines []string) {
	for _, words := range open {
		lines = append(lines, a.voice.say("%s is NOT in these figures: I did not understand it.", quote(words)))
	}
	return lines
}

// ofTape are asks about how a thickness was measured: the piece is the one of before where a
// message tells too little of another.
var ofTape = map[parser.Kind]bool{parser.Girth: true, parser.BreastHigh: true}

// keepsTalk says whether an ask is about words or a number in doubt, so that the talk stands
// where it stood.
func keepsTalk(ask *parser.Ask) bool {
	return ofWords(ask) || bareNumber(ask) || gearAsk(ask) || ofTape[ask.Kind] || ask.Kind == parser.FromWhere
}

// ofWords says whether an ask is about words in doubt rather than a fact: a message that
// tells of a piece is no answer to it.
func ofWords(ask *parser.Ask) bool { return ask.Kind == parser.Twist || ask.Kind == parser.Unknown }

// weighs says whether a message tells the piece of a question that stands
// without one, and asks for nothing else: "red oak limb 14 in, 30 ft", once it
// was said where the blocks meet.
func (t Turn) weighs(q, whole parser.Question) bool {
	wanted := t.question.OfPlaces() || t.pending != nil && t.question.WeightWanted() || t.wantsPiece()
	return wanted && q.Intent == parser.AskWeight && (!q.Asks || q.Has(parser.Weight)) && len(whole.MissingPiece()) == 0
}

// ofLoad are the questions that hang on what a piece weighs, and ask for it.
var ofLoad = map[parser.Intent]bool{
	parser.AskLower: true, parser.AskBlockLoad: true, parser.AskDrop: true, parser.AskLift: true, parser.AskSwing: true,
}

// wantsPiece says whether what was asked back is the piece of a question, and nothing else
// in doubt: "how many wraps for the log".
func (t Turn) wantsPiece() bool {
	return t.pending != nil && t.pending.Kind == parser.Missing && ofLoad[t.question.Intent] && slices.ContainsFunc(t.question.Missing(), isSize)
}

// wants says whether a fact was asked for, and not told yet.
func (t Turn) wants(f parser.Field) bool {
	return t.pending != nil && slices.Contains(t.pending.Fields, f)
}

// turnsThere says whether a message tells the angle that was asked for of a redirect, and what
// hangs on the rope, and asks for nothing of its own: "60 degrees between the two legs, 300 kg".
// By itself it would be of the top block.
func (t Turn) turnsThere(q parser.Question) bool {
	told := q.Intent == parser.AskBlockLoad && !q.Asks && q.Has(parser.BlockAngle, parser.Turn) && q.Species == nil
	return t.wants(parser.Turn) && slices.ContainsFunc(t.question.Notes, parser.Redirecting) && told
}

// fills says whether a message tells what was asked for and asks for nothing of its own:
// "9 ft long, tied at the butt", of a swing, though where it is tied belongs to others.
func (t Turn) fills(q parser.Question) bool {
	if t.pending == nil || q.Asks || q.Intent == parser.AskWeight || q.Species != nil || q.Has(parser.Weight) {
		return false
	}
	return slices.ContainsFunc(q.Quantities, func(x parser.Quantity) bool { return t.wants(x.Field) })
}

// reread helps an answer to an ask-back: a single word completes the name that
// was asked about ("silver", to "which maple?").
func (t Turn) reread(r crewReader, text string) (parser.Question, error) {
	q, err := r.ReadAfter(text, t.question)
	if full, err, ok := t.filled(r, text, q, err); ok {
		return full, err
	}
	if full, err, ok := t.ofPlansLimit(r, text, q, err); ok {
		return full, err
	}
	if err == nil || t.which == nil || t.question.Species != nil || namesOther(err, t.which) {
		return q, err
	}
	for _, whole := range named(text, t.which.Words) {
		full, err2 := r.Read(whole)
		ask, _ := errors.AsType[*parser.Ask](err2)
		closer := ask != nil && ask.Kind == parser.WhichTree && len(ask.Words) > len(t.which.Words)
		if err2 == nil && full.Species != nil || closer {
			return full, err2
		}
	}
	return q, err
}

// namesOther says whether a message is in doubt about another name than the one that was
// asked about: "its hemlock not fir".
func namesOther(err error, which *parser.Ask) bool {
	ask, _ := errors.AsType[*parser.Ask](err)
	return ask != nil && ask.Kind == parser.WhichTree && !strings.EqualFold(ask.Words, which.Words)
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

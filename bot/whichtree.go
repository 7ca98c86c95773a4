package bot

import (
	"slices"
	"strings"

	"heft/calc"
	"heft/calc/unit"
	"heft/parser"
)

// Several trees share a name. Which one it is is asked once, with what hangs on it; where
// the crew goes on without saying, the piece is planned as the heaviest of them.

// askTree lists the trees that share a name, each with the weight that hangs
// on the choice where the rest is known.
func (d *Desk) askTree(a *answer, ask *parser.Ask) {
	name := strings.ToLower(ask.Words)
	v := a.voice
	a.kept = slices.DeleteFunc(a.kept, func(f string) bool { return f == string(parser.SpeciesField) })
	a.lines = []string{v.say("Which %s? Several trees go by that name.", trimQuote(name))}
	if ask.Either {
		a.lines = []string{v.say("Which is it, %s?", trimQuote(name))}
	}
	for i, c := range ask.Choices {
		if i == manyChoices {
			break
		}
		line := numbered(i, c.Words)
		if comes := a.comesWith(c); comes != "" {
			line = v.say("%s: %s", line, comes)
		}
		a.lines = append(a.lines, line)
		a.choices = append(a.choices, plain(c.Words))
	}
	if shape := a.question.Shape; a.question.Noted(parser.LeavesOn) && (shape == nil || shape.Value == parser.Limb) {
		a.problems = append(a.problems, v.word("Planned with its branches and leaves on: the heavy side."))
	}
	if c := a.question.Condition; c != nil && c.Value == parser.Dead {
		a.problems = append(a.problems, v.word("Dead wood breaks without warning: have it looked at before anyone rigs on it."))
	}
	a.andMissing(ask)
}

// comesWith is what the question comes to with that choice of tree, "" where it cannot be
// told yet.
func (a *answer) comesWith(c parser.Choice) string {
	if longest := a.longestWith(c); longest != "" {
		return a.voice.say("%s long at most", longest)
	}
	if thickest := a.thickestWith(c); thickest != "" {
		return a.voice.say("%s thick at most", thickest)
	}
	w := planWith(a.question, c)
	if w == 0 {
		return ""
	}
	if hangsOnWeight[a.question.Intent] || a.question.Has(parser.Limit, parser.Payload) {
		one := answer{question: a.question, voice: a.voice}
		one.question.Species = chosenTree(c, "")
		if len(one.question.Missing()) == 0 {
			one.work()
		}
		if one.status == Answered {
			return one.comesTo()
		}
	}
	return a.voice.say("plan on %s", a.voice.heavy(w))
}

// comesTo is what an answer comes to, in few words: its first line without the piece. A
// piece that no truck takes says so.
func (a *answer) comesTo() string {
	if over := a.voice.overInShort(a.counted, a.question); over != "" {
		return over
	}
	_, comes, _ := strings.Cut(a.lines[0], ": ")
	return strings.TrimSuffix(comes, ".")
}

// hangsOnWeight are the questions whose first line says more of a piece than its weight.
var hangsOnWeight = map[parser.Intent]bool{parser.AskLower: true, parser.AskLift: true, parser.AskBlockLoad: true}

// chosenTree is a choice as the tree of a question, named in those words.
func chosenTree(c parser.Choice, words string) *parser.Said[parser.Species] {
	return &parser.Said[parser.Species]{Value: parser.Species{Scientific: c.Scientific, Name: c.Words}, Words: words}
}

// hardly is how much heavier the heaviest of some trees may be for the choice
// between them to be left alone: less than sizes by eye are off.
const hardly = 1.1

// anyOf is the tree to plan on where several share a name and the weight
// hardly hangs on which: any of them, where that is the heaviest, or the heaviest
// where that one is wanted. It is none where the weight does not hang on the tree at all.
func anyOf(q parser.Question, ask *parser.Ask) (*parser.Said[parser.Species], bool) {
	if ask == nil || ask.Kind != parser.WhichTree || q.Intent == parser.AskAnchor || len(ask.Choices) == 0 {
		return nil, false
	}
	if q.Has(parser.Weight) && q.Intent != parser.AskCutPlan && !q.Has(acrossFields...) {
		return nil, true // the weight is told, and there are no sizes to hold it against
	}
	heaviest, most, least := heaviestOf(q, ask.Choices)
	if least == 0 || !ask.Heavier && (most > hardly*least || !strings.HasSuffix(heaviest.Scientific, " spp.")) {
		return nil, false
	}
	tree := chosenTree(heaviest, ask.Words)
	tree.Start, tree.End = ask.Start, ask.End
	return tree, true
}

// heaviestOf is the tree that is planned the heaviest, of all that share a name, with its
// weight and that of the lightest: 0 where one cannot be told.
func heaviestOf(q parser.Question, choices []parser.Choice) (heaviest parser.Choice, most, least unit.Mass) {
	for _, c := range choices {
		w := planWith(q, c)
		if w == 0 {
			return parser.Choice{}, 0, 0
		}
		if least == 0 || w < least {
			least = w
		}
		if w >= most { // the last is any of them
			most, heaviest = w, c
		}
	}
	return heaviest, most, least
}

// planWith is the heavy end with that choice of tree, 0 where it cannot be
// told yet.
func planWith(q parser.Question, c parser.Choice) unit.Mass {
	q.Species = chosenTree(c, "")
	anchor := q.Intent == parser.AskAnchor
	q.Intent = parser.AskWeight
	if anchor || len(q.MissingSizes()) > 0 {
		return 0
	}
	res, err := calc.Work(jobOf(q))
	if err != nil {
		return 0
	}
	return res.Weight.High
}

// stillWhich asks again which tree it is, where nothing else is missing: the choices, not
// the bare name. Where more is, the tree can wait.
func (t Turn) stillWhich(ask *parser.Ask) *parser.Ask {
	if ask == nil || !slices.Contains(ask.Fields, parser.SpeciesField) {
		return ask
	}
	if len(ask.Fields) > 1 {
		other := *ask
		other.Fields = slices.DeleteFunc(slices.Clone(ask.Fields), func(f parser.Field) bool { return f == parser.SpeciesField })
		return &other
	}
	which := *t.which
	which.Start, which.End = 0, 0 // its words stand in an earlier message
	return &which
}

// namedAgain says whether a message names its tree by the name that was asked about
// before, and the crew went on without saying which.
func (t Turn) namedAgain(ask *parser.Ask) bool {
	return t.sameName(ask) && t.question.Species == nil
}

// settleName takes the doubt from a name that several trees share: it was spoken of before,
// or the weight hardly hangs on which it is. It says too whether the name alone was told
// again, where nobody said which.
func (t Turn) settleName(q parser.Question, ask *parser.Ask) (parser.Question, *parser.Ask, bool) {
	if tree := t.spokenOf(q, ask); tree != nil {
		q.Fixes = append(q.Fixes, parser.Fix{Words: ask.Words, As: tree.Value.Name})
		q.Species, ask = tree, nil
	}
	if tree, ok := anyOf(q, ask); ok {
		if ask.Either && tree != nil {
			q.Fixes = append(q.Fixes, parser.Fix{Words: ask.Words, As: tree.Value.Name})
		}
		q.Species, ask = tree, nil
	}
	if t.namedAgain(ask) {
		return q, nil, true
	}
	return q, ask, false
}

// sameName says whether a message names its tree by the name that was asked about before.
func (t Turn) sameName(ask *parser.Ask) bool {
	return ask != nil && ask.Kind == parser.WhichTree && t.which != nil && !ask.Either && strings.EqualFold(ask.Words, t.which.Words)
}

// planHeaviest plans a piece as the heaviest of the trees that share its name, where the
// crew was asked which it is and went on. Nothing is lighter, nothing holds less: the
// wood of an anchor is another matter, and is asked about.
func (a *answer) planHeaviest(which *parser.Ask) {
	q := a.question
	if which == nil || q.Species != nil || q.Has(parser.Weight) && !q.Has(acrossFields...) || methods[q.Intent] == nil {
		return
	}
	if heaviest, _, least := heaviestOf(q, which.Choices); least > 0 {
		a.question.Species, a.unsaid = chosenTree(heaviest, which.Words), which
	}
}

// heaviestFirst is the answer with the heaviest tree of a name where nobody has said yet
// which it is, to say what a choice of something else comes to; false where that cannot be
// told.
func (a *answer) heaviestFirst() (answer, bool) {
	one := answer{question: a.question, voice: a.voice}
	if a.goesBy != nil {
		one.planHeaviest(a.goesBy)
	}
	return one, one.unsaid != nil
}

// goOn is what is left to ask: nothing where the question is whole, or is with the heaviest
// tree of a name that was asked about before.
func (a *answer) goOn(before Turn, ask *parser.Ask, on bool) *parser.Ask {
	if ask != nil && ask.Kind == parser.WhichTree {
		return ask
	}
	if on {
		a.planHeaviest(before.which)
	}
	if ask == nil {
		ask = missing(a.question)
	}
	if ask == nil || !on || before.which == nil {
		return ask
	}
	if ask = before.stillWhich(ask); a.unsaid != nil {
		a.question.Species, a.unsaid = nil, nil
	}
	if a.question.Species == nil && ask.Kind != parser.WhichTree {
		a.question.InDoubt = append(slices.Clone(a.question.InDoubt), parser.SpeciesField)
		a.goesBy = before.which
	}
	return ask
}

// tellUnsaid says that it was planned as the heaviest tree of a name.
func (a *answer) tellUnsaid() {
	if a.unsaid == nil || a.status != Answered {
		return
	}
	name := trimQuote(strings.ToLower(a.unsaid.Words))
	line := a.voice.say("Which %s was not said: planned on the heaviest, %s.", name, a.question.Species.Value.Name)
	a.lines = slices.Insert(a.lines, 1, line)
}

// goingBy is the turn that knows by which name of several trees its piece goes, whether
// it was told since which of them it is or not.
func (t Turn) goingBy(which *parser.Ask, leaned bool) Turn {
	if t.which == nil && leaned && (t.question.Species == nil || oneOf(which, t.question.Species.Value)) {
		t.which = which
	}
	return t
}

// oneOf says whether a tree is one of those that were asked about.
func oneOf(which *parser.Ask, tree parser.Species) bool {
	return which != nil && slices.ContainsFunc(which.Choices, func(c parser.Choice) bool { return c.Scientific == tree.Scientific })
}

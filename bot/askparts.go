package bot

import (
	"cmp"
	"slices"
	"strings"

	"heft/calc/tackle"
	"heft/parser"
)

// askParts asks which of two tackles the blocks that were told make, and says what each
// of them gives: by where the rope to pull leaves them.
func (a *answer) askParts(ask *parser.Ask) {
	v, n := a.voice, int(ask.Number)
	a.lines = []string{v.say("%s: %s sheaves. %s:1 where the rope you pull leaves the top block, %s:1 where it leaves the block on the load. Which?",
		quote(ask.Words), count(n), count(n), count(n+1))}
	if n == 1 {
		a.lines = []string{v.say("%s: 1:1 where it only turns the rope, 2:1 where it rides on the load. Which?", quote(ask.Words))}
	}
	for i, up := range []bool{false, true} {
		parts := n
		words := "%s:1, haul from the top block"
		if up {
			parts, words = n+1, "%s:1, haul from the moving block"
		}
		if parts > mostParts {
			continue
		}
		label, typed := v.say(words, count(parts)), ""
		if parts == 1 {
			label, typed = v.word("1:1, blocks only turn the rope"), "1:1"
		}
		line := label
		if gives := a.partsGive(parts, up); gives != "" {
			line = v.say("%s: %s", label, gives)
		}
		a.lines = append(a.lines, numbered(i, line))
		a.choices = append(a.choices, Choice{label, cmp.Or(typed, label)})
	}
}

// mostOffered is how many parts of line a crew is offered that told none: more take a
// tackle that somebody would have named.
const mostOffered = 4

// offerParts asks on how many parts of line a piece is lifted, where that is all that is
// missing, with what each of them gives. A rope over blocks that only turn it is 1:1.
func (a *answer) offerParts() bool {
	v, of := a.voice, *a
	if heaviest, ok := a.heaviestFirst(); ok {
		of = heaviest
	}
	if a.question.Intent != parser.AskLift || !slices.Equal(of.question.Missing(), []parser.Field{parser.Parts}) {
		return false
	}
	var lines []string
	var choices []Choice
	for n := 1; n <= mostOffered; n++ {
		gives := of.partsGive(n, false)
		if gives == "" {
			return false
		}
		label := count(n) + ":1"
		if n == 1 {
			label = v.word("1:1, blocks only turn the rope")
		}
		lines = append(lines, v.say("%s: %s", numbered(n-1, label), gives))
		choices = append(choices, Choice{label, count(n) + ":1"})
	}
	head := append([]string{v.word("On how many parts of line?")}, a.gotSoFar()...)
	if of.unsaid != nil {
		head = append(head, v.say("Which %s was not said: planned on the heaviest, %s.", trimQuote(strings.ToLower(of.unsaid.Words)), of.question.Species.Value.Name))
	}
	a.lines = append(head, lines...)
	a.choices = choices
	return true
}

// partsGive is what a lift comes to on so many parts: its pull, or how much rope comes in;
// "" where neither can be told yet.
func (a *answer) partsGive(parts int, up bool) string {
	v, q := a.voice, a.question
	if q.Has(parser.Weight) || len(q.MissingPiece()) == 0 {
		res, err := a.weighed()
		if err != nil {
			return ""
		}
		l := tackle.Lift{Load: res.Weight.High, Tackle: tackleOf(q), Power: powerOf(q)}
		l.Parts, l.Upward = parts, up
		r, err := tackle.Plan(l)
		if err != nil {
			return ""
		}
		return a.verdict(r)
	}
	t := travelOf(q)
	t.Parts = parts
	if r, err := tackle.Run(t); err == nil && t.Rise > 0 {
		return v.say("%s of rope to pull", v.alongUp(r.Haul))
	}
	return ""
}

// otherTackle says whether a message tells the blocks of the lift, or of the raise, before:
// it tells no piece of its own.
func (t Turn) otherTackle(q parser.Question, ask *parser.Ask) bool {
	hauled := t.question.Intent == parser.AskLift || t.question.Intent == parser.AskRaise
	return ask != nil && ask.Kind == parser.WhichParts && hauled && !tellsPiece(q)
}

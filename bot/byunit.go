package bot

import (
	"errors"
	"slices"
	"strings"
	"unicode"

	"heft/parser"
)

// longestUnitAnswer is how many words an answer has at most that says which unit was meant:
// "feet yeah, 24 is inches".
const longestUnitAnswer = 6

// byUnit is the choice that a message stands for which says no more than the unit of the
// number that was asked about: "pounds", "its inches". False where it says another number,
// or fits none of the choices or more than one.
func (d *Desk) byUnit(text string, before Turn) (message string, stood Turn, ok bool) {
	p := before.pending
	words := strings.FieldsFunc(text, func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r) && !strings.ContainsRune(`'"″”.`, r)
	})
	if p == nil || p.Kind != parser.NoUnit || len(before.choices) == 0 || len(words) == 0 || len(words) > longestUnitAnswer {
		return "", before, false
	}
	if _, err := d.reader.Read(text); turns(err) {
		return "", before, false
	}
	number := typedNumber.FindString(inFigures(p))
	if number == "" {
		return "", before, false
	}
	var meant []Choice
	for _, w := range words {
		if w == number {
			continue
		}
		if typedNumber.MatchString(w) {
			return "", before, false
		}
		for _, c := range before.choices {
			if !slices.Contains(meant, c) && d.sameAmount(number+" "+w, c.Label) {
				meant = append(meant, c)
			}
		}
	}
	if len(meant) != 1 {
		return "", before, false
	}
	return meant[0].Message, *before.before, true
}

// turns says whether a message is in doubt by a word that could turn it round, "not
// inches", or ends all arithmetic.
func turns(err error) bool {
	ask, _ := errors.AsType[*parser.Ask](err)
	return ask != nil && (ask.Kind == parser.Twist || ask.Kind != parser.Nonsense && ask.Final())
}

// sameAmount says whether two phrases are read as the same amount of something.
func (d *Desk) sameAmount(a, b string) bool {
	p, _ := d.reader.Read(a)
	q, _ := d.reader.Read(b)
	return len(p.Quantities) == 1 && len(q.Quantities) == 1 && p.Quantities[0].Low == q.Quantities[0].Low && p.Quantities[0].High == q.Quantities[0].High
}

// bySystem is the talk with the number that was asked about in feet or in metres, where the
// next message tells its own lengths in one of them, and what it was read as: "block at 62",
// then "cut at 46 ft". Nobody changes from the one to the other midway.
func (d *Desk) bySystem(ev Event, q parser.Question, before Turn) (Turn, parser.Fix, bool) {
	p := before.pending
	if p == nil || p.Kind != parser.NoUnit || before.before == nil || len(before.choices) != 2 || slices.ContainsFunc(q.Quantities, func(x parser.Quantity) bool { return before.wants(x.Field) }) {
		return before, parser.Fix{}, false
	}
	unit := map[parser.System]string{parser.Imperial: " ft", parser.Metric: " m"}[farSystem(q)]
	if unit == "" || before.choices[0].Label != inFigures(p)+" ft" || before.choices[1].Label != inFigures(p)+" m" {
		return before, parser.Fix{}, false
	}
	for _, c := range before.choices {
		if c.Label == inFigures(p)+unit {
			ev.Text = c.Message
			_, turn := d.consider(ev, *before.before)
			return turn, parser.Fix{Words: p.Words, As: c.Label}, turn.known
		}
	}
	return before, parser.Fix{}, false
}

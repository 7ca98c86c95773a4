package bot

import (
	"slices"
	"strings"
	"unicode"

	"heft/parser"
)

// Asked what a figure of gear is, crews answer with the strength alone: "breaking", "thats
// the working load", "es lo que rompe".

// longestStrengthAnswer is how many words such an answer has at most.
const longestStrengthAnswer = 7

// byStrength is the choice that a message stands for which says no more than which strength
// the figure is that was asked about. It is read as it would be behind that figure, and its
// last words where the first are talk. False where it tells a number, or denies something.
func (d *Desk) byStrength(text string, before Turn) (message string, stood Turn, ok bool) {
	p, words := before.pending, strings.Fields(text)
	if p == nil || p.Kind != parser.WhichStrength || len(p.Fields) == 0 || before.before == nil || len(words) == 0 || len(words) > longestStrengthAnswer || typedNumber.MatchString(text) {
		return "", before, false
	}
	if _, err := d.reader.Read(text); turns(err) {
		return "", before, false
	}
	for from := range words {
		told := d.strengthOf(before, strings.Join(words[from:], " "))
		for _, c := range before.choices {
			if told != "" && d.ratedIn(p, c.Label) == told {
				return c.Message, *before.before, true
			}
		}
	}
	return "", before, false
}

// strengthOf is what the figure that was asked about is with words behind it, "" where they
// do not say.
func (d *Desk) strengthOf(before Turn, words string) parser.Field {
	number := inFigures(before.pending)
	for _, c := range before.choices {
		if gear, _, ok := strings.Cut(c.Label, number); ok {
			return d.ratedIn(before.pending, gear+number+" "+words)
		}
	}
	return ""
}

// ratedIn is the strength that a phrase with the figure tells, "" for none. A bare figure is
// lent a unit: which strength it is hangs on none.
func (d *Desk) ratedIn(p *parser.Ask, phrase string) parser.Field {
	if number := inFigures(p); !strings.ContainsFunc(number, unicode.IsLetter) {
		phrase = strings.Replace(phrase, number, number+" lb", 1)
	}
	q, err := d.reader.Read(phrase)
	if err != nil || len(q.Quantities) != 1 || !slices.Contains(p.Fields, q.Quantities[0].Field) {
		return ""
	}
	return q.Quantities[0].Field
}

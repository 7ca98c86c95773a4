package bot

import (
	"slices"
	"strings"

	"heft/parser"
)

// peopleAnew is a bare number of a lift as the people who pull, where they were told and the
// parts of line were asked for: "what about just 2" changes the one or tells the other. A
// number all by itself tells what was asked.
func (d *Desk) peopleAnew(v speaker, ev Event, ask *parser.Ask, before Turn, phrases []string) (string, bool) {
	if !hauled[before.question.Intent] || !before.question.Has(parser.People) || !before.wants(parser.Parts) || len(strings.Fields(ev.Text)) < 2 {
		return "", false
	}
	phrase, now, ok := d.readAs(v, before, ask, parser.People)
	return phrase, ok && now.High <= mostHands && !slices.Contains(phrases, phrase)
}

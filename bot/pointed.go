package bot

import (
	"slices"

	"heft/parser"
)

// Words beside a bare number of a talk may say what it is of, "fatter, 16", "too many cuts,
// 700": it takes the place of that and of nothing else.

// unitsOf are what such a number may be told in, by what it is of and the system spoken.
var unitsOf = map[parser.Field]map[bool][]string{
	parser.Diameter: {false: {" in"}, true: {" mm", " cm"}},
	parser.Length:   {false: {" ft", " in"}, true: {" m", " cm"}},
	parser.Limit:    {false: {" lb"}, true: {" kg"}},
}

// pointedAs is the number in doubt as what the words beside it say, in the one unit in which
// it is of the size of what was told before of the same; "" where none does, and where the
// message says by itself what it is, "fewer cuts if the limit is 700": then only its unit is
// in doubt.
func (d *Desk) pointedAs(q parser.Question, ask *parser.Ask, ev Event, before Turn) (read string) {
	if slices.Equal(ask.Fields, []parser.Field{q.Points}) {
		return ""
	}
	was, told := had(before.question, q.Points)
	if q.Points == parser.Limit && before.question.Intent == parser.AskCutPlan && !told {
		was, told = ev.Job.facts.Get(parser.Limit)
	}
	if !told || ask.Kind != parser.NoUnit || len(q.Quantities) > 0 || q.Points == parser.Limit && before.question.Intent != parser.AskCutPlan {
		return ""
	}
	v := voiceFor(ev, before.question)
	v.language, v.metric = q.Language, toldMetric(was, v.metric)
	for _, u := range unitsOf[q.Points][v.metric] {
		phrase := v.sayOf(q.Points, ask, inFigures(ask)+u)
		alone, err := d.reader.ReadAfter(phrase, before.question)
		now, ok := had(alone, q.Points)
		if err != nil && !justMissing(err) || !ok || !near(was, now) {
			continue
		}
		if read != "" {
			return ""
		}
		read = phrase
	}
	return read
}

// sayOf is a number with the words that say what it is of.
func (s speaker) sayOf(f parser.Field, ask *parser.Ask, number string) string {
	switch f {
	case parser.Diameter:
		return s.say("%s across", number)
	case parser.Length:
		return s.say("%s long", number)
	}
	return s.typedAs(f, ask)
}

package bot

import (
	"errors"
	"slices"
	"strings"

	"heft/parser"
)

// A number of a talk that lacks only its unit has the one in which it is of the size of what
// was told before of the same.

// sizedAnew is a number in doubt only by its unit, in the one unit in which it is of the size
// of what was told before of the same thing: "and where the stem gets to 19", of 16 in. ""
// where there is none, or more than one. What is told from somewhere is no size.
func (d *Desk) sizedAnew(q parser.Question, ask *parser.Ask, ev Event, before Turn, put func(string) string) (read string) {
	if ask.Kind != parser.NoUnit || ask.Away || q.Bare || tellsAnew(q) || len(q.Quantities) > 0 || len(d.phrasesOf(q, ask, ev, before)) > 1 {
		return ""
	}
	for _, u := range units[voiceFor(ev, before.question).metric] {
		phrase := inFigures(ask) + u
		now, err := before.reread(d.reader, put(phrase))
		if err != nil && !justMissing(err) || len(now.Quantities) != 1 {
			continue
		}
		was, told := had(before.question, now.Quantities[0].Field)
		if !told || !near(was, now.Quantities[0]) || finerThanTold(u, was) {
			continue
		}
		if read != "" || others(d.phrasesOf(q, ask, ev, before), func(p string) bool { return d.alone(p, before).Has(was.Field) }) {
			return ""
		}
		read = phrase
	}
	return read
}

// others says whether a number may be something that it is not taken for.
func others(phrases []string, is func(string) bool) bool {
	return slices.ContainsFunc(phrases, func(p string) bool { return !is(p) })
}

// justMissing says whether nothing is in doubt but what a message does not tell.
func justMissing(err error) bool {
	ask, _ := errors.AsType[*parser.Ask](err)
	return ask != nil && ask.Kind == parser.Missing
}

// units are what a number of a follow-up may be told in, by the system of the talk.
var units = map[bool][]string{false: {" ft", " in", " lb", "°"}, true: {" m", " cm", " mm", " kg", "°"}}

// unitBefore is the number in doubt with the only unit in which it is of the size of what
// was told before, or asked for, where the words beside it say what it is: "limit 500". ""
// where there is none.
func (d *Desk) unitBefore(ask *parser.Ask, ev Event, before Turn, put func(string) string) (read string) {
	if ask.Kind != parser.NoUnit || len(ask.Fields) != 1 {
		return ""
	}
	f := ask.Fields[0]
	was, told := had(before.question, f)
	spoken := voiceFor(ev, before.question).metric
	tried := units[spoken]
	if told && toldMetric(was, spoken) != spoken {
		tried = slices.Concat(units[true], units[false])
	}
	if !told && onlyFar[f] && before.question.Units != "" && possible(f, ask) {
		return inFigures(ask) + units[spoken][0] // nobody tells it in inches, or the other system midway
	}
	for _, u := range tried {
		phrase := inFigures(ask) + u
		q, err := before.reread(d.reader, put(phrase))
		now, ok := had(q, f)
		if err != nil || !ok || !(told && near(was, now) || before.wants(f)) || told && finerThanTold(u, was) {
			continue
		}
		if read != "" {
			return ""
		}
		read = phrase
	}
	return read
}

// finerThanTold says whether a unit is one that a length is not told anew in: nobody tells in inches
// what was told in feet.
func finerThanTold(unit string, was parser.Quantity) bool {
	unit = strings.TrimSpace(unit)
	fine := unit == "in" || unit == "cm" || unit == "mm"
	far := strings.HasSuffix(string(was.Field), "_m") && !parser.Thickness(was.Field) && was.Field != parser.RopeDiameter
	return fine && far && !strings.Contains(was.Words, unit)
}

// onlyFar are lengths of a lift that are told in feet or metres alone.
var onlyFar = map[parser.Field]bool{parser.Rise: true, parser.Apart: true, parser.LoadHeight: true, parser.CutHeight: true, parser.RopeLength: true, parser.DrumAway: true, parser.Tail: true}

// had is what was told of a field; how thick a piece is has several.
func had(q parser.Question, f parser.Field) (parser.Quantity, bool) {
	if x, ok := q.Get(f); ok || !slices.Contains(acrossFields, f) {
		return x, ok
	}
	for _, f := range acrossFields {
		if x, ok := q.Get(f); ok {
			return x, true
		}
	}
	return parser.Quantity{}, false
}

// near says whether a number is of the size of what it takes the place of. Any angle may
// follow another.
func near(had, now parser.Quantity) bool {
	return isAngle(had.Field) || now.High <= nearBefore*had.High && had.Low <= nearBefore*now.Low
}

package bot

import (
	"regexp"
	"slices"
	"strings"

	"heft/calc/gear"
	"heft/calc/limits"
	"heft/parser"
)

// What a job keeps is said in the words that told it.

// tellJob says what is kept.
func (a *answer) tellJob(j Job, sentence func(facts string) string) {
	a.status, a.question = Answered, j.facts
	a.question.Intent = parser.AskJob
	a.lines = []string{sentence(a.voice.and(a.jobWords(j))),
		a.voice.say("Used in every answer here until you change it. “Clear the job” ends it.")}
}

// noJob says that nothing is kept.
func (a *answer) noJob(head string) {
	a.status, a.question = Answered, parser.Question{Intent: parser.AskJob}
	a.lines = []string{head,
		a.voice.say("Tell me, like “job: limit 600 lb, rope breaks at 16,000 lb, 3 people, metric, arborist Dana”.")}
}

// jobWords are the facts of a job, each as it is said back.
func (a *answer) jobWords(j Job) []string {
	v, f := a.voice, j.facts
	var out []string
	if f.Site != nil {
		out = append(out, quote(f.Site.Value))
	}
	if f.Species != nil {
		out = append(out, v.treeNamed(f.Species.Value))
	}
	for _, field := range ofWork {
		q := limits.Quantity(field)
		if x, ok := f.Get(field); ok {
			told := v.asTold(q, x)
			if field == parser.People {
				told = v.say("%s to haul", told) // who climbs is none of them
			}
			out = append(out, told)
		}
	}
	for _, n := range f.Notes {
		if words := v.jobNote(n); words != "" {
			out = append(out, words)
		}
	}
	if f.SaysUnits {
		out = append(out, v.word(unitWords[f.Units]))
	}
	if f.Arborist != nil {
		out = append(out, v.say("arborist %s", quote(f.Arborist.Value)))
		a.named = f.Arborist.Value
	}
	return out
}

// jobNote is what a note is called that can hold for a job, "" for one that
// cannot: what is not said back is not kept.
func (s speaker) jobNote(n string) string {
	switch {
	case noteWords[n] != "":
		return s.word(noteWords[n])
	case kindName[n] != "":
		return s.word(kindName[n])
	case knots[n] != gear.None:
		return strings.TrimPrefix(s.word(knotNames[knots[n]]), "the ")
	}
	return ""
}

// jobsFacts are the facts of the job that an answer made use of, as they were
// told.
func (a *answer) jobsFacts() []string {
	var out []string
	if slices.Contains(a.ofJob, parser.SpeciesField) {
		out = append(out, a.voice.treeNamed(a.question.Species.Value)) // what hangs most on it comes first
	}
	for _, f := range a.ofJob {
		if x, ok := a.question.Get(f); ok {
			out = append(out, a.voice.asTold(limits.Quantity(f), x))
		}
	}
	return out
}

// asTold says a fact of a job in the words that told it: no unit and no
// rounding comes between the crew and its own figure.
func (s speaker) asTold(q limits.Quantity, x parser.Quantity) string {
	if x.Field == parser.People {
		return s.people(int(x.Low))
	}
	if x.Girth {
		return s.say("girth %s", trimQuote(x.Words))
	}
	if x.Along != nil {
		return strings.TrimPrefix(s.soFarOf(x), "the ")
	}
	return strings.TrimPrefix(s.called(q), "the ") + " " + trimQuote(x.Words) + lentUnit(x)
}

// lentUnit is the unit of a bare number that was read by those around it: what is
// kept is said with it.
func lentUnit(x parser.Quantity) string {
	heavy := isHeavy(x.Field) || partOf(x.Field) != ""
	if x.Field == parser.HitchHeight && endsBare.MatchString(x.Words) {
		return map[bool]string{false: " ft", true: " m"}[x.System == parser.Metric]
	}
	if !heavy || strings.HasSuffix(string(x.Field), "diameter_m") || weighty.MatchString(x.Words) || !endsBare.MatchString(x.Words) {
		return ""
	}
	if x.System == parser.Metric {
		return " kg"
	}
	return " lb"
}

// endsBare is a number that has no unit behind it: "9,800", "4k".
var endsBare = regexp.MustCompile(`(?i)[0-9]k?$`)

var unitWords = map[parser.System]string{parser.Metric: "metric units", parser.Imperial: "feet and pounds"}

var noteWords = map[string]string{
	wornGear: "used gear", replacedGear: "gear replaced", naturalCrotch: "natural crotch", "wet": "wet rope", "rigging-ring": "rigging ring",
	"carabiner": "carabiner", "ball-bearing": "ball-bearing blocks",
}

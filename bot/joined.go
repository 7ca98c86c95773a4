package bot

import (
	"slices"

	"heft/calc"
	"heft/calc/unit"
	"heft/parser"
)

// A second stem or a fork that is told of behind a piece is mostly one pick with it: "and
// it has a fork on the end, 8 in by 6 ft". By itself it is far lighter, so it is asked.

// noteSecondStem is the note of the word file for such a stem.
const noteSecondStem = "second-stem"

// joins says whether a message tells of a stem that may be one pick with the piece before.
func (t Turn) joins(q parser.Question) bool {
	sizes := func(q parser.Question) bool { return q.Has(acrossFields...) && q.Has(parser.Length) }
	return t.known && q.Noted(noteSecondStem) && sizes(q) && len(t.question.MissingPiece()) == 0
}

// askJoined asks whether it is, with what both and it alone are planned on; false where
// either has no weight yet.
func (a *answer) askJoined(before Turn, q parser.Question) bool {
	if !before.joins(q) {
		return false
	}
	v, size := a.voice, a.size()
	first, alone := pickOf(before.question), pickOf(a.question)
	if first == 0 || alone == 0 {
		a.problems = append(a.problems, v.say("%s is by itself here: the piece before it is NOT in it.", size))
		return false
	}
	together := v.heavy(first + alone)
	a.status, a.asked = Needs, &parser.Ask{Kind: parser.TwoReadings, Words: size}
	a.lines = []string{v.say("Is %s one pick with the piece before?", size)}
	a.offerBoth([]Choice{
		{v.say("one pick: plan on %s", together), v.say("what if it weighs %s", together)},
		{v.say("by itself: plan on %s", v.heavy(alone)), v.say("%s across, %s long", v.across(a.thickest()), v.along(a.question.Length(parser.Length)))},
	})
	return true
}

// offerBoth shows choices, each as it is numbered.
func (a *answer) offerBoth(choices []Choice) {
	for i, c := range choices {
		a.lines = append(a.lines, numbered(i, c.Label))
	}
	a.choices = choices
}

// thickest is how thick the piece is where it was told thickest.
func (a *answer) thickest() (most unit.Range[unit.Length]) {
	for _, f := range acrossFields {
		if x := a.question.Length(f); x.High > most.High {
			most = x
		}
	}
	return most
}

// pickOf is what a piece is planned on, 0 where that cannot be told.
func pickOf(q parser.Question) unit.Mass {
	q.Intent = parser.AskWeight
	if len(q.Missing()) > 0 {
		return 0
	}
	res, err := calc.Work(jobOf(q))
	if err != nil {
		return 0
	}
	return res.Weight.High
}

// withoutStem is a question that has left such a stem behind.
func withoutStem(q parser.Question) parser.Question {
	q.Notes = slices.DeleteFunc(slices.Clone(q.Notes), func(n string) bool { return n == noteSecondStem })
	return q
}

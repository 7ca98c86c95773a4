package bot

import (
	"slices"

	"heft/parser"
)

// A talk about how a stem is cut lowers pieces of it, none heavier than the limit: gear that is
// told or asked about there has to carry those, and never the whole stem.

// holdsPlan says whether a message asks or tells of gear in a talk about a cut plan, and of no
// other load; limit is the heaviest piece of the plan.
func (t Turn) holdsPlan(q parser.Question, ask *parser.Ask, job Job) (limit parser.Quantity, ok bool) {
	ofGear := ask == nil && q.Intent == parser.AskGear && q.Has(parser.Ratings...) && q.Pieceless() && !q.Noted(parser.MostWanted)
	if !t.known || !ofGear || t.question.Intent != parser.AskCutPlan || t.question.Noted(parser.CutFalls) || t.question.Noted(parser.Snubbed) {
		return parser.Quantity{}, false
	}
	if limit, ok = q.Get(parser.Limit); ok {
		return limit, true
	}
	plan, _ := job.over(t.question)
	return plan.Get(parser.Limit)
}

// holdPlan makes a message about gear whole with the heaviest piece of the plan.
func (a *answer) holdPlan(before Turn, q parser.Question, limit parser.Quantity) {
	for _, x := range before.question.Quantities {
		if partOf(x.Field) != "" && !q.Has(x.Field) {
			q.Quantities = append(slices.Clip(q.Quantities), x)
			a.kept = append(a.kept, string(x.Field))
		}
	}
	load := limit
	load.Field = parser.Weight
	q.Quantities = append(slices.Clip(q.Quantities), load)
	a.kept = append(a.kept, string(parser.Limit))
	slices.Sort(a.kept)
	a.question, a.leaned, a.ofPlan = q, true, true
}

// established is what a talk stands at behind a message.
func (a *answer) established(before Turn) parser.Question {
	if a.ofPlan {
		return before.withGear(a.question)
	}
	return a.question
}

// withGear is the cut plan of a talk with what a message told of gear: the talk stands there,
// and goes on from it.
func (t Turn) withGear(q parser.Question) parser.Question {
	plan := t.question
	plan.Quantities = slices.DeleteFunc(slices.Clone(plan.Quantities), func(x parser.Quantity) bool { return partOf(x.Field) != "" })
	for _, x := range q.Quantities {
		if partOf(x.Field) != "" {
			plan.Quantities = append(plan.Quantities, x)
		}
	}
	plan.Notes = withGearNotes(plan.Notes, q.Notes)
	return plan
}

package bot

import (
	"math"
	"slices"
	"strings"

	"heft/parser"
)

// pressMark begins the id of a question that a button asked: nobody typed it.
const pressMark = "press/"

// PressID is the id of a button's use: of the message it hangs under, the
// person, and what the carrier tells uses apart by. No two uses have the same,
// and one use has the same however often it is told of.
func PressID(message, user, use string) string {
	return pressMark + strings.Join([]string{message, user, use}, "/")
}

// pressed is the message whose button asked; false where a person typed.
func (e Entry) pressed() (under string, ok bool) {
	rest, ok := strings.CutPrefix(e.ID, pressMark)
	under, _, _ = strings.Cut(rest, "/")
	return under, ok
}

// shown says whether a message of the entry's channel shows the answer, or
// one of the other ways to see it.
func (a Asked) shown(message string) bool {
	return message != "" && (a.Posted == message ||
		slices.ContainsFunc(a.Views, func(v Entry) bool { return v.Posted == message }))
}

// questions are the entries of a day without those that only look at an
// answer in another way: each of these goes with the question it looks at.
// Whoever stands by what they saw of an answer stands by the answer.
func questions(entries []Entry) []Asked {
	out := make([]Asked, 0, len(entries))
	for _, e := range entries {
		i := viewed(e, out)
		if i < 0 {
			out = append(out, Asked{Entry: e})
			continue
		}
		a := &out[i]
		a.Views = append(a.Views, e)
		if a.Confirmed == nil {
			a.Confirmed = e.Confirmed
		}
	}
	return out
}

// viewed is the place of the question whose answer an entry shows in another
// way, or -1 where it asks something: a button asked, under that answer, the
// same over again but for what is explained and in which units. What was
// answered in private is shown in no message that can be told of: there it is
// the last such question of the same person.
func viewed(e Entry, before []Asked) int {
	under, ok := e.pressed()
	if !ok {
		return -1
	}
	private := e.Thread == ""
	for i, a := range slices.Backward(before) {
		switch {
		case a.Workspace != e.Workspace || a.Channel != e.Channel:
		case private && a.Thread == "" && a.User == e.User && sameAnswer(a.Entry, e):
			return i
		case !private && a.shown(under) && sameAnswer(a.Entry, e):
			return i
		case !private && a.shown(under):
			return -1 // what stood there when it was pressed was another answer
		}
	}
	return -1
}

// sameAnswer says whether two answers are one in substance: the same question
// by the same calculator, and so the same figures.
func sameAnswer(a, b Entry) bool {
	p, known := a.read()
	q, too := b.read()
	return known && too && a.Status == Answered && b.Status == Answered && a.Calc == b.Calc &&
		math.Abs(a.PlanKg-b.PlanKg) <= 1e-6*a.PlanKg && p.Intent == q.Intent && gist(p) == gist(q)
}

// gist is a question in one wording, without what it wants explained and in
// which units, and whatever the tree was called.
func gist(q parser.Question) string {
	q.Explain, q.SaysUnits = "", false
	q.Notes = slices.Sorted(slices.Values(q.Notes))
	if q.Species != nil {
		tree := *q.Species
		tree.Value.Name = tree.Value.Scientific
		q.Species = &tree
	}
	return q.Words()
}

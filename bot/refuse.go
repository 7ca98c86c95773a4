package bot

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"heft/calc/limits"
	"heft/calc/unit"
	"heft/calc/wood"
	"heft/parser"
)

// stop words the refusals that hold no figure: somebody hurt, a power line,
// unsound wood, and what is no question of ours.
func (a *answer) stop(ask *parser.Ask) {
	a.status = Refused
	a.question = parser.Question{Intent: a.question.Intent}
	switch ask.Kind {
	case parser.Emergency:
		a.lines = []string{"STOP. Call the emergency number now.", "Follow your rescue plan. Nobody under the load, nobody touches the rope without the climber's word."}
	case parser.PowerLine:
		a.lines = []string{"STOP. Power line: keep out, and no figures from me.",
			"Call the utility. Only qualified line-clearance people work near it.",
			"Rope, wet wood and a swinging piece count as touching it. Take every wire for live."}
	case parser.Unsound:
		a.lines = []string{"STOP. " + capital(trimQuote(ask.Words)) + ": no figures for unsound wood or a tree in doubt.",
			"The qualified arborist has to look at the tree before anybody rigs on it or cuts it."}
	default:
		a.lines = []string{"I only work out rigging: weights, wraps, loads, rope, lifts. Try “" + example(a.voice) + "”."}
	}
	a.problems = a.lines[:1:1]
}

// notYet refuses what the desk has no method for, and says what it does have.
func (a *answer) notYet() {
	a.refuse("I have no method for " + trade[a.question.Intent] + " yet, so no figures. Ask the qualified arborist.")
}

var trade = map[parser.Intent]string{
	parser.AskLift: "lifts", parser.AskRaise: "standing a limb up", parser.AskSwing: "swings",
	parser.AskDrop: "drops and negative rigging", parser.AskCutPlan: "cut plans", parser.AskNotch: "notches",
	parser.AskGear: "gear", parser.AskAnchor: "anchors", parser.AskBalance: "balance and roll",
	parser.AskTree: "whole trees", parser.AskJob: "job facts", parser.AskLog: "the log in a message",
}

// refuse closes the answer without a figure.
func (a *answer) refuse(problem string) {
	a.status, a.result = Refused, nil
	a.lines, a.problems = []string{problem}, []string{problem}
	a.needs, a.cautions, a.figures, a.scene = nil, nil, nil, nil
}

// help answers a greeting or a call for help.
func (a *answer) help() {
	a.status = Answered
	a.lines = []string{"Ask me about a piece. For example:",
		"“14 in red oak limb, 22 ft, hitched at 35 ft”",
		"“how heavy is a white ash log 20 in x 8 ft”",
		"“600 lb limb, 3 wraps, two on the rope”",
		"“block load for 600 lb, 60° between the legs”",
		"“how much rope for a hitch at 45 ft”"}
}

// senseless says which number can be no size, or no count; empty where none
// is. The calculator takes zero for "not said".
func senseless(q parser.Question) string {
	for _, x := range q.Quantities {
		whole := x.Low == math.Trunc(x.Low) && x.High == math.Trunc(x.High)
		switch {
		case x.Field == parser.BlockAngle || x.Field == parser.LimbAngle || x.Field == parser.Turn:
		case x.Low <= 0:
			return bare(limits.Quantity(x.Field)) + " " + quote(x.Words) + " cannot be: it must be more than zero."
		case (x.Field == parser.People || x.Field == parser.Parts) && !whole:
			return bare(limits.Quantity(x.Field)) + " " + quote(x.Words) + " cannot be: it must be a whole number."
		}
	}
	return ""
}

// problem words an error of the calculator in the crew's units.
func (s speaker) problem(err error) string {
	if e, ok := errors.AsType[*limits.OutOfRange](err); ok {
		return fmt.Sprintf("%s %s: past what I can work out, %s to %s. %s.", bare(e.Quantity), s.of(e.Quantity, e.Got),
			s.of(e.Quantity, e.Low), s.of(e.Quantity, e.High), capital(e.Why))
	}
	if e, ok := errors.AsType[*limits.Contradiction](err); ok {
		return fmt.Sprintf("%s %s does not go with %s, which allows %s: %s.", bare(e.First), s.of(e.First, e.Got),
			called(e.Second), s.of(e.First, e.Limit), e.Why)
	}
	if e, ok := errors.AsType[*wood.Unweighable](err); ok {
		return "No weight for " + e.Common + ": " + e.Why + "."
	}
	return "I cannot work that out. Ask the qualified arborist."
}

// bare is what a crew calls a quantity, at the start of a sentence.
func bare(q limits.Quantity) string {
	return capital(strings.TrimPrefix(called(q), "the "))
}

// of says a quantity by the unit of its name.
func (s speaker) of(q limits.Quantity, v float64) string {
	name := string(q)
	switch {
	case strings.HasSuffix(name, "diameter_m"):
		return s.across(unit.Exactly(unit.Length(v)))
	case strings.HasSuffix(name, "_m"):
		return s.along(unit.Exactly(unit.Length(v)))
	case strings.HasSuffix(name, "_kg"):
		n, u := s.unitOfMass(unit.Mass(v))
		return grouped(math.Round(n)) + u
	case q == limits.PersonPull:
		n, u := s.unitOfMass(unit.Force(v).Held())
		return trimmed(n, 0) + u
	case strings.HasSuffix(name, "_n"):
		return s.load(unit.Force(v))
	case strings.HasSuffix(name, "_deg"):
		return trimmed(v, 1) + "°"
	}
	return trimmed(v, 1)
}

func trimQuote(words string) string {
	q := []rune(quote(words))
	return string(q[1 : len(q)-1])
}

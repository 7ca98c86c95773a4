package bot

import (
	"errors"
	"math"
	"strings"

	"heft/calc/limits"
	"heft/calc/unit"
	"heft/calc/wood"
	"heft/parser"
)

// stop words the refusals that hold no figure: somebody hurt, a power line,
// unsound wood, what no method holds for, and what is no question of ours.
func (a *answer) stop(ask *parser.Ask) {
	a.status, a.asked = Refused, ask
	a.question = parser.Question{Intent: a.question.Intent}
	v := a.voice
	switch ask.Kind {
	case parser.Unsound:
		a.lines = []string{v.say("STOP. %s: no figures for unsound wood or a tree in doubt.", capital(trimQuote(ask.Words))),
			v.word("The qualified arborist has to look at the tree before anybody rigs on it or cuts it.")}
	case parser.Damaged:
		a.lines = []string{v.say("STOP. %s: do not use that gear. Take it out of use now.", capital(trimQuote(ask.Words))),
			v.word("No figure makes it good again. Show it to the qualified arborist.")}
	case parser.NoMethod:
		a.lines = []string{v.say("I have no method for %s, so no figures. Ask the qualified arborist.", quote(ask.Words))}
	case parser.Nonsense:
		a.lines = []string{v.say("I only work out rigging: weights, wraps, loads, rope, lifts. Try “%s”.", example(v))}
	case parser.Never, parser.Beyond:
		a.bars(ask)
	default:
		for _, line := range halts[ask.Kind] {
			a.lines = append(a.lines, v.word(line))
		}
		a.bars(ask)
		if ask.NearPower {
			a.lines = append(a.lines, v.word("A wire may be touched: keep away, all of you, until the utility says that it is dead."))
		}
		if weighs[ask.Kind] {
			a.lines = append(a.lines, v.say("What a piece weighs I can tell: “%s”.", example(v)))
		}
	}
	a.problems = a.lines[:1:1]
}

// halts are the refusals that need none of the words that were said.
var halts = map[parser.Kind][]string{
	parser.Emergency: {"STOP. Call the emergency number now.",
		"Follow your rescue plan. Nobody under the load, nobody touches the rope without the climber's word."},
	parser.PowerLine: {"STOP. Power line: keep out, and no figures from me.",
		"Call the utility. Only qualified line-clearance people work near it.",
		"Rope, wet wood and a swinging piece count as touching it. Take every wire for live."},
	parser.Rider: {"STOP. Nobody hangs or rides on rigging gear: no figures for lifting or lowering a person.",
		"Climbing gear, a lift made for people or your rescue plan. Ask the qualified arborist."},
	parser.Below: {"STOP. Nobody stays under a piece or beside it while it is cut, lifted or lowered.",
		"Clear the drop zone first. Guide it with a tag line from well outside; the qualified arborist says where people stand."},
	parser.Stuck: {"STOP. The rope does not run: nobody under the piece or in the bight, nobody cuts or frees a loaded rope.",
		"Leave the rope held as it is. The supervisor and the qualified arborist say how the load is taken over."},
	parser.Runaway: {"STOP. Shout it: everybody out from under it and away from the rope, now. Nobody grabs a running rope or reaches near the drum: let it run.",
		"Held for the moment? Leave it as it is, nobody under it. The supervisor says how it is taken over, and more wraps go on before the next piece."},
	parser.Storm: {"STOP. Lightning, a storm or too much wind: everybody out of the tree and away from it, and no figures from me.",
		"Lower or secure what hangs, from where nobody is under it. Go on when the qualified arborist says that it has passed."},
	parser.Personal: {"STOP. Climbing gear is kept for people: no line, connector, pulley or sling of it goes into the rigging, however strong it is.",
		"Use rigging gear with its own label. What once was in the rigging never goes back to climbing."},
	parser.LogKept:  {"Nothing is taken out of the log. Ask again with what is right: both stay in it, for the supervisor to see."},
	parser.Felling:  {"I do not work out felling: no hinge, no pull to bring a tree over, no direction of fall. Ask the qualified arborist."},
	parser.Machine:  {"What a machine takes is on its own load chart, and how hard it pulls nobody feels: I work out neither. Ask its operator and the qualified arborist."},
	parser.SpanLine: {"I do not work out speed lines or a block hung between two anchors: they pull far harder than the piece weighs. Ask the qualified arborist."},
}

// weighs are the refusals beside which the weight of a piece can be told.
var weighs = map[parser.Kind]bool{parser.Felling: true, parser.Machine: true, parser.SpanLine: true}

// notYet refuses what the desk has no method for, and says what it does have.
func (a *answer) notYet() {
	a.refuse(a.voice.say("I have no method for %s yet, so no figures. Ask the qualified arborist.", a.voice.word(trade[a.question.Intent])))
}

var trade = map[parser.Intent]string{
	parser.AskLift: "lifts", parser.AskRaise: "standing a limb up", parser.AskSwing: "swings",
	parser.AskDrop: "drops and negative rigging", parser.AskCutPlan: "cut plans", parser.AskNotch: "notches",
	parser.AskGear: "gear", parser.AskAnchor: "anchors", parser.AskBalance: "balance and roll",
	parser.AskTree: "whole trees", parser.AskJob: "job facts",
}

// refuse closes the answer without a figure.
func (a *answer) refuse(problem string) {
	a.status, a.result = Refused, nil
	a.lines, a.problems = []string{problem}, []string{problem}
	a.needs, a.cautions, a.figures, a.scene = nil, nil, nil, nil
	a.strain = nil
}

// senseless says which number can be no size, or no count; empty where none
// is. The calculator takes zero for "not said".
func (s speaker) senseless(q parser.Question) string {
	for _, x := range q.Quantities {
		whole := x.Low == math.Trunc(x.Low) && x.High == math.Trunc(x.High)
		switch {
		case x.Field == parser.BlockAngle || x.Field == parser.LimbAngle || x.Field == parser.Turn:
		case x.Field == parser.TieAlong && !q.Has(parser.Length), x.Along != nil && x.Low == 0 && x.Field == parser.Tie && q.Intent == parser.AskBalance: // its length is still to be told, or it is tied at its butt
		case x.Field == parser.Sideways && x.High == 0 && q.Intent == parser.AskSwing:
			return s.say("%s: it hangs plumb from the start, so there is no swing to work out. It turns if it does not hang level, and falls what slack there is.", quote(x.Words))
		case x.Field == parser.DrumAway && x.High == 0: // it is moved to the foot of the tree
		case x.Low <= 0:
			return s.say("%s %s cannot be: it must be more than zero.", s.bare(limits.Quantity(x.Field)), quote(x.Words))
		case (x.Field == parser.People || x.Field == parser.Parts) && !whole:
			return s.say("%s %s cannot be: it must be a whole number.", s.bare(limits.Quantity(x.Field)), quote(x.Words))
		}
	}
	if hitch, piece := q.Length(parser.HitchHeight), q.Length(parser.PieceHeight); q.ByHeights() && hitch.Low <= piece.High {
		return s.say("The block, %s up, is not above the piece, %s up. Tell me both again.", s.along(hitch), s.along(piece))
	}
	return ""
}

// problem words an error of the calculator in the crew's units.
func (a *answer) problem(err error) string {
	s := a.voice
	if e, ok := errors.AsType[*limits.OutOfRange](err); ok {
		return s.say("%s %s: past what I can work out, %s to %s. %s.", s.bare(e.Quantity), s.of(e.Quantity, e.Got),
			s.of(e.Quantity, e.Low), s.of(e.Quantity, e.High), capital(s.word(e.Why)))
	}
	if e, ok := errors.AsType[*limits.Contradiction](err); ok {
		return s.say("%s %s does not go with %s, which allows %s: %s.", s.bare(e.First), s.of(e.First, e.Got),
			s.called(e.Second), s.of(e.First, e.Limit), s.word(e.Why))
	}
	if e, ok := errors.AsType[*wood.Unweighable](err); ok {
		tree := e.Common
		if a.question.Species != nil {
			tree = a.question.Species.Value.Name
		}
		return s.say("No weight for %s: %s.", tree, s.word(e.Why))
	}
	return s.word("I cannot work that out. Ask the qualified arborist.")
}

// bare is what a crew calls a quantity, at the start of a sentence: English
// goes without its article there.
func (s speaker) bare(q limits.Quantity) string {
	return capital(strings.TrimPrefix(s.called(q), "the "))
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

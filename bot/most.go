package bot

import (
	"heft/calc"
	"heft/calc/rope"
	"heft/calc/tackle"
	"heft/calc/unit"
	"heft/parser"
)

// workMostLowered answers how heavy a piece the wraps and hands that were told
// can hold.
func (a *answer) workMostLowered() error {
	q := a.question
	wraps, hands := q.Count(parser.Wraps), handsOf(q)
	most, err := rope.Most(rope.Wraps(wraps), hands)
	if err != nil {
		return err
	}
	job := jobOf(q)
	job.Given = unit.Exactly(most)
	res, err := calc.Work(job)
	if err != nil {
		return err
	}
	v := a.voice
	a.result = &res
	a.status = Answered
	a.lines = []string{v.say("%s, %s on the rope: %s at most.", capital(v.turns(wraps)), v.people(hands.People), v.atMost(most))}
	a.limited(most)
	a.lines = append(a.lines, v.word("Plan on the heavy end of a piece. One much lighter may not run: half a wrap off."))
	if more, err := rope.Most(rope.Wraps(wraps)+1, hands); err == nil {
		a.lines = append(a.lines, v.say("One wrap more: %s.", v.atMost(more)))
	}
	a.shown = []string{v.say("Wraps: %s × e^(2π × %s × %s) = %s on the rope.",
		v.exact(hands.Force().Held()), trimmed(float64(rope.Slick), 2), trimmed(wraps, 1), v.exact(most))}
	a.tellHands()
	a.tellBlock()
	a.tellRope()
	a.tellAssumed()
	a.cautions = append(a.cautions, v.word("Nobody under the load or in the bight. Let it run, do not snub it."))
	a.heaviest(most, &strain{line: res.Weight.High.Weight(), block: res.Block})
	return nil
}

// workMostLifted answers how heavy a piece the pull at hand lifts.
func (a *answer) workMostLifted() error {
	l := tackle.Lift{Tackle: tackleOf(a.question), Power: powerOf(a.question)}
	var err error
	if l.Load, err = tackle.Most(l.Tackle, l.Power); err != nil {
		return err
	}
	r, err := tackle.Plan(l)
	if err != nil {
		return err
	}
	v := a.voice
	a.status = Answered
	a.lines = []string{v.say("%s on %s:1: %s at most.", capital(a.hauling(l.Power)), count(l.Parts), v.atMost(l.Load))}
	a.limited(l.Load)
	a.lines = append(a.lines, v.word("Plan on the heavy end of a piece."),
		v.say("%s:1 is no more than %s to 1 here: every block takes its share.", count(l.Parts), trimmed(down1(r.Actual), 1)))
	more := l.Tackle
	more.Parts++
	if most, err := tackle.Most(more, l.Power); err == nil {
		a.lines = append(a.lines, v.say("On %s:1: %s.", count(more.Parts), v.atMost(most)))
	}
	a.shown = []string{v.say("Pull × what the blocks leave ÷ reserve: %s × %s ÷ %s = %s.",
		v.exact(r.Have.Held()), trimmed(r.Actual, 2), trimmed(tackle.Reserve, 2), v.exact(l.Load))}
	a.lines = append(a.lines, a.treeSees(r))
	a.tellLeads(l.Tackle)
	a.liftAssumed(l)
	a.cautions = append(a.cautions, v.word("Keep the blocks apart: stop before they meet. Nobody under the load."))
	a.heaviest(l.Load, &strain{line: max(r.Haul, r.Holding), block: r.Block})
	return nil
}

// hauling says who or what pulls.
func (a *answer) hauling(p tackle.Power) string {
	if p.Winch > 0 {
		return a.voice.say("a pull of %s", a.voice.pullHad(p.Winch))
	}
	return a.voice.people(p.People)
}

// limited says that the crew's limit goes first where it is the lower.
func (a *answer) limited(most unit.Mass) {
	if limit := a.question.Mass(parser.Limit); limit.High > 0 && limit.Low < most {
		a.problems = append(a.problems, a.voice.say("Your limit of %s goes first.", a.voice.atMost(limit.Low)))
	}
}

// heaviest hands on the figure for scripts and the load for the gear check.
// There is no piece, so that no weight is told of one.
func (a *answer) heaviest(most unit.Mass, s *strain) {
	a.strain = s
	a.result = nil
	a.cautions = append(a.cautions, a.voice.word("That is what the pull is good for, not the rope, the blocks or the tree: ask about those too."))
	a.figures = func(o *object) { o.Most = float64(most) }
}

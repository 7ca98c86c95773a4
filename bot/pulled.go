package bot

import (
	"heft/calc/tackle"
	"heft/calc/unit"
	"heft/parser"
)

// workPulled answers what a pull on a tackle puts on its anchor, and what it lifts.
func (a *answer) workPulled() error {
	t, p := tackleOf(a.question), powerOf(a.question)
	pull := p.Winch
	if pull == 0 {
		pull = unit.Force(p.People) * toldPull(a.question, p)
	}
	s, err := tackle.Strained(t, pull)
	if err != nil {
		return err
	}
	adv, err := t.Advantage()
	if err != nil {
		return err
	}
	v, had := a.voice, a.voice.heavy(pull.Held())
	a.status = Answered
	a.lines = []string{v.say("%s pulled on %s:1: the anchor of the top block sees up to %s, block and dead end together.", had, count(t.Parts), v.load(s.Fixed)),
		v.say("The other end, on the load: up to %s. With what the blocks take it lifts about %s, and holds more.", v.load(s.Load), v.atMost((pull * unit.Force(adv)).Held())),
		v.say("A block at the bottom that turns the rope right back sees up to %s, at a right angle up to %s.", v.load(s.Redirect), v.load(s.Redirect*0.7072))}
	if t.Upward {
		a.lines = append(a.lines, v.word("Taken as told: the rope you pull leaves the block on the load."))
	} else {
		a.lines = append(a.lines, v.word("Assumed: top block fixed, rope pulled down from it, nothing jerks. Anchor at the moving end instead? Its figure is that of the other end."))
	}
	a.shown = []string{v.say("Anchor: (%s %s 1) × %s = %s.", count(t.Parts), map[bool]string{false: "+", true: "−"}[t.Upward], v.exact(pull.Held()), v.exact(s.Fixed.Held()))}
	a.strain = &strain{line: pull, block: s.Fixed}
	a.figures = func(o *object) { o.BlockLoad = float64(s.Fixed) }
	a.cautions = append(a.cautions, v.word("A load that sticks is pulled on just as hard: the anchor sees this whatever hangs there."))
	return nil
}

// toldPull is what each of the people pulls, as it was told: a load on an anchor is planned
// on no less.
func toldPull(q parser.Question, p tackle.Power) unit.Force {
	if x, ok := q.Get(parser.PersonPull); ok {
		return unit.Force(x.High)
	}
	return p.PerPerson
}

// mostToldPull is how much somebody may be told to pull for a lift to be planned at all,
// on the most that is counted on: past it the number is a slip.
const mostToldPull unit.Force = 1000

// countedOn is what a person is planned to pull of what was told: no more than tackle.Pulls.
func countedOn(told unit.Force) unit.Force {
	if told > tackle.Pulls.High && told <= mostToldPull {
		return tackle.Pulls.High
	}
	return told
}

// tellCounted says that less is planned on than was told. What hands hold at the drum is
// said by tellHands.
func (a *answer) tellCounted() {
	x, ok := a.question.Get(parser.PersonPull)
	if a.question.Intent == parser.AskLower {
		return
	}
	if told := unit.Force(x.Low); ok && countedOn(told) < told && a.status == Answered && !a.question.Noted(parser.AnchorLoad) {
		v := a.voice
		a.problems = append(a.problems, v.say("You say %s each: planned on %s, nobody in gloves hauls more than that steadily.", v.heavy(told.Held()), v.pullHad(countedOn(told))))
	}
}

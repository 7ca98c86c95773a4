package bot

import (
	"heft/calc/limits"
	"heft/calc/rope"
	"heft/calc/unit"
	"heft/parser"
)

// handsOf are the hands on the rope of a lower. What a crew says that one of
// them holds is planned on where it is less than what is planned otherwise.
func handsOf(q parser.Question) rope.Hands {
	hands := rope.Gloved(int(max(1, q.Count(parser.People))))
	if q.Has(parser.PersonPull) {
		hands.Each = min(hands.Each, unit.Force(low(q, parser.PersonPull)))
	}
	return hands
}

// held says what hands hold, rounded down: nobody is planned on for more.
func (s speaker) held(by rope.Hands) string { return s.pullHad(by.Force()) }

// tellHands says what became of the hold that the crew told.
func (a *answer) tellHands() {
	told, ok := a.question.Get(parser.PersonPull)
	if !ok || a.result.Lowering == nil {
		return
	}
	v, words := a.voice, trimQuote(told.Words)
	if limits.Above(unit.Force(told.Low), rope.PerPerson) {
		a.lines = append(a.lines, v.say("Planned on %s a person: that is what a hand holds steady, not %s.", v.pullHad(rope.PerPerson), words))
		return
	}
	a.lines = append(a.lines, v.say("Planned on %s a person at the hand, as you said.", words))
}

// tellSlipped says what a rope that slipped on the drum calls for. Where the
// figures say that it holds, they did not hold themselves.
func (a *answer) tellSlipped() {
	v := a.voice
	if _, explained := a.judgeWraps(); explained {
		a.tellAtWraps(*a.result.AtWraps)
	} else {
		a.problems = append(a.problems, v.word("It slipped: the piece is heavier or the rope slicker than these figures. Find out which before the next piece."))
	}
	a.problems = append(a.problems, v.word("Wraps go on while the rope is slack, never under load."))
	a.lines = append(a.lines, v.say("Will not run? Half a wrap off, never under %s.", wraps(float64(a.result.Lowering.Least))))
}

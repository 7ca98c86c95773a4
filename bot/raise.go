package bot

import (
	"heft/calc/hinge"
	"heft/calc/tackle"
	"heft/calc/unit"
	"heft/parser"
)

// workRaise answers how a limb is stood up about its hinge.
func (a *answer) workRaise() error {
	q := a.question
	if a.refusedSide() {
		return nil
	}
	if q.LowestWanted() {
		return a.workLowest()
	}
	if q.OfPlaces() {
		return a.workFit()
	}
	res, err := a.weighed()
	if err != nil {
		return err
	}
	s, r, err := worstRaise(setupOf(q, res.Weight.High), q)
	if err != nil {
		return err
	}
	a.status, a.result = Answered, &res
	a.figures = func(o *object) { o.Raise = raiseOf(r); o.Rope = float64(r.Rope) }
	scene := raiseScene(a.voice, a.pictured(), s, r)
	if r.TwoBlocks != nil || r.TurnsOver {
		a.refuseSetup(r.TwoBlocks, r.Window)
	} else {
		a.strain = &strain{line: max(r.Lift.Haul, r.Lift.Holding), block: r.Lift.Block}
		a.tellRaise(r, s)
	}
	a.scene = scene
	return nil
}

// setupOf is the limb and the gear as they were told, at their worse ends; of
// a range of ties either end can be that, and worstRaise tries both.
func setupOf(q parser.Question, weight unit.Mass) hinge.Setup {
	length := q.Length(parser.Length).High
	return hinge.Setup{
		Weight:  weight,
		Balance: length / 2, // no stick that tapers balances further out
		Length:  length,
		Angle:   unit.Angle(low(q, parser.LimbAngle)) * unit.Degree, // lower is heavier on the line
		Tie:     q.Length(parser.Tie).High,
		Height:  q.Length(parser.BlockHeight).Low,
		Hitch:   q.Length(parser.HitchHeight).High,
		Closed:  q.Length(parser.Closed).High,
		Tackle:  tackleOf(q),
		Power:   powerOf(q),
	}
}

// raiseObject is a raise as scripts read it.
type raiseObject struct {
	Line      float64 `json:"line_force_n,omitempty"`
	Haul      float64 `json:"haul_force_n,omitempty"`
	Travel    float64 `json:"haul_travel_m,omitempty"`
	TieMin    float64 `json:"tie_min_m,omitempty"`
	TieMax    float64 `json:"tie_max_m,omitempty"`
	TwoBlocks *bool   `json:"two_blocks,omitempty"` // nil where the tie was not said
}

func raiseOf(r hinge.Raising) *raiseObject {
	two := r.TwoBlocks != nil
	o := &raiseObject{TieMin: float64(r.Window.Ties.Low), TieMax: float64(r.Window.Ties.High), TwoBlocks: &two}
	if r.TwoBlocks == nil && !r.TurnsOver {
		o.Line, o.Haul, o.Travel = float64(r.Line), float64(r.Lift.Haul), float64(r.Travel)
	}
	return o
}

// refuseSetup refuses a tie that lets the blocks meet or the limb turn over,
// and says what to change.
func (a *answer) refuseSetup(t *hinge.TwoBlocks, w hinge.Window) {
	figures, s := a.figures, a.voice
	switch {
	case t != nil && t.MoveIn > 0:
		a.refuse(s.say("DO NOT: the blocks meet before it is upright. Tie %s nearer the cut, or raise the top block %s.",
			s.alongUp(t.MoveIn), s.alongUp(t.RaiseBy)))
	case t != nil:
		a.refuse(s.say("DO NOT: the blocks meet before it is upright. Raise the top block %s.", s.alongUp(t.RaiseBy)))
	default:
		a.refuse(s.word("DO NOT: the tie is not beyond the balance point. The piece turns over when the hinge parts: tie farther out."))
	}
	a.figures = figures
	a.lines = append(a.lines, s.word("Blocks that meet stop the lift: the piece drops and swings back toward the climber."))
	if w.Near != hinge.ByNothing && w.Ties.High > 0 {
		a.lines = append(a.lines, s.say("With this block, tie between %s and %s from the cut.", s.alongUp(w.Ties.Low), s.alongDown(w.Ties.High)))
	}
}

func (a *answer) tellRaise(r hinge.Raising, s hinge.Setup) {
	v := a.voice
	a.lines = []string{v.say("%s, stood up on %s:1: %s.", capital(a.piece()), count(s.Parts), a.verdict(r.Lift))}
	a.tellRemedies(r.Lift.Remedies)
	a.tellWeight()
	a.lines = append(a.lines,
		v.say("Read as: tied %s from the cut, block %s above it, limb %s.", v.along(a.question.Length(parser.Tie)), v.along(unit.Exactly(s.Height)), v.lying(s.Angle)),
		v.say("Line on the limb sees %s: when the hinge parts it takes the whole weight.", v.load(r.Line)),
		v.say("Haul in %s to upright.", v.ropeNeeded(r.Travel)))
	if w := r.Window.Ties; w.High > 0 {
		a.lines = append(a.lines, v.say("Good ties: %s to %s from the cut. Farther out is easier to start, but lifts farther and runs out of height.",
			v.alongUp(w.Low), v.alongDown(w.High)))
	}
	if s.Closed > 0 {
		a.lines = append(a.lines, v.say("Assumed: %s.", v.say("%s between the ties for blocks and slings", v.alongUp(hinge.Clear(s.Closed)))))
	}
	if r.Rope > 0 {
		a.lines = append(a.lines, v.say("Rope %s end to end, tail in it.", v.ropeNeeded(r.Rope)))
	}
	a.tellOffset(s)
	if heavy, thick, ok := a.ifThicker(); ok { // every force of a raise goes with the weight
		a.lines = append(a.lines, v.say("If the butt is %s: %s on the line.", v.across(unit.Exactly(thick)),
			v.load(r.Line*unit.Force(heavy/s.Weight))))
	}
	a.cautions = append(a.cautions, v.word("Haul tight before the hinge parts. Nobody under it, climber clear of its swing."))
}

// lying is how a limb lies that is to be stood up.
func (s speaker) lying(at unit.Angle) string {
	switch deg := at.Degrees(); {
	case deg > 0:
		return s.say("%s° above level", trimmed(deg, 1))
	case deg < 0:
		return s.say("%s° below level", trimmed(-deg, 1))
	}
	return s.word("dead level")
}

// verdict says whether the pull at hand is enough.
func (a *answer) verdict(r tackle.Result) string {
	v := a.voice
	takes, have := v.pull(r.Haul), ""
	if r.Have > 0 {
		takes, have = v.against(r.Haul, r.Have)
	}
	switch r.Verdict {
	case tackle.Enough:
		return v.say("ENOUGH, it takes a pull of %s, you have %s", takes, have)
	case tackle.Marginal:
		return v.say("MARGINAL, it takes a pull of %s, you have %s", takes, have)
	case tackle.MorePower:
		return v.say("MORE POWER needed, it takes a pull of %s, you have %s", takes, have)
	}
	return v.say("it takes a pull of %s, %s", takes, v.people(r.PeopleNeeded))
}

// efficiency is that of each sheave: as it was said, or of the worst thing
// that was named, or that of a block in ordinary order.
func efficiency(q parser.Question) float64 { return sheave(q).Efficiency }

// powerOf is what they have to pull with.
func powerOf(q parser.Question) tackle.Power {
	p := tackle.Power{
		People: int(q.Count(parser.People)), PerPerson: tackle.PerPerson,
		Winch: unit.Force(low(q, parser.WinchPull)),
	}
	if q.Has(parser.PersonPull) {
		p.PerPerson = countedOn(unit.Force(low(q, parser.PersonPull)))
	}
	return p
}

// workNotch answers how far a notch is to open.
func (a *answer) workNotch() error {
	if a.question.Noted(parser.NoteTillLevel) {
		return a.workLevelNotch()
	}
	from := unit.Angle(low(a.question, parser.LimbAngle)) * unit.Degree
	opening, err := a.notchBetween(from, 90*unit.Degree)
	if err != nil {
		return err
	}
	v := a.voice
	a.lines = []string{
		v.say("Open the notch %s°: it closes, and the hinge parts, when the limb is upright.", trimmed(opening.Degrees(), 0)),
		v.say("From %s° above level to 90°. Less opening parts the hinge early.", trimmed(from.Degrees(), 1)),
		v.word("Assumed: upright is where you want it, and the angle is that of the wood at the cut."),
	}
	return nil
}

// notchBetween is how far a notch opens that closes as the wood goes from one angle to the
// other, and what holds for any.
func (a *answer) notchBetween(from, to unit.Angle) (unit.Angle, error) {
	opening, err := hinge.Notch(from, to)
	if err != nil {
		return 0, err
	}
	a.status = Answered
	a.figures = func(o *object) { o.Notch = tidy(opening.Degrees()) }
	a.cautions = append(a.cautions, a.voice.word("Line tight before you cut: it takes the whole weight when the hinge parts."))
	return opening, nil
}

package bot

import (
	"fmt"

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
	res, err := a.weighed()
	if err != nil {
		return err
	}
	s, r, err := worstOffset(setupOf(q, res.Weight.High), q.Length(parser.BlockBehind))
	if err != nil {
		return err
	}
	a.status, a.result = Answered, &res
	a.figures = func(o *object) { o.Raise = raiseOf(r); o.Rope = float64(r.Rope) }
	scene := raiseScene(a.voice, a.pictured(), s, r)
	if r.TwoBlocks != nil || r.TurnsOver {
		a.refuseSetup(r)
	} else {
		a.tellRaise(r, s)
	}
	a.scene = scene
	return nil
}

// setupOf is the limb and the gear as they were told, at their worse ends.
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
	TwoBlocks bool    `json:"two_blocks"`
}

func raiseOf(r hinge.Raising) *raiseObject {
	o := &raiseObject{TieMin: float64(r.Window.Ties.Low), TieMax: float64(r.Window.Ties.High), TwoBlocks: r.TwoBlocks != nil}
	if r.TwoBlocks == nil && !r.TurnsOver {
		o.Line, o.Haul, o.Travel = float64(r.Line), float64(r.Lift.Haul), float64(r.Travel)
	}
	return o
}

// refuseSetup refuses a tie that lets the blocks meet or the limb turn over,
// and says what to change.
func (a *answer) refuseSetup(r hinge.Raising) {
	figures, s := a.figures, a.voice
	switch t := r.TwoBlocks; {
	case t != nil && t.MoveIn > 0:
		a.refuse(fmt.Sprintf("DO NOT: the blocks meet before it is upright. Tie %s nearer the cut, or raise the top block %s.",
			s.alongUp(t.MoveIn), s.alongUp(t.RaiseBy)))
	case t != nil:
		a.refuse("DO NOT: the blocks meet before it is upright. Raise the top block " + s.alongUp(t.RaiseBy) + ".")
	default:
		a.refuse("DO NOT: the tie is not beyond the balance point. The piece turns over when the hinge parts: tie farther out.")
	}
	a.figures = figures
	a.lines = append(a.lines, "Blocks that meet stop the lift: the piece drops and swings back toward the climber.")
	if w := r.Window.Ties; w.High > 0 {
		a.lines = append(a.lines, "With this block, tie between "+s.alongUp(w.Low)+" and "+s.alongDown(w.High)+" from the cut.")
	}
}

func (a *answer) tellRaise(r hinge.Raising, s hinge.Setup) {
	v := a.voice
	head := capital(a.piece()) + fmt.Sprintf(", stood up on %d:1: ", s.Parts) + a.verdict(r.Lift)
	a.lines = []string{head + "."}
	a.tellRemedies(r.Lift.Remedies)
	a.tellWeight()
	a.lines = append(a.lines,
		"Line on the limb sees "+v.load(r.Line)+": when the hinge parts it takes the whole weight.",
		"Haul in "+v.ropeNeeded(r.Travel)+" to upright.")
	if w := r.Window.Ties; w.High > 0 {
		a.lines = append(a.lines, "Good ties: "+v.alongUp(w.Low)+" to "+v.alongDown(w.High)+" from the cut. Farther out is easier to start, but lifts farther and runs out of height.")
	}
	if r.Rope > 0 {
		a.lines = append(a.lines, "Rope "+v.ropeNeeded(r.Rope)+" end to end, tail in it.")
	}
	a.tellOffset(s)
	a.cautions = append(a.cautions, "Haul tight before the hinge parts. Nobody under it, climber clear of its swing.")
}

// verdict says whether the pull at hand is enough.
func (a *answer) verdict(r tackle.Result) string {
	takes := "it takes a pull of " + a.voice.pull(r.Haul)
	have := ", you have " + a.voice.pullHad(r.Have)
	switch r.Verdict {
	case tackle.Enough:
		return "ENOUGH, " + takes + have
	case tackle.Marginal:
		return "MARGINAL, " + takes + have
	case tackle.MorePower:
		return "MORE POWER needed, " + takes + have
	}
	return takes + ", " + people(r.PeopleNeeded)
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
		p.PerPerson = unit.Force(low(q, parser.PersonPull))
	}
	return p
}

// workNotch answers how far a notch is to open.
func (a *answer) workNotch() error {
	from := unit.Angle(low(a.question, parser.LimbAngle)) * unit.Degree
	opening, err := hinge.Notch(from, 90*unit.Degree)
	if err != nil {
		return err
	}
	a.status = Answered
	a.figures = func(o *object) { o.Notch = tidy(opening.Degrees()) }
	a.lines = []string{
		"Open the notch " + trimmed(opening.Degrees(), 0) + "°: it closes, and the hinge parts, when the limb is upright.",
		"From " + trimmed(from.Degrees(), 1) + "° above level to 90°. Less opening parts the hinge early.",
		"Assumed: upright is where you want it, and the angle is that of the wood at the cut.",
	}
	a.cautions = append(a.cautions, "Line tight before you cut: it takes the whole weight when the hinge parts.")
	return nil
}

package bot

import (
	"math"
	"slices"

	"heft/calc/redirect"
	"heft/calc/tackle"
	"heft/calc/unit"
	"heft/parser"
)

// tackleOf is what lies between the load and the hands, as it was told.
func tackleOf(q parser.Question) tackle.Tackle {
	return tackle.Tackle{
		Parts: int(q.Count(parser.Parts)), Efficiency: efficiency(q),
		Upward: slices.Contains(q.Notes, parser.HaulUp), Redirects: redirectsOf(q),
	}
}

// redirectsOf lists the blocks between the tackle and the hands: as many as
// were named, each turning the rope right back where it was not told how far.
func redirectsOf(q parser.Question) []tackle.Redirect {
	named := int(q.Count(parser.Redirects))
	kinds := 0
	for _, n := range q.Notes {
		if parser.Redirecting(n) {
			kinds++
		}
	}
	var out []tackle.Redirect
	for _, x := range q.Quantities {
		if x.Field == parser.Turn && x.At != parser.TopBlock {
			out = append(out, tackle.Redirect{Sheave: sheave(q), Turn: unit.Angle(x.High) * unit.Degree})
		}
	}
	for len(out) < max(named, kinds) {
		out = append(out, tackle.Redirect{Sheave: sheave(q), Turn: math.Pi})
	}
	return out
}

// ledOver is what the redirects of a haul carry; none where there are none.
func ledOver(t tackle.Tackle, r tackle.Result) ([]redirect.Load, error) {
	if len(t.Redirects) == 0 {
		return nil, nil
	}
	pull, turned := r.Haul, []bend{}
	for _, at := range t.Redirects {
		e, err := at.At(at.Turn)
		if err != nil {
			return nil, err
		}
		pull *= unit.Force(e)
		turned = append(turned, bend{parser.RedirectBlock, at.Turn, at.Sheave})
	}
	c := chainOf(turned, pull)
	c.Motion = redirect.Raising
	return redirect.Loads(c)
}

// tellHaulPath says what the redirects of the haul cost, and carry.
func (a *answer) tellHaulPath(l tackle.Lift, r tackle.Result, led []redirect.Load) {
	if len(led) == 0 {
		return
	}
	straight := l
	straight.Redirects = nil
	without, err := tackle.Plan(straight)
	if err != nil {
		return
	}
	v := a.voice
	a.lines = append(a.lines, v.say("Led over %s: without, the haul is %s.", v.redirects(len(led)), v.pull(without.Haul)))
	for i, one := range led {
		if i < turnsTold(a.question) {
			a.lines = append(a.lines, v.say("Redirect, %s° turn: up to %s lifting.", trimmed(one.Turn.Degrees(), 1), v.load(one.Force)))
		} else {
			a.lines = append(a.lines, v.say("Redirect: up to %s lifting, where it turns the rope right back.", v.load(one.Force)))
		}
	}
}

// turnsTold counts the redirects whose turn was told.
func turnsTold(q parser.Question) int {
	n := 0
	for _, x := range q.Quantities {
		if x.Field == parser.Turn && x.At != parser.TopBlock {
			n++
		}
	}
	return n
}

// redirects counts them.
func (s speaker) redirects(n int) string {
	if n == 1 {
		return s.word("1 redirect")
	}
	return s.say("%s redirects", count(n))
}

// haulObjects are the redirects of a haul whose turn was told, as scripts read
// them: lifting is what they are for.
func haulObjects(q parser.Question, led []redirect.Load) []redirectObject {
	var out []redirectObject
	for i, l := range led {
		if i < turnsTold(q) {
			out = append(out, redirectObject{
				Block: "redirect", Load: float64(l.Force), Lifting: float64(l.Force), Turn: tidy(l.Turn.Degrees()), Direction: directions[intoTheBend],
			})
		}
	}
	return out
}

// tellLeads says where the haul leaves the tackle, where that was told.
func (a *answer) tellLeads(l tackle.Tackle) {
	if !l.Upward {
		return
	}
	a.lines = append(a.lines, a.voice.say("The haul leaves the moving block, upward, and is one of the %s parts. Led down over a block above, it costs as much as one redirect more.", trimmed(float64(l.Parts), 0)))
}

// passes says how much of the pull passes a block, and of what kind.
func (a *answer) passes(t tackle.Tackle) string {
	share := a.voice.say("%s%%", trimmed(100*t.Efficiency, 0))
	if name := sheaves[worstSheave(a.question)]; name != "" && !a.question.Has(parser.Efficiency) {
		return a.voice.say("%s of the pull passes each %s", share, a.voice.word(name))
	}
	return a.voice.say("%s of the pull passes each block", share)
}

// tellWorse says what the haul is over blocks that are a little worse: what is
// known least, and moves the answer most after the weight.
func (a *answer) tellWorse(l tackle.Lift) {
	const less = 0.05
	l.Efficiency -= less
	l.Redirects = slices.Clone(l.Redirects)
	for i := range l.Redirects {
		l.Redirects[i].Efficiency -= less
	}
	worse, err := tackle.Plan(l)
	if err != nil {
		return
	}
	a.lines = append(a.lines, a.voice.say("If only %s%% passes: a pull of %s.", trimmed(100*l.Efficiency, 0), a.voice.pull(worse.Haul)))
	if a.question.Noted(parser.WinchWanted) && !a.question.Has(parser.WinchPull) {
		a.problems = append(a.problems, a.voice.say("A winch: rated for at least %s of pull with its drum full, where it pulls least.", a.voice.pull(worse.Haul))) // common practice, no source
	}
}

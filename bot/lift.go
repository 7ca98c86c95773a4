package bot

import (
	"math"

	"heft/calc"
	"heft/calc/rope"
	"heft/calc/tackle"
	"heft/parser"
)

// workLift answers whether a piece can be lifted with what they have.
func (a *answer) workLift() error {
	q := a.question
	if q.OfTravel() {
		return a.workTravel()
	}
	if q.OfPull() {
		return a.workPulled()
	}
	if q.MostWanted() {
		return a.workMostLifted()
	}
	l, lift, err := a.planLift()
	if err != nil {
		return err
	}
	if a.upsideDown() {
		return nil
	}
	if trip := travelOf(q); trip.Apart > 0 {
		r, err := tackle.Run(trip)
		if err != nil || a.refusedTravel(trip, r) {
			return err
		}
	}
	a.status = Answered
	a.strain = &strain{line: max(lift.Haul, lift.Holding), block: lift.Block}
	a.tellLift(l, lift)
	a.shown = a.liftShown(l, lift)
	a.scene = liftScene(a.voice, a.pictured(), l, lift, q.Length(parser.HitchHeight).High)
	a.tellRope()
	led, err := ledOver(l.Tackle, lift)
	if err != nil {
		return err
	}
	a.tellHaulPath(l, lift, led)
	a.figures = func(o *object) {
		o.Lift = liftOf(lift)
		o.BlockLoad = float64(lift.Block)
		o.Redirects = haulObjects(q, led)
	}
	return a.tellTravel()
}

// planLift is the lift of the piece with what pulls on it, and how its rope is laid out.
func (a *answer) planLift() (tackle.Lift, tackle.Result, error) {
	q := a.question
	res, err := a.weighed()
	if err != nil {
		return tackle.Lift{}, tackle.Result{}, err
	}
	l := tackle.Lift{Load: res.Weight.High, Tackle: tackleOf(q), Power: powerOf(q)}
	if q.PartsWanted() {
		if l.Parts, err = partsFor(l); err != nil {
			return tackle.Lift{}, tackle.Result{}, err
		}
	}
	lift, err := tackle.Plan(l)
	if err == nil {
		err = layLift(&res, q, l.Parts)
	}
	if err == nil {
		a.result = &res
	}
	return l, lift, err
}

// liftShown is the working of a lift.
func (a *answer) liftShown(l tackle.Lift, lift tackle.Result) []string {
	v := a.voice
	out := []string{v.say("Pull: %s ÷ %s = %s at the hands.", v.exact(l.Load), trimmed(lift.Actual, 2), v.exact(lift.Haul.Held()))}
	if total := l.Load.Weight() + lift.Haul; math.Abs(float64(total-lift.Tree)) < 0.01*float64(total) {
		out = append(out, v.say("The tree holds more than the piece weighs: %s of piece and %s of pull on the hauling leg, both down, %s in all.",
			v.exact(l.Load), v.exact(lift.Haul.Held()), v.exact(lift.Tree.Held())))
	}
	return out
}

// layLift adds the rope of a lift to what is worked out, where its hitch is known.
func layLift(res *calc.Result, q parser.Question, parts int) (err error) {
	hitch := q.Length(parser.HitchHeight)
	if hitch.High <= 0 {
		return nil
	}
	res.Laid = layoutOf(q)
	res.Laid.Hitch, res.Laid.Parts = hitch.High, parts
	res.Rope, err = res.Laid.Needed()
	return err
}

// partsFor are the parts of line on which the lift is enough, or the most there
// can be where none is.
func partsFor(l tackle.Lift) (int, error) {
	l.Parts = 1
	n, err := tackle.Fewest(l)
	if n == 0 {
		n = int(rope.PartsOfLine.High)
	}
	return n, err
}

// liftOf is a lift as scripts read it.
func liftOf(r tackle.Result) *liftObject {
	o := &liftObject{Ideal: r.Ideal, Actual: r.Actual, Haul: float64(r.Haul), People: r.PeopleNeeded}
	if r.Verdict != tackle.PowerUnsaid {
		more := r.Verdict == tackle.MorePower
		o.MorePower = &more
	}
	return o
}

// liftObject is a lift as scripts read it.
type liftObject struct {
	Ideal     float64 `json:"advantage_ideal"`
	Actual    float64 `json:"advantage_actual"`
	Haul      float64 `json:"haul_force_n"`
	People    int     `json:"people_needed"`
	MorePower *bool   `json:"needs_more_power,omitempty"`
}

func (a *answer) tellLift(l tackle.Lift, r tackle.Result) {
	v := a.voice
	a.lines = []string{v.say("%s on %s:1: %s.", capital(a.piece()), count(l.Parts), a.verdict(r))}
	a.tellRemedies(r.Remedies)
	a.tellWeight()
	a.lines = append(a.lines,
		v.say("%s:1 is no more than %s to 1 here: every block takes its share.", count(l.Parts), trimmed(down1(r.Actual), 1)),
		v.say("Holding still takes %s: friction fights the lift and helps the hold.", v.pull(r.Holding)),
		a.treeSees(r))
	a.tellLeads(l.Tackle)
	a.liftAssumed(l)
	a.tellWorse(l)
	a.cautions = append(a.cautions, v.word("Keep the blocks apart: stop before they meet. Nobody under the load."))
	if l.Winch > 0 {
		a.cautions = append(a.cautions, v.word("A winch feels nothing: it can pull past what rope, blocks and tree can take."))
	}
}

// treeSees says what hangs on the tree.
func (a *answer) treeSees(r tackle.Result) string {
	block, dead := a.voice.load(r.Block), a.voice.load(r.DeadEnd)
	switch {
	case r.DeadEnd <= 0:
		return a.voice.say("Top block sees %s, lifting without jerks.", block)
	case r.Block < 1:
		return a.voice.say("The dead end on the tree sees %s, lifting without jerks.", dead)
	}
	return a.voice.say("Top block sees %s, the dead end %s, one sling for both %s, lifting without jerks.", block, dead, a.voice.load(r.Tree))
}

// liftAssumed says what was taken for granted, and what was told and not
// checked.
func (a *answer) liftAssumed(l tackle.Lift) {
	v, passes := a.voice, a.passes(l.Tackle)
	switch {
	case l.People <= 0:
		a.lines = append(a.lines, v.say("Assumed: %s, nothing stuck or still attached.", passes))
	case a.question.Has(parser.PersonPull):
		a.lines = append(a.lines,
			v.say("Your %s a person, not checked: gloved hands on a wet rope pull less.", v.pullHad(l.PerPerson)),
			v.say("Assumed: %s, nothing stuck or still attached.", passes))
	default:
		a.lines = append(a.lines, v.say("Assumed: %s, %s a person in gloves, nothing stuck or still attached.", passes, v.pullHad(l.PerPerson)))
	}
}

// tellRemedies lists what would make it enough, each by itself.
func (a *answer) tellRemedies(m tackle.Remedies) {
	v := a.voice
	var ways []string
	if m.People > 0 {
		ways = append(ways, v.people(m.People))
	}
	if m.Parts > 0 {
		ways = append(ways, v.say("%s parts of line", count(m.Parts)))
	}
	if m.Winch > 0 {
		ways = append(ways, v.say("a winch pulling %s", v.pull(m.Winch)))
	}
	if m.Piece > 0 {
		ways = append(ways, v.say("a piece of %s at most", v.atMost(m.Piece)))
	}
	if len(ways) > 0 {
		a.problems = append(a.problems, v.say("Enough would be %s.", v.or(ways)))
	}
}

func (s speaker) people(n int) string {
	if n == 1 {
		return s.word("1 person")
	}
	return s.say("%s people", count(n))
}

// down1 rounds down to a tenth.
func down1(v float64) float64 { return float64(int(v*10+1e-9)) / 10 }

// low is the lower end of a field: what can be counted on.
func low(q parser.Question, f parser.Field) float64 {
	x, _ := q.Get(f)
	return x.Low
}

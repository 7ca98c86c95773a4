package bot

import (
	"math"

	"heft/calc/balance"
	"heft/calc/tackle"
	"heft/calc/unit"
	"heft/parser"
)

// tellRoll says what a side branch rolls the piece with.
func (a *answer) tellRoll(o *balanceObject) error {
	q, v := a.question, a.voice
	out := q.Length(parser.SideBranchOut).High
	moment, err := balance.Roll([]balance.Branch{{Weight: q.Mass(parser.SideBranch), Offset: out}})
	if err != nil {
		return err
	}
	o.Roll = float64(moment.High)
	heavy, further := q.Mass(parser.SideBranch).High, v.further(out)
	a.lines = []string{
		v.say("Side branch %s, %s out: rolls it with up to %s. Take it off first, or hold it on a tag line.", v.heavy(heavy), v.along(unit.Exactly(out)), v.moment(moment.High)),
		v.word("Taken as if all of it sat at its end, on a level piece free to roll."),
	}
	if more, err := balance.Roll([]balance.Branch{{Weight: q.Mass(parser.SideBranch), Offset: further}}); err == nil {
		a.lines = append(a.lines, v.say("If %s out, not %s: %s.", v.along(unit.Exactly(further)), v.along(unit.Exactly(out)), v.moment(more.High)))
	}
	a.cautions = append(a.cautions, v.word("It turns over the moment the last wood parts: nobody on the side it rolls to, climber clear."))
	return nil
}

// moment says a turning moment, rounded up.
func (s speaker) moment(m balance.Moment) string {
	if s.metric {
		return grouped(upTo(float64(m))) + " N·m"
	}
	const poundFoot = float64(unit.PoundForce) * float64(unit.Foot)
	return grouped(upTo(float64(m)/poundFoot)) + " lb-ft"
}

// tellShare says what each of two lines takes.
func (a *answer) tellShare(o *balanceObject) error {
	q, v := a.question, a.voice
	_, at := a.points(o)
	first, second := q.Length(parser.Tie), q.Length(parser.SecondTie)
	weight := a.result.Weight.High
	var butt, tip unit.Force
	for _, ties := range [][2]unit.Length{{first.Low, second.Low}, {first.Low, second.High}, {first.High, second.Low}, {first.High, second.High}} {
		b, t, err := balance.TwoLines(weight, at, ties[0], ties[1])
		if err != nil {
			return err
		}
		butt, tip = max(butt, b), max(tip, t)
	}
	o.Lines = []float64{float64(butt), float64(tip)}
	a.lines = []string{
		v.say("Butt line up to %s, tip line up to %s: %s, plan on %s.", v.load(butt), v.load(tip), a.piece(), v.heavy(weight)),
		v.say("Tied %s and %s from the cut; it balances between %s and %s, each line planned on its worst.",
			v.along(first), v.along(second), v.alongDown(at.Low), v.alongUp(at.High)),
	}
	if line := a.shareMovedBy(weight, at, first.High, second.Low, max(butt, tip)); line != "" {
		a.lines = append(a.lines, line)
	}
	a.lines = append(a.lines, v.word("Assumed: both lines plumb and taut. Let one out and the other takes all of it."))
	return nil
}

// shareMovedBy says which tie moves the greater share most.
func (a *answer) shareMovedBy(weight unit.Mass, at unit.Range[unit.Length], first, second unit.Length, base unit.Force) string {
	v := a.voice
	nearer, further := v.shorter(second), v.further(first)
	var trials []trial
	try := func(f, s unit.Length, say func(force string) string) {
		if b, t, err := balance.TwoLines(weight, at, f, s); err == nil {
			trials = append(trials, trial{max(b, t), say(v.heavy(max(b, t).Held()))})
		}
	}
	try(first, nearer, func(f string) string {
		return v.say("If the tip line is at %s, not %s: %s on one line.", v.along(unit.Exactly(nearer)), v.along(unit.Exactly(second)), f)
	})
	try(further, second, func(f string) string {
		return v.say("If the butt line is at %s, not %s: %s on one line.", v.along(unit.Exactly(further)), v.along(unit.Exactly(first)), f)
	})
	return movedMost(base, trials)
}

// tellLegs says what each of two legs to one point takes.
func (a *answer) tellLegs(o *balanceObject) error {
	q, v := a.question, a.voice
	first, second := legs(q)
	weight := a.result.Weight.High
	one, two, err := balance.Legs(weight, first, second)
	if err != nil {
		return err
	}
	o.Lines = []float64{float64(one), float64(two)}
	degrees := func(x unit.Angle) string { return trimmed(x.Degrees(), 0) + "°" }
	a.lines = []string{v.say("Each leg up to %s: %s, legs %s above level.", v.load(one), a.piece(), degrees(first))}
	if first != second {
		a.lines[0] = v.say("Leg at %s up to %s, leg at %s up to %s: %s.", degrees(first), v.load(one), degrees(second), v.load(two), a.piece())
	}
	flat, steep := min(first, second), max(first, second)
	if f, g, err := balance.Legs(weight, flat-10*unit.Degree, steep-10*unit.Degree); err == nil {
		a.lines = append(a.lines, v.say("If both run 10° flatter: up to %s on a leg.", v.heavy(max(f, g).Held())))
	}
	a.lines = append(a.lines, v.word("Assumed: the legs on opposite sides of the load, both taut, the load at rest."))
	return nil
}

// legs are the angles above horizontal. An angle between the legs is shared
// evenly.
func legs(q parser.Question) (first, second unit.Angle) {
	if x, ok := q.Get(parser.LegAngle); ok {
		first = unit.Angle(x.Low) * unit.Degree
		second = first
		if y, ok := q.Get(parser.SecondLeg); ok {
			second = unit.Angle(y.Low) * unit.Degree
		}
		return first, second
	}
	x, _ := q.Get(parser.BlockAngle)
	first = 90*unit.Degree - unit.Angle(x.High)*unit.Degree/2
	return first, first
}

// fromTheGround is how steep a tag line runs down to somebody on the ground
// (common practice, no source).
const fromTheGround = 45 * unit.Degree

// tellTag says what holds the piece aside on a level tag line.
func (a *answer) tellTag(o *balanceObject, head string) error {
	q, v := a.question, a.voice
	aside, line := q.Length(parser.Sideways).High, q.HangsLow().Low
	tag, err := balance.TagLine(a.result.Weight.High, line, aside, 0)
	if err != nil {
		return err
	}
	o.Tag, o.TagPeople = float64(tag.Pull), int(math.Ceil(float64(tag.Pull/tackle.PerPerson)-1e-9))
	if q.Has(parser.Length) {
		a.points(o)
	}
	people := v.say("%s people", grouped(float64(o.TagPeople)))
	if o.TagPeople == 1 {
		people = v.word("1 person")
	}
	a.lines = []string{
		v.say("%s, tag line %s to hold it %s aside: %s.", head, v.pull(tag.Pull), v.along(unit.Exactly(aside)), people),
		v.say("The rope it hangs on then carries %s. Assumed: a level tag line, %s of line to the block, the piece at rest.",
			v.load(tag.Line), v.along(unit.Exactly(line))),
	}
	if q.Has(parser.People) && int(q.Count(parser.People)) < o.TagPeople {
		a.problems = append(a.problems, v.word("Not enough hands on the tag line."))
	}
	if more := a.tagMovedBy(line, aside, tag.Pull); more != "" {
		a.lines = append(a.lines, more)
	}
	a.cautions = append(a.cautions, v.word("Let go, and it swings back past the block: nobody in its arc. Ease it back."))
	return nil
}

// tagMovedBy says which input moves the pull most: how far aside, how much
// line, or how steep the tag line runs down.
func (a *answer) tagMovedBy(line, aside unit.Length, base unit.Force) string {
	v, weight := a.voice, a.result.Weight.High
	var trials []trial
	try := func(line, aside unit.Length, below unit.Angle, say func(force string) string) {
		if t, err := balance.TagLine(weight, line, aside, below); err == nil {
			trials = append(trials, trial{t.Pull, say(v.pull(t.Pull))})
		}
	}
	further, shorter := v.further(aside), v.shorter(line)
	try(line, further, 0, func(f string) string {
		return v.say("If %s aside, not %s: %s on the tag line.", v.along(unit.Exactly(further)), v.along(unit.Exactly(aside)), f)
	})
	try(shorter, aside, 0, func(f string) string {
		return v.say("If %s of line, not %s: %s on the tag line.", v.along(unit.Exactly(shorter)), v.along(unit.Exactly(line)), f)
	})
	try(line, aside, fromTheGround, func(f string) string {
		return v.say("If the tag line runs down at 45°, not level: %s on it.", f)
	})
	return movedMost(base, trials)
}

package bot

import (
	"slices"

	"heft/calc/gear"
	"heft/calc/unit"
	"heft/parser"
)

// workGear answers what a rope may be loaded with, and how much of that a
// piece takes up.
func (a *answer) workGear() error {
	q := a.question
	strength := unit.Force(low(q, parser.RopeBreak))
	plan, err := gear.WorkingLoad(strength, gear.Planning)
	if err != nil {
		return err
	}
	most, err := gear.WorkingLoad(strength, gear.Rigging)
	if err != nil {
		return err
	}
	knot := knotOf(q)
	plan *= unit.Force(gear.Keeps(knot).Kept.Low)
	most *= unit.Force(gear.Keeps(knot).Kept.Low)
	o := &gearObject{Working: float64(plan)}
	a.figures = func(all *object) { all.Gear = o }
	a.status = Answered
	v := a.voice
	head := []string{v.say("Rope that breaks at %s: plan on %s", v.pullHad(strength), v.pullHad(plan))}
	if x, ok := q.Get(parser.RopeDiameter); ok { // its label goes by strength; the thickness is only said back
		head[0] = v.say("Rope %s that breaks at %s: plan on %s", quote(x.Words), v.pullHad(strength), v.pullHad(plan))
	}
	if len(q.MissingPiece()) == 0 {
		used, err := a.usedUp(plan, o)
		if err != nil {
			return err
		}
		head = append(head, used)
	}
	a.lines = slices.Insert(a.lines, 0, clauses(head...))
	a.lines = append(a.lines,
		v.say("That is a tenth of its strength, %s%% of it left by %s. Never more than a fifth, %s: loads of a tree are not accurately known.",
			trimmed(100*gear.Keeps(knot).Kept.Low, 0), v.word(knotNames[knot]), v.pullHad(most)),
		v.word("Assumed: new, dry, its label read, no edge, no heat. Used, old or without a label: no figure holds, ask."))
	a.cautions = append(a.cautions, v.word("A marked working load that is lower goes first, and so does any weaker link: block, sling, connector, drum."))
	return nil
}

// gearObject is gear as scripts read it.
type gearObject struct {
	Working float64 `json:"working_load_n"`
	Used    float64 `json:"used_fraction,omitempty"`
}

// usedUp says what the piece takes up of the working load, hanging still on
// one part of line.
func (a *answer) usedUp(plan unit.Force, o *gearObject) (string, error) {
	res, err := a.weighed()
	if err != nil {
		return "", err
	}
	a.result = &res
	if o.Used, err = gear.Used(res.Weight.High.Weight(), plan); err != nil {
		return "", err
	}
	a.tellWeight()
	if o.Used > 1 {
		a.problems = append(a.problems, a.voice.word("The piece is over what this rope is planned for: cut a smaller one."))
		return a.voice.say("OVER: %s is %s", a.piece(), a.voice.heavy(res.Weight.High)), nil
	}
	return a.voice.say("%s takes %s%% of that", a.piece(), trimmed(100*o.Used+0.5, 0)), nil
}

// knots are the notes of the word file that name a knot.
var knots = map[string]gear.Knot{
	"bowline": gear.Bowline, "clove-hitch": gear.CloveHitch, "timber-hitch": gear.TimberHitch,
	"two-half-hitches": gear.TwoHalfHitches, "eye-splice": gear.EyeSplice, "square-knot": gear.SquareKnot,
	"overhand-knot": gear.OverhandKnot,
}

// knotOf is the weakest knot that was named; where none was, any may be tied.
func knotOf(q parser.Question) gear.Knot {
	var named []gear.Knot
	for _, n := range q.Notes {
		if k, ok := knots[n]; ok {
			named = append(named, k)
		}
	}
	if len(named) == 0 {
		return gear.AnyOtherKnot
	}
	return slices.MinFunc(named, func(a, b gear.Knot) int {
		return int(100*gear.Keeps(a).Kept.Low) - int(100*gear.Keeps(b).Kept.Low)
	})
}

// knotNames are what a crew calls the knots.
var knotNames = map[gear.Knot]string{
	gear.Bowline: "the bowline", gear.CloveHitch: "the clove hitch", gear.TimberHitch: "the timber hitch",
	gear.TwoHalfHitches: "the two half hitches", gear.EyeSplice: "the eye splice", gear.SquareKnot: "the square knot",
	gear.OverhandKnot: "the overhand knot", gear.FigureEight: "the figure eight", gear.AnyOtherKnot: "a knot you did not name",
}

package bot

import (
	"fmt"
	"slices"
	"strings"

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
	rope := "Rope"
	if x, ok := q.Get(parser.RopeDiameter); ok {
		rope += " " + quote(x.Words) // its label goes by strength; the thickness is only said back
	}
	head := fmt.Sprintf("%s that breaks at %s: plan on %s", rope, a.voice.pullHad(strength), a.voice.pullHad(plan))
	if len(q.MissingPiece()) == 0 {
		if head, err = a.usedUp(head, plan, o); err != nil {
			return err
		}
	}
	a.lines = append([]string{head + "."}, a.lines...)
	a.lines = append(a.lines,
		fmt.Sprintf("That is a tenth of its strength, %s. Never more than a fifth, %s: loads of a tree are not accurately known.",
			withKnot(knot), a.voice.pullHad(most)),
		"Assumed: new, dry, its label read, no edge, no heat. Used, old or without a label: no figure holds, ask.")
	a.cautions = append(a.cautions, "A marked working load that is lower goes first, and so does any weaker link: block, sling, connector, drum.")
	return nil
}

// gearObject is gear as scripts read it.
type gearObject struct {
	Working float64 `json:"working_load_n"`
	Used    float64 `json:"used_fraction,omitempty"`
}

// usedUp adds what the piece takes up of the working load, hanging still on
// one part of line.
func (a *answer) usedUp(head string, plan unit.Force, o *gearObject) (string, error) {
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
		a.problems = append(a.problems, "The piece is over what this rope is planned for: cut a smaller one.")
		return head + ", OVER: " + a.piece() + " is " + a.voice.heavy(res.Weight.High), nil
	}
	return fmt.Sprintf("%s, %s takes %s%% of that", head, a.piece(), trimmed(100*o.Used+0.5, 0)), nil
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

func withKnot(k gear.Knot) string {
	kept := trimmed(100*gear.Keeps(k).Kept.Low, 0) + "% of it left by "
	if k == gear.AnyOtherKnot {
		return kept + "a knot you did not name"
	}
	return kept + "the " + strings.ReplaceAll(string(k), "-", " ")
}

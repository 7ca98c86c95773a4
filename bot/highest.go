package bot

import (
	"heft/calc"
	"heft/calc/rope"
	"heft/calc/unit"
	"heft/parser"
)

// workHighest answers how high the block may be with the rope at hand: rounded
// down, so that the plan for that height takes no more than the rope.
func (a *answer) workHighest() error {
	q, v := a.question, a.voice
	laid := layoutOf(q)
	laid.Parts, laid.Wraps = max(1, int(q.Count(parser.Parts))), rope.Wraps(q.Count(parser.Wraps))
	have := q.Length(parser.RopeLength)
	laid.Hitch = rope.Hitches.Low
	least, err := laid.Needed()
	if err != nil {
		return err
	}
	if have.Low < least {
		a.refuse(v.say("Your %s rope is too short to lower at all: nothing is left for the drum.", v.along(have)))
		return nil
	}
	if laid.Hitch, err = laid.Highest(have.Low); err != nil {
		return err
	}
	laid.Hitch = a.voice.heightBelow(laid.Hitch)
	need, err := laid.Needed()
	if err != nil {
		return err
	}
	a.status, a.result = Answered, &calc.Result{Rope: need, Laid: laid}
	a.lines = []string{v.say("Block %s up at most, with your %s of rope.", v.along(unit.Exactly(laid.Hitch)), v.along(have))}
	a.tellRope()
	a.tellDeadEnd()
	a.figures = func(o *object) { o.Highest = float64(laid.Hitch) }
	return nil
}

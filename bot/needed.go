package bot

import (
	"heft/calc/gear"
	"heft/calc/unit"
)

// workNeeded answers how strong gear must be for a piece that hangs still on
// one part of line.
func (a *answer) workNeeded() error {
	res, err := a.weighed()
	if err != nil {
		return err
	}
	a.result = &res
	factor := factorOf(a.question)
	all := []rated{{part: gear.Rope, carries: 1}, {part: gear.Block}, {part: gear.Sling}}
	if err := a.shares(all); err != nil {
		return err
	}
	needs := make([]gear.Needed, len(all))
	o := &gearObject{}
	for i, r := range all {
		l := gear.Link{Part: r.part, Factor: factor, Carries: r.carries}
		if r.part == gear.Rope {
			l.Knot = knotOf(a.question)
		}
		if needs[i], err = l.Needs(res.Weight.High.Weight()); err != nil {
			return err
		}
		o.Items = append(o.Items, ratedObject{Part: partNames[r.part], Load: float64(needs[i].Load), Needed: float64(needs[i].Break)})
	}
	a.figures = func(all *object) { all.Gear = o }
	a.status = Answered
	a.tellNeeded(needs, factor)
	return nil
}

// tellNeeded says the strengths, what they rest on, and that a load which does
// not hang still needs more.
func (a *answer) tellNeeded(needs []gear.Needed, factor float64) {
	v := a.voice
	rope, block := needs[0], needs[1]
	a.lines = []string{v.say("%s: the rope must break at %s or more, the block at %s.", capital(a.piece()), v.load(rope.Break), v.load(block.Break))}
	a.tellWeight()
	a.lines = append(a.lines,
		v.say("Rope: sees %s, × %s design factor, %s.", v.load(rope.Load), trimmed(factor, 1), withKnot(v, knotOf(a.question))),
		v.say("Block, and the sling and shackle that hold it: see %s, × %s.", v.load(block.Load), trimmed(factor, 1)))
	if factor != gear.Rigging {
		a.lines = append(a.lines, v.say("At 5:1, the least for rigging, not %s:1: rope %s, block %s. Loads of a tree are not accurately known.",
			trimmed(factor, 1), v.load(rope.Break*unit.Force(gear.Rigging/factor)), v.load(block.Break*unit.Force(gear.Rigging/factor))))
	}
	a.lines = append(a.lines, v.say("Assumed: new, dry, its label read, no edge, no heat, the load at rest. Used, old or without a label: no figure holds, ask."))
	a.cautions = append(a.cautions, v.word("Lifted, snubbed or dropped, all of it sees more: ask about that with the gear you have."))
}

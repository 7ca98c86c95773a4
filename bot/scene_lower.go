package bot

import (
	"math"

	"heft/calc"
	"heft/calc/unit"
)

// lowering is what a picture of a lower needs beyond its result.
type lowering struct {
	Hitch   unit.Length // of the block; 0 where it was not said
	Between *unit.Angle // the legs at the block, where it was said
	Parts   int         // of line on the load
	People  int
}

// steepest is how far apart the legs may be for the drum to be drawn where it
// stands.
const steepest = 50 * unit.Degree

// lowerScene shows a piece that is lowered: the hitch, the drum at the foot,
// the legs, and what pulls. The result has a Lowering.
func lowerScene(v speaker, p pictured, r calc.Result, l lowering) *Scene {
	const part = 0.55
	h := newHung(p, l.Hitch, part)
	out := &Scene{Title: v.say("%s, lowered", p.Name), Plan: p.plan(v)}
	drum := l.drum(h)
	right := max(0.55*h.shown, h.tip.X+0.1*h.shown)
	hand := Point{drum.X - max(0.2*h.shown, crown), 0.6 * crown}
	left := hand.X - 0.2*h.shown
	h.draw(out, v, left, right)
	top, tie := h.block(), h.tie
	if l.Parts > 1 {
		tie = h.tie.plus(Point{0, 0.07 * h.shown})
		out.add(Sling, "", tie, h.tie)
	}
	out.rope(Rope, max(1, l.Parts), tie, top)
	out.rope(Rope, 1, top, drum)
	out.add(Block, "", top)
	if l.Parts > 1 {
		out.add(Block, "", tie)
	}
	if h.broken {
		out.cut(left, right, 0)
	}
	out.load(v.say("Top block\n%s", v.load(r.Block)), share(r.Block, r.Block), top.plus(Point{0.08 * h.shown, -0.01 * h.shown}), down)
	h.weight(out, v, p, r.Block)
	l.hold(out, v, r, h, drum, hand)
	if l.Hitch > 0 {
		out.add(Gap, v.along(unit.Exactly(l.Hitch)), Point{right, 0}, Point{right, h.shown})
	}
	if l.Between != nil {
		if *l.Between > steepest {
			out.Bar = v.notToScale()
		}
		out.Notes = append(out.Notes, v.say("%s° between the legs.", trimmed(l.Between.Degrees(), 1)))
	}
	if r.Rope > 0 {
		out.Notes = append(out.Notes, v.say("Rope %s end to end, tail in it.", v.ropeNeeded(r.Rope)))
	}
	return out
}

// drum is where the drum is: at the foot of the stem, or where the angle said
// between the legs puts it.
func (l lowering) drum(h hung) Point {
	at := Point{(h.stem[0] + h.stem[1]) / 2, min(1, 0.15*h.shown)}
	if l.Between == nil {
		return at
	}
	angle := min(*l.Between, steepest)
	at.X = min(at.X, -(h.shown-at.Y)*math.Tan(float64(angle)))
	return at
}

// hold adds the drum and who holds it.
func (l lowering) hold(out *Scene, v speaker, r calc.Result, h hung, drum, hand Point) {
	plan := r.Lowering
	out.rope(Rope, 1, drum, hand)
	out.stand(Point{hand.X, 0})
	hold := v.say("Hold\nup to %s", v.pull(plan.Hold))
	if n := l.People; n > 1 {
		hold = v.say("%s people hold\nup to %s", count(n), v.pull(plan.Hold))
	}
	out.load(hold, share(plan.Hold, r.Block), hand, hand.minus(drum))
	out.add(Drum, v.say("Start with\n%s", v.turns(float64(plan.Start))), drum)
}

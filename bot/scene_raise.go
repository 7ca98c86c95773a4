package bot

import (
	"math"

	"heft/calc/hinge"
	"heft/calc/unit"
)

// raiseScene shows a limb that is stood up: where it is and will be, the
// blocks, where a tie is good, and what pulls. Of a set-up that is refused it
// shows why, and no load.
func raiseScene(v speaker, p pictured, s hinge.Setup, r hinge.Raising) *Scene {
	d := newStoodUp(p, s)
	refused := r.TwoBlocks != nil || r.TurnsOver
	out := &Scene{
		Title:   v.say("%s, stood up on %s:1", p.Name, count(s.Parts)),
		Verdict: v.verdictWord(r.Lift.Verdict), Refused: refused,
		Bar: v.barFor(d.length + d.height/3),
	}
	d.surroundings(out)
	d.ways(out, s)
	d.window(out, v, s, r.Window)
	if refused {
		d.wrong(out, v, r.TwoBlocks)
		d.shortened(out, v, s)
		return out
	}
	out.Plan = v.say("Pull %s", v.pull(r.Lift.Haul))
	d.gap(out, v)
	d.shortened(out, v, s)
	d.loads(out, v, p, s, r)
	out.Notes = []string{v.say("Haul in %s to upright. Tight before the hinge parts.", v.ropeNeeded(r.Travel))}
	if r.Rope > 0 {
		out.Notes = []string{v.say("Haul in %s, rope %s end to end.", v.ropeNeeded(r.Travel), v.ropeNeeded(r.Rope)),
			v.word("Tight before the hinge parts.")}
	}
	return out
}

// stoodUp is the geometry of a raise, in metres from the hinge.
type stoodUp struct {
	length, butt, height float64
	tip                  float64 // how thick it is there
	tie, upright, block  Point
	stem                 [2]float64
	ground               float64
	grounded, broken     bool
	hands                Point
}

func newStoodUp(p pictured, s hinge.Setup) stoodUp {
	d := stoodUp{length: float64(s.Length), height: float64(s.Height)}
	if d.length == 0 {
		d.length = 1.1 * float64(max(s.Tie, s.Balance))
	}
	d.butt = p.across(d.length)
	d.tip = p.taper() * d.butt
	d.tie, d.upright = toward(s.Angle, float64(s.Tie)), Point{0, float64(s.Tie)}
	d.block = Point{-float64(s.Offset), d.height}
	width := max(1.4*d.butt, 0.05*d.span())
	d.stem = [2]float64{-d.butt/2 - width, -d.butt / 2}
	lowest := min(0, toward(s.Angle, d.length).Y)
	below := 0.25 * d.span()
	if s.Hitch > 0 {
		below, d.grounded = max(0, float64(s.Hitch-s.Height)+lowest), true
	}
	d.ground, d.broken = groundFor(lowest, below, d.span())
	left := min(d.stem[0], d.block.X)
	d.hands = Point{left - 0.16*d.span(), d.ground + 0.6*crown}
	if !d.grounded {
		d.hands.Y = d.ground + 0.1*d.span()
	}
	return d
}

func (d stoodUp) span() float64 { return max(d.length, d.height) }

// surroundings are the ground, the stem and the top block's arm.
func (d stoodUp) surroundings(out *Scene) {
	top := d.height + 0.1*d.span()
	if d.grounded {
		left, right := d.sides()
		out.foot(left, right, d.ground, d.stem, top)
	} else {
		out.add(Stem, "", box(Point{d.stem[0], d.ground}, Point{d.stem[1], top})...)
	}
	out.hang(Point{(d.stem[0] + d.stem[1]) / 2, d.height}, d.block, (d.stem[1]-d.stem[0])/2)
}

func (d stoodUp) sides() (left, right float64) {
	return d.hands.X - 0.2*d.span(), d.length + 0.12*d.span()
}

// shortened adds the break where something was left out, and the height that
// is then not to scale.
func (d stoodUp) shortened(out *Scene, v speaker, s hinge.Setup) {
	left, right := d.sides()
	switch {
	case d.broken:
		out.cut(left, right, d.ground)
		out.add(Gap, v.say("Block at\n%s", v.along(unit.Exactly(s.Hitch))), Point{right, d.ground}, Point{right, d.height})
	case !d.grounded:
		y := d.ground + 0.03*d.span()
		out.add(Break, "", Point{d.hands.X - 0.1*d.span(), y}, Point{0.1 * d.span(), y})
	}
}

// ways are the limb, now and upright, and the rope.
func (d stoodUp) ways(out *Scene, s hinge.Setup) {
	const upright = math.Pi / 2
	out.add(Later, "", stick(Point{}, upright, d.length, d.butt, d.tip)...)
	out.rope(Lately, 1, d.upright, d.block)
	out.add(Sweep, "", arc(Point{}, float64(s.Tie), s.Angle+0.06, upright-0.04)...)
	out.add(Wood, "", stick(Point{}, s.Angle, d.length, d.butt, d.tip)...)
	out.rope(Rope, s.Parts, d.tie, d.block)
	out.rope(Rope, 1, d.block, d.hands)
	out.add(Block, "", d.block)
	out.add(Block, "", d.tie)
	if d.grounded {
		out.stand(Point{d.hands.X, d.ground})
	}
}

// window shows where a tie is good.
func (d stoodUp) window(out *Scene, v speaker, s hinge.Setup, w hinge.Window) {
	if w.Near == hinge.ByNothing || w.Ties.High <= 0 {
		return
	}
	off := toward(s.Angle-math.Pi/2, 1.3*d.butt+0.02*d.span())
	label := v.say("Good ties\n%s to %s", v.alongUp(w.Ties.Low), v.alongDown(w.Ties.High))
	out.add(Window, label, off.plus(toward(s.Angle, float64(w.Ties.Low))), off.plus(toward(s.Angle, float64(w.Ties.High))))
}

// wrong shows what is wrong with a set-up, and how to mend it.
func (d stoodUp) wrong(out *Scene, v speaker, t *hinge.TwoBlocks) {
	out.Verdict = v.word("DO NOT")
	if t == nil {
		out.add(Cross, v.word("Tie is inside\nthe balance point"), d.tie)
		out.Notes = []string{v.word("It turns over when the hinge parts: tie farther out.")}
		return
	}
	out.add(Cross, v.word("Blocks meet"), d.upright.plus(d.block).times(0.5))
	mend := v.say("Raise the top block %s.", v.alongUp(t.RaiseBy))
	if t.MoveIn > 0 {
		mend = v.say("Tie %s nearer the cut, or raise the top block %s.", v.alongUp(t.MoveIn), v.alongUp(t.RaiseBy))
	}
	out.Notes = []string{mend}
}

// gap is the room between the blocks once the limb is upright.
func (d stoodUp) gap(out *Scene, v speaker) {
	room := d.block.minus(d.upright)
	off := Point{0.09*d.span() + d.butt/2, 0}
	apart := v.alongDown(unit.Length(math.Hypot(room.X, room.Y)))
	out.add(Gap, v.say("Blocks %s\napart upright", apart), d.upright.plus(off), d.block.plus(off))
}

// loads are the weight, the line on the limb and the pull at the hands.
func (d stoodUp) loads(out *Scene, v speaker, p pictured, s hinge.Setup, r hinge.Raising) {
	most := max(r.Line, p.Weight.Weight())
	at := toward(s.Angle, float64(s.Balance))
	out.add(Balance, "", at)
	out.load(v.heavy(p.Weight), share(p.Weight.Weight(), most), at, down)
	line := d.block.minus(d.tie)
	off := Point{-line.Y, line.X}.times(-0.05 * d.span() / math.Hypot(line.X, line.Y))
	out.load(v.say("Line %s", v.load(r.Line)), share(r.Line, most), d.tie.plus(off), line)
	out.haul(v.pulling(r.Lift), share(r.Lift.Haul, most), d.block, d.hands, 0.05*d.span())
}

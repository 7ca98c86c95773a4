package bot

import (
	"math"

	"heft/calc/tackle"
	"heft/calc/unit"
)

// hung is the geometry of a piece that hangs below a block, in metres above
// the ground, the block at X 0.
type hung struct {
	height       float64 // of the block
	length, butt float64
	taper        float64
	tie, tip     Point
	stem         [2]float64
	toScale      bool
	broken       bool
	shown        float64 // the height as it is drawn
}

// newHung hangs a piece with its tie at a part of the block's height, or as
// high as it takes to hang clear. One that is longer than that leans, its tip
// on the ground.
func newHung(p pictured, hitch unit.Length, part float64) hung {
	h := hung{height: float64(hitch), length: float64(p.Length), toScale: hitch > 0}
	if !h.toScale {
		h.height = max(10, 1.6*h.length)
	}
	if h.length == 0 {
		h.length = 0.3 * h.height
	}
	h.butt, h.taper = p.across(h.length), p.taper()
	// What hangs has to be seen: of a tall stem a part is left out.
	h.shown = h.height
	const highest = 0.78
	clear := 0.06 * h.shown
	if most := max(3.2*h.length, 1.4*h.length+5*crown); h.toScale && most < h.height {
		h.shown, h.broken = most, true
		clear = 2 * crown // the break goes between a person's head and the piece
	}
	h.tie = Point{0, min(max(part*h.shown, h.length+clear), highest*h.shown)}
	h.tip = Point{0, h.tie.Y - h.length}
	if h.tip.Y < 0 {
		h.tip = Point{math.Sqrt(h.length*h.length - h.tie.Y*h.tie.Y), 0}
	}
	width := max(1.2*h.butt, 0.06*h.shown)
	right := -0.14*h.shown - h.butt/2
	h.stem = [2]float64{right - width, right}
	return h
}

func (h hung) block() Point { return Point{0, h.shown} }

// draw adds the surroundings and the piece.
func (h hung) draw(out *Scene, v speaker, left, right float64) {
	out.foot(left, right, 0, h.stem, h.shown*1.12)
	out.hang(Point{(h.stem[0] + h.stem[1]) / 2, h.shown}, h.block(), (h.stem[1]-h.stem[0])/3)
	way := h.tip.minus(h.tie)
	out.add(Wood, "", stick(h.tie, unit.Angle(math.Atan2(way.Y, way.X)), h.length, h.butt, h.taper*h.butt)...)
	out.Bar = v.notToScale()
	if h.toScale {
		out.Bar = v.barFor(right - left)
	}
}

// weight is the load at the middle of the piece.
func (h hung) weight(out *Scene, v speaker, p pictured, largest unit.Force) {
	at := h.tie.plus(h.tip).times(0.5)
	out.add(Balance, "", at)
	if h.tip.X == 0 {
		at.X += 0.03*h.shown + h.butt/2 // beside what hangs plumb
	}
	out.load(v.heavy(p.Weight), share(p.Weight.Weight(), largest), at, down)
}

// liftScene shows a piece that is lifted with a tackle, and what pulls.
func liftScene(v speaker, p pictured, l tackle.Lift, r tackle.Result, hitch unit.Length) *Scene {
	const part = 0.5
	h := newHung(p, hitch, part)
	out := &Scene{
		Title: v.say("%s, lifted on %s:1", p.Name, count(l.Parts)),
		Plan:  v.say("Pull %s", v.pull(r.Haul)), Verdict: v.verdictWord(r.Verdict),
		Notes: []string{v.say("%s:1 gives %s to 1. Stop before the blocks meet.", count(l.Parts), trimmed(down1(r.Actual), 1))},
	}
	hands := Point{max(0.26*h.shown, h.tip.X+0.1*h.shown), 0.6 * crown}
	left, right := h.stem[0]-0.35*h.shown, hands.X+0.25*h.shown
	h.draw(out, v, left, right)
	top, moving := h.block(), h.tie.plus(Point{0, 0.07 * h.shown})
	from := top // where the haul leaves the tackle
	if l.Upward {
		from, hands = moving, Point{hands.X, h.shown}
	}
	out.tackle(v, l.Tackle, moving, top)
	out.rope(Rope, 1, from, hands)
	out.add(Sling, "", moving, h.tie)
	out.add(Block, "", top)
	out.add(Block, "", moving)
	if !l.Upward {
		out.stand(Point{hands.X, 0})
	}
	if h.broken {
		out.cut(left, right, 0)
	}
	largest := max(r.Block, p.Weight.Weight())
	if r.Block >= 1 {
		out.load(v.say("Top block\n%s", v.load(r.Block)), share(r.Block, largest), top.plus(Point{-0.06 * h.shown, -0.03 * h.shown}), down)
	}
	h.weight(out, v, p, largest)
	out.haul(v.pulling(r), share(r.Haul, largest), from, hands, 0.05*h.shown)
	if h.toScale {
		out.add(Gap, v.along(unit.Exactly(hitch)), Point{left, 0}, Point{left, h.shown})
	}
	if r.DeadEnd > 0 {
		out.Notes = append(out.Notes, v.say("Dead end on the tree: %s.", v.load(r.DeadEnd)))
	}
	return out
}

// tackle adds the parts of line between two blocks, and says what of the haul
// is not drawn.
func (s *Scene) tackle(v speaker, t tackle.Tackle, moving, top Point) {
	lines := t.Parts
	if t.Upward {
		lines = max(1, lines-1) // the haul is one of the parts
	}
	s.rope(Rope, lines, moving, top)
	if n := len(t.Redirects); n > 0 {
		s.Notes = append(s.Notes, v.say("Haul led over %s, not drawn.", v.redirects(n)))
	}
}

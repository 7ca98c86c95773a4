package bot

import (
	"math"

	"heft/calc/swing"
	"heft/calc/unit"
)

// swingScene shows a piece cut free on a line: where it hangs now, what it
// sweeps, how near it comes to the ground and to an obstacle, and what pulls.
func swingScene(v speaker, p pictured, s swing.Setup, w swing.Swing) *Scene {
	d := newSwung(p, s, w)
	if s.Obstacle != nil && !d.grounded { // drawn as tall as the block, which it is taken for
		s.Obstacle = &swing.Obstacle{Distance: s.Obstacle.Distance, Top: unit.Length(d.height)}
	}
	out := &Scene{
		Title: v.say("%s, swung on a line", p.Name), Refused: w.Gap != nil && *w.Gap < 0, Bar: v.barFor(d.right - d.left),
	}
	if out.Refused {
		out.Verdict = v.word("DO NOT")
	}
	d.surroundings(out, s)
	d.swept(out, s)
	d.distances(out, v, s, w)
	if out.Refused {
		out.Notes = []string{v.word("It may strike. Shorten the line, or move the block.")}
		return out
	}
	if s.Heavy == 0 { // where it goes, and no load
		out.Plan = v.sweeping(s, w)
		out.Notes = []string{v.word("No forces: no weight is known."), v.word("Nobody in the whole sweep: it comes back.")}
		return out
	}
	pull := w.Bottom
	if w.Askew.Line > pull.Line {
		pull = w.Askew
	}
	out.Plan = v.swinging(s, w, pull)
	at := Point{0, d.block.Y - d.line}
	out.load(v.say("Line up to\n%s", v.load(pull.Line)), 1, at.plus(Point{0.05 * d.height, 0}), Point{0, 1})
	out.load(v.say("Block up to\n%s", v.load(pull.Block)), 1, d.block.plus(Point{-0.06 * d.height, 0}), down)
	out.Notes = []string{v.word("Nobody in the whole sweep: it comes back.")}
	return out
}

// swinging is what is asked first of a swing: how much room is left, or how
// hard it pulls.
func (s speaker) swinging(of swing.Setup, w swing.Swing, pull swing.Pull) string {
	if w.Gap == nil {
		return s.say("Line up to %s", s.load(pull.Line))
	}
	return s.sweeping(of, w)
}

// sweeping is how much room is left, or how far it comes.
func (s speaker) sweeping(of swing.Setup, w swing.Swing) string {
	switch {
	case w.Gap == nil && of.Hung == 0:
		return s.say("Comes %s plus its length", s.alongUp(w.Reach))
	case w.Gap == nil:
		return s.say("Comes %s past the block", s.alongUp(w.Reach))
	case of.Hung == 0:
		return s.say("Clears by %s less its length", s.alongDown(*w.Gap))
	}
	return s.say("Clears by %s", s.alongDown(*w.Gap))
}

// swung is the geometry of a swing, in metres above the ground, the block at
// X 0, the piece to its right.
type swung struct {
	block, tie  Point
	line, hung  float64
	reach       float64
	butt, taper float64
	height      float64
	left, right float64
	grounded    bool
}

func newSwung(p pictured, s swing.Setup, w swing.Swing) swung {
	d := swung{line: float64(s.Line), hung: float64(s.Hung), reach: float64(w.Reach), grounded: s.Hitch > 0}
	d.height = float64(s.Hitch)
	if !d.grounded {
		d.height = 1.15 * (d.line + d.hung)
	}
	d.block = Point{0, d.height}
	sin, cos := math.Sincos(float64(s.Start))
	d.tie = Point{d.line * sin, d.height - d.line*cos}
	d.butt, d.taper = p.across(max(d.hung, 0.2*d.line)), p.taper()
	d.right = max(d.tie.X, d.reach) + 0.28*d.height
	d.left = -d.reach - 0.1*d.height
	if s.Obstacle != nil {
		d.left = min(d.left, -float64(s.Obstacle.Distance)-0.3*d.height)
	}
	return d
}

func (d swung) surroundings(out *Scene, s swing.Setup) {
	width := 0.07 * d.height
	if d.grounded {
		out.foot(d.left, d.right+width, 0, [2]float64{d.right - width, d.right}, 1.16*d.height)
	}
	out.hang(Point{d.right - width/2, d.height}, d.block, width/2)
	if o := s.Obstacle; o != nil {
		near := -float64(o.Distance)
		out.add(Obstacle, "", box(Point{d.left, 0}, Point{near, float64(o.Top)})...)
	}
}

// swept is the piece, now and at the bottom, its line and its sweep.
func (d swung) swept(out *Scene, s swing.Setup) {
	const plumb = -math.Pi / 2
	bottom := Point{0, d.height - d.line}
	out.add(Later, "", stick(bottom, plumb, d.piece(), d.butt, d.taper*d.butt)...)
	out.rope(Lately, 1, bottom, d.block)
	sweep := arc(d.block, d.line+d.hung, plumb+s.Start, plumb-s.Start)
	out.add(Sweep, "", append(sweep, Point{-d.reach, d.tie.Y})...) // flung up flat as it stops
	out.add(Wood, "", stick(d.tie, plumb, d.piece(), d.butt, d.taper*d.butt)...)
	out.rope(Rope, 1, d.tie, d.block)
	out.add(Block, "", d.block)
}

// piece is how long the piece is drawn: as it hangs, or as a short one.
func (d swung) piece() float64 { return max(d.hung, d.butt) }

func (d swung) distances(out *Scene, v speaker, s swing.Setup, w swing.Swing) {
	if w.Lowest != nil && *w.Lowest > 0 {
		x := -0.12 * d.height
		out.add(Gap, v.say("%s\nto the ground", v.alongDown(*w.Lowest)), Point{x, 0}, Point{x, float64(*w.Lowest)})
	}
	y := -0.15 * d.height
	out.add(Gap, v.say("Reaches %s out", v.alongUp(w.Reach)), Point{-d.reach, y}, Point{0, y})
	switch {
	case w.Gap == nil:
	case *w.Gap < 0:
		out.add(Cross, v.word("May be struck"), Point{-float64(s.Obstacle.Distance), float64(s.Obstacle.Top)})
	default:
		from, to := d.clear(s.Obstacle, float64(*w.Gap))
		out.add(Gap, v.say("%s\nclear", v.alongDown(*w.Gap)), from, to)
	}
}

// clear is where the sweep comes nearest to an obstacle: its top corner and
// the arc above it, or its face and as far out as the piece may be flung.
func (d swung) clear(o *swing.Obstacle, gap float64) (from, to Point) {
	corner := Point{-float64(o.Distance), float64(o.Top)}
	if math.Abs(corner.X+gap+d.reach) < 1e-6 {
		corner.Y += 0.04 * d.height
		return corner, Point{-d.reach, corner.Y}
	}
	x, y := d.block.X-corner.X, d.block.Y-corner.Y
	away := math.Hypot(x, y)
	return corner, Point{corner.X + x/away*gap, corner.Y + y/away*gap}
}

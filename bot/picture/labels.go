package picture

import (
	"math"
	"strings"

	"heft/bot"
)

// wanted is a label that looks for its place.
type wanted struct {
	lines []string
	at    pt   // what it speaks of, the middle
	along []pt // and all of it
	bold  bool
}

// placed is a label that found its place.
type placed struct {
	wanted
	box rect
}

// want asks for a label beside a mark.
func (v *view) want(m bot.Mark, p []pt) {
	const steps = 8
	first, last := p[0], p[len(p)-1]
	at := first.to(last, 0.5)
	var along []pt
	for i := range steps + 1 {
		along = append(along, first.to(last, float64(i)/steps))
	}
	v.wants = append(v.wants, wanted{lines: strings.Split(m.Label, "\n"), at: at, along: along, bold: m.Kind != bot.Gap && m.Kind != bot.Window})
}

// place finds each label a place, in order: near what it speaks of, apart
// from the labels before it, on as few lines as may be. A label that had to
// go far has a line back.
func (o *sheet) place(v view) {
	for _, w := range v.wants {
		for i, line := range w.lines {
			w.lines[i] = o.faces.cut(line, label, w.bold, v.area.width()-2*pad)
		}
		box := o.best(v, w)
		if end, at := w.nearest(box); end.minus(at).size() > leaderFrom {
			o.shapes = append(o.shapes, shape{pts: []pt{end, at}, line: ink, width: 2})
		}
		o.shapes = append(o.shapes, shape{pts: corners(box), closed: true, fill: paper})
		at := box.min.plus(pt{pad, pad + label*0.86})
		for _, line := range w.lines {
			o.write(line, at, label, w.bold, ink)
			at.y += leading
		}
		o.labels = append(o.labels, placed{w, box})
	}
}

// nearest are the points nearest each other of a box and of what the label
// speaks of.
func (w wanted) nearest(box rect) (end, at pt) {
	least := math.Inf(1)
	for _, p := range w.along {
		q := box.nearest(p)
		if d := q.minus(p).size(); d < least {
			end, at, least = q, p, d
		}
	}
	return end, at
}

const (
	pad     = 5.0
	leading = label * 1.14
	// leaderFrom is how far off a label needs a line back.
	leaderFrom = 34.0
)

// size is that of a label's box.
func (o *sheet) size(w wanted) pt {
	wide := 0.0
	for _, line := range w.lines {
		wide = max(wide, o.faces.width(line, label, w.bold))
	}
	return pt{wide + 2*pad, leading*float64(len(w.lines)) + 2*pad}
}

// best is the place with the least against it.
func (o *sheet) best(v view, w wanted) rect {
	size := o.size(w)
	var best rect
	least := math.Inf(1)
	for _, distance := range []float64{16, 30, 46, 70, 100, 140, 190, 260, 350, 480} {
		if distance >= least {
			break // nothing farther is better
		}
		for i := range 24 {
			sin, cos := math.Sincos(2 * math.Pi * float64(i) / 24)
			box := beside(w.at, pt{cos, sin}, distance, size)
			if cost := o.against(v, w, box) + distance; cost < least {
				best, least = box, cost
			}
		}
	}
	if math.IsInf(least, 1) {
		return beside(w.at, pt{0, 1}, 16, size).into(v.area)
	}
	return best
}

// beside is a box that lies in a direction from a place, its side so far off.
func beside(at, direction pt, distance float64, size pt) rect {
	centre := at.plus(direction.times(distance)).plus(pt{direction.x * size.x / 2, direction.y * size.y / 2})
	half := size.times(0.5)
	return rect{centre.minus(half), centre.plus(half)}
}

// against is what speaks against a place: beyond the view or on another label
// it cannot be.
func (o *sheet) against(v view, w wanted, box rect) float64 {
	const apart, onWanted = 8.0, 60.0
	if !box.within(v.area) {
		return math.Inf(1)
	}
	for _, l := range o.labels {
		if l.box.grown(apart).meets(box) {
			return math.Inf(1)
		}
	}
	cost := 0.0
	for _, s := range v.shapes {
		if s.guard > 0 && s.reach().meets(box) && s.crosses(box.grown(s.width/2)) {
			cost += s.guard
		}
	}
	if end, at := w.nearest(box); end.minus(at).size() > leaderFrom {
		cost += v.leads(end, at)
	}
	for _, other := range v.wants {
		if other.at != w.at && box.holds(other.at) {
			cost += onWanted
		}
	}
	return cost
}

// leads is what speaks against a line from a label back to what it speaks of:
// the line itself, and what it has to cross.
func (v view) leads(end, at pt) float64 {
	const itself, steps = 20.0, 12
	cost := itself
	for _, s := range v.shapes {
		if s.guard < onLine || !s.reach().meets(around([]pt{end, at}).grown(1)) {
			continue
		}
		for i := range steps - 1 {
			p := end.to(at, float64(i)/steps)
			if s.crosses(rect{p, p}.grown(end.minus(at).size() / steps / 2)) {
				cost += s.guard / 2
				break
			}
		}
	}
	return cost
}

package picture

import (
	"math"

	"heft/bot"
)

// fit turns metres into pixels: the same scale both ways, Y up.
type fit struct {
	scale  float64
	origin pt
}

func (f fit) at(p bot.Point) pt {
	return pt{f.origin.x + f.scale*p.X, f.origin.y - f.scale*p.Y}
}

func (f fit) all(path []bot.Point) []pt {
	out := make([]pt, len(path))
	for i, p := range path {
		out[i] = f.at(p)
	}
	return out
}

// smallest is the least way across a view, in metres.
const smallest = 0.5

// fitted is the largest scale at which the scene lies within an area.
func fitted(s *bot.Scene, area rect) fit {
	low, high := bounds(s)
	w, h := high.X-low.X, high.Y-low.Y
	scale := min(area.width()/max(w, smallest), area.height()/max(h, smallest))
	return fit{scale: scale, origin: pt{
		(area.min.x+area.max.x)/2 - scale*(low.X+high.X)/2,
		(area.min.y+area.max.y)/2 + scale*(low.Y+high.Y)/2,
	}}
}

// bounds are the outermost places of a scene. A load's second place only
// gives its direction.
func bounds(s *bot.Scene) (low, high bot.Point) {
	low, high = bot.Point{X: math.Inf(1), Y: math.Inf(1)}, bot.Point{X: math.Inf(-1), Y: math.Inf(-1)}
	for _, m := range s.Marks {
		path := m.Path
		if m.Kind == bot.Load {
			path = path[:1]
		}
		for _, p := range path {
			low = bot.Point{X: min(low.X, p.X), Y: min(low.Y, p.Y)}
			high = bot.Point{X: max(high.X, p.X), Y: max(high.Y, p.Y)}
		}
	}
	return low, high
}

// view draws the marks into an area. What is drawn in pixels, such as an
// arrow, reaches beyond its place; the scale gives way until all is inside.
func (o *sheet) view(s *bot.Scene, area rect) {
	inner := rect{area.min.plus(pt{14, 14}), area.max.minus(pt{14, 8})}
	var v view
	for range 6 {
		v = view{fit: fitted(s, inner), area: area}
		for _, m := range s.Marks {
			v.mark(m)
		}
		over := v.reach()
		left, right := max(0, area.min.x-over.min.x), max(0, over.max.x-area.max.x)
		above, below := max(0, area.min.y-over.min.y), max(0, over.max.y-area.max.y)
		if left+right+above+below < 1e-6 {
			break
		}
		inner.min = inner.min.plus(pt{left, above})
		inner.max = inner.max.minus(pt{right, below})
	}
	o.shapes = append(o.shapes, v.shapes...)
	o.place(v)
	if s.Bar.Length > 0 {
		o.ruler(s.Bar, v.fit, area)
	}
}

// view is the part of a sheet that the marks fill.
type view struct {
	fit
	area   rect
	shapes []shape
	wants  []wanted
}

func (v *view) reach() rect {
	var points []pt
	for _, s := range v.shapes {
		r := s.reach()
		points = append(points, r.min, r.max)
	}
	return around(points)
}

func (v *view) add(s shape) { v.shapes = append(v.shapes, s) }

// barHeight is the strip that the bar of the scale takes.
const barHeight = 46.0

// bar leaves room for the bar, or says that the view is not to scale, and
// returns where the view ends.
func (o *sheet) bar(s *bot.Scene, area rect) float64 {
	if s.Bar.Length <= 0 {
		o.write(s.Bar.Label, pt{margin, area.max.y - 12}, small, false, ink)
	}
	return area.max.y - barHeight
}

// ruler draws the bar: two halves, one filled.
func (o *sheet) ruler(b bot.Bar, f fit, area rect) {
	long := b.Length * f.scale
	if long > area.width()/2 {
		return // of no use for a view so small
	}
	y := area.max.y + barHeight - 22
	half := func(from, to float64, fill colour) shape {
		return shape{pts: corners(rect{pt{from, y - 6}, pt{to, y + 6}}), closed: true, fill: fill, line: ink, width: 2}
	}
	x := margin + 1
	o.shapes = append(o.shapes, half(x, x+long/2, ink), half(x+long/2, x+long, paper))
	o.write(b.Label, pt{x + long + 12, y + 8}, small, false, ink)
}

package picture

import "math"

// pt is a place on the picture, in pixels from its upper left corner.
type pt struct{ x, y float64 }

func (p pt) plus(q pt) pt          { return pt{p.x + q.x, p.y + q.y} }
func (p pt) minus(q pt) pt         { return pt{p.x - q.x, p.y - q.y} }
func (p pt) times(f float64) pt    { return pt{f * p.x, f * p.y} }
func (p pt) size() float64         { return math.Hypot(p.x, p.y) }
func (p pt) left() pt              { return pt{p.y, -p.x} }
func (p pt) to(q pt, f float64) pt { return p.plus(q.minus(p).times(f)) }

// unit is the direction of p; that of nothing is down.
func (p pt) unit() pt {
	if s := p.size(); s > 1e-9 {
		return p.times(1 / s)
	}
	return pt{0, 1}
}

// rect has its corners in order.
type rect struct{ min, max pt }

func (r rect) width() float64  { return r.max.x - r.min.x }
func (r rect) height() float64 { return r.max.y - r.min.y }

func (r rect) grown(by float64) rect {
	return rect{r.min.minus(pt{by, by}), r.max.plus(pt{by, by})}
}

func (r rect) meets(o rect) bool {
	return r.min.x < o.max.x && o.min.x < r.max.x && r.min.y < o.max.y && o.min.y < r.max.y
}

func (r rect) holds(p pt) bool {
	return r.min.x <= p.x && p.x <= r.max.x && r.min.y <= p.y && p.y <= r.max.y
}

func (r rect) within(o rect) bool { return o.holds(r.min) && o.holds(r.max) }

// into is r moved to lie within another.
func (r rect) into(o rect) rect {
	to := rect{o.min, o.max.minus(r.max.minus(r.min))}.nearest(r.min)
	return rect{to, to.plus(r.max.minus(r.min))}
}

// nearest is the point of r nearest to p.
func (r rect) nearest(p pt) pt {
	return pt{min(max(p.x, r.min.x), r.max.x), min(max(p.y, r.min.y), r.max.y)}
}

// around is the smallest rectangle that holds all points.
func around(points []pt) rect {
	r := rect{pt{math.Inf(1), math.Inf(1)}, pt{math.Inf(-1), math.Inf(-1)}}
	for _, p := range points {
		r.min = pt{min(r.min.x, p.x), min(r.min.y, p.y)}
		r.max = pt{max(r.max.x, p.x), max(r.max.y, p.y)}
	}
	return r
}

// shape is one thing to paint: a line or an outline.
type shape struct {
	pts    []pt
	closed bool
	fill   colour // nil: none
	line   colour // nil: none
	width  float64
	dash   []float64
	guard  float64 // what a label on it costs
}

// reach is the rectangle that the paint may touch.
func (s shape) reach() rect { return around(s.pts).grown(s.width / 2) }

// crosses says whether a line of the shape runs through a rectangle.
func (s shape) crosses(r rect) bool {
	for i := 1; i < len(s.pts); i++ {
		if through(s.pts[i-1], s.pts[i], r) {
			return true
		}
	}
	return s.closed && len(s.pts) > 2 && through(s.pts[len(s.pts)-1], s.pts[0], r)
}

// through says whether the way from a to b meets a rectangle, by cutting off
// what lies beyond each of its sides.
func through(a, b pt, r rect) bool {
	from, to := 0.0, 1.0
	d := b.minus(a)
	for _, side := range [...][2]float64{
		{-d.x, a.x - r.min.x}, {d.x, r.max.x - a.x}, {-d.y, a.y - r.min.y}, {d.y, r.max.y - a.y},
	} {
		switch step, room := side[0], side[1]; {
		case step == 0 && room < 0:
			return false
		case step < 0:
			from = max(from, room/step)
		case step > 0:
			to = min(to, room/step)
		}
	}
	return from <= to
}

// ring is a circle.
func ring(centre pt, radius float64) []pt {
	const corners = 36
	points := make([]pt, corners)
	for i := range points {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / corners)
		points[i] = centre.plus(pt{radius * cos, radius * sin})
	}
	return points
}

// text is one line of words; at is the left end of its baseline.
type text struct {
	words string
	at    pt
	size  float64
	bold  bool
	ink   colour
}

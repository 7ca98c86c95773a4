package picture

import "math"

// ground is a heavy line with strokes below it.
func (v *view) ground(p []pt) {
	const apart, deep = 26.0, 12.0
	v.add(shape{pts: p, line: ink, width: thick, guard: onLine})
	from, to := p[0], p[len(p)-1]
	for x := from.x + apart; x < to.x; x += apart {
		v.add(shape{pts: []pt{{x, from.y + 2}, {x - deep, from.y + 2 + deep}}, line: ink, width: 2, guard: onHatch})
	}
}

// gone is a zigzag band across what was shortened.
func (v *view) gone(p []pt) {
	const high, teeth = 12.0, 6
	from, to := p[0], p[len(p)-1]
	zigzag := func(dy float64) []pt {
		line := make([]pt, teeth+1)
		for i := range line {
			line[i] = from.to(to, float64(i)/teeth).plus(pt{0, dy + 6*float64(i%2*2-1)})
		}
		return line
	}
	upper, lower := zigzag(-high/2), zigzag(high/2)
	band := append([]pt{}, upper...)
	for i := range lower {
		band = append(band, lower[len(lower)-1-i])
	}
	v.add(shape{pts: band, closed: true, fill: paper, guard: onLine})
	v.add(shape{pts: upper, line: pen, width: thin})
	v.add(shape{pts: lower, line: pen, width: thin})
}

// obstacle is a hatched outline.
func (v *view) obstacle(p []pt) {
	const apart = 22.0
	v.add(shape{pts: p, closed: true, fill: paper, line: ink, width: medium, guard: onGear})
	r := around(p)
	for c := r.min.x + r.min.y + apart; c < r.max.x+r.max.y; c += apart {
		a := pt{min(r.max.x, c-r.min.y), max(r.min.y, c-r.max.x)}
		b := pt{max(r.min.x, c-r.max.y), min(r.max.y, c-r.min.x)}
		v.add(shape{pts: []pt{a, b}, line: ink, width: 2, guard: onHatch})
	}
}

// sweep is a dotted path with an open arrow at its end.
func (v *view) sweep(p []pt) {
	v.add(shape{pts: p, line: ghost, width: medium, dash: dotted, guard: onLine})
	if len(p) > 1 {
		end := p[len(p)-1]
		along := end.minus(p[len(p)-2]).unit()
		v.add(shape{pts: barbs(end, along, 18, 11), line: ghost, width: medium})
	}
}

// barbs are the open head of an arrow.
func barbs(at, along pt, long, wide float64) []pt {
	back := at.minus(along.times(long))
	return []pt{back.plus(along.left().times(wide)), at, back.minus(along.left().times(wide))}
}

// balance is a ring with two of its quarters filled.
func (v *view) balance(at pt) {
	const radius = 13.0
	v.add(shape{pts: ring(at, radius), closed: true, fill: chalk, line: ink, width: thin, guard: onGear})
	for _, start := range []float64{0, math.Pi} {
		quarter := []pt{at}
		for i := range 10 {
			sin, cos := math.Sincos(start + math.Pi/2*float64(i)/9)
			quarter = append(quarter, at.plus(pt{radius * cos, radius * sin}))
		}
		v.add(shape{pts: quarter, closed: true, fill: ink})
	}
}

// person is a figure as tall as the scale has it, and never too small to see.
func (v *view) person(p []pt) {
	feet, tall := p[0], p[0].y-p[1].y
	tall = max(tall, 40)
	at := func(x, y float64) pt { return feet.plus(pt{x * tall, -y * tall}) }
	w := max(thin, 0.07*tall)
	v.add(shape{pts: ring(at(0, 0.89), 0.1*tall), closed: true, fill: ink, guard: onGear})
	v.add(shape{pts: []pt{at(0, 0.78), at(0, 0.45)}, line: ink, width: 2 * w, guard: onGear})
	v.add(shape{pts: []pt{at(-0.16, 0.03), at(0, 0.45), at(0.16, 0.03)}, line: ink, width: w, guard: onGear})
	v.add(shape{pts: []pt{at(-0.22, 0.55), at(0, 0.74), at(0.22, 0.55)}, line: ink, width: w, guard: onGear})
}

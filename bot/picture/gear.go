package picture

// rope is lines side by side.
func (v *view) rope(p []pt, lines int, dash []float64) {
	const apart = 11.0
	if len(p) < 2 {
		return
	}
	beside := p[len(p)-1].minus(p[0]).unit().left()
	for i := range lines {
		off := beside.times(apart * (float64(i) - float64(lines-1)/2))
		line := make([]pt, len(p))
		for j := range p {
			line[j] = p[j].plus(off)
		}
		w := thick
		if lines > 1 || dash != nil {
			w = medium
		}
		v.add(shape{pts: line, line: cord, width: w, dash: dash, guard: onLine})
	}
}

// block is a sheave in its cheeks.
func (v *view) block(at pt) {
	v.add(shape{pts: ring(at, 19), closed: true, fill: chalk, line: ink, width: thick, guard: onGear})
	v.add(shape{pts: ring(at, 5), closed: true, fill: ink})
}

// drum is a barrel with its wraps.
func (v *view) drum(at pt) {
	const wide, high = 22.0, 30.0
	v.add(shape{pts: corners(rect{at.minus(pt{wide, high}), at.plus(pt{wide, high})}), closed: true, fill: chalk, line: ink, width: medium, guard: onGear})
	for i := range 4 {
		y := at.y - high + 14 + float64(i)*11
		v.add(shape{pts: []pt{{at.x - wide, y + 4}, {at.x + wide, y - 4}}, line: cord, width: medium})
	}
}

// window is a ladder between two bold ends: here a tie is good.
func (v *view) window(p []pt) {
	from, to := p[0], p[len(p)-1]
	along := to.minus(from)
	beside := along.unit().left()
	const bold, rung, apart = 17.0, 9.0, 18.0
	stroke := func(at pt, half, w float64) {
		v.add(shape{pts: []pt{at.plus(beside.times(half)), at.minus(beside.times(half))}, line: good, width: w, guard: onHatch})
	}
	v.add(shape{pts: []pt{from, to}, line: good, width: thick, guard: onGear})
	n := int(along.size() / apart)
	for i := 1; i < n; i++ {
		stroke(from.to(to, float64(i)/float64(n)), rung, thin)
	}
	stroke(from, bold, thick)
	stroke(to, bold, thick)
}

// gap is a distance between two ticks.
func (v *view) gap(p []pt) {
	from, to := p[0], p[len(p)-1]
	along := to.minus(from).unit()
	v.add(shape{pts: []pt{from, to}, line: ink, width: thin, guard: onLine})
	for _, end := range []struct{ at, out pt }{{from, along.times(-1)}, {to, along}} {
		tick := along.left().times(13)
		v.add(shape{pts: []pt{end.at.plus(tick), end.at.minus(tick)}, line: ink, width: thin, guard: onLine})
		if to.minus(from).size() > 40 {
			v.add(shape{pts: barbs(end.at, end.out, 15, 7), line: ink, width: thin})
		}
	}
}

// cross is two bars, edged so that it shows on anything.
func (v *view) cross(at pt) {
	const arm = 34.0
	for _, look := range []struct {
		ink   colour
		width float64
	}{{chalk, 24}, {force, 15}} {
		v.add(shape{pts: []pt{at.plus(pt{-arm, -arm}), at.plus(pt{arm, arm})}, line: look.ink, width: look.width, guard: onForce})
		v.add(shape{pts: []pt{at.plus(pt{-arm, arm}), at.plus(pt{arm, -arm})}, line: look.ink, width: look.width, guard: onForce})
	}
}

// load is a solid arrow, the longer the larger its share, and returns the way
// it takes.
func (v *view) load(p []pt, share float64) []pt {
	const least, more, head, wide, shaft = 74.0, 60.0, 34.0, 21.0, 7.0
	along := p[len(p)-1].minus(p[0]).unit()
	tip := p[0].plus(along.times(least + more*min(max(share, 0), 1)))
	neck, side := tip.minus(along.times(head)), along.left()
	v.add(shape{closed: true, fill: force, line: chalk, width: thin, guard: onForce, pts: []pt{
		p[0].plus(side.times(shaft)), neck.plus(side.times(shaft)), neck.plus(side.times(wide)), tip,
		neck.minus(side.times(wide)), neck.minus(side.times(shaft)), p[0].minus(side.times(shaft)),
	}})
	return []pt{p[0], tip}
}

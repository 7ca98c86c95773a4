package bot

import (
	"math"

	"heft/calc/redirect"
	"heft/calc/unit"
)

// redirectScene shows a rope's path from the load to the hands, seen from the
// side, and what each block carries and where to. Legs are as long as each
// other: their lengths do not matter to the loads, and were not said.
func redirectScene(v speaker, p pictured, c redirect.Chain, loads []redirect.Load, names []string) *Scene {
	out := &Scene{Title: v.say("%s, rope redirected", p.Name), Bar: v.notToScale()}
	var most, block unit.Force
	for _, l := range loads {
		most, block = max(most, l.Force, l.In), max(block, l.Force)
	}
	out.Plan = v.say("Block %s held", v.load(block))
	at := Point{}
	hang := at.plus(sideways(c.From))
	path := []Point{hang, at}
	last := c.From
	for i, l := range loads {
		to := c.Blocks[i].To
		next := at.plus(apart(sideways(last), sideways(to)))
		path, last = append(path, next), opposite(to)
		held := at.minus(sideways(l.Direction).times(0.3))
		if l.Force > 0 {
			out.add(Stem, "", ringed(held, 0.07)...)
			out.add(Sling, "", held, at)
		}
		at = next
	}
	out.rope(Rope, 1, path...)
	for i, l := range loads {
		out.add(Block, "", path[i+1])
		if l.Force > 0 {
			from := path[i+1].plus(sideways(l.Direction).times(0.08))
			out.load(v.blockLoad(i, len(loads), names, l.Force), share(l.Force, most), from, sideways(l.Direction))
		}
	}
	out.load(v.load(c.Tension), share(c.Tension, most), hang, sideways(c.From))
	end := path[len(path)-1]
	out.load(v.say("Pull %s", v.pull(loads[len(loads)-1].Out)), share(loads[len(loads)-1].Out, most), end, end.minus(path[len(path)-2]))
	return out
}

// blockLoad says what a block carries: what it was called, or else its count
// from the load.
func (s speaker) blockLoad(i, of int, names []string, load unit.Force) string {
	switch {
	case i < len(names):
		return s.say("%s\n%s", capital(names[i]), s.load(load))
	case of == 1:
		return s.say("Block\n%s", s.load(load))
	}
	return s.say("Block %s\n%s", count(i+1), s.load(load))
}

// sideways is a direction as it looks from the side.
func sideways(d redirect.Direction) Point {
	sin, cos := math.Sincos(float64(d.FromDown))
	return Point{sin * math.Cos(float64(d.Toward)), -cos}
}

func opposite(d redirect.Direction) redirect.Direction {
	return redirect.Direction{FromDown: math.Pi - d.FromDown, Toward: d.Toward + math.Pi}
}

// apart turns a leg that would lie on the leg before it a little aside, so
// that both are seen.
func apart(before, leg Point) Point {
	const least = 14 * unit.Degree
	from, to := math.Atan2(before.Y, before.X), math.Atan2(leg.Y, leg.X)
	between := math.Remainder(to-from, 2*math.Pi)
	if math.Abs(between) >= float64(least) {
		return leg
	}
	return toward(unit.Angle(from)+least, math.Hypot(leg.X, leg.Y))
}

// ringed is the cross-section of a limb.
func ringed(centre Point, radius float64) []Point {
	return arc(centre, radius, 0, 2*math.Pi)
}

package bot

import (
	"math"

	"heft/calc/unit"
)

func (p Point) plus(q Point) Point { return Point{p.X + q.X, p.Y + q.Y} }

func (p Point) times(f float64) Point { return Point{f * p.X, f * p.Y} }

func (p Point) minus(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }

// toward is a point at a distance, up from the horizontal by an angle.
func toward(at unit.Angle, distance float64) Point {
	sin, cos := math.Sincos(float64(at))
	return Point{distance * cos, distance * sin}
}

// down is straight down.
var down = Point{0, -1}

// stick is the outline of a piece that tapers.
func stick(from Point, at unit.Angle, length, butt, tip float64) []Point {
	end, beside := from.plus(toward(at, length)), toward(at+math.Pi/2, 0.5)
	return []Point{
		from.plus(beside.times(butt)), end.plus(beside.times(tip)),
		end.minus(beside.times(tip)), from.minus(beside.times(butt)),
	}
}

// box is the outline of a rectangle between two corners.
func box(a, b Point) []Point {
	return []Point{a, {b.X, a.Y}, b, {a.X, b.Y}}
}

// arc runs along a circle from one angle to another.
func arc(centre Point, radius float64, from, to unit.Angle) []Point {
	const steps = 24
	path := make([]Point, 0, steps+1)
	for i := range steps + 1 {
		path = append(path, centre.plus(toward(from+(to-from)*unit.Angle(i)/steps, radius)))
	}
	return path
}

// crown is how high a person's is, in metres: the figure shows the scale.
const crown = 1.75

// stand adds a person.
func (s *Scene) stand(feet Point) {
	s.add(Person, "", feet, feet.plus(Point{0, crown}))
}

// hang adds an arm of the stem out to a block, and the block below it.
func (s *Scene) hang(stem, block Point, thick float64) {
	above := 2 * thick
	end := Point{block.X, block.Y + above}
	if block.X < stem.X {
		end.X -= thick
	} else {
		end.X += thick
	}
	s.add(Stem, "", box(Point{stem.X, end.Y + thick/2}, Point{end.X, end.Y - thick/2})...)
	s.add(Sling, "", Point{block.X, end.Y}, block)
}

// gone is how much of a view may lie between the ground and what matters; the
// rest is left out, and a break says so.
const gone = 0.55

// groundFor is where the ground is drawn that lies so far below the lowest
// thing that matters, and whether something was left out.
func groundFor(lowest, below, span float64) (at float64, broken bool) {
	if below <= gone*span {
		return lowest - below, false
	}
	return lowest - gone*span, true
}

// foot adds the ground, and the stem down to it.
func (s *Scene) foot(left, right, at float64, stem [2]float64, top float64) {
	s.add(Ground, "", Point{left, at}, Point{right, at})
	s.add(Stem, "", box(Point{stem[0], at}, Point{stem[1], top})...)
}

// cut adds the break across all that was shortened, over a person's head.
func (s *Scene) cut(left, right, ground float64) {
	const over = 1.35
	s.add(Break, "", Point{left, ground + over*crown}, Point{right, ground + over*crown})
}

// barFor chooses the longest round bar within a part of the view's width.
func (s speaker) barFor(width float64) Bar {
	one := unit.Foot
	if s.metric {
		one = unit.Metre
	}
	length := one
	for _, n := range []unit.Length{2, 5, 10, 20, 50} {
		if float64(n*one) <= 0.3*width {
			length = n * one
		}
	}
	return Bar{Length: float64(length), Label: s.along(unit.Exactly(length))}
}

// notToScale is the bar of a view whose heights were not said.
func (s speaker) notToScale() Bar { return Bar{Label: s.word("not to scale")} }

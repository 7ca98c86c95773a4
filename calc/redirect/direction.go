package redirect

import (
	"math"

	"heft/calc/limits"
	"heft/calc/unit"
)

// Direction is where something points: so far from straight down (0 is down,
// 90 degrees level, 180 up), and toward a side, counted round the trunk from
// whichever side the caller calls 0. In a path that lies in one plane the two
// sides are 0 and 180 degrees.
type Direction struct{ FromDown, Toward unit.Angle }

// Where directions lie, in degrees.
var (
	FromDowns = limits.Range[float64]{Low: 0, High: 180,
		Why: "a direction lies between straight down, 0, and straight up, 180"}
	Towards = limits.Range[float64]{Low: -360, High: 360,
		Why: "a side is counted once round at most"}
)

func (d Direction) check() error {
	if err := FromDowns.Check(limits.Angle, d.FromDown.Degrees()); err != nil {
		return err
	}
	return Towards.Check(limits.Side, d.Toward.Degrees())
}

// vector has its third coordinate upward.
type vector [3]float64

func (d Direction) vector() vector {
	down, side := float64(d.FromDown), float64(d.Toward)
	return vector{math.Sin(down) * math.Cos(side), math.Sin(down) * math.Sin(side), -math.Cos(down)}
}

func (v vector) times(f float64) vector { return vector{f * v[0], f * v[1], f * v[2]} }

func (v vector) plus(w vector) vector { return vector{v[0] + w[0], v[1] + w[1], v[2] + w[2]} }

func (v vector) dot(w vector) float64 { return v[0]*w[0] + v[1]*w[1] + v[2]*w[2] }

func (v vector) size() float64 { return math.Sqrt(v.dot(v)) }

// plumb is the share of a vector beside the vertical below which it counts as
// plumb: last bits have no side.
const plumb = 1e-9

func (v vector) direction() Direction {
	beside := math.Hypot(v[0], v[1])
	d := Direction{FromDown: unit.Angle(math.Atan2(beside, -v[2]))}
	if beside > plumb*v.size() {
		d.Toward = unit.Angle(math.Atan2(v[1], v[0]))
	}
	return d
}

// between is the angle between two directions. The half-chords keep it exact
// where they are nearly the same or opposite.
func between(a, b vector) unit.Angle {
	return unit.Angle(2 * math.Atan2(a.plus(b.times(-1)).size(), a.plus(b).size()))
}

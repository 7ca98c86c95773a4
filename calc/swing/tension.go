package swing

import (
	"math"

	"heft/calc/limits"
	"heft/calc/rope"
	"heft/calc/unit"
)

// Starts are the angles of the line from the vertical when the piece is cut
// free, in degrees.
var Starts = limits.Range[float64]{Low: 0, High: 90,
	Why: "past level the line is slack, and the piece falls before it swings"}

// Tension is the pull of the line at the bottom of a swing from rest:
//
//	T = W·(3 − 2·cos θ₀)
//
// in N, with W the weight, the heavy end of it, and θ₀ the angle of the line
// from the vertical at the start. The line's length is not in it. It holds
// within rope.Loads and Starts, for a piece that is short against its line,
// or stays in line with it.
//
// Errors: a piece tied at its end and not in line with the line jerks it far
// harder; see Askew. Rods in line with the line, up to half as long, came
// within 5 % in integration, as long as it 18 %. A line that is slack at the
// start adds a drop. Letting the line run takes some off.
//
// Source: energy and the force toward the centre; At at the bottom.
func Tension(heavy unit.Mass, start unit.Angle) (unit.Force, error) {
	return At(heavy, start, 0)
}

// At is the pull of the line on the way, at an angle θ from the vertical, on
// either side:
//
//	T = W·(3·cos θ − 2·cos θ₀)
//
// in the terms, within the ranges and with the errors of Tension, for θ no
// larger than θ₀: W·cos θ₀ where it starts and turns.
//
// Source: university physics teaching pages.
func At(heavy unit.Mass, start, at unit.Angle) (unit.Force, error) {
	if err := check(heavy, start); err != nil {
		return 0, err
	}
	if err := Starts.Check(limits.Angle, math.Abs(at.Degrees())); err != nil {
		return 0, err
	}
	if limits.Above(math.Abs(at.Degrees()), start.Degrees()) {
		return 0, &limits.Contradiction{First: limits.Angle, Second: limits.Angle,
			Got: at.Degrees(), Limit: start.Degrees(), Why: "a swing comes no further out than it started"}
	}
	return heavy.Weight() * unit.Force(3*cos(at)-2*cos(start)), nil
}

// InLine is the pull at the bottom of a rod that stays in line with its line,
// as one stiff pendulum:
//
//	T = W·(1 + 2·(1 − cos θ₀)·d²/(d² + l²/12)),  d = L + l/2
//
// in N, with L the line from the block to the end of the rod it is tied to
// and l the rod's length below the tie, in m. It lies below Tension, by a
// quarter of the swing's part at the most. It holds within rope.Loads,
// Starts, Lines and Hangs.
//
// Errors: no line is stiff. A rod that turns on its tie may pull less for one
// pass, and far more in another.
//
// Source: derived here from the energy of a compound pendulum.
func InLine(heavy unit.Mass, start unit.Angle, line, hung unit.Length) (unit.Force, error) {
	if err := check(heavy, start); err != nil {
		return 0, err
	}
	if err := checkRod(line, hung); err != nil {
		return 0, err
	}
	d := float64(line + hung/2)
	share := d * d / (d*d + float64(hung*hung)/12)
	return heavy.Weight() * unit.Force(1+2*(1-cos(start))*share), nil
}

// mostAskew is the most that rods let go askew pulled, over Tension: 3.46
// times in integration, with the line level and the rod plumb.
const mostAskew = 3.5

// Askew is the most a piece tied at its end pulls when it hangs plumb, or
// anywhere between plumb and in line, as it is cut free: it turns on its tie
// and jerks the line.
//
//	T = W·(3 − 2·cos θ₀)·min(1 + 6·(1 − cos θ₀), 3.5)
//
// in N, in the terms of Tension. It holds within rope.Loads and Starts, for
// the first pass of a uniform rod up to twice as long as its line.
//
// Errors: a line that stretches, a tie nearer the balance point and any
// branch that drags take much of it away. A piece that starts nearer level
// than in line falls first: see the drop.
//
// Source: derived here. A rod free on a force G along its line turns out of
// an angle Δ into line with G·(1 + 6·(1 − cos Δ)); Δ is at most θ₀. That it
// bounds the first pass was found by integrating the motion of a rod on a
// line without mass; no published measurement was found.
func Askew(heavy unit.Mass, start unit.Angle) (unit.Force, error) {
	point, err := Tension(heavy, start)
	if err != nil {
		return 0, err
	}
	return point * unit.Force(min(1+6*(1-cos(start)), mostAskew)), nil
}

func check(heavy unit.Mass, start unit.Angle) error {
	if err := rope.Loads.Check(limits.Weight, heavy); err != nil {
		return err
	}
	return Starts.Check(limits.Angle, start.Degrees())
}

func cos(a unit.Angle) float64 { return math.Cos(float64(a)) }

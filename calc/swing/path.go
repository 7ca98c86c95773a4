package swing

import (
	"math"

	"heft/calc/limits"
	"heft/calc/unit"
)

// Speed is in metres per second.
type Speed float64

const slip = "likely a slip in the number or its unit"

// Where the method holds. The ends are common practice, no source.
var (
	// Lines run from the block to the tie.
	Lines = limits.Range[unit.Length]{Low: 0.5, High: 60, Why: slip}
	// Hangs are how far the piece reaches below its tie, 0 for a piece taken
	// as a point.
	Hangs = limits.Range[unit.Length]{Low: 0, High: 30, Why: slip}
	// Obstacles lie off the block's plumb line, on the far side.
	Obstacles = limits.Range[unit.Length]{Low: 0, High: 100, Why: slip}
	// ObstacleTops are heights above the ground.
	ObstacleTops = limits.Range[unit.Length]{Low: 0, High: 60, Why: slip}
)

// longest is how many times its line a piece may reach below its tie: no
// further was integrated.
const longest = 2

func checkRod(line, hung unit.Length) error {
	if err := Lines.Check(limits.LineLength, line); err != nil {
		return err
	}
	if err := Hangs.Check(limits.Length, hung); err != nil {
		return err
	}
	if limits.Above(hung, longest*line) {
		return &limits.Contradiction{First: limits.Length, Second: limits.LineLength,
			Got: float64(hung), Limit: float64(longest * line),
			Why: "a piece more than twice as long as its line tumbles rather than swings"}
	}
	return nil
}

// Start is the angle from the vertical of a tight line whose tie stands off
// the block's plumb line:
//
//	θ₀ = arcsin(x/L)
//
// in radians, with x the offset and L the line, in m. It holds within Lines
// for offsets up to the line, with the tie below the block.
//
// Errors: near level a small error in the offset is a large one in the
// angle: at 0.98·L, 1 % of offset is 3 degrees.
//
// Source: geometry.
func Start(offset, line unit.Length) (unit.Angle, error) {
	if err := Lines.Check(limits.LineLength, line); err != nil {
		return 0, err
	}
	offsets := limits.Range[unit.Length]{Low: 0, High: Lines.High, Why: slip}
	if err := offsets.Check(limits.Offset, offset); err != nil {
		return 0, err
	}
	if limits.Above(offset, line) {
		return 0, &limits.Contradiction{First: limits.Offset, Second: limits.LineLength,
			Got: float64(offset), Limit: float64(line), Why: "the line does not reach that far"}
	}
	return unit.Angle(math.Asin(min(1, float64(offset/line)))), nil
}

// Line is how long a tight line is from the block to a tie that stands off the
// block's plumb line and below it:
//
//	L = √(x² + h²)
//
// with x the offset and h how far the block is above the tie, in m.
//
// Source: geometry.
func Line(offset, above unit.Length) unit.Length {
	return unit.Length(math.Hypot(float64(offset), float64(above)))
}

// Fastest is the speed at the bottom of the swing:
//
//	v = √(2·g·L·(1 − cos θ₀))
//
// in m/s, with L from the block to the piece's middle in m. It holds within
// Lines and Starts.
//
// Errors: it is a ceiling; air and friction take a little off.
//
// Source: energy.
func Fastest(line unit.Length, start unit.Angle) (Speed, error) {
	if err := Lines.Check(limits.LineLength, line); err != nil {
		return 0, err
	}
	if err := Starts.Check(limits.Angle, start.Degrees()); err != nil {
		return 0, err
	}
	return fall(line, start), nil
}

// fall is the speed that the height lost to the bottom is worth.
func fall(line unit.Length, start unit.Angle) Speed {
	return Speed(math.Sqrt(2 * unit.StandardGravity * float64(line) * (1 - cos(start))))
}

// reach is how far past the block's plumb line the piece's outer end comes:
// the tie as far as it started, and the piece flung out level from it.
func reach(line, hung unit.Length, start unit.Angle) unit.Length {
	return line*unit.Length(math.Sin(float64(start))) + hung
}

// gap is the least distance between an obstacle and anything the piece may
// sweep: what lies within line and piece of the block, and within reach of
// its plumb line. The obstacle is solid from the ground to its top, and from
// its near face outward.
func (s *Setup) gap(reach unit.Length) unit.Length {
	below := max(0, float64(s.Hitch-s.Obstacle.Top))
	fromBlock := unit.Length(math.Hypot(float64(s.Obstacle.Distance), below))
	return max(fromBlock-s.Line-s.Hung, s.Obstacle.Distance-reach)
}

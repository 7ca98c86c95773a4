package swing

import (
	"math"

	"heft/calc/limits"
	"heft/calc/unit"
)

// Across works out how far past the block's plumb line a piece comes of which it is
// known how far off that line its tie starts, and not how long its line is:
//
//	reach = x + l
//
// in m, with x the offset and l what hangs below the tie, as Sweep does for every line
// from the shortest on that it returns. An obstacle is taken to stand as tall as the
// block. It holds for offsets within Lines, and within Hangs and Obstacles; the error is
// a *limits.OutOfRange.
//
// Errors: as Plan. On a shorter line the piece tumbles.
//
// Source: geometry.
func Across(offset, hung unit.Length, obstacle *Obstacle) (w Swing, shortest unit.Length, err error) {
	offsets := limits.Range[unit.Length]{Low: 0, High: Lines.High, Why: slip}
	if err := offsets.Check(limits.Offset, offset); err != nil {
		return Swing{}, 0, err
	}
	if err := Hangs.Check(limits.Length, hung); err != nil {
		return Swing{}, 0, err
	}
	w = Swing{Reach: offset + hung}
	if obstacle != nil {
		if err := Obstacles.Check(limits.Obstacle, obstacle.Distance); err != nil {
			return Swing{}, 0, err
		}
		gap := obstacle.Distance - w.Reach
		w.Gap = &gap
	}
	steepest := unit.Length(math.Sin(float64(Starts.High) * math.Pi / 180))
	return w, max(Lines.Low, offset/steepest, hung/longest), nil
}

package bot

import (
	"math"

	"heft/calc/block"
	"heft/calc/unit"
	"heft/parser"
)

// A drum at the foot of another tree opens the rope's legs at the top block: it carries a
// little less than with the legs side by side, and is pulled toward the drum.

// tellDrumAside says so where it is told how far out the drum stands and how high the block
// hangs. What is planned on stays the legs side by side, the most that the block can see.
func (a *answer) tellDrumAside() {
	const least = 5 // degrees: less is side by side
	q, v := a.question, a.voice
	if !q.Has(parser.DrumAway) || !q.Has(parser.HitchHeight) || a.result.Block <= 0 {
		return
	}
	apart := unit.Angle(math.Atan2(float64(q.Length(parser.DrumAway).High), float64(q.Length(parser.HitchHeight).High)))
	degrees := math.Round(float64(apart / unit.Degree))
	load, err := block.Load(a.result.Block/2, apart)
	if err != nil || degrees < least {
		return
	}
	a.lines = append(a.lines, v.say("With the drum there the legs stand %s° apart: %s, pulled toward the drum. Planned on side by side.",
		trimmed(degrees, 0), v.load(load)))
}

package tackle

import (
	"heft/calc/limits"
	"heft/calc/rope"
	"heft/calc/unit"
)

// Clearance is kept between the two ends of a tackle: the blocks themselves, their
// slings, the hitch on the load and the turns of the rope take it up (common practice,
// no source). Gear differs: the crew measures its own.
const Clearance unit.Length = 0.6

// Clear is the distance that the ties of the two blocks have to keep: Clearance,
// or the length of a tackle that is longer closed.
func Clear(closed unit.Length) unit.Length { return max(Clearance, closed) }

// Aparts are how far apart the blocks of a lift are.
var Aparts = limits.Range[unit.Length]{Low: 0.1, High: 60,
	Why: "likely a slip in the number or its unit"} // common practice, no source

// Travel is how a lift moves. What was not said is zero.
type Travel struct {
	Parts  int         // of line on the load
	Apart  unit.Length // the two blocks, before the lift
	Rise   unit.Length // how far the load is to come up
	Closed unit.Length // of the tackle, its blocks together
}

// Traveled is a Travel worked out. What hangs on something that was not said is zero.
type Traveled struct {
	Keep     unit.Length // what stays between the blocks: Clear
	Most     unit.Length // the load can come up, 0 where there is no room at all
	Haul     unit.Length // of rope, for Rise
	MostHaul unit.Length // of rope, for Most
	Left     unit.Length // between the blocks after Rise, below zero where they would have passed
	Start    unit.Length // between the blocks before it, at least
	Meet     bool        // the blocks meet on the way: Left is less than Keep
}

// Run works out how far a lift goes and how much rope it takes in:
//
//	haul   R = n·s, see Hauled
//	left   b = d − s
//	most   S = d − k,  start D = s + k
//
// in m, with n the parts of line on the load, the haul among them where it leaves the
// moving block; s the rise, d the distance between the blocks before it and k that of
// Clear. The blocks meet where b < k. It holds within Rises, Aparts and
// rope.PartsOfLine, blocks straight above one another.
//
// The error is a *limits.OutOfRange.
//
// Errors: a rope that stretches takes in more by its stretch; blocks that are told
// apart from tie to tie have less room than from shell to shell.
//
// Source: geometry, a rope that does not stretch; k is common practice, no source.
func Run(t Travel) (Traveled, error) {
	if err := t.check(); err != nil {
		return Traveled{}, err
	}
	n, out := unit.Length(t.Parts), Traveled{Keep: Clear(t.Closed)}
	if t.Apart > 0 {
		out.Most = max(0, t.Apart-out.Keep)
		out.MostHaul = n * out.Most
	}
	if t.Rise > 0 {
		out.Start = t.Rise + out.Keep
	}
	if t.Rise > 0 && t.Parts > 0 {
		out.Haul, _ = Hauled(t.Parts, t.Rise) // both are in range
	}
	if t.Apart > 0 && t.Rise > 0 {
		out.Left = t.Apart - t.Rise
		out.Meet = limits.Above(out.Keep, out.Left)
	}
	return out, nil
}

func (t Travel) check() error {
	if t.Parts != 0 {
		if err := rope.PartsOfLine.Check(limits.Parts, float64(t.Parts)); err != nil {
			return err
		}
	}
	if t.Apart != 0 {
		if err := Aparts.Check(limits.Apart, t.Apart); err != nil {
			return err
		}
	}
	if t.Rise != 0 {
		return Rises.Check(limits.Rise, t.Rise)
	}
	return nil
}

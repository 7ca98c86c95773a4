package redirect

import (
	"heft/calc/block"
	"heft/calc/limits"
	"heft/calc/tackle"
	"heft/calc/unit"
)

// Motion says which way the rope runs: friction works against it.
type Motion int

// The motions.
const (
	Still    Motion = iota // no friction counted: the same pull all along
	Raising                // the rope runs from the load to the hands
	Lowering               // from the hands to the load
)

// Chain is a rope's path from the load to the hands.
type Chain struct {
	Tension unit.Force // of the leg to the load
	From    Direction  // in which that leg leaves the first block; straight down where the load hangs
	Blocks  []Block    // in rope order
	Motion  Motion
}

// Block is one block, or bar, of a chain. The sheave matters where the rope
// runs.
type Block struct {
	To     Direction // in which the rope leaves it, toward the hands
	Sheave tackle.Sheave
}

// Load is what one block of the chain carries.
type Load struct {
	Force     unit.Force
	Direction Direction  // of the force; straight down where there is none
	Turn      unit.Angle // of the rope: 0 is straight on, 180 degrees back on itself
	In, Out   unit.Force // of the legs toward the load and toward the hands
}

// Counts are how many blocks a rope is led over.
var Counts = limits.Range[float64]{Low: 1, High: 8,
	Why: "no rope in a tree is led over more blocks"} // common practice, no source

// Loads are what the blocks of a chain carry, the vector sum of the two legs
// at each:
//
//	P = T₁·u₁ + T₂·u₂
//
// in N, with u the directions in which the legs leave the block and T their
// pulls: T₂ = T₁ still, T₁/e(φ) raising and T₁·e(φ) lowering, with e(φ) from
// tackle.Sheave.At and φ the turn. Still, that is 2·T·sin(φ/2): next to
// nothing where the rope is hardly turned, twice T where it is turned back.
// It holds within block.Tensions, Counts, FromDowns and Towards, at rest or
// running steadily.
//
// The error is a *limits.OutOfRange.
//
// Errors: a turn judged ten degrees off changes P by 0.17·T where the rope
// is hardly turned, and hardly at all where it is turned back. A load that
// drops before the rope takes it pulls many times this.
//
// Source: statics; two printed block-load tables.
func Loads(c Chain) ([]Load, error) {
	if err := c.check(); err != nil {
		return nil, err
	}
	loads := make([]Load, len(c.Blocks))
	tension, back := c.Tension, c.From.vector()
	for i, b := range c.Blocks {
		on := b.To.vector()
		l := Load{In: tension, Turn: between(back.times(-1), on)}
		pass, err := c.pass(b, l.Turn)
		if err != nil {
			return nil, err
		}
		l.Out = tension * unit.Force(pass)
		sum := back.times(float64(l.In)).plus(on.times(float64(l.Out)))
		l.Force = unit.Force(sum.size())
		if l.Force > plumb*l.In {
			l.Direction = sum.direction()
		} else {
			l.Force = 0
		}
		loads[i] = l
		tension, back = l.Out, on.times(-1)
	}
	return loads, nil
}

// pass is the pull behind a block over that before it.
func (c Chain) pass(b Block, turn unit.Angle) (float64, error) {
	if c.Motion == Still {
		return 1, nil
	}
	e, err := b.Sheave.At(turn)
	if c.Motion == Raising {
		e = 1 / e
	}
	return e, err
}

func (c Chain) check() error {
	if err := block.Tensions.Check(limits.Tension, c.Tension); err != nil {
		return err
	}
	if err := Counts.Check(limits.Redirects, float64(len(c.Blocks))); err != nil {
		return err
	}
	if err := c.From.check(); err != nil {
		return err
	}
	for _, b := range c.Blocks {
		if err := b.To.check(); err != nil {
			return err
		}
	}
	return nil
}

// Domains lists the ranges of validity.
func Domains() []limits.Domain {
	const method = "redirect"
	return []limits.Domain{
		block.Tensions.Domain(method, limits.Tension),
		Counts.Domain(method, limits.Redirects),
		FromDowns.Domain(method, limits.Angle),
		Towards.Domain(method, limits.Side),
		block.Efficiencies.Domain(method, limits.Efficiency),
	}
}

package bot

import (
	"errors"
	"math"
	"slices"

	"heft/calc/limits"
	"heft/calc/redirect"
	"heft/calc/tackle"
	"heft/calc/unit"
	"heft/parser"
)

// bend is one block of a rope's path, and how far the rope turns there.
type bend struct {
	name   string
	turn   unit.Angle
	sheave tackle.Sheave
}

// bends lists the blocks whose turn was told, in rope order. An angle between
// the legs is the top block's, or that of a redirect where nothing else is
// told of it.
func bends(q parser.Question) []bend {
	var out []bend
	if x, ok := q.Get(parser.BlockAngle); ok && !q.Has(parser.Turn) && slices.ContainsFunc(q.Notes, parser.Redirecting) {
		name := q.Notes[slices.IndexFunc(q.Notes, parser.Redirecting)]
		out = append(out, bend{name, unit.Angle(180-x.Low) * unit.Degree, sheaveAt(q, name)})
	} else if ok && !slices.ContainsFunc(q.Quantities, atTop) {
		out = append(out, bend{parser.TopBlock, unit.Angle(180-x.Low) * unit.Degree, sheaveAt(q, parser.TopBlock)})
	}
	named := slices.DeleteFunc(slices.Clone(q.Notes), func(n string) bool { return !parser.Redirecting(n) })
	for _, x := range q.Quantities {
		if x.Field == parser.Turn {
			if x.At == "" && len(named) == 1 {
				x.At = named[0] // of a follow-up: "what about 45° of turn"
			}
			out = append(out, bend{x.At, unit.Angle(x.High) * unit.Degree, sheaveAt(q, x.At)})
		}
	}
	return out
}

// atTop says whether a quantity is the turn at the block that carries the
// load first.
func atTop(x parser.Quantity) bool { return x.Field == parser.Turn && first[x.At] }

// first are the blocks that the load's own leg comes to, plumb from below.
var first = map[string]bool{parser.TopBlock: true, parser.AnyBlock: true, parser.NaturalCrotch: true}

// sheaveAt is what the rope runs over at a block.
func sheaveAt(q parser.Question, name string) tackle.Sheave {
	if name == parser.NaturalCrotch {
		return kindOf(naturalCrotch).Sheave
	}
	return sheave(q)
}

// path is a rope's path worked out: standing still, lowering and lifting.
type path struct {
	bends                    []bend
	plumb                    bool // the load's own leg comes to the first block
	chain                    redirect.Chain
	still, lowering, lifting []redirect.Load
}

// pathOf works out what every block carries. Where no top block was named the
// rope behind it may pull as much as a half turn over one makes it, lifting;
// lowering it may pull as much as the load.
func pathOf(q parser.Question, tension unit.Force) (path, error) {
	r := path{bends: bends(q)}
	if len(r.bends) == 0 {
		r.bends = []bend{{parser.TopBlock, math.Pi, sheaveAt(q, parser.TopBlock)}} // its heaviest case
	}
	for _, x := range q.Quantities {
		if x.Field != parser.Turn {
			continue
		}
		if err := errors.Join(tackle.Turns.Check(limits.Turn, x.Low), tackle.Turns.Check(limits.Turn, x.High)); err != nil {
			return r, err
		}
	}
	r.plumb = first[r.bends[0].name]
	r.chain = chainOf(r.bends, tension)
	var err error
	if r.still, err = redirect.Loads(r.chain); err != nil {
		return r, err
	}
	lowering := r.chain
	lowering.Motion = redirect.Lowering
	if r.lowering, err = redirect.Loads(lowering); err != nil {
		return r, err
	}
	lifted := r.bends
	if !r.plumb {
		lifted = slices.Concat([]bend{{parser.TopBlock, math.Pi, kindOf("").Sheave}}, lifted)
	}
	lifting := chainOf(lifted, tension)
	lifting.Motion = redirect.Raising
	if r.lifting, err = redirect.Loads(lifting); err != nil {
		return r, err
	}
	r.lifting = r.lifting[len(lifted)-len(r.bends):]
	return r, nil
}

// chainOf lays the path out in one plane: the load's leg comes plumb from
// below, and the blocks turn the rope toward the drum. Of a path that ends at
// a base block the redirects before it turn it so that it leaves that block as
// near level toward the drum as the turns allow.
func chainOf(bends []bend, tension unit.Force) redirect.Chain {
	best, off := []unit.Angle(nil), math.Inf(1)
	for senses := range 1 << max(0, len(bends)-2) {
		h := headings(bends, senses)
		end := math.Abs(math.Remainder(float64(h[len(h)-1])-math.Pi/2, 2*math.Pi))
		if best == nil || bends[len(bends)-1].name == parser.BaseBlock && end < off-1e-9 {
			best, off = h, end
		}
	}
	c := redirect.Chain{Tension: tension}
	for i, h := range best {
		to := redirect.Direction{FromDown: unit.Angle(math.Abs(float64(h)))}
		if h < 0 {
			to.Toward = math.Pi
		}
		c.Blocks = append(c.Blocks, redirect.Block{To: to, Sheave: bends[i].sheave})
	}
	return c
}

// headings are the ways in which the rope leaves the blocks, from down and
// toward the drum. A bit of the senses turns a block between the first and the
// last the other way.
func headings(bends []bend, senses int) []unit.Angle {
	var out []unit.Angle
	heading := unit.Angle(math.Pi)
	for i, b := range bends {
		if i == 0 || i < len(bends)-1 && senses>>(i-1)&1 == 1 {
			heading -= b.turn
		} else {
			heading += b.turn
		}
		heading = unit.Angle(math.Remainder(float64(heading), 2*math.Pi))
		out = append(out, heading)
	}
	return out
}

package gear

import (
	"heft/calc/limits"
	"heft/calc/unit"
)

// Part says what a link of the chain is.
type Part string

// The parts.
const (
	Rope      Part = "rope"
	Block     Part = "block"
	Sling     Part = "sling"
	Connector Part = "connector"
	Drum      Part = "lowering drum"
)

// Shares are what a link carries of the tension of the line, as multiples of
// it: 1 for the line itself, 2 for a block with parallel legs and what it
// hangs on.
var Shares = limits.Range[float64]{Low: 0.1, High: 3,
	Why: "a link carries a part of a line, or a few"} // common practice, no source

// Link is one piece of gear in a chain.
type Link struct {
	Part    Part
	State   State
	Break   unit.Force // on its label; 0 where there is only a working load
	Working unit.Force // marked on it; 0 where there is only a break strength
	Factor  float64    // design factor over Break
	Knot    Knot       // tied in it
	Carries float64    // of the tension of the line: see Shares
}

// Limit is the working load of the link by itself: the lower of what is
// marked and Break over Factor, times the low end of what its knot leaves.
//
// The error is an *Unrated for used, old or unlabelled gear, an
// *limits.Missing where neither load nor strength was said, or an
// *limits.OutOfRange.
func (l Link) Limit() (unit.Force, error) {
	if err := l.rated(); err != nil {
		return 0, err
	}
	if l.Break == 0 && l.Working == 0 {
		return 0, &limits.Missing{Quantity: limits.WorkingLoad}
	}
	limit := l.Working
	if l.Working != 0 {
		if err := Workings.Check(limits.WorkingLoad, l.Working); err != nil {
			return 0, err
		}
	}
	if l.Break != 0 {
		byBreak, err := WorkingLoad(l.Break, l.Factor)
		if err != nil {
			return 0, err
		}
		if limit == 0 || byBreak < limit {
			limit = byBreak
		}
	}
	return limit * unit.Force(Keeps(l.Knot).Kept.Low), nil
}

// Chain is what a chain of links holds.
type Chain struct {
	Weakest int        // index of the link that is the first at its working load
	Line    unit.Force // tension of the line that takes it there
}

// Weakest finds the link of a chain that is the first at its working load as
// the tension of the line rises:
//
//	T = Limit/Carries
//
// in N, the least of all links. Of two alike it is the first. The error is
// that of Link.Limit, or an *limits.OutOfRange for a share out of Shares, or
// an *limits.Missing for a chain without a link.
//
// Errors: the tree the chain hangs on is no part of it.
//
// Source: statics.
func Weakest(links []Link) (Chain, error) {
	if len(links) == 0 {
		return Chain{}, &limits.Missing{Quantity: limits.WorkingLoad}
	}
	var c Chain
	for i, l := range links {
		limit, err := l.Limit()
		if err != nil {
			return Chain{}, err
		}
		if err := Shares.Check(limits.LineShare, l.Carries); err != nil {
			return Chain{}, err
		}
		if line := limit / unit.Force(l.Carries); i == 0 || line < c.Line {
			c = Chain{Weakest: i, Line: line}
		}
	}
	return c, nil
}

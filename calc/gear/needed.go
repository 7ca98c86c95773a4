package gear

import (
	"heft/calc/limits"
	"heft/calc/unit"
)

// Needed is what a link must be good for to carry a line: the least that it
// may break at, and the load that it carries then.
type Needed struct {
	Load  unit.Force
	Break unit.Force
}

// Needs is Link.Limit read backwards: what a link has to break at so that a
// line of a tension does not take it past its working load,
//
//	F = T·s, B = F·n/k
//
// in N, with T the tension of the line, s what the link carries of it, n the
// design factor and k the low end of what its knot leaves. Break and Working
// of the link are not looked at. It holds within Loads, Factors, Shares and,
// for the strength that comes out, Breaks: a load that needs more is past what
// ropes are made for.
//
// Errors: those of WorkingLoad and Keeps.
//
// Source: the definition of the design factor, and statics.
func (l Link) Needs(line unit.Force) (Needed, error) {
	if err := l.rated(); err != nil {
		return Needed{}, err
	}
	if err := Shares.Check(limits.LineShare, l.Carries); err != nil {
		return Needed{}, err
	}
	if err := Factors.Check(limits.DesignFactor, l.Factor); err != nil {
		return Needed{}, err
	}
	load := line * unit.Force(l.Carries)
	if err := Loads.Check(limits.Tension, load); err != nil {
		return Needed{}, err
	}
	breaking := load * unit.Force(l.Factor/Keeps(l.Knot).Kept.Low)
	if err := Breaks.Check(limits.RopeBreak, breaking); err != nil {
		return Needed{}, err
	}
	return Needed{Load: load, Break: breaking}, nil
}

package tackle

import (
	"heft/calc/limits"
	"heft/calc/unit"
)

// Fewest are the least parts of line, Parts of the lift or more, on which the
// pull at hand raises its load with Reserve to spare; 0 where none within the
// range of the method do. It holds where Plan does; errors and source are those
// of Plan, and a *limits.Missing where neither people nor a winch were said.
func Fewest(l Lift) (int, error) {
	if err := Loads.Check(limits.Weight, l.Load); err != nil {
		return 0, err
	}
	pass, err := l.Tackle.check()
	if err != nil {
		return 0, err
	}
	if err := l.Power.check(); err != nil {
		return 0, err
	}
	if l.have() == 0 {
		return 0, &limits.Missing{Quantity: limits.People}
	}
	return fewest(l.Load.Weight(), pass, l.Tackle, l.have()), nil
}

// Most is the heaviest load that the pull at hand raises with Reserve to
// spare, Plan solved for the load:
//
//	W = F·(e + … + eⁿ)·p/Reserve
//
// in N, returned as the mass, with F the pull at hand and the rest as in Plan;
// it holds where Plan does, and no further than Loads. The error is a
// *limits.Missing where neither people nor a winch were said, or that of Plan.
//
// Errors and source: those of Plan.
func Most(t Tackle, p Power) (unit.Mass, error) {
	pass, err := t.check()
	if err != nil {
		return 0, err
	}
	if err := p.check(); err != nil {
		return 0, err
	}
	if p.have() == 0 {
		return 0, &limits.Missing{Quantity: limits.People}
	}
	return min((p.have() * unit.Force(t.series(t.Efficiency)*pass) / Reserve).Held(), Loads.High), nil
}

package drop

import (
	"heft/calc/limits"
	"heft/calc/unit"
)

// Workings are the working loads of a line to stay within.
var Workings = limits.Range[unit.Force]{Low: 100, High: 1e5, Why: slip} // common practice, no source

// Stop is how far a piece has to run.
type Stop struct {
	Least unit.Length // were the pull even all the way: less never does
	Plan  unit.Length // with a pull that rises evenly from nothing
}

// RunFor finds the run that keeps the line within its working load F:
//
//	least = W·h/(F − W)         from F = W·(1 + h/s)
//	plan  = 2·W·h/(F − 2·W)     from F = 2·W·(1 + h/s)
//
// in m, in the terms of Braked. The stretch of the line, which would make it
// less, is left out. It holds within rope.Loads, Drops and Workings, as long
// as the plan lies within Runs. Where the block is the weaker, F is half of
// what the block may carry.
//
// The error is an *limits.OutOfRange, or an *limits.Contradiction where the
// line may not even hold twice the weight: then no run is enough, and its
// Limit is the weight to stay under.
//
// Errors: a hand that grabs late or hard makes a higher peak than either.
//
// Source: energy.
func RunFor(heavy unit.Mass, drop unit.Length, working unit.Force) (Stop, error) {
	if err := check(heavy, drop, 0); err != nil {
		return Stop{}, err
	}
	if err := Workings.Check(limits.WorkingLoad, working); err != nil {
		return Stop{}, err
	}
	weight := heavy.Weight()
	if limits.Above(2*weight, working) || drop > 0 && working <= 2*weight {
		return Stop{}, &limits.Contradiction{First: limits.Weight, Second: limits.WorkingLoad,
			Got: float64(heavy), Limit: float64((working / 2).Held()),
			Why: "a piece that falls pulls twice its weight however far it runs: take a smaller one"}
	}
	if drop == 0 {
		return Stop{}, nil
	}
	s := Stop{
		Least: drop * unit.Length(weight/(working-weight)),
		Plan:  drop * unit.Length(2*weight/(working-2*weight)),
	}
	if err := Runs.Check(limits.Run, s.Plan); err != nil {
		return Stop{}, err
	}
	return s, nil
}

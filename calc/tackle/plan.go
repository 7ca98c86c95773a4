package tackle

import (
	"math"

	"heft/calc/block"
	"heft/calc/limits"
	"heft/calc/rope"
	"heft/calc/unit"
)

// Lift is a load to raise. Load is the heavy end of its weight.
type Lift struct {
	Load unit.Mass
	Tackle
	Power
}

// Verdict says whether the pull at hand raises the load.
type Verdict string

// The verdicts.
const (
	PowerUnsaid Verdict = ""           // neither people nor a winch were said
	Enough      Verdict = "enough"     // Reserve times the haul, or more
	Marginal    Verdict = "marginal"   // the haul, but not Reserve times it
	MorePower   Verdict = "more-power" // less than the haul
)

// Result is the lift worked out. What does not apply is zero.
type Result struct {
	Ideal, Actual float64    // load over haul, without friction and with it, redirects included
	Haul          unit.Force // at the hands, raising
	Holding       unit.Force // at the hands, load at rest or about to go down: friction helps
	Tree          unit.Force // fixed block and dead end together, raising, haul led straight down
	Block         unit.Force // of it, the fixed block
	DeadEnd       unit.Force // of it, the dead end, where that is on the tree
	PeopleNeeded  int        // for Haul
	Have          unit.Force // the pull at hand
	Verdict       Verdict
	Remedies      Remedies // where Verdict is Marginal or MorePower
}

// Remedies are the ways to Enough, each by itself. One that does not exist
// within the ranges of the method is zero.
type Remedies struct {
	People int        // hauling
	Parts  int        // of line, at least
	Winch  unit.Force // its line pull, at least
	Piece  unit.Mass  // its heavy end, at most
}

// Plan works a lift out:
//
//	raising  F = W/(e + … + eⁿ)/p        p = Π e(φᵢ)
//	holding  F = W/(e⁻¹ + … + e⁻ⁿ)·p
//	tree     P = W + W/(e + … + eⁿ)
//
// and, hauled upward at the moving block, with 1 + e + … + eⁿ⁻¹ in place of
// each sum and P = W − W/(1 + … + eⁿ⁻¹), in N, with W the weight of the load, n the parts of line, e the efficiency
// of a sheave and p that of the redirects. With an even n the dead end is on
// the tree and carries W·eⁿ/(e + … + eⁿ) of P; with an odd one it is on the
// load. It holds within Loads, Crews, Pulls, Winches and the ranges of
// Tackle.Advantage, for a load that hangs free and is raised without jerks.
//
// The error is a *limits.OutOfRange.
//
// Errors: those of Tackle.Advantage. Free-running blocks help the hold less
// than planned: at worst it takes W/n. Redirects load the tree beyond P: see
// package redirect. A load that is stuck, or drops onto the rope, pulls many
// times this.
//
// Source: statics; e from the sources of Kinds.
func Plan(l Lift) (Result, error) {
	if err := Loads.Check(limits.Weight, l.Load); err != nil {
		return Result{}, err
	}
	return Pull(l.Load.Weight(), l.Tackle, l.Power)
}

// Pull is Plan for a pull on the moving block that is not the weight of a
// load: it holds within block.Tensions instead of Loads.
func Pull(line unit.Force, t Tackle, p Power) (Result, error) {
	if err := block.Tensions.Check(limits.Tension, line); err != nil {
		return Result{}, err
	}
	pass, err := t.check()
	if err != nil {
		return Result{}, err
	}
	if err := p.check(); err != nil {
		return Result{}, err
	}
	sum := t.series(t.Efficiency)
	r := Result{Ideal: float64(t.Parts), Actual: sum * pass, Have: p.have()}
	lead := line / unit.Force(sum) // the haul as it leaves the tackle
	r.Haul = lead / unit.Force(pass)
	r.Holding = line / unit.Force(t.series(1/t.Efficiency)) * unit.Force(pass)
	r.Tree = line + lead
	if t.Upward {
		r.Tree = line - lead
	}
	if t.Parts%2 == 0 {
		r.DeadEnd = lead * unit.Force(t.deadEnd())
	}
	r.Block = max(0, r.Tree-r.DeadEnd)
	r.PeopleNeeded = p.people(r.Haul)
	r.judge(line, pass, t, p)
	return r, nil
}

// deadEnd is the pull of the dead end over the haul at the tackle.
func (t Tackle) deadEnd() float64 {
	if t.Upward {
		return math.Pow(t.Efficiency, float64(t.Parts-1))
	}
	return math.Pow(t.Efficiency, float64(t.Parts))
}

// judge compares the pull at hand with the haul, and finds what would help.
func (r *Result) judge(line unit.Force, pass float64, t Tackle, p Power) {
	enough := r.Haul * Reserve
	switch {
	case r.Have == 0:
		return
	case !limits.Above(enough, r.Have):
		r.Verdict = Enough
		return
	case !limits.Above(r.Haul, r.Have):
		r.Verdict = Marginal
	default:
		r.Verdict = MorePower
	}
	if n := p.people(enough); n <= int(Crews.High) {
		r.Remedies.People = n
	}
	if enough <= Winches.High {
		r.Remedies.Winch = max(enough, Winches.Low)
	}
	t.Parts++
	r.Remedies.Parts = fewest(line, pass, t, r.Have)
	r.Remedies.Piece = (r.Have * unit.Force(r.Actual) / Reserve).Held()
}

// fewest are the parts of line, t.Parts or more, on which a pull is enough for
// a line; 0 where there are none.
func fewest(line unit.Force, pass float64, t Tackle, have unit.Force) int {
	for ; t.Parts <= int(rope.PartsOfLine.High); t.Parts++ {
		if haul := line / unit.Force(t.series(t.Efficiency)*pass); !limits.Above(haul*Reserve, have) {
			return t.Parts
		}
	}
	return 0
}

// Domains lists the ranges of validity.
func Domains() []limits.Domain {
	const method = "tackle"
	return []limits.Domain{
		Loads.Domain(method, limits.Weight),
		block.Tensions.Domain(method, limits.Tension),
		rope.PartsOfLine.Domain(method, limits.Parts),
		block.Efficiencies.Domain(method, limits.Efficiency),
		Turns.Domain(method, limits.Turn),
		Crews.Domain(method, limits.People),
		Pulls.Domain(method, limits.PersonPull),
		Winches.Domain(method, limits.Winch),
		Rises.Domain(method, limits.Rise),
		Aparts.Domain(method, limits.Apart),
	}
}

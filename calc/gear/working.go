package gear

import (
	"heft/calc/limits"
	"heft/calc/unit"
)

// The design factors: break strength over working load.
//
// Rigging is the least, with the rope the weakest link (Ontario arborist
// safe-work practice ASWP06; DOE-STD-1090-96 asks the same of general
// hoisting). Planning is for loads that are not accurately known, as those of
// a tree never are: the Cordage Institute's guides run from 5 to 12, higher
// for shock, knots and danger to people, and the fibre slings of the OSHA
// tables come out at about 9 (from memory).
const (
	Rigging  = 5.0
	Planning = 10.0
)

const slip = "likely a slip in the number or its unit"

// Where the method holds.
var (
	// Factors run from the least for rigging to lifelines (12 to 15 in a
	// technical guide to fibre rope).
	Factors = limits.Range[float64]{Low: Rigging, High: 15,
		Why: "rigging takes at least 5 to 1, and nothing more than 15"}
	// Breaks are break strengths on labels.
	Breaks = limits.Range[unit.Force]{Low: 100, High: 1e6, Why: slip} // common practice, no source
	// Workings are working loads.
	Workings = limits.Range[unit.Force]{Low: 10, High: 2e5, Why: slip} // common practice, no source
	// Loads are those put on gear.
	Loads = limits.Range[unit.Force]{Low: 0, High: 1e6, Why: slip} // common practice, no source
)

// WorkingLoad is what gear may be loaded with:
//
//	F = B/n
//
// in N, with B the break strength on its label in N and n the design factor.
// It holds within Breaks and Factors, for gear in good order, a load at rest
// and no knot: see Knots.
//
// Errors: labels are of new, dry gear pulled slowly in a straight line. Wear,
// wet, heat, age and bends over small diameters take off from it. A marked
// working load that is lower goes before this one.
//
// Source: the definition of the design factor.
func WorkingLoad(breaking unit.Force, factor float64) (unit.Force, error) {
	if err := Breaks.Check(limits.RopeBreak, breaking); err != nil {
		return 0, err
	}
	if err := Factors.Check(limits.DesignFactor, factor); err != nil {
		return 0, err
	}
	return breaking / unit.Force(factor), nil
}

// Used is the share of a working load that a load takes up: F/W, above 1 for
// an overload. It holds within Loads and Workings.
//
// Source: OSHA 1926.251(a)(2) allows none above 1.
func Used(load, working unit.Force) (float64, error) {
	if err := Loads.Check(limits.Tension, load); err != nil {
		return 0, err
	}
	if err := Workings.Check(limits.WorkingLoad, working); err != nil {
		return 0, err
	}
	return float64(load / working), nil
}

// Domains lists the ranges of validity.
func Domains() []limits.Domain {
	const method = "gear"
	return []limits.Domain{
		Factors.Domain(method, limits.DesignFactor),
		Breaks.Domain(method, limits.RopeBreak),
		Workings.Domain(method, limits.WorkingLoad),
		Loads.Domain(method, limits.Tension),
		Shares.Domain(method, limits.LineShare),
		Legs.Domain(method, limits.Legs),
		LegAngles.Domain(method, limits.LegAngle),
		Chokes.Domain(method, limits.ChokeAngle),
	}
}

package tackle

import (
	"math"

	"heft/calc/limits"
	"heft/calc/rope"
	"heft/calc/unit"
)

// PerPerson is the steady haul planned for one gloved person, the same as in
// holding: 147 N is the most that men find acceptable for a one-handed pull
// now and then (Mital et al.), 200 N the grip of the weak twentieth among men
// (FAA Human Factors Design Standard 14.5.2.1). The 220 to 440 N of old
// manuals are from memory, and were not found.
const PerPerson = rope.PerPerson

// Reserve is the pull at hand over the haul from which it is enough: starting
// a load takes more than keeping it going (common practice, no source).
const Reserve = 1.25

// Where the method holds.
var (
	// Loads are those lifted with a tackle in a tree.
	Loads = limits.Range[unit.Mass]{Low: 0.001, High: 10000,
		Why: "past this it is a lift for a crane"} // common practice, no source
	// Crews are the people who can haul together on one rope.
	Crews = limits.Range[float64]{Low: 1, High: 8,
		Why: "no more people than that can haul together"} // common practice, no source
	// Pulls are what one person is planned to pull: see PerPerson.
	Pulls = limits.Range[unit.Force]{Low: 50, High: 250,
		Why: "nobody in gloves hauls that steadily"} // common practice, no source
	// Winches are the line pulls of winches that a tackle in a tree is
	// hauled with, and what hands pull together where only that is told.
	Winches = limits.Range[unit.Force]{Low: 50, High: 100000,
		Why: "likely a slip in the number or its unit"} // common practice, no source
)

// Power is what hauls. Zero people or a zero winch were not said. A winch
// pulls alone: hands on its rope add nothing to it.
type Power struct {
	People    int
	PerPerson unit.Force
	Winch     unit.Force // its line pull
}

func (p Power) check() error {
	if err := Pulls.Check(limits.PersonPull, p.PerPerson); err != nil {
		return err
	}
	if p.People != 0 {
		if err := Crews.Check(limits.People, float64(p.People)); err != nil {
			return err
		}
	}
	if p.Winch != 0 {
		return Winches.Check(limits.Winch, p.Winch)
	}
	return nil
}

// have is the pull at hand, 0 where nothing was said.
func (p Power) have() unit.Force {
	if p.Winch > 0 {
		return p.Winch
	}
	return unit.Force(p.People) * p.PerPerson
}

// bit keeps the last bit of a conversion from costing a person.
const bit = 1e-9

// people is how many it takes to pull that.
func (p Power) people(haul unit.Force) int {
	return int(math.Ceil(float64(haul/p.PerPerson) * (1 - bit)))
}

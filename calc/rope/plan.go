package rope

import (
	"math"

	"heft/calc/limits"
	"heft/calc/unit"
)

const (
	// PerPerson is the steady force planned for one gloved person on the
	// rope. Published figures bracket it: 15 kg (147 N) as the most that men
	// find acceptable for a one-handed pull now and then (Mital et al.), 200 N
	// as the grip of the weak twentieth among men (FAA Human Factors Design
	// Standard 14.5.2.1).
	PerPerson unit.Force = 200

	// slack is the weight of rope that hangs slack behind the drum: a load
	// that needs less than this to hold it does not run at all (common
	// practice, no source).
	slack unit.Force = 10
)

// Where the method holds.
var (
	// Loads are those lowered by hand on a drum.
	Loads = limits.Range[unit.Mass]{Low: 0.001, High: 3000,
		Why: "past this nobody lowers by hand: cut it smaller or bring a machine"} // common practice, no source
	// Turns are those a drum takes.
	Turns = limits.Range[Wraps]{Low: 0, High: 8,
		Why: "a drum takes no more wraps side by side"} // common practice, no source
	// Crews are the people who can work together on one rope.
	Crews = limits.Range[float64]{Low: 1, High: 4,
		Why: "no more people than that can handle one rope"} // common practice, no source
	// Holds are the steady forces of one person: less is no hold on a rope at
	// all, more than PerPerson is nothing to plan on.
	Holds = limits.Range[unit.Force]{Low: 2 * slack, High: PerPerson,
		Why: "plan on a hand that can keep hold of the rope, and on no more than it holds for long"} // common practice, no source
)

// Hands hold the rope behind the drum.
type Hands struct {
	People int
	Each   unit.Force // steady, of one of them
}

// Gloved are hands of which nothing is told but how many.
func Gloved(people int) Hands { return Hands{people, PerPerson} }

// Force is what all of them hold.
func (h Hands) Force() unit.Force { return h.Each * unit.Force(h.People) }

func (h Hands) check() error {
	if err := Crews.Check(limits.People, float64(h.People)); err != nil {
		return err
	}
	return Holds.Check(limits.PersonPull, h.Each)
}

// Lowering is the plan of a lower.
type Lowering struct {
	Start       Wraps      // to start with, in halves
	Least, Most Wraps      // below Least any drum lets it run; above Most even a slick one sticks
	Hold        unit.Force // at Start, slick drum, heavy end
	PerPerson   unit.Force // of Hold
}

// Plan finds the wraps to lower a piece between two weights:
//
//	Start: the heavy end on a slick drum, held by the hands; at least 1
//	Least: the same on a grippy drum; at least ½, or none where hands alone hold it
//	Most:  the light end on a slick drum, just moving against the slack of the rope
//
// each from Hold solved for n and in halves, Start and Least rounded up, Most
// down but neither under Start nor over Turns. It holds within Loads, Crews,
// Holds and Turns, for a load set on the rope without a drop.
//
// Errors: as Hold; on a grippy drum a light piece may stick at Start. Start
// with Start, have the next half wrap ready.
//
// Source: the capstan equation and the friction of Slick and Grippy.
func Plan(low, high unit.Mass, by Hands) (Lowering, error) {
	if err := check(low, high); err != nil {
		return Lowering{}, err
	}
	if err := by.check(); err != nil {
		return Lowering{}, err
	}
	hands, heavy := by.Force(), high.Weight()
	l := Lowering{Start: max(1, halvesUp(turns(heavy, hands, Slick)))}
	if err := Turns.Check(limits.Wraps, l.Start); err != nil {
		return Lowering{}, err
	}
	if heavy > hands {
		l.Least = max(0.5, halvesUp(turns(heavy, hands, Grippy)))
	}
	most := halvesDown(turns(low.Weight(), slack, Slick))
	l.Most = max(l.Start, min(most, Turns.High))
	l.Hold = Hold(heavy, Slick, l.Start)
	l.PerPerson = l.Hold / unit.Force(by.People)
	return l, nil
}

// Past is the plan where wraps of the crew's slipped, so that the load is heavier
// or the drum slicker than planned: a turn more than those to start with, and
// never back to them. It holds within Turns.
//
// Source: common practice, no source; a turn on a slick drum takes the hand's
// load down to two fifths.
func (l Lowering) Past(slipped Wraps) (Lowering, error) {
	if err := Turns.Check(limits.Wraps, slipped+1); err != nil {
		return Lowering{}, err
	}
	l.Start = max(l.Start, slipped+1)
	l.Least = max(l.Least, slipped+0.5)
	l.Most = max(l.Most, l.Start)
	return l, nil
}

// Held is what the hand feels at wraps the crew named: from the light end on
// a grippy drum to the heavy end on a slick one, in N. It holds within Loads
// and Turns; errors and source as Hold.
func Held(low, high unit.Mass, wraps Wraps) (unit.Range[unit.Force], error) {
	if err := check(low, high); err != nil {
		return unit.Range[unit.Force]{}, err
	}
	if err := Turns.Check(limits.Wraps, wraps); err != nil {
		return unit.Range[unit.Force]{}, err
	}
	return unit.Range[unit.Force]{
		Low:  Hold(low.Weight(), Grippy, wraps),
		High: Hold(high.Weight(), Slick, wraps),
	}, nil
}

func check(low, high unit.Mass) error {
	return Loads.CheckBoth(limits.Weight, unit.Range[unit.Mass]{Low: low, High: high})
}

// bit keeps the last bit of a logarithm from costing, or saving, half a wrap.
const bit = 1e-9

func halvesUp(n float64) Wraps   { return Wraps(math.Ceil(2*n-bit) / 2) }
func halvesDown(n float64) Wraps { return Wraps(math.Floor(2*n+bit) / 2) }

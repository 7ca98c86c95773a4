package anchor

import (
	"math"

	"heft/calc/limits"
	"heft/calc/piece"
	"heft/calc/unit"
)

// Moment is in newton metres.
type Moment float64

// Left is what published tests left of the strength of clear green wood where
// branches are taken for round, with their bark: Bradford pear broke at 28.1
// MPa where its wood has 69.9 (Kane 2007, AUF 33:283, table 3).
const Left = 0.40

const slip = "likely a slip in the number or its unit"

// Where the method holds. The ends are common practice, no source.
var (
	// Diameters are those at the base, over bark.
	Diameters = limits.Range[unit.Length]{Low: 0.05, High: 1.2,
		Why: "the published branch tests say nothing of twigs, or of stems so thick"}
	// Levers run along the stem from the base to where it is pulled.
	Levers = limits.Range[unit.Length]{Low: 0.05, High: 30, Why: slip}
	// Pulls are those of a rope or a block, or a weight.
	Pulls = limits.Range[unit.Force]{Low: 1, High: 1e6, Why: slip}
	// Angles lie between the pull and the stem's axis, in degrees.
	Angles = limits.Range[float64]{Low: 10, High: 170,
		Why: "a pull along the stem hardly bends it, and nothing here screens for that"}
)

// Pull bends a stem. A limb's own weight is one too, its lever the balance
// point.
type Pull struct {
	Force  unit.Force
	Lever  unit.Length // along the stem, from the base
	ToAxis unit.Angle  // between the pull and the stem's axis; a right angle bends most
}

// Stem is a limb or a spar that something hangs on.
type Stem struct {
	Scientific string
	Condition  piece.Condition
	Diameter   unit.Length // at the base, over bark; of a stem that is not round, the least
}

// Screening is how much is asked of a stem.
type Screening struct {
	Moment   Moment
	Stress   Stress
	Strength Strength
	Used     float64 // stress over Left of the strength; at 1, branches in tests broke
}

// Bending is the stress at the rim of a round section:
//
//	σ = 32·M/(π·d³)
//
// in Pa, with M in N·m and d in m.
//
// Source: mechanics of materials, as printed in AUF 38(4).
func Bending(m Moment, d unit.Length) Stress {
	return Stress(32 * float64(m) / (math.Pi * math.Pow(float64(d), 3)))
}

// Screen is the share of a stem's bending strength that pulls take up:
//
//	M    = Σ F·a·sin δ
//	used = 32·M/(π·d³)/(0.40·R)
//
// with F in N, a the lever in m, δ the angle of the pull to the axis, d the
// diameter at the base in m and R the bending strength of clear green wood in
// Pa. All pulls are taken to bend the stem the same way. It holds within
// Diameters, Levers, Pulls and Angles, for a green and sound stem.
//
// The stem's own weight is in it only where it is given as a pull; so is a
// limb's, which uses up strength before anything hangs on it. The press along
// the stem and the twist of an off-centre pull are left out.
//
// The error is an *limits.OutOfRange, an *limits.Missing, or an
// *Unscreenable for a dead stem and for trees without a listed strength.
//
// Errors: Left rests on one species of small branches; unions may be weaker
// than the branch. With d 5 % too large, used comes out 14 % too small. It is
// a screening figure, never an approval.
//
// Sources: Bending; the strength's own, see Strength.
func Screen(s Stem, pulls ...Pull) (Screening, error) {
	if s.Condition == piece.Dead {
		return Screening{}, &Unscreenable{Why: "dead wood may hold nothing, however thick it is"}
	}
	if s.Scientific == "" {
		return Screening{}, &limits.Missing{Quantity: limits.Species}
	}
	if err := Diameters.Check(limits.Diameter, s.Diameter); err != nil {
		return Screening{}, err
	}
	if len(pulls) == 0 {
		return Screening{}, &limits.Missing{Quantity: limits.Tension}
	}
	var w Screening
	for _, p := range pulls {
		m, err := p.moment()
		if err != nil {
			return Screening{}, err
		}
		w.Moment += m
	}
	var err error
	if w.Strength, err = StrengthOf(s.Scientific); err != nil {
		return Screening{}, err
	}
	w.Stress = Bending(w.Moment, s.Diameter)
	w.Used = float64(w.Stress / (Left * w.Strength.Bending))
	return w, nil
}

// moment is what a pull bends the base with.
func (p Pull) moment() (Moment, error) {
	if err := Pulls.Check(limits.Tension, p.Force); err != nil {
		return 0, err
	}
	if err := Levers.Check(limits.Lever, p.Lever); err != nil {
		return 0, err
	}
	if err := Angles.Check(limits.Angle, p.ToAxis.Degrees()); err != nil {
		return 0, err
	}
	return Moment(float64(p.Force) * float64(p.Lever) * math.Sin(float64(p.ToAxis))), nil
}

// Domains lists the ranges of validity.
func Domains() []limits.Domain {
	const method = "anchor"
	return []limits.Domain{
		Diameters.Domain(method, limits.Diameter),
		Levers.Domain(method, limits.Lever),
		Pulls.Domain(method, limits.Tension),
		Angles.Domain(method, limits.Angle),
	}
}

package hinge

import (
	"math"

	"heft/calc/limits"
	"heft/calc/tackle"
	"heft/calc/unit"
)

// Setup is a limb and the gear that is to stand it up.
type Setup struct {
	Weight  unit.Mass   // the heavy end
	Balance unit.Length // the balance point, as far out as it may be
	Length  unit.Length // of the limb; 0 where it was not said
	Angle   unit.Angle  // of the limb now
	Tie     unit.Length // of the moving block
	Height  unit.Length // of the top block above the hinge
	Offset  unit.Length // of the top block behind the hinge
	Hitch   unit.Length // of the top block above the ground; 0 where it was not said
	Closed  unit.Length // of the tackle, its blocks together; 0 where it was not said

	tackle.Tackle
	tackle.Power
}

// Clear is the distance that the ties of the two blocks have to keep: that of any
// tackle, tackle.Clear.
func Clear(closed unit.Length) unit.Length { return tackle.Clear(closed) }

// Clearance is the least distance between the ties of the two blocks: the
// blocks, their slings and the turns of the rope need it.
const Clearance = tackle.Clearance

const slip = "likely a slip in the number or its unit"

// Where the method holds.
var (
	// Balances are how far out a limb balances.
	Balances = limits.Range[unit.Length]{Low: 0.05, High: 30, Why: slip}
	// Lengths are those of limbs: see piece.Lengths.
	Lengths = limits.Range[unit.Length]{Low: 0.05, High: 30, Why: slip}
	// Ties are how far out the moving block is tied.
	Ties = limits.Range[unit.Length]{Low: 0.05, High: 30, Why: slip}
	// Heights are those of the top block above the hinge.
	Heights = limits.Range[unit.Length]{Low: 0.3, High: 40,
		Why: "the top block has to stand well above the cut"} // common practice, no source
	// Offsets are how far the top block stands behind the hinge.
	Offsets = limits.Range[unit.Length]{Low: 0, High: 20,
		Why: "a block out over the limb cannot bring it upright: it pulls the limb no further than to point at the block"}
	// Angles are those of the limb before it is raised, in degrees.
	Angles = limits.Range[float64]{Low: -45, High: 85,
		Why: "a limb that hangs further swings, and one that stands steeper is already up"} // common practice, no source
)

// Domains lists the ranges of validity; those of the tackle are in its own.
func Domains() []limits.Domain {
	const method = "hinge"
	return []limits.Domain{
		tackle.Loads.Domain(method, limits.Weight),
		Balances.Domain(method, limits.BalancePoint),
		Lengths.Domain(method, limits.Length),
		Angles.Domain(method, limits.LimbAngle),
		Ties.Domain(method, limits.Tie),
		Heights.Domain(method, limits.BlockHeight),
		Offsets.Domain(method, limits.Offset),
		Turns.Domain(method, limits.Angle),
	}
}

// check refuses what the method does not hold for.
func (s *Setup) check() error {
	if err := tackle.Loads.Check(limits.Weight, s.Weight); err != nil {
		return err
	}
	if err := Angles.Check(limits.LimbAngle, s.Angle.Degrees()); err != nil {
		return err
	}
	if err := Balances.Check(limits.BalancePoint, s.Balance); err != nil {
		return err
	}
	if err := Ties.Check(limits.Tie, s.Tie); err != nil {
		return err
	}
	return s.checkPlaces()
}

// checkPlaces refuses places of the limb and its blocks that the method does
// not hold for; a balance point, a tie or a length of 0 was not said.
func (s *Setup) checkPlaces() error {
	for _, size := range [...]struct {
		q     limits.Quantity
		at    unit.Length
		holds limits.Range[unit.Length]
		said  bool
	}{
		{limits.BalancePoint, s.Balance, Balances, s.Balance != 0},
		{limits.Tie, s.Tie, Ties, s.Tie != 0},
		{limits.BlockHeight, s.Height, Heights, true},
		{limits.Offset, s.Offset, Offsets, true},
		{limits.Length, s.Length, Lengths, s.Length != 0},
	} {
		if err := size.holds.Check(size.q, size.at); size.said && err != nil {
			return err
		}
	}
	return s.possible()
}

// possible refuses sizes that do not go together.
func (s *Setup) possible() error {
	refuse := func(first, second limits.Quantity, got, limit unit.Length, why string) error {
		return &limits.Contradiction{First: first, Second: second, Got: float64(got), Limit: float64(limit), Why: why}
	}
	back := Heights.Low - s.Offset*unit.Length(math.Tan(float64(s.Angle)))
	switch {
	case s.Length != 0 && limits.Above(s.Tie, s.Length):
		return refuse(limits.Tie, limits.Length, s.Tie, s.Length, "the tie is on the limb")
	case s.Length != 0 && limits.Above(s.Balance, s.Length):
		return refuse(limits.BalancePoint, limits.Length, s.Balance, s.Length, "the limb balances between its ends")
	case s.Hitch != 0 && limits.Above(s.Height, s.Hitch):
		return refuse(limits.BlockHeight, limits.HitchHeight, s.Height, s.Hitch, "the cut lies above the ground")
	case back > 0 && limits.Above(back, s.Height):
		return refuse(limits.BlockHeight, limits.Offset, s.Height, back,
			"the top block has to stand well above the line of the limb, carried back behind the hinge, or it does not lift")
	}
	return nil
}

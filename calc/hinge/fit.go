package hinge

import (
	"heft/calc/limits"
	"heft/calc/tackle"
	"heft/calc/unit"
)

// Layout is where a limb and its two blocks are, whatever the limb weighs.
// Zero was not said, but for Offset and Angle.
type Layout struct {
	Length  unit.Length // of the limb
	Balance unit.Length // the balance point, as far out as it may be
	Tie     unit.Length // of the moving block
	Height  unit.Length // of the top block above the hinge; it is needed
	Offset  unit.Length // of the top block behind the hinge
	Hitch   unit.Length // of the top block above the ground
	Angle   *unit.Angle // of the limb now; nil where it was not said
	Parts   int         // of line
	Closed  unit.Length // of the tackle, its blocks together; 0 where it was not said
}

// Fitting is what a layout alone settles. With TurnsOver or TwoBlocks, or
// without a tie in the window, it is to be refused.
type Fitting struct {
	Window    Window
	TurnsOver bool        // the tie is not beyond the balance point, where both were said
	TwoBlocks *TwoBlocks  // nil too where the tie was not said
	Lower     unit.Length // by so much the top block stands too low for any tie to do
	Apart     unit.Length // between the ties of the two blocks at upright; 0 where the tie was not said
	Closes    unit.Length // the blocks, from now to upright; 0 where tie or angle was not said
	Travel    unit.Length // rope hauled, the parts times that; 0 where the parts were not said
	Rope      unit.Length // from end to end; 0 where any of these or the height above the ground was not said
}

// Fit works out what the places of the limb and its blocks settle: whether the
// blocks meet, where a tie keeps them apart, and how far they close. Its
// verdicts are those of Raise, where nothing is known of what pulls: neither
// the clearance nor the balance point has the weight in it.
//
// It holds within Domains. The error is a *limits.OutOfRange or a
// *limits.Contradiction.
//
// Errors: a limb that bends, and slings that settle, bring the blocks nearer:
// see Clearance.
//
// Source: geometry.
func Fit(l Layout) (Fitting, error) {
	s := Setup{Length: l.Length, Balance: l.Balance, Tie: l.Tie, Height: l.Height, Offset: l.Offset, Hitch: l.Hitch, Closed: l.Closed,
		Tackle: tackle.Tackle{Parts: l.Parts}}
	if l.Angle != nil {
		s.Angle = *l.Angle
		if err := Angles.Check(limits.LimbAngle, s.Angle.Degrees()); err != nil {
			return Fitting{}, err
		}
	}
	if err := s.checkPlaces(); err != nil {
		return Fitting{}, err
	}
	f := Fitting{Window: s.window(tackle.Result{})}
	if f.Window.Far == ByClearance {
		f.Lower = max(0, s.clear()-s.furthest())
	}
	if l.Tie == 0 {
		return f, nil
	}
	f.TwoBlocks, f.Apart = s.twoBlocks(), unit.Length(s.distance(upright))
	f.TurnsOver = s.Balance != 0 && !limits.Above(s.Tie, s.Balance)
	if l.Angle == nil {
		return f, nil
	}
	f.Closes = s.closes()
	f.Travel = unit.Length(l.Parts) * f.Closes
	if l.Parts == 0 {
		return f, nil
	}
	var err error
	f.Rope, err = s.rope()
	return f, err
}

package hinge

import (
	"fmt"
	"math"

	"heft/calc/balance"
	"heft/calc/limits"
	"heft/calc/tackle"
	"heft/calc/unit"
)

// Bound says what sets an end of the window of ties.
type Bound string

// The bounds.
const (
	ByBalance   Bound = "balance"   // nearer, the limb may turn over when the hinge parts
	ByPower     Bound = "power"     // nearer, the pull at hand does not raise it
	ByClearance Bound = "clearance" // further, the blocks meet
	ByTip       Bound = "tip"       // further, there is no limb
	ByNothing   Bound = "nothing"   // the balance point was not said: it may lie further out
)

// Window is where the moving block may be tied. Where no tie will do, Ties is
// zero; the bounds say which two leave no room between them.
type Window struct {
	Ties      unit.Range[unit.Length]
	Near, Far Bound
}

// TwoBlocks says that the blocks meet on the way up, or that the moving block
// ends above the top block: the set-up is to be refused.
type TwoBlocks struct {
	Closest unit.Length // the ties of the two blocks at upright
	MoveIn  unit.Length // the tie, toward the cut; 0 where it would come too near the balance point
	RaiseBy unit.Length // the top block, the tie left where it is
}

// Error says it in plain English and SI, in whole decimetres rounded up.
func (e *TwoBlocks) Error() string {
	up := func(l unit.Length) float64 { return math.Ceil(float64(l)*10) / 10 }
	if e.MoveIn == 0 {
		return fmt.Sprintf("the blocks meet before the limb is upright: raise the top block by %.1f m", up(e.RaiseBy))
	}
	return fmt.Sprintf("the blocks meet before the limb is upright: tie %.1f m nearer the cut or raise the top block by %.1f m",
		up(e.MoveIn), up(e.RaiseBy))
}

// furthest is the furthest tie at which the blocks keep their distance, and the
// moving block stays below the top block:
//
//	a = h − √(c² − d²)
//
// in m, with c that of Clear and the terms of Force; a = h where d ≥ c.
func (s *Setup) furthest() unit.Length {
	c, d := float64(Clear(s.Closed)), float64(s.Offset)
	return s.Height - unit.Length(math.Sqrt(max(0, c*c-d*d)))
}

// twoBlocks finds whether the blocks meet, and what helps.
func (s *Setup) twoBlocks() *TwoBlocks {
	far := s.furthest()
	if !limits.Above(s.Tie, far) {
		return nil
	}
	t := &TwoBlocks{Closest: unit.Length(s.distance(upright)), RaiseBy: s.Tie - far}
	if far >= s.Balance+balance.Margin {
		t.MoveIn = s.Tie - far
	}
	return t
}

// nearest is the nearest tie at which a pull on the moving block raises the
// limb from where it is, Force solved for the tie:
//
//	a = r/u,  u = k + √(K² − 1 + k²),  K = F·(h + d·tan φ)/(W·x)
//
// in m, with r = √(h² + d²), k = (h·sin φ − d·cos φ)/r and the terms of
// Force. Below the height of the top block the force falls as the tie goes
// out, so that every tie from there on will do.
func (s *Setup) nearest(pull unit.Force) (unit.Length, bool) {
	sin, cos := math.Sincos(float64(s.Angle))
	h, d := float64(s.Height), float64(s.Offset)
	r := math.Hypot(h, d)
	k := (h*sin - d*cos) / r
	over := float64(pull) * s.headroom(s.Angle) / (float64(s.Weight.Weight()) * float64(s.Balance))
	root := over*over - 1 + k*k
	if root < 0 {
		return 0, false
	}
	u := k + math.Sqrt(root)
	return unit.Length(r / u), u > 0
}

// clear is the nearest tie that is clear of the balance point, where that was
// said.
func (s *Setup) clear() unit.Length {
	if s.Balance == 0 {
		return Ties.Low
	}
	return s.Balance + balance.Margin
}

// window finds the ties at which the limb does not turn over, the pull at
// hand raises it, and the blocks do not meet.
func (s *Setup) window(lift tackle.Result) Window {
	w := Window{Near: ByBalance, Far: ByClearance}
	near, far := s.clear(), s.furthest()
	if s.Balance == 0 {
		w.Near = ByNothing
	}
	if s.Length > 0 && s.Length < far {
		far, w.Far = s.Length, ByTip
	}
	room := true
	if lift.Have > 0 {
		can := lift.Have * unit.Force(lift.Actual)
		powered, ok := s.nearest(can)
		// Wherever it is tied, the whole weight comes onto the line.
		ok = ok && !limits.Above(s.Weight.Weight(), can)
		if !ok || powered > near {
			near, w.Near, room = powered, ByPower, ok
		}
	}
	if room && near <= far {
		w.Ties = unit.Range[unit.Length]{Low: near, High: far}
	}
	return w
}

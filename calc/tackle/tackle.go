package tackle

import (
	"heft/calc/block"
	"heft/calc/limits"
	"heft/calc/rope"
	"heft/calc/unit"
)

// Tackle is what lies between the load and the hands.
type Tackle struct {
	Parts      int     // of line on the load, the haul among them with Upward
	Efficiency float64 // of each sheave of the tackle, at half a turn
	Upward     bool    // the haul leaves the moving block, upward; else the fixed one
	Redirects  []Redirect
}

// Redirect is a block or bar between the fixed block and the hands.
type Redirect struct {
	Sheave
	Turn unit.Angle
}

// Rises are how far a load is lifted.
var Rises = limits.Range[unit.Length]{Low: 0.01, High: 60,
	Why: "likely a slip in the number or its unit"} // common practice, no source

// Advantage is the load over the haul that raises it, n parts on the load. The
// haul leaves the fixed block, or the moving one, upward, and then there is a
// sheave less:
//
//	A = (e + e² + … + eⁿ)·Π e(φᵢ)
//	A = (1 + e + … + eⁿ⁻¹)·Π e(φᵢ)
//
// with e the efficiency of a sheave and e(φᵢ) that of each redirect at its
// turn; see Sheave.At. It holds within rope.PartsOfLine, block.Efficiencies
// and Turns, parts of line nearly parallel.
//
// Errors: e is seldom known to better than 0.05, which is 8 % of A at two
// parts and 19 % at six. The Navy's rule, which charges every sheave with 10 %
// of the whole load, gives 3 % less than e = 0.90 at two parts and 11 % less
// at six.
//
// Source: statics; the ratio tables of rigging handbooks.
func (t Tackle) Advantage() (float64, error) {
	pass, err := t.check()
	if err != nil {
		return 0, err
	}
	return t.series(t.Efficiency) * pass, nil
}

// check refuses a tackle that cannot be, and finds what its redirects let
// through.
func (t Tackle) check() (pass float64, err error) {
	if err := rope.PartsOfLine.Check(limits.Parts, float64(t.Parts)); err != nil {
		return 0, err
	}
	if err := block.Efficiencies.Check(limits.Efficiency, t.Efficiency); err != nil {
		return 0, err
	}
	pass = 1
	for _, r := range t.Redirects {
		e, err := r.At(r.Turn)
		if err != nil {
			return 0, err
		}
		pass *= e
	}
	return pass, nil
}

// series is what the parts carry together, over the haul at the tackle, with
// sheaves that let e through.
func (t Tackle) series(e float64) float64 {
	if t.Upward {
		return series(e, t.Parts) / e
	}
	return series(e, t.Parts)
}

// series is e + e² + … + eⁿ.
func series(e float64, n int) float64 {
	sum, term := 0.0, 1.0
	for range n {
		term *= e
		sum += term
	}
	return sum
}

// Hauled is the rope that comes through the hands while the load rises:
//
//	l = n·rise
//
// in m, with n the parts of line on the load. It holds within
// rope.PartsOfLine and Rises.
//
// Errors: the stretch of the rope comes on top.
//
// Source: geometry.
func Hauled(parts int, rise unit.Length) (unit.Length, error) {
	if err := rope.PartsOfLine.Check(limits.Parts, float64(parts)); err != nil {
		return 0, err
	}
	if err := Rises.Check(limits.Rise, rise); err != nil {
		return 0, err
	}
	return unit.Length(parts) * rise, nil
}

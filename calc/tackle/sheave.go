package tackle

import (
	"math"

	"heft/calc/block"
	"heft/calc/limits"
	"heft/calc/unit"
)

// Sheave is what the rope turns over.
type Sheave struct {
	Efficiency float64 // the pull behind it over the pull before it, at half a turn
	Slides     bool    // the rope slides over it, as over a ring or in a crotch; a sheave turns
}

// Turns are how far the rope is turned at one sheave or bar, in degrees: 0 is
// straight on.
var Turns = limits.Range[float64]{Low: 0, High: 180,
	Why: "a rope is turned from 0, straight on, to 180, back on itself"}

// At is the efficiency where the rope is turned by less than half a turn. A
// rope that slides obeys the capstan equation,
//
//	e(φ) = e^(φ/π)
//
// and a sheave that turns the friction on its pin, which goes by the load
// across the pin, the vector sum of the two pulls:
//
//	sinh(y/2) = sinh(Y/2)·sin(φ/2),  e = exp(−Y),  e(φ) = exp(−y)
//
// with e the efficiency at half a turn and φ the turn in radians. It holds
// within Turns and block.Efficiencies.
//
// Errors: the stiffness of the rope, left out, takes a little more where the
// turn is small; e itself is seldom known to better than 0.05.
//
// Source: the capstan equation; the pin, derived here from statics.
func (s Sheave) At(turn unit.Angle) (float64, error) {
	if err := block.Efficiencies.Check(limits.Efficiency, s.Efficiency); err != nil {
		return 0, err
	}
	if err := Turns.Check(limits.Turn, turn.Degrees()); err != nil {
		return 0, err
	}
	// The slack that the ranges leave for conversions must not turn a loss
	// into a gain.
	lost := max(0, -math.Log(s.Efficiency))
	if s.Slides {
		return math.Exp(-lost * float64(turn) / math.Pi), nil
	}
	return math.Exp(-2 * math.Asinh(math.Sinh(lost/2)*math.Sin(float64(turn)/2))), nil
}

// Kind is a published sheave or bar.
type Kind struct {
	Name string
	Sheave
	Source string
}

// Kinds lists what a rope in a tree is turned over, best first.
func Kinds() []Kind {
	return []Kind{
		{"ball-bearing sheave", Sheave{Efficiency: 0.981},
			"rigging-handbook ratio table, anti-friction sheaves: 0.98 to 5.60 for 1 to 6 parts"},
		{"plain bushed sheave", Sheave{Efficiency: 0.957},
			"rigging-handbook ratio table, plain bushed sheaves: 0.96 to 5.16 for 1 to 6 parts"},
		{"sheave in ordinary order", Sheave{Efficiency: block.Efficiency},
			"US Navy Builder training manual: about 10 % of the load a sheave"},
		{"small pulley", Sheave{Efficiency: 0.83},
			"published redirect test: 0.12 kN to pull over it what hangs with 0.100"},
		{"rigging ring", Sheave{Efficiency: 0.57, Slides: true},
			"polyester rope on 60 mm anodised aluminium, friction 0.18 (Delaney, Physics for Roping Technicians, 2022): exp(−0.18·π)"},
		{"carabiner", Sheave{Efficiency: 0.53, Slides: true},
			"published redirect test: 0.188 kN to pull over it what hangs with 0.100"},
		{"natural crotch", Sheave{Efficiency: 0.31, Slides: true},
			"polyester rope on bare wood, friction 0.37 (Delaney, Physics for Roping Technicians, 2022): exp(−0.37·π); no figure for bark was found"},
	}
}

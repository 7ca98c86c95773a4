package bot

import (
	"heft/calc"
	"heft/calc/hinge"
	"heft/calc/redirect"
	"heft/calc/swing"
	"heft/calc/tackle"
	"heft/calc/unit"
)

// Pictured and Lowering are what the builders of scenes take.
type (
	Pictured = pictured
	Lowering = lowering
)

// RaiseScene builds the scene of a raise.
func RaiseScene(metric bool, p Pictured, s hinge.Setup, r hinge.Raising) *Scene {
	return raiseScene(speaker{metric: metric}, p, s, r)
}

// LiftScene builds the scene of a lift.
func LiftScene(metric bool, p Pictured, l tackle.Lift, r tackle.Result, hitch unit.Length) *Scene {
	return liftScene(speaker{metric: metric}, p, l, r, hitch)
}

// LowerScene builds the scene of a lower.
func LowerScene(metric bool, p Pictured, r calc.Result, l Lowering) *Scene {
	return lowerScene(speaker{metric: metric}, p, r, l)
}

// RedirectScene builds the scene of a redirect.
func RedirectScene(metric bool, p Pictured, c redirect.Chain, loads []redirect.Load) *Scene {
	return redirectScene(speaker{metric: metric}, p, c, loads, nil)
}

// SwingScene builds the scene of a swing.
func SwingScene(metric bool, p Pictured, s swing.Setup, w swing.Swing) *Scene {
	return swingScene(speaker{metric: metric}, p, s, w)
}

package scan

import (
	"heft/calc/unit"
	"heft/parser"
)

// UnitWord is a unit as it is typed.
type UnitWord struct {
	Dim    parser.Dimension
	Factor float64 // to the SI unit of a Field; degrees stay degrees
	System parser.System
	Fine   bool // inches, centimetres, millimetres: what diameters are told in
	Unsure bool // "ton" is three different masses
}

var (
	Inch   = &UnitWord{Dim: parser.DimLength, Factor: float64(unit.Inch), System: parser.Imperial, Fine: true}
	Foot   = &UnitWord{Dim: parser.DimLength, Factor: float64(unit.Foot), System: parser.Imperial}
	Pound  = &UnitWord{Dim: parser.DimMass, Factor: float64(unit.Pound), System: parser.Imperial}
	Degree = &UnitWord{Dim: parser.DimAngle, Factor: 1}

	Metre      = &UnitWord{Dim: parser.DimLength, Factor: float64(unit.Metre), System: parser.Metric}
	Centimetre = &UnitWord{Dim: parser.DimLength, Factor: float64(unit.Centimetre), System: parser.Metric, Fine: true}
	Millimetre = &UnitWord{Dim: parser.DimLength, Factor: float64(unit.Millimetre), System: parser.Metric, Fine: true}
)

// UnitNamed has the units as the word files name them.
var UnitNamed = map[string]*UnitWord{
	"inch": Inch, "foot": Foot, "pound": Pound, "degree": Degree,
	"metre": Metre, "centimetre": Centimetre, "millimetre": Millimetre,
	"yard":        {Dim: parser.DimLength, Factor: float64(unit.Yard), System: parser.Imperial},
	"kilogram":    {Dim: parser.DimMass, Factor: float64(unit.Kilogram), System: parser.Metric},
	"tonne":       {Dim: parser.DimMass, Factor: float64(unit.Tonne), System: parser.Metric},
	"ton":         {Dim: parser.DimMass, Unsure: true},
	"newton":      {Dim: parser.DimForce, Factor: float64(unit.Newton), System: parser.Metric},
	"kilonewton":  {Dim: parser.DimForce, Factor: float64(unit.Kilonewton), System: parser.Metric},
	"decanewton":  {Dim: parser.DimForce, Factor: 10, System: parser.Metric},
	"stone":       {Dim: parser.DimMass, Factor: 14 * float64(unit.Pound), System: parser.Imperial}, // NIST SP 811, appendix B.8
	"pound-force": {Dim: parser.DimForce, Factor: float64(unit.PoundForce), System: parser.Imperial},
	"kilogram-force": {
		Dim: parser.DimForce, Factor: unit.StandardGravity, System: parser.Metric},
}

// UnitMarks are the units that are no words of any language.
var UnitMarks = map[string]*UnitWord{
	`"`: Inch, "”": Inch, "“": Inch, "″": Inch, "''": Inch, "’’": Inch, "′′": Inch,
	"'": Foot, "’": Foot, "‘": Foot, "′": Foot,
	"#": Pound, "°": Degree, "º": Degree,
}

// Tons are the masses that "ton" can mean (NIST Special Publication 811,
// appendix B: short ton 2,000 lb, long ton 2,240 lb, tonne 1,000 kg).
var Tons = []struct {
	Words  string
	Factor unit.Mass
	System parser.System
}{
	{"lb", 2000 * unit.Pound, parser.Imperial},
	{"lb", 2240 * unit.Pound, parser.Imperial},
	{"kg", 1000 * unit.Kilogram, parser.Metric},
}

// InUnit asks for the unit of a strength, or lends it the one that all else of
// the message is told in: then only which figure it is stays in doubt.
func InUnit(a *parser.Ask, u *UnitWord) {
	switch {
	case u == nil || u.Dim != parser.DimMass || len(a.Fields) < 2:
		a.Kind = parser.NoUnit
	case u.Factor == Pound.Factor:
		a.Choices = []parser.Choice{{Words: a.Words + " lb"}}
	case u.Factor == 1:
		a.Choices = []parser.Choice{{Words: a.Words + " kg"}}
	default:
		a.Kind = parser.NoUnit
	}
}

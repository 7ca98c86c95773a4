package parser

import "heft/calc/unit"

// dimension is what a measure measures.
type dimension int

const (
	dimCount dimension = iota // a bare number
	dimLength
	dimMass
	dimForce
	dimAngle
	dimRatio // 2:1
)

// unitWord is a unit as it is typed.
type unitWord struct {
	dim    dimension
	factor float64 // to the SI unit of a Field; degrees stay degrees
	system System
	fine   bool // inches, centimetres, millimetres: what diameters are told in
	unsure bool // "ton" is three different masses
}

var (
	inch   = &unitWord{dim: dimLength, factor: float64(unit.Inch), system: Imperial, fine: true}
	foot   = &unitWord{dim: dimLength, factor: float64(unit.Foot), system: Imperial}
	pound  = &unitWord{dim: dimMass, factor: float64(unit.Pound), system: Imperial}
	degree = &unitWord{dim: dimAngle, factor: 1}

	metre      = &unitWord{dim: dimLength, factor: float64(unit.Metre), system: Metric}
	centimetre = &unitWord{dim: dimLength, factor: float64(unit.Centimetre), system: Metric, fine: true}
	millimetre = &unitWord{dim: dimLength, factor: float64(unit.Millimetre), system: Metric, fine: true}
)

// unitNamed has the units as the word files name them.
var unitNamed = map[string]*unitWord{
	"inch": inch, "foot": foot, "pound": pound, "degree": degree,
	"metre": metre, "centimetre": centimetre, "millimetre": millimetre,
	"yard":        {dim: dimLength, factor: float64(unit.Yard), system: Imperial},
	"kilogram":    {dim: dimMass, factor: float64(unit.Kilogram), system: Metric},
	"tonne":       {dim: dimMass, factor: float64(unit.Tonne), system: Metric},
	"ton":         {dim: dimMass, unsure: true},
	"newton":      {dim: dimForce, factor: float64(unit.Newton), system: Metric},
	"kilonewton":  {dim: dimForce, factor: float64(unit.Kilonewton), system: Metric},
	"decanewton":  {dim: dimForce, factor: 10, system: Metric},
	"stone":       {dim: dimMass, factor: 14 * float64(unit.Pound), system: Imperial}, // NIST SP 811, appendix B.8
	"pound-force": {dim: dimForce, factor: float64(unit.PoundForce), system: Imperial},
	"kilogram-force": {
		dim: dimForce, factor: unit.StandardGravity, system: Metric},
}

// unitMarks are the units that are no words of any language.
var unitMarks = map[string]*unitWord{
	`"`: inch, "”": inch, "“": inch, "″": inch, "''": inch, "’’": inch, "′′": inch,
	"'": foot, "’": foot, "‘": foot, "′": foot,
	"#": pound, "°": degree, "º": degree,
}

// tons are the masses that "ton" can mean (NIST Special Publication 811,
// appendix B: short ton 2,000 lb, long ton 2,240 lb, tonne 1,000 kg).
var tons = []struct {
	words  string
	factor unit.Mass
	system System
}{
	{"lb", 2000 * unit.Pound, Imperial},
	{"lb", 2240 * unit.Pound, Imperial},
	{"kg", 1000 * unit.Kilogram, Metric},
}

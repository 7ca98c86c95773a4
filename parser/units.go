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

// unitsTyped has every spelling, in lower case.
var unitsTyped = spell(map[*unitWord][]string{
	{dim: dimLength, factor: float64(unit.Inch), system: Imperial, fine: true}: {"in", "ins", "inch", "inches", "inchs", "incher", `"`, "”", "“", "″", "''", "’’", "′′"},
	{dim: dimLength, factor: float64(unit.Foot), system: Imperial}:             {"ft", "fts", "foot", "feet", "feets", "footer", "'", "’", "‘", "′"},
	{dim: dimLength, factor: float64(unit.Yard), system: Imperial}:             {"yd", "yds", "yard", "yards"},
	{dim: dimLength, factor: float64(unit.Centimetre), system: Metric, fine: true}: {
		"cm", "cms", "centimetre", "centimetres", "centimeter", "centimeters"},
	{dim: dimLength, factor: float64(unit.Millimetre), system: Metric, fine: true}: {
		"mm", "mms", "millimetre", "millimetres", "millimeter", "millimeters"},
	{dim: dimLength, factor: float64(unit.Metre), system: Metric}:       {"m", "mtr", "mtrs", "metre", "metres", "meter", "meters"},
	{dim: dimMass, factor: float64(unit.Pound), system: Imperial}:       {"lb", "lbs", "pound", "pounds", "#"},
	{dim: dimMass, factor: float64(unit.Kilogram), system: Metric}:      {"kg", "kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes"},
	{dim: dimMass, factor: float64(unit.Tonne), system: Metric}:         {"t", "tonne", "tonnes"},
	{dim: dimMass, unsure: true}:                                        {"ton", "tons"},
	{dim: dimForce, factor: float64(unit.Newton), system: Metric}:       {"n", "newton", "newtons"},
	{dim: dimForce, factor: float64(unit.Kilonewton), system: Metric}:   {"kn", "kilonewton", "kilonewtons"},
	{dim: dimForce, factor: 10, system: Metric}:                         {"dan"},
	{dim: dimForce, factor: float64(unit.PoundForce), system: Imperial}: {"lbf"},
	{dim: dimForce, factor: unit.StandardGravity, system: Metric}:       {"kgf"},
	{dim: dimAngle, factor: 1}:                                          {"°", "º", "deg", "degs", "degree", "degrees"},
})

func spell(in map[*unitWord][]string) map[string]*unitWord {
	out := make(map[string]*unitWord)
	for u, words := range in {
		for _, w := range words {
			out[w] = u
		}
	}
	return out
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

package unit_test

import (
	"math"
	"testing"

	"heft/calc/unit"
)

func TestConversions(t *testing.T) {
	// NIST Special Publication 811, appendix B.8, to the places it prints.
	for _, test := range []struct {
		name            string
		got, want, tail float64
	}{
		{"feet in a metre", unit.Metre.Feet(), 3.280840, 1e-6},
		{"inches in a metre", unit.Metre.Inches(), 39.37008, 1e-5},
		{"feet in a yard", unit.Yard.Feet(), 3, 1e-12},
		{"pounds in a kilogram", unit.Kilogram.Pounds(), 2.204623, 1e-6},
		{"newtons in a pound-force", float64(unit.PoundForce), 4.448222, 1e-6},
		{"pounds-force in a kilonewton", unit.Kilonewton.Pounds(), 224.8089, 1e-4},
		{"kg/m³ in a pound per cubic foot", float64(unit.PoundPerCubicFoot), 16.01846, 1e-5},
		{"m³ in a cubic foot", float64(unit.CubicFoot), 0.02831685, 1e-8},
		{"degrees in a radian", unit.Radian.Degrees(), 57.29578, 1e-5},
		{"newtons of a tonne", float64(unit.Tonne.Weight()), 9806.65, 1e-9},
		{"kilograms held by a kilonewton", float64(unit.Kilonewton.Held()), 101.9716, 1e-4},
	} {
		if math.Abs(test.got-test.want) > test.tail {
			t.Errorf("%s: got %v, want %v", test.name, test.got, test.want)
		}
	}
}

func TestWaterWeighsATonneACubicMetre(t *testing.T) {
	if got := unit.Density(1000).Of(1); got != unit.Tonne {
		t.Errorf("got %v kg", float64(got))
	}
}

func TestRange(t *testing.T) {
	said := unit.Range[unit.Length]{Low: 14 * unit.Inch, High: 16 * unit.Inch}
	if said.Single() || said.IsZero() || math.Abs(said.Middle().Inches()-15) > 1e-12 {
		t.Errorf("%+v", said)
	}
	if exact := unit.Exactly(unit.Foot); !exact.Single() || exact.IsZero() || exact.Middle() != unit.Foot {
		t.Errorf("%+v", exact)
	}
	var unsaid unit.Range[unit.Length]
	if !unsaid.IsZero() {
		t.Error("a range left out is said")
	}
	if half := (unit.Range[unit.Length]{High: 3}); half.IsZero() {
		t.Error("half a range is left out")
	}
	if none := unit.Exactly(unit.Length(math.NaN())); none.IsZero() {
		t.Error("no number is a range left out, and would go unchecked")
	}
}

package piece_test

import (
	"math"
	"testing"

	"heft/calc/piece"
	"heft/calc/unit"
)

func TestVolumes(t *testing.T) {
	const inch, foot, cm = unit.Inch, unit.Foot, unit.Centimetre
	for _, test := range []struct {
		name            string
		got             unit.Volume
		want, tolerance float64
		of              unit.Volume
	}{
		// University of Missouri forestry page: cone frustum.
		{"frustum of 12 and 10 in, 16 ft", piece.Frustum(12*inch, 10*inch, 16*foot), 10.588, 0.001, unit.CubicFoot},
		{"frustum of 29 and 25 cm, 5 m", piece.Frustum(29*cm, 25*cm, 5), 0.286801, 1e-6, 1},
		// The same page's rules for a middle of 11 in: Huber, and Newton,
		// which for a cone's middle is the cone.
		{"cylinder of 11 in, 16 ft", piece.Cylinder(11*inch, 16*foot), 10.559, 0.001, unit.CubicFoot},
		{"newton of 12, 11 and 10 in, 16 ft", piece.Newton(12*inch, 11*inch, 10*inch, 16*foot), 10.588, 0.001, unit.CubicFoot},
		// Korean forestry examination notes, Huber; printed with π as 3.14
		// and the decimal point lost.
		{"cylinder of 40 cm, 10 m", piece.Cylinder(40*cm, 10), 1.257, 0.002, 1},
		// UK tree-surgery training article, which rounds π to 3 and prints
		// 1.5; exactly π/2.
		{"cylinder of 1 m, 2 m", piece.Cylinder(1, 2), 1.571, 0.001, 1},
		// Newton's rule is exact for a paraboloid, half its cylinder, and a
		// neiloid, a quarter (from memory).
		{"newton of a paraboloid", piece.Newton(1, unit.Length(math.Sqrt(0.5)), 0, 4), math.Pi / 2, 1e-9, 1},
		{"newton of a neiloid", piece.Newton(1, unit.Length(math.Sqrt(0.125)), 0, 4), math.Pi / 4, 1e-9, 1},
	} {
		if got := float64(test.got / test.of); math.Abs(got-test.want) > test.tolerance {
			t.Errorf("%s: got %.6f, want %.6f", test.name, got, test.want)
		}
	}
}

func TestFrustumLiesBelowSmalian(t *testing.T) {
	// Smalian's rule, the mean of the end areas, overstates a tapering log.
	// Its printed volumes are ceilings here: University of Missouri (10.647
	// ft³, 0.287848 m³), Korean forestry examination notes (0.128 m³).
	for _, test := range []struct {
		butt, tip, length unit.Length
		smalian           unit.Volume
	}{
		{12 * unit.Inch, 10 * unit.Inch, 16 * unit.Foot, 10.647 * unit.CubicFoot},
		{0.29, 0.25, 5, 0.287848},
		{0.20, 0.12, 6, 0.128},
	} {
		got := piece.Frustum(test.butt, test.tip, test.length)
		if got >= test.smalian || got < 0.95*test.smalian {
			t.Errorf("frustum %.6f m³ against Smalian's %.6f", float64(got), float64(test.smalian))
		}
	}
}

func TestBalancePoints(t *testing.T) {
	for _, test := range []struct {
		name            string
		got             unit.Length
		want, tolerance float64
	}{
		// Standard geometry, worked from memory: radii 0.25 and 0.15 m.
		{"frustum", piece.FrustumBalance(0.50, 0.30, 4), 1.673, 0.001},
		// Limits of geometry.
		{"frustum that is a cylinder", piece.FrustumBalance(0.4, 0.4, 4), 2, 1e-9},
		{"frustum that is a cone", piece.FrustumBalance(0.4, 0, 4), 1, 1e-9},
		{"newton of a cylinder", piece.NewtonBalance(0.4, 0.4, 0.4, 4), 2, 1e-9},
		{"newton of a cone", piece.NewtonBalance(0.4, 0.2, 0, 4), 1, 1e-9},
		{"newton of a paraboloid", piece.NewtonBalance(1, unit.Length(math.Sqrt(0.5)), 0, 3), 1, 1e-9},
		// The frustum above with its middle measured.
		{"newton of a frustum", piece.NewtonBalance(0.50, 0.40, 0.30, 4), 1.673, 0.001},
	} {
		if got := float64(test.got); math.Abs(got-test.want) > test.tolerance {
			t.Errorf("%s: got %.4f m, want %.4f", test.name, got, test.want)
		}
	}
	// A limb lies between a paraboloid, L/3, and a cylinder, L/2.
	if got := piece.LimbBalance(6); got <= 2 || got >= 3 {
		t.Errorf("limb of 6 m: %v m", float64(got))
	}
}

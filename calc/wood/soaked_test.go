package wood_test

import (
	"math"
	"os"
	"strings"
	"testing"

	"heft/calc/published"
	"heft/calc/wood"
)

// Global Wood Density Database: the heaviest printed for each tree, rounded up
// to 0.001, and no other tree has one.
func TestOwnWoodIsAsPrinted(t *testing.T) {
	printed := map[string]float64{}
	for _, row := range published.Rows(t, os.DirFS("testdata"), "basic_density.csv") {
		printed[row[0]] = published.Number(t, row[1])
	}
	if len(printed) != 87 {
		t.Errorf("%d trees, want 87", len(printed))
	}
	for _, r := range wood.All() {
		want := printed[r.Scientific]
		if off := r.OwnSG - want; off < -1e-9 || off >= 0.001 {
			t.Errorf("%s: %v, printed %v", r.Scientific, r.OwnSG, want)
		}
		if r.OwnSG > 0 && r.Basis == wood.Species {
			t.Errorf("%s: its figures are its own already", r.Scientific)
		}
	}
}

// Printed green densities of the densest trees, with the basic density beside
// them: no living tree is heavier than its wood soaked.
func TestSoakedIsNoLighterThanPrintedGreen(t *testing.T) {
	rows := published.Rows(t, os.DirFS("testdata"), "green_and_basic.csv")
	if len(rows) != 2 {
		t.Errorf("%d rows, want 2", len(rows))
	}
	for _, row := range rows {
		green, basic := published.Number(t, row[1]), published.Number(t, row[2])
		soaked := float64(wood.Row{OwnSG: basic / 1000}.Soaked())
		if soaked < green || soaked > 1.15*green {
			t.Errorf("%s: soaked %.0f kg/m³, printed green %.0f", row[0], soaked, green)
		}
	}
}

func TestSoakedByHand(t *testing.T) {
	// 0.77 g of wood of 1.54 g/cm³ fills half of a cm³, and 0.5 g of water the
	// other half; a wood without pores holds none.
	for sg, want := range map[float64]float64{0.77: 1270, 1.54: 1540, 0: 0} {
		if got := float64(wood.Row{OwnSG: sg}.Soaked()); math.Abs(got-want) > 0.01 {
			t.Errorf("%v: %.2f kg/m³, want %v", sg, got, want)
		}
	}
}

// A genus is soaked as its heaviest tree, and so are all hardwoods.
func TestWhatIsLessKnownIsNoLighterSoaked(t *testing.T) {
	any := find(t, wood.AnyHardwood)
	for _, name := range []string{"Eucalyptus", "Casuarina", "Prosopis", "Tabebuia", "Nothofagus", "Metrosideros", "Quercus"} {
		whole := find(t, name+" spp.")
		for _, r := range wood.All() {
			if strings.HasPrefix(r.Scientific, name+" ") && r.Soaked() > whole.Soaked() {
				t.Errorf("%s: %.0f kg/m³, %s %.0f", r.Scientific, float64(r.Soaked()), whole.Scientific, float64(whole.Soaked()))
			}
		}
		if whole.Soaked() < 1000 || whole.Soaked() > any.Soaked() {
			t.Errorf("%s: %.0f kg/m³, any hardwood %.0f", name, float64(whole.Soaked()), float64(any.Soaked()))
		}
	}
	// Red ironbark, 0.93849 in the database: 1329 kg/m³.
	if got := float64(find(t, "Eucalyptus sideroxylon").Likely()); got < 1200 || got > 1330 {
		t.Errorf("a red ironbark is likely %.0f kg/m³", got)
	}
	if r := find(t, "Quercus alba"); r.Soaked() != 0 || r.Likely() != r.Green() {
		t.Errorf("white oak was measured green: %.0f, %.0f", float64(r.Soaked()), float64(r.Likely()))
	}
}

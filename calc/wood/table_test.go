package wood_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"heft/calc/wood"
)

func TestTableIsPhysical(t *testing.T) {
	rows := wood.All()
	if len(rows) != 492+75 {
		t.Errorf("%d rows, want the 492 of the species table and 75 more", len(rows))
	}
	for _, r := range rows {
		// The lightest wood of all is balsa at about 0.1, the wall of a wood
		// cell has 1.5, and soaked pith holds three times its own mass (from
		// memory).
		if r.WoodSG < 0.1 || r.WoodSG > 1.5 || r.BarkSG < 0.1 || r.BarkSG > 1.5 {
			t.Errorf("%s: specific gravity %v, bark %v", r.Scientific, r.WoodSG, r.BarkSG)
		}
		if r.WoodMoisture < 12 || r.WoodMoisture > 300 || r.BarkMoisture < 12 || r.BarkMoisture > 300 {
			t.Errorf("%s: moisture %v, bark %v", r.Scientific, r.WoodMoisture, r.BarkMoisture)
		}
		if r.BarkOfWood <= 0 || r.BarkOfWood > 40 {
			t.Errorf("%s: bark is %v %% of the wood", r.Scientific, r.BarkOfWood)
		}
		if r.Common == "" || strings.TrimSpace(r.Scientific) != r.Scientific || !strings.Contains(r.Scientific, " ") {
			t.Errorf("names %q and %q", r.Common, r.Scientific)
		}
		if !(r.Light() <= r.Green() && r.Green() <= r.Heavy() && r.Green() <= r.Likely()) || r.AirDry() > r.Green() {
			t.Errorf("%s: light %v, green %v, heavy %v, air-dry %v", r.Scientific, r.Light(), r.Green(), r.Heavy(), r.AirDry())
		}
	}
}

func TestFindReturnsWhatAllLists(t *testing.T) {
	for _, want := range wood.All() {
		if got, ok := wood.Find(want.Scientific); !ok || got != want {
			t.Errorf("%s: got %+v", want.Scientific, got)
		}
	}
	for _, name := range []string{"", "Quercus", "quercus rubra", "Quercus rubra ", "red oak"} {
		if r, ok := wood.Find(name); ok || r != (wood.Row{}) {
			t.Errorf("%q found %s", name, r.Scientific)
		}
	}
}

func TestAllIsTheCallers(t *testing.T) {
	rows := wood.All()
	rows[0].WoodSG = 99
	if again := wood.All(); again[0].WoodSG == 99 {
		t.Error("a caller can change the table")
	}
}

func TestGenusCoversItsSpecies(t *testing.T) {
	for _, genus := range []string{"Quercus", "Acer", "Pinus", "Picea", "Populus", "Eucalyptus"} {
		whole := find(t, genus+" spp.")
		for _, r := range wood.All() {
			if strings.HasPrefix(r.Scientific, genus+" ") && (r.Heavy() > whole.Heavy() || r.Light() < whole.Light()) {
				t.Errorf("%s lies outside %s", r.Scientific, whole.Scientific)
			}
		}
	}
	// Live oak and canyon live oak are the heavy oaks of the forest service's
	// table: "some oak" must be planned on them.
	if oak, canyon := find(t, "Quercus spp."), find(t, "Quercus chrysolepis"); oak.Heavy() != canyon.Green() {
		t.Errorf("heavy oak %v kg/m³, canyon live oak %v", float64(oak.Heavy()), float64(canyon.Green()))
	}
}

func TestGenusCoversGuideSpeciesWithoutARow(t *testing.T) {
	// German guide: trees it lists and our table does not know.
	for genus, guide := range map[string]float64{
		"Abies":    925,  // Abies alba
		"Castanea": 1070, // Castanea sativa
		"Pinus":    775,  // Pinus cembra
		"Populus":  825,  // Populus tremula
		"Sorbus":   1015, // Sorbus torminalis
		"Tilia":    825,  // Tilia platyphyllos
	} {
		if r := find(t, genus+" spp."); float64(r.Heavy()) < guide {
			t.Errorf("%s: heavy %v kg/m³, the guide has %v", r.Scientific, float64(r.Heavy()), guide)
		}
	}
}

func TestPalmsAreRefused(t *testing.T) {
	// Forest service reference table: its three palms carry the hardwood
	// default; so does the row of all other palms.
	palms := []string{"Arecaceae spp.", "Phoenix canariensis", "Sabal palmetto", "Washingtonia robusta"}
	for _, r := range wood.All() {
		err := r.Weighable()
		if slices.Contains(palms, r.Scientific) != (err != nil) {
			t.Errorf("%s: %v", r.Scientific, err)
		}
		if u, ok := errors.AsType[*wood.Unweighable](err); err != nil && (!ok || u.Scientific != r.Scientific) {
			t.Errorf("%s: %v is not an Unweighable for it", r.Scientific, err)
		}
	}
}

func TestBasis(t *testing.T) {
	count := map[wood.Basis]int{}
	for _, r := range wood.All() {
		count[r.Basis]++
	}
	// Forest service reference table: 157 rows cite a measurement of the
	// species; 73 others carry the default of all softwoods or hardwoods. Of
	// the 75 trees that it lacks, eight have a genus there: four oaks, a pine
	// and three mesquites.
	if count[wood.Species] != 157 || count[wood.GroupDefault] != 73+67 || count[wood.GenusAverage] != 492-157-73+8 {
		t.Errorf("%v", count)
	}
}

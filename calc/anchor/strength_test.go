package anchor_test

import (
	"errors"
	"math"
	"strings"
	"testing"

	"heft/calc/anchor"
	"heft/calc/wood"
)

func strengthOf(t *testing.T, scientific string) anchor.Strength {
	t.Helper()
	s, err := anchor.StrengthOf(scientific)
	if err != nil {
		t.Fatalf("%s: %v", scientific, err)
	}
	return s
}

func TestTableIsPhysical(t *testing.T) {
	rows := anchor.Strengths()
	if len(rows) != 112 {
		t.Errorf("%d rows, want 112", len(rows))
	}
	found := 0
	for _, r := range rows {
		// Green clear wood runs from about 25 MPa, the lightest poplars, to
		// 95, black locust (from memory).
		if r.Bending < 25*anchor.Megapascal || r.Bending > 95*anchor.Megapascal {
			t.Errorf("%s: %v MPa", r.Scientific, float64(r.Bending/anchor.Megapascal))
		}
		if r.Common == "" || r.Source == "" || r.Basis != anchor.OfSpecies {
			t.Errorf("%+v", r)
		}
		if _, ok := wood.Find(r.Scientific); !ok {
			t.Errorf("%s is not among the trees we weigh", r.Scientific)
		}
		if r.Status == anchor.Found {
			found++
		}
	}
	if found != 23 {
		t.Errorf("%d rows were read in their source, want 23", found)
	}
	rows[0].Bending = 1
	if anchor.Strengths()[0].Bending == 1 {
		t.Error("a caller can change the table")
	}
}

func TestPublishedStrengths(t *testing.T) {
	for scientific, want := range map[string]struct {
		mpa    float64
		status anchor.Status
	}{
		// ASTM D2555, unseasoned averages.
		"Tsuga canadensis": {44.3, anchor.Found}, "Abies concolor": {40.4, anchor.Found}, "Taxodium distichum": {45.8, anchor.Found},
		// Wood Handbook FPL-GTR-190, table 5-3a. Redwood is there twice: the
		// young-growth is the weaker.
		"Pinus ponderosa": {35, anchor.Found}, "Pinus strobus": {34, anchor.Memory}, "Sequoia sempervirens": {41, anchor.Found},
		// Listed by both: 60 and 59.9.
		"Pinus elliottii": {59.9, anchor.Found},
		// The same handbook, from memory.
		"Quercus rubra": {57, anchor.Memory}, "Acer saccharum": {65, anchor.Memory},
	} {
		s := strengthOf(t, scientific)
		if math.Abs(float64(s.Bending/anchor.Megapascal)-want.mpa) > 1e-9 || s.Status != want.status || s.Basis != anchor.OfSpecies {
			t.Errorf("%s: %+v", scientific, s)
		}
	}
	// What was recalled with doubt says so.
	if s := strengthOf(t, "Quercus robur"); !strings.Contains(s.Note, "check before use") {
		t.Errorf("English oak: %+v", s)
	}
}

func TestGenusIsItsWeakest(t *testing.T) {
	for asked, want := range map[string]string{
		"Acer spp.":        "Acer saccharinum",
		"Acer campestre":   "Acer saccharinum", // weighed, but not listed here
		"Picea abies":      "Picea engelmannii",
		"Populus nigra":    "Populus balsamifera",
		"Quercus spp.":     "Quercus falcata",
		"Ulmus parvifolia": "Ulmus americana",
	} {
		s := strengthOf(t, asked)
		if s.Scientific != want || s.Basis != anchor.WeakestOfGenus || s.Status == "" {
			t.Errorf("%s: %+v, want %s", asked, s, want)
		}
	}
	for _, r := range anchor.Strengths() {
		genus, _, _ := strings.Cut(r.Scientific, " ")
		if whole := strengthOf(t, genus+" spp."); whole.Bending > r.Bending {
			t.Errorf("%s is weaker than %s", r.Scientific, genus)
		}
	}
}

func TestNoStrength(t *testing.T) {
	// Osage-orange is listed for compression only.
	for _, scientific := range []string{"Maclura pomifera", "Eucalyptus globulus", "Sabal palmetto", "", "oak"} {
		s, err := anchor.StrengthOf(scientific)
		if u, ok := errors.AsType[*anchor.Unscreenable](err); !ok || u.Why == "" || s != (anchor.Strength{}) {
			t.Errorf("%q: %+v, %v", scientific, s, err)
		}
	}
}

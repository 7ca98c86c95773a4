package reader_test

import (
	"testing"

	"heft/parser"
)

func TestATreeIsCalledInALanguage(t *testing.T) {
	for _, c := range []struct {
		name, scientific, language, want string
		known                            bool
	}{
		{"roble rojo", "Quercus rubra", "en", "red oak", true}, {"red oak", "Quercus rubra", "es", "roble rojo", true},
		{"northern red oak", "Quercus rubra", "en", "northern red oak", true}, {"northern red oak", "Quercus rubra", "es", "roble rojo", true},
		{"encino", "Quercus spp.", "es", "encino", true}, {"encino", "Quercus spp.", "en", "oak", true},
		{"maple", "Acer spp.", "es", "arce", true}, {"fresno", "Fraxinus spp.", "en", "ash", true}, {"willow", "Salix spp.", "es", "sauce", true},
		{"Quercus rubra", "Quercus rubra", "en", "Quercus rubra", true}, {"Quercus rubra", "Quercus rubra", "es", "roble rojo", true},
		{"shagbark hickory", "Carya ovata", "es", "shagbark hickory", false}, {"yew tree", "Nothing known", "es", "yew tree", true},
		{"broadleaf", "Magnoliopsida spp.", "es", "madera dura", true}, {"aguacate", "Persea americana", "en", "aguacate", false},
	} {
		s := parser.Species{Scientific: c.scientific, Name: c.name}
		if got, known := s.In(c.language); got != c.want || known != c.known {
			t.Errorf("%s (%s) in %s: %q, %v, want %q", c.name, c.scientific, c.language, got, known, c.want)
		}
	}
}

// TestWhatATreeIsCalledMeansIt reads the name that a tree is called by in the
// other language: it is the same tree, or a word that is asked about with the
// tree in it.
func TestWhatATreeIsCalledMeansIt(t *testing.T) {
	r := newReader(t)
	n := 0
	for _, p := range readCorpora(t) {
		q, err := r.Read(p.text)
		if err != nil || q.Species == nil {
			continue
		}
		for _, tag := range []string{"en", "es"} {
			name, _ := q.Species.Value.In(tag)
			again, err := r.Read(name)
			if err != nil { // a genus is asked about: which of them?
				name = map[string]string{"en": "any ", "es": "cualquier "}[tag] + name
				again, err = r.Read(name)
			}
			if err != nil || again.Species == nil || again.Species.Value.Scientific != q.Species.Value.Scientific {
				t.Errorf("%s: %q is called %q in %s, which is %v, %v", p.at, q.Species.Value.Name, name, tag, again.Species, err)
			}
			n++
		}
	}
	if n < 500 {
		t.Errorf("only %d names were read", n)
	}
}

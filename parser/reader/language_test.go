package reader_test

import (
	"strings"
	"testing"

	"heft/parser"
)

// TestLanguageIsThatOfMostWords wants every phrasing in the language of its
// corpus, unless its meaning says another or none. English sizes and a Latin
// name tell none, so that an English phrasing may have none.
func TestLanguageIsThatOfMostWords(t *testing.T) {
	r := newReader(t)
	for _, p := range readCorpora(t) {
		q, _ := r.Read(p.text)
		want := p.language
		if p.want.language != "" {
			want = strings.TrimPrefix(p.want.language, "none")
		}
		if q.Language != want && !(p.language == "en" && q.Language == "") {
			t.Errorf("%s: %q is in %q, want %q", p.at, p.text, q.Language, want)
		}
	}
}

// TestAsksHaveALanguageToo wants to know the language of what is asked back
// or refused.
func TestAsksHaveALanguageToo(t *testing.T) {
	r := newReader(t)
	for text, want := range map[string]string{
		"rama de encino 14 pulgadas": "es",
		"cables de luz":              "es",
		"auxilio, se cayó":           "es",
		"oak limb 14 in":             "en",
		"he is hurt":                 "en",
		"no":                         "",
		"14":                         "",
		"hitched at 35 ft, mi amigo y yo en la luz": "es",
	} {
		q, err := r.Read(text)
		if asked(t, err); q.Language != want {
			t.Errorf("%q is in %q, want %q", text, q.Language, want)
		}
	}
}

// TestTreesAreNamedInTheLanguage wants a tree to be called by a name of the
// message's language where there is one that is the tree's alone.
func TestTreesAreNamedInTheLanguage(t *testing.T) {
	r := newReader(t)
	for text, want := range map[string]string{
		"rama de roble rojo de 14 pulgadas":                 "roble rojo",
		"la rama es de red oak, 14 pulgadas":                "roble rojo",
		"rama de quercus rubra de 14 pulgadas":              "roble rojo",
		"rama de roble americano de 14 pulgadas":            "roble americano",
		"la rama de shagbark hickory es de 14 pulgadas":     "shagbark hickory",
		"how heavy is a 14 in red oak limb":                 "red oak",
		"how heavy is a limb of roble rojo that is 14 in":   "red oak",
		"how heavy is a 14 in northern red oak limb":        "northern red oak",
		"how heavy is a 14 in quercus rubra limb":           "Quercus rubra",
		"quercus rubra 14 in":                               "Quercus rubra",
		"cuánto pesa un tronco de cualquier pino de 20 cm":  "pino",
		"cuánto pesa un tronco de abeto rojo de 20 cm":      "abeto rojo",
		"cuánto pesa un tronco de norway spruce de 20 cm":   "abeto rojo",
		"el tronco de white oak mide 20 cm, cuánto pesa":    "roble blanco",
		"el tronco de scarlet oak mide 20 cm, cuánto pesa":  "roble escarlata",
		"el tronco de sawtooth oak mide 20 cm, cuánto pesa": "sawtooth oak",
		"el tronco de silver maple mide 20 cm, cuánto pesa": "arce plateado",
	} {
		q, err := r.Read(text)
		if err != nil || q.Species == nil || q.Species.Value.Name != want {
			t.Errorf("%q: %v, %v, want %q", text, q.Species, err, want)
		}
	}
}

// TestTreesAreAskedBackInTheLanguage wants the choices of "which tree?" to be
// words that, typed, are read as that tree.
func TestTreesAreAskedBackInTheLanguage(t *testing.T) {
	r := newReader(t)
	for text, want := range map[string]string{
		"rama de encino de 14 pulgadas": "cualquier encino",
		"rama de roble de 14 pulgadas":  "cualquier roble",
		"oak limb that is 14 in":        "any oak",
	} {
		_, err := r.Read(text)
		ask := asked(t, err)
		if last := ask.Choices[len(ask.Choices)-1]; ask.Kind != parser.WhichTree || last.Words != want {
			t.Errorf("%q: %v, last choice %q, want %q", text, ask, last.Words, want)
		}
		for _, c := range ask.Choices {
			if q, err := r.Read(c.Words); err != nil || q.Species == nil || q.Species.Value.Scientific != c.Scientific {
				t.Errorf("%q: the choice %q is read as %v, %v; want %s", text, c.Words, q.Species, err, c.Scientific)
			}
		}
	}
}

package reader_test

import (
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// around are numbers that are neither the piece's nor the hitch's.
var around = map[string][]string{"en": {
	"climber at 40 ft", "climber 40 ft up", "climber is at 40 ft", "im at 40 ft", "tied in at 45 ft",
	"roof at 12 ft", "roof is 12 ft up", "roof: 12 ft", "6 ft above the roof", "35 ft over the roof", "over a 12 ft roof",
	"10 ft to the fence", "over an 8 ft fence", "fence 6 ft high", "over a 6 ft high fence", "6 ft tall fence",
	"house is 30 ft away", "20 ft from the house", "20 ft from my house", "house 30 ft away", "30 ft away from the garage",
	"drop zone 30 ft", "30 ft drop zone", "drop zone is 30 ft", "12 ft wide driveway", "driveway 12 ft wide",
	"80 ft tree", "80 ft tall", "tree height 80 ft", "10 ft of brush", "3 ft clearance",
	"24 in bar", "200 lb climber", "climber weighs 200 lb", "rope is 5000 lb",
	"5 ft above me", "10 ft below it", "lower it 30 ft", "5 kn on the block",
	"redirect at 45 ft", "2 guys in the tree", "1 in of bark", "30 ft crane", "5 ft from the tip",
	"4 ft above the limb", "block 4 ft above the limb", "with a 4 ft sling",
	"1 ft below the cut", "chipper weighs 5000 lb", "rope holds 5000 lb", "hand force 60 lb", "3 ft ground clearance",
	"distance to the house 20 ft", "tie in point 50 ft", "10 ft past the gutter", "8 ft from the drum", "6 ft over him",
}, "es": {
	"trepador a 40 pies", "el trepador está a 40 pies", "estoy a 40 pies", "ando a 40 pies", "el techo está a 12 pies", "techo a 12 pies",
	"techo: 12 pies", "6 pies arriba del techo", "sobre un techo de 12 pies", "a 10 pies de la barda", "10 pies de la barda", "barda de 6 pies",
	"sobre una barda de 6 pies", "una cerca de 6 pies", "sobre una cerca de madera de 6 pies", "la casa está a 30 pies", "a 20 pies de la casa",
	"20 pies de mi casa", "a 30 pies del garaje", "zona de caída a 30 pies", "la zona de caída está a 30 pies", "la entrada mide 12 pies",
	"el árbol mide 80 pies", "árbol de 80 pies", "altura del árbol 80 pies", "10 pies de follaje", "3 pies de espacio",
	"espada de 24 pulgadas", "el trepador pesa 200 libras", "trepador de 200 libras", "la cuerda aguanta 5000 libras",
	"puedo aguantar 60 libras", "5 pies arriba de mí", "10 pies debajo de él", "bajarla 30 pies", "5 kn en la polea",
	"redirección a 45 pies", "2 hombres en el árbol", "1 pulgada de corteza", "grúa de 30 pies", "a 5 pies de la punta", "tambor a 3 pies",
	"4 pies arriba de la rama", "con una eslinga de 200 libras", "1 pie abajo del corte", "la astilladora pesa 5000 libras",
	"fuerza de mano 60 libras", "distancia a la casa 20 pies", "a 10 pies del techo", "8 pies del tambor", "a 6 pies del vecino",
}}

// TestSurroundingsAreNeverAnswered puts a number of the surroundings anywhere
// into a question that is whole or lacks something: it must be asked back,
// wherever it stands.
func TestSurroundingsAreNeverAnswered(t *testing.T) {
	r := newReader(t)
	facts := map[string][]string{
		"en": {"red oak limb", "14 in", "22 ft", "hitched at 35 ft", "3 wraps", "2 guys on the rope", "120 ft of rope"},
		"es": {"rama de roble rojo", "14 pulgadas", "22 pies", "amarrada a 35 pies", "3 vueltas", "dos hombres en la cuerda", "120 pies de cuerda"},
	}
	rapid.Check(t, func(t *rapid.T) {
		language := rapid.SampledFrom(tongues).Draw(t, "language")
		said := facts[language]
		n := rapid.IntRange(1, len(said)).Draw(t, "n")
		parts := rapid.Permutation(said).Draw(t, "said")[:n]
		at := rapid.IntRange(0, n).Draw(t, "at")
		odd := rapid.SampledFrom(around[language]).Draw(t, "around")
		var b strings.Builder
		for i := 0; i <= n; i++ {
			switch {
			case i < at:
				b.WriteString(parts[i])
			case i == at:
				b.WriteString(odd)
			default:
				b.WriteString(parts[i-1])
			}
			b.WriteString(rapid.SampledFrom([]string{", ", ". ", ands[language], " "}).Draw(t, "pause"))
		}
		text := strings.TrimRight(b.String(), ",. ")
		if q, err := r.Read(text); err == nil {
			t.Fatalf("%q is answered: %s", text, meant(q))
		}
	})
}

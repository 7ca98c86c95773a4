package reader_test

import (
	"slices"
	"testing"
)

// What each piece of a line is read as: its tree, how many there are, its units, and
// what it is held against.
func TestPiecesOfALine(t *testing.T) {
	r := newReader(t)
	for text, want := range map[string][]string{
		"red oak 14 in x 6 ft, 12 x 8, white pine 16 x 10": {
			"red oak  14 in x 6 ft", "red oak  12 in x 8 ft", "white pine  16 in x 10 ft"},
		"14 in x 6 ft red oak, 12 in x 8 ft white pine": {
			"red oak  14 in x 6 ft", "white pine  12 in x 8 ft"},
		"2 red oak logs 14 in x 5 ft, 4 white pine logs 12 in x 6 ft, total": {
			"2 red oak logs 14 in x 5 ft", "4 white pine logs 12 in x 6 ft"},
		"log 1 red oak 14 by 5 ft, log 2 red oak 17 by 5": {
			"red oak log 14 in x 5 ft", "red oak log 17 in x 5 ft"},
		"white ash 22 in by 4 ft, white ash 24 in by 4 ft, which one is over 600 lb": {
			"max 600 lb, white ash  22 in x 4 ft", "max 600 lb, white ash  24 in x 4 ft"},
		"3 cuts left on the spar, 52cm, 48 and 45, 1.3m each, white ash. which ones go over 300 kilos": {
			"max 300 kilos, white ash 52 cm x 1.3m", "max 300 kilos, white ash 48 cm x 1.3m", "max 300 kilos, white ash 45 cm x 1.3m"},
		"Manitoba maple limb, forked, 25 cm and 20 cm, both about 5 m, how heavy together": {
			"Manitoba maple limb 25 cm x 5 m", "Manitoba maple limb 20 cm x 5 m"},
		"dos ramas de fresno blanco, 25 cm y 20 cm, las dos de 5 m, cuanto pesan juntas": {
			"fresno blanco limb 25 cm x 5 m", "fresno blanco limb 20 cm x 5 m"},
		"american elm log 20in 4ft n 18in 6ft wich heavyer": {
			"american elm log 20in 4ft", "american elm 18in 6ft log"},
	} {
		q, err := r.Read(text)
		var got []string
		for _, p := range q.Pieces {
			got = append(got, p.Value)
		}
		if err != nil || !slices.Equal(got, want) {
			t.Errorf("%q:\n  got  %q, %v\n  want %q", text, got, err, want)
		}
	}
}

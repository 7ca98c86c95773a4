package reader_test

import (
	"slices"
	"testing"
)

// Pieces that are told whole, one after the other, are each read by themselves; what is
// told of none of them, or may be of both, is not divided.
func TestPiecesEachTold(t *testing.T) {
	r := newReader(t)
	for text, want := range map[string][]string{
		"red oak limb 14 in 22 ft and a white ash log 12 in 8 ft":    {"red oak limb 14 in 22 ft", "a white ash log 12 in 8 ft"},
		"red oak limb 14 in 22 ft then a white pine top 8 in 20 ft":  {"red oak limb 14 in 22 ft", "a white pine top 8 in 20 ft"},
		"red oak limb 14 in 22 ft, and a white ash limb 12 in 18 ft": {"red oak limb 14 in 22 ft", "a white ash limb 12 in 18 ft"},
		"red oak log 14 in 6 ft. white ash log 12 in 8 ft":           {"red oak log 14 in 6 ft", "white ash log 12 in 8 ft"},
		"14 in red oak limb 22 ft hitched at 35 ft and a 12 in white ash log 8 ft hitched at 30 ft": {
			"14 in red oak limb 22 ft hitched at 35 ft", "a 12 in white ash log 8 ft hitched at 30 ft"},
		"how many wraps for a red oak log 14 in 6 ft and a white ash log 12 in 8 ft": {
			"how many wraps for a red oak log 14 in 6 ft", "how many wraps for a white ash log 12 in 8 ft"},
		"how many wraps for a 14 in red oak limb 22 ft and how much does a 12 in white ash log 8 ft weigh": {
			"how many wraps for a 14 in red oak limb 22 ft", "how much does a 12 in white ash log 8 ft weigh"},
		"rama de roble rojo 14 pulgadas 22 pies y un tronco de fresno blanco 12 pulgadas 8 pies": {
			"rama de roble rojo 14 pulgadas 22 pies", "un tronco de fresno blanco 12 pulgadas 8 pies"},

		"red oak log 14 in 6 ft hung from a white ash 12 in at 8 ft":                     nil,
		"red oak log 14 in 6 ft tied to a white ash log 12 in 8 ft":                      nil,
		"red oak log 14 in 6 ft and white ash log 12 in 8 ft, how many wraps":            nil,
		"red oak log 14 in 6 ft and white ash log 12 in 8 ft both on 3 wraps":            nil,
		"red oak log 14 in 6 ft and white ash log at 30 ft":                              nil,
		"roble rojo 14 pulgadas 6 pies colgado de un fresno blanco 12 pulgadas a 8 pies": nil,
	} {
		q, _ := r.Read(text)
		var got []string
		for _, p := range q.Pieces {
			got = append(got, p.Value)
		}
		if !slices.Equal(got, want) {
			t.Errorf("%q:\n  got  %q\n  want %q", text, got, want)
		}
	}
}

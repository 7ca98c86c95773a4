package reader_test

import (
	"testing"

	"heft/parser"
)

// TestWhatComesOffAToldPieceIsNoSizeOfIt: behind a piece whose length is told, its end comes
// off it. With its own thickness, or where nothing was told, the end is the piece.
func TestWhatComesOffAToldPieceIsNoSizeOfIt(t *testing.T) {
	r := newReader(t)
	for whole, ends := range map[string][]string{
		"water oak limb 15 in, 24 ft": {
			"and if I take the last 8 foot of brush off first by hand", "last 12 ft I can just fell, take that off",
			"cut the last 3 off", "knock 2 m off the tip",
		},
		"rama de roble rojo 40 cm, 8 m": {"quitándole los últimos 2 metros", "y si le quito 2 m de la punta"},
	} {
		before, err := r.Read(whole)
		if err != nil {
			t.Fatal(err)
		}
		for _, end := range ends {
			_, err := r.ReadAfter(end, before)
			if err == nil {
				t.Errorf("%q behind %q was read", end, whole)
			} else if a := asked(t, err); a.Kind != parser.Beyond || a.Danger != "rest" {
				t.Errorf("%q behind %q: %v %q, want it refused as what is left", end, whole, a, a.Danger)
			}
		}
		const own = "taking the last 8 ft off, red oak limb, 6 in at the cut"
		if q, err := r.ReadAfter(own, before); err != nil || !q.Has(parser.ButtDiameter) {
			t.Errorf("%q behind %q: %v", own, whole, err)
		}
	}
}

package piece_test

import (
	"testing"

	"heft/calc/piece"
	"heft/calc/unit"
	"heft/calc/wood"
)

func find(t testing.TB, scientific string) wood.Row {
	t.Helper()
	r, ok := wood.Find(scientific)
	if !ok {
		t.Fatalf("%s is not in the table", scientific)
	}
	return r
}

// water weighs 1000 kg/m³, bark and all.
var water = wood.Row{WoodSG: 0.5, WoodMoisture: 100}

// sizes is a piece of the given sizes to the point; 0 was not said.
func sizes(shape piece.Shape, row wood.Row, diameter, butt, mid, tip, length unit.Length) piece.Piece {
	return piece.Piece{Wood: row, Shape: shape,
		Diameter: unit.Exactly(diameter), Butt: unit.Exactly(butt), Mid: unit.Exactly(mid),
		Tip: unit.Exactly(tip), Length: unit.Exactly(length)}
}

func log(row wood.Row, diameter, length unit.Length) piece.Piece {
	return sizes(piece.Log, row, diameter, 0, 0, 0, length)
}

func limb(row wood.Row, butt, length unit.Length) piece.Piece {
	return sizes(piece.Limb, row, 0, butt, 0, 0, length)
}

func weigh(t interface {
	Helper()
	Fatalf(string, ...any)
}, p piece.Piece) piece.Weight {
	t.Helper()
	w, err := piece.Weigh(p)
	if err != nil {
		t.Fatalf("%v", err)
	}
	return w
}

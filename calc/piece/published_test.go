package piece_test

import (
	"encoding/csv"
	"os"
	"strconv"
	"testing"

	"heft/calc/piece"
	"heft/calc/unit"
	"heft/calc/wood"
)

// published reads a table of testdata; its source stands at its head. The
// column names come apart from the rows below.
func published(t *testing.T, name string) (head []string, rows [][]string) {
	t.Helper()
	file, err := os.Open("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	lines := csv.NewReader(file)
	lines.Comment = '#'
	all, err := lines.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if len(all) < 2 {
		t.Fatalf("%s holds no row", name)
	}
	return all[0], all[1:]
}

func number(t *testing.T, text string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

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

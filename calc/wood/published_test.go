package wood_test

import (
	"encoding/csv"
	"os"
	"strconv"
	"testing"

	"heft/calc/wood"
)

// published reads a table of testdata; its source stands at its head. It
// returns the rows below the line of column names.
func published(t *testing.T, name string) [][]string {
	t.Helper()
	file, err := os.Open("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	lines := csv.NewReader(file)
	lines.Comment = '#'
	rows, err := lines.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if len(rows) < 2 {
		t.Fatalf("%s holds no row", name)
	}
	return rows[1:]
}

func number(t *testing.T, text string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

func find(t *testing.T, scientific string) wood.Row {
	t.Helper()
	r, ok := wood.Find(scientific)
	if !ok {
		t.Fatalf("%s is not in the table", scientific)
	}
	return r
}

package reader_test

import (
	"encoding/csv"
	"os"
	"testing"

	"heft/parser"
	"heft/parser/reader"
)

// newReader returns a reader that knows the trees the desk knows. They are
// read from the table as text: the parser must not know what they weigh.
func newReader(t testing.TB) *reader.Reader {
	t.Helper()
	r, err := reader.New(knownTrees(t))
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func knownTrees(t testing.TB) []parser.Species {
	t.Helper()
	f, err := os.Open("../../calc/wood/species.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	table := csv.NewReader(f)
	table.Comment = '#'
	rows, err := table.ReadAll()
	if err != nil || len(rows) < 400 {
		t.Fatalf("the table of trees has %d rows: %v", len(rows), err)
	}
	var out []parser.Species
	for _, r := range rows[1:] {
		out = append(out, parser.Species{Name: r[0], Scientific: r[1]})
	}
	return append(out, parser.Species{Name: "hardwood", Scientific: "Magnoliopsida spp."},
		parser.Species{Name: "softwood", Scientific: "Pinopsida spp."})
}

package published

import (
	"encoding/csv"
	"io/fs"
	"strconv"
	"testing"
)

// Rows returns the rows of a table below its heading.
func Rows(t testing.TB, tables fs.FS, name string) [][]string {
	t.Helper()
	_, rows := Table(t, tables, name)
	return rows
}

// Table returns the heading of a table, and the rows below it.
func Table(t testing.TB, tables fs.FS, name string) (heading []string, rows [][]string) {
	t.Helper()
	file, err := tables.Open(name)
	if err != nil {
		t.Fatal(err)
	}
	defer func() { _ = file.Close() }()
	lines := csv.NewReader(file)
	lines.Comment = '#'
	all, err := lines.ReadAll()
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	if len(all) < 2 {
		t.Fatalf("%s holds no row", name)
	}
	return all[0], all[1:]
}

// Number reads one cell.
func Number(t testing.TB, cell string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(cell, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

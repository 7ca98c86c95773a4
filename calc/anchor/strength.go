package anchor

import (
	_ "embed"
	"encoding/csv"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"sync"
)

//go:embed strength.csv
var strengthCSV string

// table is read once. The file is part of the program, so a mistake in it is
// one of ours: it stops the tests, and never a crew's question.
var table = sync.OnceValue(func() []Strength {
	rows, err := read(strengthCSV)
	if err != nil {
		panic("anchor/strength.csv: " + err.Error())
	}
	return rows
})

// Stress is in pascals.
type Stress float64

// Megapascal is the unit of strength tables.
const Megapascal Stress = 1e6

// Status says how far a row of the table can be trusted.
type Status string

// The states.
const (
	Found  Status = "found"  // read in the source named
	Memory Status = "memory" // recalled: check before it is relied on
)

// Basis says whose strength a row is.
type Basis int

// The bases.
const (
	OfSpecies      Basis = iota // of the tree asked for
	WeakestOfGenus              // of the weakest tree listed in its genus
)

// Strength is the bending strength of one tree's clear green wood.
type Strength struct {
	Common, Scientific string
	Bending            Stress // modulus of rupture, free of knots
	Status             Status
	Source, Note       string
	Basis              Basis
}

// Unscreenable says that there is nothing to screen a stem with.
type Unscreenable struct{ Why string } // one short plain clause

// Error says it in plain English.
func (e *Unscreenable) Error() string { return "no figure for this anchor: " + e.Why }

// Strengths returns every row, in the order of the file. The slice is the
// caller's.
func Strengths() []Strength { return slices.Clone(table()) }

// StrengthOf returns the strength of a tree by its scientific name: its own,
// or that of the weakest tree listed in its genus. A tree listed twice has the
// weaker of its rows. Where the genus is not listed either the error is an
// *Unscreenable.
//
// Errors: pieces of one species vary by about 16 % to either side (standard
// deviation, from memory). A genus may hold weaker trees than those listed.
func StrengthOf(scientific string) (Strength, error) {
	genus, _, _ := strings.Cut(scientific, " ")
	var own, other *Strength
	for i, rows := 0, table(); i < len(rows); i++ {
		r := &rows[i]
		if r.Scientific == scientific {
			own = weaker(own, r)
		}
		if g, _, _ := strings.Cut(r.Scientific, " "); g == genus {
			other = weaker(other, r)
		}
	}
	switch {
	case own != nil:
		return *own, nil
	case other != nil:
		s := *other
		s.Basis = WeakestOfGenus
		return s, nil
	}
	return Strength{}, &Unscreenable{Why: "no bending strength is listed for the tree or its genus"}
}

func weaker(a, b *Strength) *Strength {
	if a == nil || b.Bending < a.Bending {
		return b
	}
	return a
}

// columns of strength.csv, in order.
var columns = []string{"common", "scientific", "mor_green_mpa", "status", "source", "note"}

func read(text string) ([]Strength, error) {
	lines := csv.NewReader(strings.NewReader(text))
	lines.Comment = '#'
	lines.FieldsPerRecord = len(columns)
	records, err := lines.ReadAll()
	if err != nil {
		return nil, err
	}
	if len(records) < 2 || !slices.Equal(records[0], columns) {
		return nil, fmt.Errorf("no rows under %s", strings.Join(columns, ","))
	}
	rows := make([]Strength, 0, len(records)-1)
	for _, f := range records[1:] {
		mor, err := strconv.ParseFloat(f[2], 64)
		if err != nil || !(mor > 0) {
			return nil, fmt.Errorf("%s: %q is no strength", f[1], f[2])
		}
		status := Status(f[3])
		if status != Found && status != Memory {
			return nil, fmt.Errorf("%s: %q is no status", f[1], f[3])
		}
		rows = append(rows, Strength{Common: f[0], Scientific: f[1], Bending: Stress(mor) * Megapascal,
			Status: status, Source: f[4], Note: f[5]})
	}
	return rows, nil
}

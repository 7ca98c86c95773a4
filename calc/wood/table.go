package wood

import (
	_ "embed"
	"encoding/csv"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"sync"

	"heft/calc/unit"
)

//go:embed species.csv
var speciesCSV string

// table is read once. The file is part of the program, so a mistake in it is
// one of ours: it stops the tests, and never a crew's question.
var table = sync.OnceValue(func() *species {
	t, err := read(speciesCSV)
	if err != nil {
		panic("wood/species.csv: " + err.Error())
	}
	return t
})

type species struct {
	rows  []Row
	place map[string]int // scientific name to index
}

// groupNames are the names that Find knows besides those of the rows.
var groupNames = map[string]bool{AnyHardwood: true, AnySoftwood: true}

// All returns every row, in the order of the file. The slice is the caller's.
func All() []Row { return slices.Clone(table().rows) }

// Find returns the row of a scientific name, spelt as in the table.
func Find(scientific string) (Row, bool) {
	t := table()
	i, ok := t.place[scientific]
	switch {
	case ok:
		return t.rows[i], true
	case groupNames[scientific]:
		g := slices.IndexFunc(Groups(), func(r Row) bool { return r.Scientific == scientific })
		return Groups()[g], true
	}
	return Row{}, false
}

// columns of species.csv, in order.
var columns = []string{"common", "scientific", "group", "form", "wood_sg", "wood_moisture_pct",
	"bark_sg", "bark_moisture_pct", "bark_pct_of_wood", "basis", "own_sg", "guide_kg_m3", "note"}

func read(text string) (*species, error) {
	lines := csv.NewReader(strings.NewReader(text))
	lines.Comment = '#'
	lines.FieldsPerRecord = len(columns)
	records, err := lines.ReadAll()
	if err != nil {
		return nil, err
	}
	if len(records) == 0 || !slices.Equal(records[0], columns) {
		return nil, fmt.Errorf("the columns are not %s", strings.Join(columns, ","))
	}
	t := &species{place: make(map[string]int, len(records))}
	for _, record := range records[1:] {
		row, err := rowOf(record)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", record[1], err)
		}
		if _, twice := t.place[row.Scientific]; twice {
			return nil, fmt.Errorf("%s: listed twice", row.Scientific)
		}
		t.place[row.Scientific] = len(t.rows)
		t.rows = append(t.rows, row)
	}
	t.spanGenera()
	return t, nil
}

func rowOf(f []string) (Row, error) {
	r := Row{Common: f[0], Scientific: f[1], Note: f[12]}
	var err error
	if r.Softwood, err = either(f[2], "softwood", "hardwood"); err != nil {
		return Row{}, err
	}
	if r.Palm, err = either(f[3], "palm", "tree"); err != nil {
		return Row{}, err
	}
	basis := slices.Index([]string{"species", "genus-average", "group-default"}, f[9])
	if basis < 0 {
		return Row{}, fmt.Errorf("%q is no basis", f[9])
	}
	r.Basis = Basis(basis)
	for i, to := range []*float64{&r.WoodSG, &r.WoodMoisture, &r.BarkSG, &r.BarkMoisture, &r.BarkOfWood} {
		if *to, err = strconv.ParseFloat(f[4+i], 64); err != nil {
			return Row{}, fmt.Errorf("%s: %w", columns[4+i], err)
		}
	}
	if r.OwnSG, err = optional(f[10]); err != nil {
		return Row{}, fmt.Errorf("own_sg: %w", err)
	}
	guide, err := optional(f[11])
	r.Heavier = unit.Density(guide)
	return r, err
}

// optional reads a number, 0 where there is none.
func optional(field string) (float64, error) {
	if field == "" {
		return 0, nil
	}
	return strconv.ParseFloat(field, 64)
}

func either(word, yes, no string) (bool, error) {
	if word != yes && word != no {
		return false, fmt.Errorf("%q is neither %s nor %s", word, yes, no)
	}
	return word == yes, nil
}

// spanGenera gives each genus as a whole the lightest and heaviest mean of
// its species, the heaviest that is an average alone, and the heaviest when
// soaked: "some oak" may be live oak.
func (t *species) spanGenera() {
	for genus, i := range t.place {
		genus, whole := strings.CutSuffix(genus, " spp.")
		if !whole {
			continue
		}
		light, heavy, unsure, soaked := t.rows[i].Light(), t.rows[i].Heavy(), t.rows[i].Unsure(), t.rows[i].Soaked()
		for _, r := range t.rows {
			if strings.HasPrefix(r.Scientific, genus+" ") {
				light, heavy = min(light, r.Light()), max(heavy, r.Heavy())
				unsure, soaked = max(unsure, r.Unsure()), max(soaked, r.Soaked())
			}
		}
		t.rows[i].lightest, t.rows[i].heaviest, t.rows[i].unsure, t.rows[i].soaked = light, heavy, unsure, soaked
	}
}

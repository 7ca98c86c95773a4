package reader_test

import (
	"encoding/csv"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"heft/parser"
)

// crewName is one row of names.csv.
type crewName struct {
	name, language, tree string
	others               []string
}

func crewNames(t testing.TB) []crewName {
	t.Helper()
	f, err := os.Open("../names.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil || len(rows) < 300 {
		t.Fatalf("names.csv has %d rows: %v", len(rows), err)
	}
	var out []crewName
	for _, r := range rows[1:] {
		n := crewName{name: r[0], language: r[1], tree: r[2]}
		if r[3] != "" {
			n.others = strings.Split(r[3], "; ")
		}
		out = append(out, n)
	}
	return out
}

// TestCrewNames wants every name understood in a sentence: as its tree, or
// asked about with a choice for every tree it could be.
func TestCrewNames(t *testing.T) {
	r := newReader(t)
	seen := map[string]bool{}
	for _, n := range crewNames(t) {
		if seen[n.name] {
			continue // the first meaning of a name counts: English before Spanish
		}
		seen[n.name] = true
		for _, text := range []string{"14 in " + n.name + " limb 22 ft", n.name, "22 FT " + strings.ToUpper(n.name) + " LOG 14 IN"} {
			q, err := r.Read(text)
			if len(n.others) == 0 {
				if err != nil || q.Species == nil || q.Species.Value.Scientific != n.tree {
					t.Errorf("%q: %v, %v; want %s", text, q.Species, err, n.tree)
				}
				continue
			}
			ask := asked(t, err)
			if ask.Kind != parser.WhichTree || q.Species != nil || !strings.EqualFold(ask.Words, n.name) {
				t.Errorf("%q: %v with %v, want to be asked which tree", text, ask, q.Species)
			}
			for _, sci := range n.others {
				if !slices.ContainsFunc(ask.Choices, func(c parser.Choice) bool { return c.Scientific == sci }) {
					t.Errorf("%q: no choice for %s among %v", text, sci, ask.Choices)
				}
			}
		}
	}
}

// TestChoicesCanBeTyped wants every choice of "which tree?" to be understood
// as that tree when it is typed back.
func TestChoicesCanBeTyped(t *testing.T) {
	r := newReader(t)
	var shared []string
	for _, n := range crewNames(t) {
		if len(n.others) > 0 {
			shared = append(shared, n.name)
		}
	}
	for name, trees := range treesByName(t) {
		if len(trees) > 1 {
			shared = append(shared, name)
		}
	}
	for _, name := range shared {
		_, err := r.Read(name)
		for _, c := range asked(t, err).Choices {
			q, err := r.Read(c.Words)
			if err != nil || q.Species == nil || q.Species.Value.Scientific != c.Scientific {
				t.Errorf("%s: choice %q is read as %v, %v; want %s", name, c.Words, q.Species, err, c.Scientific)
			}
		}
	}
}

// treesByName lists the trees of the table under their common names.
func treesByName(t testing.TB) map[string][]string {
	out := map[string][]string{}
	for _, k := range knownTrees(t) {
		out[k.Name] = append(out[k.Name], k.Scientific)
	}
	return out
}

// TestKnownTrees wants every tree of the table understood by its Latin name,
// and by its common name unless that is another tree's too.
func TestKnownTrees(t *testing.T) {
	r := newReader(t)
	crew := map[string]bool{}
	for _, n := range crewNames(t) {
		crew[strings.ReplaceAll(n.name, "-", " ")] = true
	}
	byName := treesByName(t)
	for _, k := range knownTrees(t) {
		latin := "14 in " + strings.ReplaceAll(k.Scientific, ".", "") + " log 8 ft"
		if q, err := r.Read(latin); err != nil || q.Species == nil || q.Species.Value.Scientific != k.Scientific {
			t.Errorf("%q is read as %v, %v", latin, q.Species, err)
		}
		if strings.ContainsAny(k.Name, ",/") || numbered.MatchString(k.Name) || crew[strings.ToLower(strings.ReplaceAll(k.Name, "-", " "))] {
			continue // several names in one, a number in it, or the crew's word for it
		}
		common := "14 in " + k.Name + " log 8 ft"
		switch q, err := r.Read(common); {
		case len(byName[k.Name]) > 1:
			if ask := asked(t, err); ask.Kind != parser.WhichTree || len(ask.Choices) != len(byName[k.Name]) {
				t.Errorf("%q: %v among %v, want to be asked which", common, ask, ask.Choices)
			}
		case err != nil || q.Species == nil || q.Species.Value.Scientific != k.Scientific:
			t.Errorf("%q is read as %v, %v; want %s", common, q.Species, err, k.Scientific)
		}
	}
}

// numbered names, as "four-leaf pinyon", are read as a number first.
var numbered = regexp.MustCompile(`^(.* )?(two|three|four|five)-`)

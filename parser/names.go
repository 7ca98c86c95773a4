package parser

import (
	_ "embed"
	"encoding/csv"
	"strings"
)

//go:embed names.csv
var namesCSV string

// tree is what a name of a tree stands for.
type tree struct {
	name     string
	language string // of the name, "" for the caller's and the Latin
	sci      string
	others   []string // where several trees share the name: all of them
}

// addNames adds the names of trees: the crew's, the caller's, and the Latin.
func (lx *lexicon) addNames(table string, known []Species) error {
	rows, err := csv.NewReader(strings.NewReader(table)).ReadAll()
	if err != nil {
		return err
	}
	for _, r := range rows[1:] {
		lx.now = lx.dialect(r[1])
		if lx.now != nil && r[3] == "" && lx.now.called[r[2]] == "" {
			lx.now.called[r[2]] = r[0]
		}
		lx.tell(r[:1])
		lx.addTree(tree{name: r[0], language: r[1], sci: r[2], others: splitList(r[3])})
	}
	lx.now = lx.dialect("en")
	shared := map[string]*tree{} // the names that the caller gave
	for _, s := range known {
		lx.tell(apart(s.Name))
		for _, name := range append(apart(s.Name), apart(s.Scientific)...) {
			if old := shared[name]; old != nil && old.sci != s.Scientific {
				old.share(s.Scientific)
				continue
			}
			shared[name] = lx.addTree(tree{name: name, sci: s.Scientific})
		}
	}
	return nil
}

// apart lists the names in a name: "buckeye, horsechestnut spp." is both, with
// and without the last word.
func apart(name string) []string {
	var out []string
	for _, n := range strings.FieldsFunc(name, func(r rune) bool { return r == ',' || r == '/' }) {
		n = strings.TrimSpace(strings.ReplaceAll(n, ".", ""))
		out = append(out, n)
		if one, many := strings.CutSuffix(n, " spp"); many {
			out = append(out, one)
		}
	}
	return out
}

// addTree keeps the first meaning of a name: the crew's names come first. It
// returns the tree where it is the first.
func (lx *lexicon) addTree(t tree) *tree {
	var few [8]string
	to := lx.spelling(appendFolded(few[:0], t.name), setOf(trees)).sense(trees)
	if to.term != nil {
		return nil
	}
	to.term = &term{tree: &t}
	return &t
}

// share makes a name one of several trees.
func (t *tree) share(sci string) {
	if len(t.others) == 0 {
		t.others = []string{t.sci}
	}
	t.others = append(t.others, sci)
}

func splitList(s string) []string {
	if s == "" {
		return nil
	}
	out := strings.Split(s, ";")
	for i := range out {
		out[i] = strings.TrimSpace(out[i])
	}
	return out
}

package lexicon

import (
	_ "embed"
	"encoding/csv"
	"strings"

	"heft/parser"
	"heft/parser/scan"
)

// addNames adds the names of trees: the crew's, the caller's, and the Latin.
func (lx *Lexicon) addNames(table string, known []parser.Species) error {
	rows, err := csv.NewReader(strings.NewReader(table)).ReadAll()
	if err != nil {
		return err
	}
	for _, r := range rows[1:] {
		lx.now = lx.dialect(r[1])
		if lx.now != nil && r[3] == "" && lx.now.Called[r[2]] == "" {
			lx.now.Called[r[2]] = r[0]
		}
		lx.tell(r[:1])
		lx.addTree(parser.Tree{Name: r[0], Language: r[1], Sci: r[2], Others: parser.SplitList(r[3])})
	}
	lx.now = lx.dialect("en")
	shared := map[string]*parser.Tree{} // the names that the caller gave
	for _, s := range known {
		lx.tell(apart(s.Name))
		for _, name := range append(apart(s.Name), apart(s.Scientific)...) {
			if old := shared[name]; old != nil && old.Sci != s.Scientific {
				share(old, s.Scientific)
				continue
			}
			shared[name] = lx.addTree(parser.Tree{Name: name, Sci: s.Scientific})
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
func (lx *Lexicon) addTree(t parser.Tree) *parser.Tree {
	var few [8]string
	to := lx.spelling(scan.AppendFolded(few[:0], t.Name), setOf(trees)).sense(trees)
	if to.term != nil {
		return nil
	}
	to.term = &scan.Term{Tree: &t}
	return &t
}

// share makes a name one of several trees.
func share(t *parser.Tree, sci string) {
	if len(t.Others) == 0 {
		t.Others = []string{t.Sci}
	}
	t.Others = append(t.Others, sci)
}

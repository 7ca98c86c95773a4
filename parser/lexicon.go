package parser

import (
	_ "embed"
	"encoding/csv"
	"fmt"
	"strings"

	"heft/parser/language"
)

//go:embed names.csv
var namesCSV string

// side says where a number stands as seen from the words of its role.
type side int

const (
	after side = 1 << iota
	before
)

// role binds a number to a field.
type role struct {
	field Field
	side  side
	soft  bool // gives way to another role that wants the same number
}

// tree is what a name of a tree stands for.
type tree struct {
	name   string
	sci    string
	others []string // where several trees share the name: all of them
}

// term is all that a spelling can mean.
type term struct {
	roles     []role
	shape     Shape
	condition Condition
	intent    Intent
	besides   bool // the intent gives way: "with a tag line"
	stop      Kind // power line, emergency, unsound wood
	ask       Kind // girth, breast height, a word that twists
	units     System
	note      string
	block     string // which block of a rope's path: "base-block"
	marks     mark
	count     float64 // people, where the words say how many: "by myself"
	tree      *tree
}

// lexicon finds the longest spelling that starts at a word.
type lexicon struct {
	root   *node
	starts map[int][]string  // the first words of all spellings, by their length
	called map[string]string // the first English name of a tree that is its alone
}

// node is a word of a spelling, and what can follow it.
type node struct {
	next map[string]*node
	term *term
}

// newLexicon reads the word file and the names, and adds the names that the
// caller knows trees by.
func newLexicon(known []Species) (*lexicon, error) {
	lx := &lexicon{root: &node{}, starts: map[int][]string{}, called: map[string]string{}}
	languages, err := language.All()
	if err != nil {
		return nil, err
	}
	for _, l := range languages {
		for _, line := range l.Words {
			if err := lx.addLine(line.Text); err != nil {
				return nil, fmt.Errorf("%s.txt line %d: %w", l.Tag, line.Number, err)
			}
		}
	}
	if err := lx.addNames(namesCSV, known); err != nil {
		return nil, fmt.Errorf("names.csv: %w", err)
	}
	for w := range lx.root.next {
		n := len([]rune(w))
		lx.starts[n] = append(lx.starts[n], w)
	}
	return lx, nil
}

func (lx *lexicon) addLine(line string) error {
	meaning, spellings, ok := strings.Cut(line, "|")
	if !ok {
		return fmt.Errorf("no bar in %q", line)
	}
	set, err := meaningOf(strings.Fields(meaning))
	if err != nil {
		return err
	}
	for _, s := range strings.Split(spellings, ",") {
		if strings.TrimSpace(s) == "" {
			return fmt.Errorf("an empty spelling in %q", line)
		}
		set(lx.at(s))
	}
	return nil
}

// addNames adds the names of trees: the crew's, the caller's, and the Latin.
func (lx *lexicon) addNames(table string, known []Species) error {
	rows, err := csv.NewReader(strings.NewReader(table)).ReadAll()
	if err != nil {
		return err
	}
	for _, r := range rows[1:] {
		if r[1] == "en" && r[3] == "" && lx.called[r[2]] == "" {
			lx.called[r[2]] = r[0]
		}
		lx.addTree(tree{name: r[0], sci: r[2], others: splitList(r[3])})
	}
	shared := map[string]*tree{} // the names that the caller gave
	for _, s := range known {
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
	x := lx.at(t.name)
	if x.tree != nil {
		return nil
	}
	x.tree = &t
	return x.tree
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

// articles can stand inside any spelling, or be left out: "at the butt", "at
// butt", "at my butt".
var articles = map[string]bool{
	"a": true, "an": true, "the": true, "this": true, "that": true, "my": true, "our": true, "your": true,
	"his": true, "her": true, "their": true, "its": true,
}

// at returns the term of a spelling, making it where it is new.
func (lx *lexicon) at(spelling string) *term {
	words := splitWords(spelling)
	n := lx.root
	for i, w := range words {
		if articles[w] && i+1 < len(words) {
			continue
		}
		if n.next == nil {
			n.next = make(map[string]*node)
		}
		if n.next[w] == nil {
			n.next[w] = &node{}
		}
		n = n.next[w]
	}
	if n.term == nil {
		n.term = &term{}
	}
	return n.term
}

// find returns the longest spelling at the start of the words, and how many
// of them it took; 0 where none is known.
func (lx *lexicon) find(words []string) (*term, int) {
	var found *term
	n, taken := lx.root, 0
	for i, w := range words {
		c := n.child(w)
		if c == nil && i > 0 && articles[w] && !articles[words[i-1]] {
			continue
		}
		if n = c; n == nil {
			break
		}
		if n.term != nil {
			found, taken = n.term, i+1
		}
	}
	return found, taken
}

// child also finds a plain plural or possessive.
func (n *node) child(w string) *node {
	if c := n.next[w]; c != nil {
		return c
	}
	for _, tail := range []string{"'s", "es", "s"} {
		if cut, ok := strings.CutSuffix(w, tail); ok && len(cut) > 2 && n.next[cut] != nil {
			return n.next[cut]
		}
	}
	return nil
}

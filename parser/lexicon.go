package parser

import (
	_ "embed"
	"encoding/csv"
	"fmt"
	"strings"
	"unicode"

	"golang.org/x/text/runes"
	"golang.org/x/text/transform"
	"golang.org/x/text/unicode/norm"
)

//go:embed words.en.txt
var wordsEN string

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
	stop      Kind // power line, emergency
	ask       Kind // girth, breast height, a word that twists
	units     System
	note      string
	mark      string // hello, follow, unsure, between, and, by, taper, unsound
	tree      *tree
}

// lexicon finds the longest spelling that starts at a word.
type lexicon struct {
	root   *node
	vocab  []string          // every single word, for spelling correction
	called map[string]string // the first English name of a tree that is its alone
}

type node struct {
	next map[string]*node
	term *term
}

// newLexicon reads the word file and the names, and adds the names that the
// caller knows trees by.
func newLexicon(known []Species) (*lexicon, error) {
	lx := &lexicon{root: &node{}, called: map[string]string{}}
	for i, line := range strings.Split(wordsEN, "\n") {
		if err := lx.addLine(line); err != nil {
			return nil, fmt.Errorf("words.en.txt line %d: %w", i+1, err)
		}
	}
	if err := lx.addNames(namesCSV, known); err != nil {
		return nil, fmt.Errorf("names.csv: %w", err)
	}
	lx.vocab = words(lx.root, map[string]bool{})
	return lx, nil
}

func (lx *lexicon) addLine(line string) error {
	line = strings.TrimSpace(line)
	if line == "" || strings.HasPrefix(line, "#") {
		return nil
	}
	meaning, spellings, ok := strings.Cut(line, "|")
	if !ok {
		return fmt.Errorf("no bar in %q", line)
	}
	set, err := meaningOf(strings.Fields(meaning))
	if err != nil {
		return err
	}
	for _, s := range strings.Split(spellings, ",") {
		set(lx.at(s))
	}
	return nil
}

// meaningOf returns what a meaning does to a term.
func meaningOf(words []string) (func(*term), error) {
	arg := func(i int) string {
		if i < len(words) {
			return words[i]
		}
		return ""
	}
	switch words[0] {
	case "role":
		return roleOf(Field(arg(1)), arg(2))
	case "shape":
		return func(t *term) { t.shape = Shape(arg(1)) }, nil
	case "condition":
		return func(t *term) { t.condition = Condition(arg(1)) }, nil
	case "ask":
		return func(t *term) { t.intent = Intent(arg(1)) }, nil
	case "stop":
		return func(t *term) { t.stop = Kind(arg(1)) }, nil
	case "units":
		return func(t *term) { t.units = System(arg(1)) }, nil
	case "note":
		return func(t *term) { t.note = arg(1) }, nil
	case "twist", "girth", "breast-high":
		return func(t *term) { t.ask = Kind(words[0]) }, nil
	case "hello", "follow", "unsure", "between", "and", "by", "taper":
		return func(t *term) { t.mark = words[0] }, nil
	case "filler":
		return func(*term) {}, nil
	}
	return nil, fmt.Errorf("no such meaning: %q", words[0])
}

func roleOf(f Field, where string) (func(*term), error) {
	sides := map[string]side{"after": after, "before": before, "either": after | before}
	name, soft := strings.CutSuffix(where, "?")
	if sides[name] == 0 || dimensionOf[f] == 0 && !counted[f] {
		return nil, fmt.Errorf("no such role: %q %q", f, where)
	}
	return func(t *term) { t.roles = append(t.roles, role{f, sides[name], soft}) }, nil
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
	for _, s := range known {
		for _, name := range []string{s.Name, s.Scientific, strings.TrimSuffix(s.Scientific, " spp.")} {
			lx.addTree(tree{name: name, sci: s.Scientific})
		}
	}
	return nil
}

// addTree keeps the first meaning of a name: the crew's names come first.
func (lx *lexicon) addTree(t tree) {
	if x := lx.at(t.name); x.tree == nil {
		x.tree = &t
	}
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

// at returns the term of a spelling, making it where it is new.
func (lx *lexicon) at(spelling string) *term {
	n := lx.root
	for _, w := range strings.FieldsFunc(fold(spelling), notWord) {
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
		if n = n.child(w); n == nil {
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

// words lists the words of all spellings once.
func words(n *node, seen map[string]bool) []string {
	var out []string
	for w, c := range n.next {
		if !seen[w] {
			seen[w] = true
			out = append(out, w)
		}
		out = append(out, words(c, seen)...)
	}
	return out
}

func notWord(r rune) bool { return !unicode.IsLetter(r) && r != '\'' }

// fold takes off case, accents and the curl of an apostrophe.
func fold(s string) string {
	plain := true
	for i := 0; i < len(s); i++ {
		if s[i] >= 0x80 || 'A' <= s[i] && s[i] <= 'Z' {
			plain = false
			break
		}
	}
	if plain {
		return s
	}
	t := transform.Chain(norm.NFD, runes.Remove(runes.In(unicode.Mn)), norm.NFC)
	out, _, err := transform.String(t, strings.ToLower(s))
	if err != nil {
		out = strings.ToLower(s)
	}
	return strings.ReplaceAll(out, "’", "'")
}

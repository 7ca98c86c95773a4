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
	name     string
	language string // of the name, "" for the caller's and the Latin
	sci      string
	others   []string // where several trees share the name: all of them
}

// term is all that a spelling can mean.
type term struct {
	roles     []role
	shape     Shape
	condition Condition
	intent    Intent
	besides   bool // the intent gives way: "with a tag line"
	leads     bool // leads straight to its number: "hitched at"
	stop      Kind // power line, emergency, unsound wood
	ask       Kind // girth, breast height, a word that twists
	units     System
	note      string
	near      bool // the note is one only right before a number
	marks     mark
	count     float64 // people, where the words say how many: "by myself"
	tree      *tree
}

// lexicon finds the longest spelling that starts at a word.
type lexicon struct {
	root     *node
	starts   map[int][]start    // the first words of all spellings, by their length
	words    map[string]langSet // which languages a word is of
	dialects []*dialect
	english  *tongue            // English alone
	tongues  map[[2]int]*tongue // by the slots of their languages, the leading one first

	now *dialect // whose spellings are being added; nil for what is no language's
}

// start is a word that begins a spelling.
type start struct {
	word  string
	langs langSet
}

// node is a word of a spelling, and what can follow it.
type node struct {
	next  map[string]*node
	langs langSet // of the spellings that pass through it
	terms []sense
}

// sense is what a spelling means in one language.
type sense struct {
	slot int
	term *term
}

// newLexicon reads the word files and the names, and adds the names that the
// caller knows trees by.
func newLexicon(known []Species) (*lexicon, error) {
	lx := &lexicon{root: &node{}, starts: map[int][]start{}, words: map[string]langSet{}, tongues: map[[2]int]*tongue{}}
	languages, err := language.All()
	if err != nil {
		return nil, err
	}
	for i, l := range languages {
		lx.now = newDialect(l.Tag, i+1)
		lx.dialects = append(lx.dialects, lx.now)
		for _, form := range []bool{true, false} {
			for _, line := range l.Words {
				if isForm(line.Text) != form {
					continue // what spellings are made of comes first
				}
				if err := lx.addLine(line.Text); err != nil {
					return nil, fmt.Errorf("%s.txt line %d: %w", l.Tag, line.Number, err)
				}
			}
		}
	}
	if err := lx.addNames(namesCSV, known); err != nil {
		return nil, fmt.Errorf("names.csv: %w", err)
	}
	for w, n := range lx.root.next {
		letters := len([]rune(w))
		lx.starts[letters] = append(lx.starts[letters], start{w, n.langs})
	}
	lx.addTongues()
	return lx, nil
}

// addTongues makes the tongues: English alone, and every two languages.
func (lx *lexicon) addTongues() {
	for _, lead := range lx.dialects {
		for _, also := range lx.dialects {
			if lead != also {
				lx.tongues[[2]int{lead.slot, also.slot}] = lx.newTongue(lead, also)
			}
		}
		if lead.tag == "en" {
			lx.english = lx.newTongue(lead, nil)
			lx.tongues[[2]int{lead.slot, 0}] = lx.english
		}
	}
}

func (lx *lexicon) addLine(line string) error {
	meaning, list, ok := strings.Cut(line, "|")
	words := strings.Fields(meaning)
	if !ok || len(words) == 0 {
		return fmt.Errorf("no meaning and bar in %q", line)
	}
	spellings := strings.Split(list, ",")
	for _, s := range spellings {
		if strings.TrimSpace(s) == "" {
			return fmt.Errorf("an empty spelling in %q", line)
		}
	}
	if lx.now != nil {
		if taken, err := lx.now.takes(words, spellings); taken || err != nil {
			lx.tell(spellings)
			return err
		}
	}
	set, err := meaningOf(words)
	if err != nil {
		return err
	}
	for _, s := range spellings {
		set(lx.at(s))
		if lx.now != nil && words[0] == "unsure" && lx.now.any == "" {
			lx.now.any = strings.TrimSpace(s)
		}
	}
	lx.tell(spellings)
	return nil
}

// tell keeps which language the words of spellings are of.
func (lx *lexicon) tell(spellings []string) {
	if lx.now == nil {
		return
	}
	for _, s := range spellings {
		for _, w := range strings.FieldsFunc(s, func(r rune) bool { return lettersIn(string(r)) == 0 }) {
			lx.words[fold(w)] |= setOf(lx.now.slot)
		}
	}
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
	x := lx.spelling(t.name).term(trees)
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

// dialect returns a language by its tag, nil where there is none.
func (lx *lexicon) dialect(tag string) *dialect {
	for _, d := range lx.dialects {
		if d.tag == tag {
			return d
		}
	}
	return nil
}

// at returns the term of a spelling of the language at hand, making it where
// it is new.
func (lx *lexicon) at(spelling string) *term {
	n := lx.spelling(spelling)
	if lx.now == nil {
		return n.term(trees)
	}
	t := n.term(lx.now.slot)
	words := splitWords(spelling)
	t.leads = lx.now.leads[words[len(words)-1]]
	return t
}

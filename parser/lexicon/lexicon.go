package lexicon

import (
	"fmt"
	"slices"
	"strings"
	"sync"
	"unicode/utf8"

	"heft/parser"
	"heft/parser/language"
	"heft/parser/scan"
)

// Lexicon finds the longest spelling that starts at a word.
type Lexicon struct {
	Root     *node
	Starts   map[int][]start         // the first words of all spellings, by their length
	words    map[string]scan.LangSet // which languages a word is of
	dialects []*scan.Dialect
	English  *scan.Tongue                   // English alone
	tongues  map[[2]int]func() *scan.Tongue // by the slots of their languages, the leading one first
	labels   map[string][]string
	Job      JobWords
	patterns map[string][]string
	Layout   Layout

	heard func() []map[string]string // by the slots of languages: words by their sound

	slab   []node        // made, and not in use yet
	folded []string      // the words of the spelling at hand
	now    *scan.Dialect // whose spellings are being added; nil for what is no language's
}

// start is a word that begins a spelling.
type start struct {
	Word  string
	Langs scan.LangSet
}

// node is a word of a spelling, and what can follow it.
type node struct {
	word  string
	next  []*node
	index map[string]*node // of next, by its words; the root alone has so many
	langs scan.LangSet     // of the spellings that pass through it
	terms []sense
	one   [1]sense // room for the first of them: most spellings have no other
}

// manyWords is room for the words that spellings begin with, and for all words.
const manyWords = 1 << 14

func emptyLexicon() *Lexicon {
	return &Lexicon{Root: newRoot(), Starts: map[int][]start{}, words: make(map[string]scan.LangSet, manyWords), tongues: map[[2]int]func() *scan.Tongue{},
		labels: map[string][]string{}, patterns: map[string][]string{}}
}

func newRoot() *node { return &node{index: make(map[string]*node, manyWords)} }

// sense is what a spelling means in one language.
type sense struct {
	slot int
	term *scan.Term
}

// NewLexicon reads the word files and the names, and adds the names that the
// caller knows trees by.
func NewLexicon(known []parser.Species) (*Lexicon, error) {
	languages, err := language.All()
	if err != nil {
		return nil, err
	}
	lx, err := readLanguages(languages)
	if err != nil {
		return nil, err
	}
	lx.Job = newJobWords(lx.labels)
	if lx.Layout, err = newLayout(lx.patterns); err != nil {
		return nil, err
	}
	if err := lx.addNames(parser.NamesCSV, known); err != nil {
		return nil, fmt.Errorf("names.csv: %w", err)
	}
	for _, n := range lx.Root.next {
		if n.chatter() {
			continue
		}
		letters := utf8.RuneCountInString(n.word)
		lx.Starts[letters] = append(lx.Starts[letters], start{n.word, n.langs})
	}
	lx.heard = sync.OnceValue(lx.hear)
	lx.addTongues()
	return lx, nil
}

// addTongues makes the tongues: English alone, and every two languages, these when
// somebody first types so.
func (lx *Lexicon) addTongues() {
	for _, lead := range lx.dialects {
		for _, also := range lx.dialects {
			if lead != also {
				lx.tongues[[2]int{lead.Slot, also.Slot}] = sync.OnceValue(func() *scan.Tongue { return lx.together(lead, also) })
			}
		}
		if lead.Tag == "en" {
			lx.English = lx.alone(lead)
		}
	}
}

func (lx *Lexicon) addLine(line string) error {
	what, list, ok := strings.Cut(line, "|")
	words := strings.Fields(what)
	if !ok || len(words) == 0 {
		return fmt.Errorf("no meaning and bar in %q", line)
	}
	if words[0] == "pattern" && len(words) == 2 {
		lx.patterns[words[1]] = append(lx.patterns[words[1]], strings.TrimSpace(list))
		return nil
	}
	spellings := strings.Split(list, ",")
	for _, s := range spellings {
		if strings.TrimSpace(s) == "" {
			return fmt.Errorf("an empty spelling in %q", line)
		}
	}
	if words[0] == "label" && len(words) == 2 {
		return lx.addLabel(words[1], spellings)
	}
	if lx.now != nil {
		if taken, err := takes(lx.now, words, spellings); taken || err != nil {
			if words[0] != "sound" && words[0] != "danger" && words[0] != "topic" {
				lx.tell(spellings)
			}
			return err
		}
	}
	set, err := meaningOf(words)
	if err != nil {
		return err
	}
	m := &meaning{set: set}
	for _, s := range spellings {
		lx.give(s, m)
		if lx.now != nil && words[0] == "unsure" && lx.now.Any == "" {
			lx.now.Any = strings.TrimSpace(s)
		}
	}
	lx.tell(spellings)
	return nil
}

// addLabel keeps the spellings of a label, the longest first.
func (lx *Lexicon) addLabel(label string, spellings []string) error {
	if !slices.Contains([]string{labelJob, labelNote, labelForJob, labelNext, labelArborist, labelSite}, label) && !slices.Contains(forgetLabels, label) {
		return fmt.Errorf("no such label: %q", label)
	}
	for i, s := range spellings {
		spellings[i] = strings.TrimSpace(s)
	}
	lx.keepLabel(label, spellings)
	return nil
}

func (lx *Lexicon) keepLabel(label string, spellings []string) {
	lx.labels[label] = append(lx.labels[label], spellings...)
	slices.SortStableFunc(lx.labels[label], func(a, b string) int { return len(b) - len(a) })
}

// tell keeps which language the words of spellings are of.
func (lx *Lexicon) tell(spellings []string) {
	if lx.now == nil {
		return
	}
	own := setOf(lx.now.Slot)
	for _, s := range spellings {
		for w := range scan.Lettered(s) {
			if lx.words[w]&own == 0 { // most words stand in many spellings, and as they are folded
				lx.words[scan.Fold(w)] |= own
			}
		}
	}
}

// dialect returns a language by its tag, nil where there is none.
func (lx *Lexicon) dialect(tag string) *scan.Dialect {
	for _, d := range lx.dialects {
		if d.Tag == tag {
			return d
		}
	}
	return nil
}

package parser

import (
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"heft/parser/language"
)

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
	own       bool // asked about, because another language has it: "once"
	units     System
	note      string
	block     string   // which block of a rope's path: "base-block"
	part      part     // gear that has a strength
	strength  strength // which of the two on its label
	explain   string
	near      bool // the note is one only right before a number
	marks     mark
	whole     Intent  // what it asks for where it is the whole message
	count     float64 // people, where the words say how many: "by myself"
	tons      float64 // where the words say how many, and a ton is several masses: "half a ton"
	tension   bool    // beside the pull in a rope: "5 kN tension"
	belowCut  bool    // behind how far a block hangs below it: "40 cm below the cut"
	standsIn  bool    // behind a tree, what it shall serve as: "as a redirect"

	blocks     bool    // counted in a tackle
	ropeEnd    bool    // who has the rope in hand
	hung       bool    // before how far below its block a load hangs: "hanging"
	belowBlock bool    // behind it; elsewhere it is asked about
	offPlumb   bool    // behind how far a cut is to the side; elsewhere it is asked about
	roved      bool    // of legs, that a tackle can have as well: "ramales"
	course     bool    // behind a rope, before how far it turns: "the line goes 90 there"
	turned     float64 // how far a rope turns, told without a number: "comes straight back out on itself"
	each       bool    // of several pieces: "each", "apiece"
	compares   bool    // before two pieces: "which is heavier"
	foreign    bool    // behind a number, of no piece and no gear: minutes, money
	oneEnd     bool    // behind the thickness of one of two ends: "one end", "the other"
	woodRing   bool    // gear, and behind a tree a round: "ring"
	leafed     bool    // the piece has its leaves or branches on: "con hojas"
	overlook   bool    // says nothing here by itself, and is said back: "plenty"
	rate       bool    // behind a length, a speed: "a second"
	others     bool    // people besides who speaks
	andSelf    bool    // who speaks, before how many others: "me and 2 other guys"
	someone    bool    // a person who is spoken of: "dave", "the apprentice"
	falls      bool    // behind a person, an emergency: "dave fell"
	state      bool    // before how something is: "looks", "really"
	level      bool    // how a limb lies that is stood up: "horizontal"
	tied       bool    // before how far out a limb its tie is
	topEnd     bool    // the thin end behind a thickness, where the thick one is told: "30 in butt, 24 in top"
	lowEnd     bool    // behind a thickness, the thick end where the thin one is told: "28 abajo 18 arriba"
	highEnd    bool    // behind the thin one
	hangs      bool    // before how far below its block a load hangs that a tag line pulls: "cuelga 20 pies"
	aboveLoad  bool    // behind how far the block is above such a load; elsewhere it is asked about
	beneath    bool    // behind a person, where nobody may stand
	order      Intent  // what it tells the crew to do where it begins what is said: "baja la rama"
	denies     bool    // "not": what follows is put aside
	purpose    bool    // before what is to be kept from happening: "so it doesn't"
	corrects   bool    // "no", "make that": what stands before may be taken back
	chatter    bool    // says nothing here, and is no slip's mending
	tree       *tree
	lacks      bool // right before what is wrong with wood, says that nothing is: "no rot"
	lifts      bool // before who must never hang on rigging gear: "winch him up"
	human      bool // a person, where behind a word that lifts
	stays      bool // before a place under the piece or beside it: "stand underneath"
	machine    bool // beside a word that bears, what no chart here holds for: "can the loader take it"
	bears      bool // takes, lifts, carries
	topples    bool // behind a pull on a tree, fells it: "pull the oak over"
	damaged    bool // beside gear, that it must not be used: "a melted rope"
	day        bool // the day at hand: who is here, "crew of four today"
	borne      bool // behind who must never hang on rigging gear: "be lowered"

	girthBehind bool // a girth, behind its number alone: "in circumference"
	girthAround bool // likewise, where it may be what a rope goes round: "around it"
	giveTake    bool // between a number and how far off it may be: "give or take"
	quarter     bool // before a unit: "quarter of a tonne"
	ofIt        bool // behind how much of the piece is told: "20 ft of it"
	unnamed     bool // a piece of wood, and nothing said of what: "piece"
	supposes    bool // before a weight that is only held against: "if it weighs"
	atOnce      bool // of several pieces, that they are one load: "together"
	iSay        bool // before what somebody else says a number is: "i say 2"
	apology     bool // at the beginning, takes nothing back: "sorry"
}

// lexicon finds the longest spelling that starts at a word.
type lexicon struct {
	root     *node
	starts   map[int][]start    // the first words of all spellings, by their length
	words    map[string]langSet // which languages a word is of
	dialects []*dialect
	english  *tongue            // English alone
	tongues  map[[2]int]*tongue // by the slots of their languages, the leading one first
	labels   map[string][]string
	job      jobWords
	patterns map[string][]string
	layout   layout

	slab []node   // made, and not in use yet
	now  *dialect // whose spellings are being added; nil for what is no language's
}

// start is a word that begins a spelling.
type start struct {
	word  string
	langs langSet
}

// node is a word of a spelling, and what can follow it.
type node struct {
	word  string
	next  []*node
	index map[string]*node // of next, by its words; the root alone has so many
	langs langSet          // of the spellings that pass through it
	terms []sense
	one   [1]sense // room for the first of them: most spellings have no other
}

// manyWords is room for the words that spellings begin with, and for all words.
const manyWords = 1 << 14

func newRoot() *node { return &node{index: make(map[string]*node, manyWords)} }

// sense is what a spelling means in one language.
type sense struct {
	slot int
	term *term
}

// newLexicon reads the word files and the names, and adds the names that the
// caller knows trees by.
func newLexicon(known []Species) (*lexicon, error) {
	lx := &lexicon{root: newRoot(), starts: map[int][]start{}, words: make(map[string]langSet, manyWords), tongues: map[[2]int]*tongue{},
		labels: map[string][]string{}, patterns: map[string][]string{}}
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
	lx.job = newJobWords(lx.labels)
	if lx.layout, err = newLayout(lx.patterns); err != nil {
		return nil, err
	}
	if err := lx.addNames(namesCSV, known); err != nil {
		return nil, fmt.Errorf("names.csv: %w", err)
	}
	for _, n := range lx.root.next {
		if n.chatter() {
			continue
		}
		letters := utf8.RuneCountInString(n.word)
		lx.starts[letters] = append(lx.starts[letters], start{n.word, n.langs})
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
		if taken, err := lx.now.takes(words, spellings); taken || err != nil {
			lx.tell(spellings)
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
		if lx.now != nil && words[0] == "unsure" && lx.now.any == "" {
			lx.now.any = strings.TrimSpace(s)
		}
	}
	lx.tell(spellings)
	return nil
}

// addLabel keeps the spellings of a label, the longest first.
func (lx *lexicon) addLabel(label string, spellings []string) error {
	if !slices.Contains([]string{labelJob, labelNote, labelArborist, labelSite}, label) {
		return fmt.Errorf("no such label: %q", label)
	}
	for _, s := range spellings {
		lx.labels[label] = append(lx.labels[label], strings.TrimSpace(s))
	}
	slices.SortStableFunc(lx.labels[label], func(a, b string) int { return len(b) - len(a) })
	return nil
}

// tell keeps which language the words of spellings are of.
func (lx *lexicon) tell(spellings []string) {
	if lx.now == nil {
		return
	}
	for _, s := range spellings {
		for w := range lettered(s) {
			lx.words[fold(w)] |= setOf(lx.now.slot)
		}
	}
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

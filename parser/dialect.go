package parser

import (
	"fmt"
	"strconv"
	"strings"
)

// dialect is what a word file says about the form of messages rather than
// about trees and ropes: its numbers, its units, its small words.
type dialect struct {
	tag      string
	slot     int                   // of its terms in a node
	optional map[string]bool       // can stand inside any spelling, or be left out
	glued    map[string]bool       // small words that are typed without their space
	leads    map[string]bool       // end the words of a role that lead straight to their number
	numbers  map[string]numberWord // numbers typed as words
	counted  map[string]bool       // what follows "one" where it is a number
	articles map[string]bool       // are one before the name of a length: "a foot across"
	units    map[string]*unitWord
	joins    map[string]joint
	cues     map[cue]map[string]bool // by what they say of a number beside them
	endings  []ending
	comma    bool              // "14,5" is fourteen and a half
	any      string            // "any", before a tree
	called   map[string]string // the first name of a tree that is its alone
	aliases  map[string]string // the word that a chopped one stands for: "pc"
	chopped  []ending          // ends of words that are chopped: "pullin", "mojao"
	sounds   []ending          // what is written in several ways and sounds alike: "v" and "b"
	spoken   func() talk       // the words of no question
	dangers  dangerWords       // told by several words together
}

// numberWord is a word of a number.
type numberWord struct {
	value float64
	scale bool // "hundred": so many times what stands before it
	plus  bool // between tens and ones: "treinta y cinco"
	point bool // the decimal point, said as a word: "one point two"
}

// ending is how a word differs from the spelling that it is found under.
type ending struct{ cut, put string }

func newDialect(tag string, slot int) *dialect {
	return &dialect{
		tag: tag, slot: slot, optional: map[string]bool{}, glued: map[string]bool{}, leads: map[string]bool{}, articles: map[string]bool{}, numbers: map[string]numberWord{},
		counted: map[string]bool{}, units: map[string]*unitWord{}, joins: map[string]joint{}, cues: map[cue]map[string]bool{}, called: map[string]string{}, aliases: map[string]string{},
		dangers: dangerWords{kinds: map[string][]string{}},
	}
}

// takes reads the line of a word file where it is about form; false where it
// is not.
func (d *dialect) takes(meaning, spellings []string) (bool, error) {
	what, arg := meaning[0], strings.Join(meaning[1:], " ")
	var each func(string)
	switch what {
	case "optional", "glued", "leads", "counted", "a":
		of := map[string]map[string]bool{"optional": d.optional, "glued": d.glued, "leads": d.leads, "counted": d.counted, "a": d.articles}[what]
		each = func(s string) { of[s] = true }
	case "cue":
		return true, d.cue(cue(arg), spellings)
	case "alias":
		return true, d.alias(arg, spellings)
	case "kind":
		d.dangerKind(arg, spellings)
		return true, nil
	case "danger":
		return true, d.danger(arg, spellings)
	case "decimal":
		if d.comma = len(spellings) == 1 && strings.TrimSpace(spellings[0]) == "comma"; !d.comma {
			return true, fmt.Errorf("no such decimal: %q", spellings)
		}
		return true, nil
	case "ending":
		each = func(s string) { d.endings = append(d.endings, ending{s, arg}) }
	case "sound":
		each = func(s string) { d.sounds = append(d.sounds, ending{s, arg}) }
	case "join":
		j, ok := jointNamed[arg]
		if !ok {
			return true, fmt.Errorf("no such join: %q", arg)
		}
		each = func(s string) { d.joins[s] = j }
	case "number":
		n, err := readNumberWord(arg)
		if err != nil {
			return true, err
		}
		each = func(s string) { d.numbers[s] = n }
	case "unit":
		if arg == "" {
			return false, nil // a word, see markUnit
		}
		u := unitNamed[arg]
		if u == nil {
			return true, fmt.Errorf("no such unit: %q", arg)
		}
		each = func(s string) { d.units[s] = u }
	default:
		return false, nil
	}
	for _, s := range spellings {
		each(fold(strings.TrimSpace(s)))
	}
	return true, nil
}

// cue keeps the words that say what a number beside them is.
func (d *dialect) cue(c cue, spellings []string) error {
	if !cueNamed[c] {
		return fmt.Errorf("no such cue: %q", c)
	}
	if d.cues[c] == nil {
		d.cues[c] = map[string]bool{}
	}
	for _, s := range spellings {
		d.cues[c][fold(strings.TrimSpace(s))] = true
	}
	return nil
}

// alias keeps what chopped words stand for.
func (d *dialect) alias(whole string, chopped []string) error {
	if whole == "" || strings.Contains(whole, " ") {
		return fmt.Errorf("an alias stands for one word, not for %q", whole)
	}
	tail, ending := strings.CutPrefix(whole, "-")
	for _, s := range chopped {
		s = fold(strings.TrimSpace(s))
		if ending {
			d.chop(strings.TrimPrefix(s, "-"), fold(tail))
			continue
		}
		d.aliases[s] = fold(whole)
	}
	return nil
}

// chop keeps an end that words are chopped to: "-in" for "-ing".
func (d *dialect) chop(cut, put string) { d.chopped = append(d.chopped, ending{cut, put}) }

// readNumberWord reads "22", "x100", "+", "." and "1/2".
func readNumberWord(s string) (numberWord, error) {
	times, scale := strings.CutPrefix(s, "x")
	switch s {
	case "+":
		return numberWord{plus: true}, nil
	case "1/2":
		return numberWord{value: half}, nil
	case ".":
		return numberWord{point: true}, nil
	}
	v, err := strconv.ParseFloat(times, 64)
	if err != nil || v < 1 {
		return numberWord{}, fmt.Errorf("no such number: %q", s)
	}
	return numberWord{value: v, scale: scale}, nil
}

// isForm says whether a line of a word file is about form. Such lines come
// first: spellings are made of what they say.
func isForm(line string) bool {
	what, _, _ := strings.Cut(line, " ")
	switch what {
	case "optional", "leads", "counted", "a", "alias", "cue", "danger", "decimal", "ending", "join", "kind", "number", "sound", "unit":
		return true
	}
	return false
}

package lexicon

import (
	"fmt"
	"strconv"
	"strings"

	"heft/parser/scan"
)

func newDialect(tag string, slot int) *scan.Dialect {
	return &scan.Dialect{
		Tag: tag, Slot: slot, Optional: map[string]bool{}, Glued: map[string]bool{}, Small: map[string]bool{}, Leads: map[string]bool{}, Articles: map[string]bool{}, Numbers: map[string]scan.NumberWord{},
		Counted: map[string]bool{}, Units: map[string]*scan.UnitWord{}, Joins: map[string]scan.Joint{}, Cues: map[string]scan.CueSet{}, Called: map[string]string{}, Aliases: map[string]string{},
		Dangers: scan.DangerWords{Kinds: map[string][]string{}},
	}
}

// forms are the lines of a word file about form that go by themselves.
var forms = map[string]func(d *scan.Dialect, arg string, spellings []string) error{
	"cue":    func(d *scan.Dialect, arg string, spellings []string) error { return cue(d, scan.Cue(arg), spellings) },
	"alias":  alias,
	"danger": danger,
	"topic":  topic,
	"kind": func(d *scan.Dialect, arg string, spellings []string) error {
		dangerKind(d, arg, spellings)
		return nil
	},
	"decimal": func(d *scan.Dialect, _ string, spellings []string) error {
		if d.Comma = len(spellings) == 1 && strings.TrimSpace(spellings[0]) == "comma"; !d.Comma {
			return fmt.Errorf("no such decimal: %q", spellings)
		}
		return nil
	},
}

// takes reads the line of a word file where it is about form; false where it
// is not.
func takes(d *scan.Dialect, meaning, spellings []string) (bool, error) {
	what, arg := meaning[0], strings.Join(meaning[1:], " ")
	if form := forms[what]; form != nil {
		return true, form(d, arg, spellings)
	}
	each, err := ofEach(d, what, arg)
	if each == nil || err != nil {
		return err != nil, err
	}
	for _, s := range spellings {
		each(scan.Fold(strings.TrimSpace(s)))
	}
	return true, nil
}

// ofEach is what a line about form says of each of its spellings, nil where the line is
// about something else.
func ofEach(d *scan.Dialect, what, arg string) (func(string), error) {
	switch what {
	case "optional", "glued", "small", "leads", "counted", "a":
		of := map[string]map[string]bool{"optional": d.Optional, "glued": d.Glued, "small": d.Small, "leads": d.Leads, "counted": d.Counted, "a": d.Articles}[what]
		return func(s string) { of[s] = true }, nil
	case "ending":
		return func(s string) { d.Endings = append(d.Endings, scan.Ending{Cut: s, Put: arg}) }, nil
	case "sound":
		return func(s string) { d.Sounds = append(d.Sounds, scan.Ending{Cut: s, Put: arg}) }, nil
	case "join":
		j, ok := jointNamed[arg]
		if !ok {
			return nil, fmt.Errorf("no such join: %q", arg)
		}
		return func(s string) { d.Joins[s] = j }, nil
	case "number":
		n, err := readNumberWord(arg)
		return func(s string) { d.Numbers[s] = n }, err
	case "unit":
		u := scan.UnitNamed[arg]
		if arg != "" && u == nil {
			return nil, fmt.Errorf("no such unit: %q", arg)
		}
		if u != nil { // "unit" alone is of a word, see markUnit
			return func(s string) { d.Units[s] = u }, nil
		}
	}
	return nil, nil
}

// cue keeps the words that say what a number beside them is.
func cue(d *scan.Dialect, c scan.Cue, spellings []string) error {
	if !cueNamed[c] {
		return fmt.Errorf("no such cue: %q", c)
	}
	for _, s := range spellings {
		word := scan.Fold(strings.TrimSpace(s))
		d.Cues[word] = append(d.Cues[word], c)
	}
	return nil
}

// alias keeps what chopped words stand for.
func alias(d *scan.Dialect, whole string, chopped []string) error {
	if whole == "" || strings.Contains(whole, " ") {
		return fmt.Errorf("an alias stands for one word, not for %q", whole)
	}
	tail, ending := strings.CutPrefix(whole, "-")
	for _, s := range chopped {
		s = scan.Fold(strings.TrimSpace(s))
		if ending {
			chop(d, strings.TrimPrefix(s, "-"), scan.Fold(tail))
			continue
		}
		d.Aliases[s] = scan.Fold(whole)
	}
	return nil
}

// chop keeps an end that words are chopped to: "-in" for "-ing".
func chop(d *scan.Dialect, cut, put string) {
	d.Chopped = append(d.Chopped, scan.Ending{Cut: cut, Put: put})
}

// readNumberWord reads "22", "x100", "+", ".", "0", and the parts from "1/2" to "1/16".
func readNumberWord(s string) (scan.NumberWord, error) {
	times, scale := strings.CutPrefix(s, "x")
	switch s {
	case "+":
		return scan.NumberWord{Plus: true}, nil
	case "1/2":
		return scan.NumberWord{Value: scan.Half}, nil
	case "1/4":
		return scan.NumberWord{Value: scan.Quarter}, nil
	case "1/8":
		return scan.NumberWord{Value: scan.Eighth}, nil
	case "1/16":
		return scan.NumberWord{Value: scan.Sixteenth}, nil
	case ".":
		return scan.NumberWord{Point: true}, nil
	case "0":
		return scan.NumberWord{Nought: true}, nil
	}
	v, err := strconv.ParseFloat(times, 64)
	if err != nil || v < 1 {
		return scan.NumberWord{}, fmt.Errorf("no such number: %q", s)
	}
	return scan.NumberWord{Value: v, Scale: scale}, nil
}

// isForm says whether a line of a word file is about form. Such lines come
// first: spellings are made of what they say.
func isForm(line string) bool {
	what, _, _ := strings.Cut(line, " ")
	switch what {
	case "optional", "leads", "counted", "a", "alias", "cue", "danger", "decimal", "ending", "join", "kind", "number", "sound", "topic", "unit":
		return true
	}
	return false
}

// jointNamed has the joins that are words, as the word files name them.
var jointNamed = map[string]scan.Joint{"to": scan.To, "or": scan.Or, "to?": scan.UpTo}

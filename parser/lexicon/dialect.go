package lexicon

import (
	"fmt"
	"strconv"
	"strings"

	"heft/parser/scan"
)

func newDialect(tag string, slot int) *scan.Dialect {
	return &scan.Dialect{
		Tag: tag, Slot: slot, Optional: map[string]bool{}, Glued: map[string]bool{}, Leads: map[string]bool{}, Articles: map[string]bool{}, Numbers: map[string]scan.NumberWord{},
		Counted: map[string]bool{}, Units: map[string]*scan.UnitWord{}, Joins: map[string]scan.Joint{}, Cues: map[scan.Cue]map[string]bool{}, Called: map[string]string{}, Aliases: map[string]string{},
		Dangers: scan.DangerWords{Kinds: map[string][]string{}},
	}
}

// takes reads the line of a word file where it is about form; false where it
// is not.
func takes(d *scan.Dialect, meaning, spellings []string) (bool, error) {
	what, arg := meaning[0], strings.Join(meaning[1:], " ")
	var each func(string)
	switch what {
	case "optional", "glued", "leads", "counted", "a":
		of := map[string]map[string]bool{"optional": d.Optional, "glued": d.Glued, "leads": d.Leads, "counted": d.Counted, "a": d.Articles}[what]
		each = func(s string) { of[s] = true }
	case "cue":
		return true, cue(d, scan.Cue(arg), spellings)
	case "alias":
		return true, alias(d, arg, spellings)
	case "kind":
		dangerKind(d, arg, spellings)
		return true, nil
	case "danger":
		return true, danger(d, arg, spellings)
	case "decimal":
		if d.Comma = len(spellings) == 1 && strings.TrimSpace(spellings[0]) == "comma"; !d.Comma {
			return true, fmt.Errorf("no such decimal: %q", spellings)
		}
		return true, nil
	case "ending":
		each = func(s string) { d.Endings = append(d.Endings, scan.Ending{Cut: s, Put: arg}) }
	case "sound":
		each = func(s string) { d.Sounds = append(d.Sounds, scan.Ending{Cut: s, Put: arg}) }
	case "join":
		j, ok := jointNamed[arg]
		if !ok {
			return true, fmt.Errorf("no such join: %q", arg)
		}
		each = func(s string) { d.Joins[s] = j }
	case "number":
		n, err := readNumberWord(arg)
		if err != nil {
			return true, err
		}
		each = func(s string) { d.Numbers[s] = n }
	case "unit":
		if arg == "" {
			return false, nil // a word, see markUnit
		}
		u := scan.UnitNamed[arg]
		if u == nil {
			return true, fmt.Errorf("no such unit: %q", arg)
		}
		each = func(s string) { d.Units[s] = u }
	default:
		return false, nil
	}
	for _, s := range spellings {
		each(scan.Fold(strings.TrimSpace(s)))
	}
	return true, nil
}

// cue keeps the words that say what a number beside them is.
func cue(d *scan.Dialect, c scan.Cue, spellings []string) error {
	if !cueNamed[c] {
		return fmt.Errorf("no such cue: %q", c)
	}
	if d.Cues[c] == nil {
		d.Cues[c] = map[string]bool{}
	}
	for _, s := range spellings {
		d.Cues[c][scan.Fold(strings.TrimSpace(s))] = true
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

// readNumberWord reads "22", "x100", "+", "." and "1/2".
func readNumberWord(s string) (scan.NumberWord, error) {
	times, scale := strings.CutPrefix(s, "x")
	switch s {
	case "+":
		return scan.NumberWord{Plus: true}, nil
	case "1/2":
		return scan.NumberWord{Value: scan.Half}, nil
	case ".":
		return scan.NumberWord{Point: true}, nil
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
	case "optional", "leads", "counted", "a", "alias", "cue", "danger", "decimal", "ending", "join", "kind", "number", "sound", "unit":
		return true
	}
	return false
}

// jointNamed has the joins that are words, as the word files name them.
var jointNamed = map[string]scan.Joint{"to": scan.To, "or": scan.Or, "to?": scan.UpTo}

package lexicon

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"heft/parser"
	"heft/parser/scan"
)

// mostRepeats is how often a part may come that may come any number of times.
const mostRepeats = 4

// dangerKind keeps the spellings of a kind, each also as it is said of several and
// with its last letter swallowed: "lowerin".
func dangerKind(d *scan.Dialect, name string, spellings []string) {
	for _, s := range spellings {
		words := slices.DeleteFunc(dangerSpelling(s), func(word string) bool { return leftOut(d, word) })
		if len(words) == 0 {
			continue // "está" is left out as "esta" is
		}
		for _, form := range dangerForms(d, words) {
			if kinds := d.Dangers.Kinds[form]; !slices.Contains(kinds, name) {
				d.Dangers.Kinds[form] = append(kinds, name)
			}
		}
	}
}

// leftOut says whether a word is left out where dangers are read.
func leftOut(d *scan.Dialect, word string) bool { return d.Optional[word] }

// dangerSpelling is a spelling as dangers are read by: without apostrophes.
func dangerSpelling(s string) []string {
	return scan.SplitWords(strings.ReplaceAll(scan.Fold(s), "'", ""))
}

// dangerForms are the forms in which a spelling may come.
func dangerForms(d *scan.Dialect, words []string) []string {
	swallowed := slices.Clone(words)
	for i, w := range swallowed {
		if len(w) > 4 && strings.HasSuffix(w, "ing") {
			swallowed[i] = strings.TrimSuffix(w, "g")
		}
	}
	whole := strings.Join(words, " ")
	forms := []string{whole, strings.Join(swallowed, " "), whole + "s"}
	for _, e := range d.Endings {
		if stem, ok := strings.CutSuffix(whole, e.Put); ok && e.Put != "" {
			forms = append(forms, stem+e.Cut)
		}
	}
	return forms
}

// danger reads a line of dangers: its kind, behind a colon which of the kind, "none"
// before it where the words are none, and "!" behind it where that holds anywhere.
func danger(d *scan.Dialect, kind string, spellings []string) error {
	kind, none := strings.CutPrefix(kind, "none ")
	kind, far := strings.CutSuffix(kind, "!")
	kind, name, _ := strings.Cut(kind, ":")
	if !slices.Contains(parser.Halting, parser.Kind(kind)) {
		return fmt.Errorf("no such danger: %q", kind)
	}
	for _, s := range spellings {
		line := &scan.DangerLine{Kind: parser.Kind(kind), Name: name, None: none, Far: far}
		for _, part := range strings.Fields(s) {
			if leftOut(d, part) {
				continue
			}
			slot, err := slotOf(part)
			if err != nil {
				return err
			}
			line.Slots = append(line.Slots, slot)
		}
		if len(line.Slots) == 0 || line.Slots[0].Kind == "" || line.Slots[0].Least == 0 {
			return fmt.Errorf("a danger begins with a word that must be there: %q", s)
		}
		d.Dangers.Lines = append(d.Dangers.Lines, line)
	}
	return nil
}

// slotOf reads one part of a line.
func slotOf(part string) (scan.DangerSlot, error) {
	if n, ok := strings.CutPrefix(part, ".."); ok {
		most, err := strconv.Atoi(n)
		return scan.DangerSlot{Most: most}, err
	}
	if n, ok := strings.CutPrefix(part, ";;"); ok {
		most, err := strconv.Atoi(n)
		return scan.DangerSlot{Most: most, Over: true}, err
	}
	slot := scan.DangerSlot{Least: 1, Most: 1}
	name, often := strings.CutSuffix(part, "*")
	name, perhaps := strings.CutSuffix(name, "?")
	switch {
	case often:
		slot.Least, slot.Most = 0, mostRepeats
	case perhaps:
		slot.Least = 0
	}
	if kind, ok := strings.CutPrefix(name, "<"); ok {
		slot.Kind = strings.TrimSuffix(kind, ">")
		return slot, nil
	}
	words := dangerSpelling(name)
	if len(words) != 1 {
		return slot, fmt.Errorf("no part of a danger: %q", part)
	}
	slot.Kind = "=" + words[0]
	return slot, nil
}

// beginnings says which lines begin with what.
func beginnings(lines []*scan.DangerLine) map[string][]int {
	out := map[string][]int{}
	for i, l := range lines {
		first := l.Slots[0].Kind
		out[first] = append(out[first], i)
	}
	return out
}

// addDangers takes over what another language says of dangers.
func addDangers(w *scan.DangerWords, other scan.DangerWords) {
	if len(w.Lines) == 0 {
		w.Kinds, w.Lines = maps.Clone(other.Kinds), slices.Clone(other.Lines)
		return
	}
	for spelling, kinds := range other.Kinds {
		for _, k := range kinds {
			if !slices.Contains(w.Kinds[spelling], k) {
				w.Kinds[spelling] = append(slices.Clip(w.Kinds[spelling]), k)
			}
		}
	}
	w.Lines = append(w.Lines, other.Lines...)
}

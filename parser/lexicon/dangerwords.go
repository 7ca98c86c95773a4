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

// denial is the kind of words that deny what stands behind them.
const denial = "denial"

// dangerKind keeps the spellings of a kind, each also as it is said of several and
// with its last letter swallowed: "lowerin".
func dangerKind(d *scan.Dialect, name string, spellings []string) {
	alone := []string{name} // what most of them are: full, so that adding to it makes another
	for _, s := range spellings {
		words := slices.DeleteFunc(dangerSpelling(s), func(word string) bool { return leftOut(d, word) })
		if len(words) == 0 {
			continue // "está" is left out as "esta" is
		}
		forms := dangerForms(d, words)
		if name == denial {
			forms = forms[:1] // "nos" is not several of "no"
		}
		for _, form := range forms {
			switch kinds := d.Dangers.Kinds[form]; {
			case len(kinds) == 0:
				d.Dangers.Kinds[form] = alone
			case !slices.Contains(kinds, name):
				d.Dangers.Kinds[form] = append(slices.Clip(kinds), name)
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
	whole := strings.Join(words, " ")
	forms := []string{whole, whole + "s"}
	if strings.Contains(whole, "ing") {
		swallowed := slices.Clone(words)
		for i, w := range swallowed {
			if len(w) > 4 && strings.HasSuffix(w, "ing") {
				swallowed[i] = strings.TrimSuffix(w, "g")
			}
		}
		forms = append(forms, strings.Join(swallowed, " "))
	}
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
		slots, err := slotsOf(d, s)
		if err != nil {
			return err
		}
		d.Dangers.Lines = append(d.Dangers.Lines, &scan.DangerLine{Kind: parser.Kind(kind), Name: name, None: none, Far: far, Slots: slots})
	}
	return nil
}

// topic reads a line of what is asked of no piece: its name, "none" before it where the
// words ask something else, "!" or "?" behind it as scan.DangerWords says.
func topic(d *scan.Dialect, name string, spellings []string) error {
	name, none := strings.CutPrefix(name, "none ")
	name, beside := strings.CutSuffix(name, "!")
	name, first := strings.CutSuffix(name, "?")
	if !parser.Told(name) {
		return fmt.Errorf("no such topic: %q", name)
	}
	for _, s := range spellings {
		slots, err := slotsOf(d, s)
		if err != nil {
			return err
		}
		d.Dangers.Topics = append(d.Dangers.Topics, &scan.TopicLine{Name: name, None: none, Beside: beside, First: first, Slots: slots})
	}
	return nil
}

// slotsOf reads the parts of a line.
func slotsOf(d *scan.Dialect, spelling string) ([]scan.DangerSlot, error) {
	var out []scan.DangerSlot
	for _, part := range strings.Fields(spelling) {
		if leftOut(d, part) {
			continue
		}
		slot, err := slotOf(part)
		if err != nil {
			return nil, err
		}
		out = append(out, slot)
	}
	if len(out) == 0 || out[0].Kind == "" || out[0].Least == 0 {
		return nil, fmt.Errorf("a danger or a topic begins with a word that must be there: %q", spelling)
	}
	return out, nil
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

// begin says which of the lines begin with what, and which words stand in any as they are.
func begin(w *scan.DangerWords) {
	w.Begins, w.Asks, w.Itself = map[string][]int{}, map[string][]int{}, map[string]string{}
	itself := func(slots []scan.DangerSlot) {
		for _, s := range slots {
			if word, ok := strings.CutPrefix(s.Kind, "="); ok {
				w.Itself[word] = s.Kind
			}
		}
	}
	for i, l := range w.Lines {
		first := l.Slots[0].Kind
		w.Begins[first] = append(w.Begins[first], i)
		itself(l.Slots)
	}
	for i, l := range w.Topics {
		first := l.Slots[0].Kind
		w.Asks[first] = append(w.Asks[first], i)
		itself(l.Slots)
	}
}

// addDangers takes over what another language says of dangers.
func addDangers(w *scan.DangerWords, other scan.DangerWords) {
	if len(w.Lines) == 0 {
		w.Kinds, w.Lines, w.Topics = maps.Clone(other.Kinds), slices.Clone(other.Lines), slices.Clone(other.Topics)
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
	w.Topics = append(w.Topics, other.Topics...)
}

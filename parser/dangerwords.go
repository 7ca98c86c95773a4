package parser

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// Most dangers are told by a thing and how it is, or where somebody is, in words that
// say nothing by themselves: "my hand is in the wraps", "a bracket on the beech". The
// lines `danger` of the word files say which go together, by the kinds of words that
// the lines `kind` list:
//
//	kind hand | hand, finger
//	danger emergency | <hand> <caught>* <inside> <machine>
//
// "<x>?" may be missing, "<x>*" comes any number of times up to four; "..3" is up to
// three words within the same breath that deny nothing, ";;3" up to three of the same
// sentence. What no kind tells is a word as it stands. "<tree>", "<piece>", "<gear>"
// and "<somebody>" are also whatever the other lines know as such, "<number>" is a
// number, and at "<end>" a breath ends. What a line "danger none …" tells is none,
// and with "!" nothing of the kind in the whole message is.

// dangerWords is what a word file says of dangers.
type dangerWords struct {
	kinds map[string][]string // of a spelling, the kinds it is of
	lines []*dangerLine
}

// dangerLine is one way to tell of a danger, or of what looks like one and is none.
type dangerLine struct {
	kind  Kind
	name  string // which of the kind: "knot"
	none  bool   // what stops by itself does not, within such words
	far   bool   // nor anywhere else in the message
	slots []dangerSlot
}

// dangerSlot is one part of a line.
type dangerSlot struct {
	kind        string // "" for words of any kind
	least, most int
	over        bool // a comma may stand before it
}

// mostRepeats is how often a part may come that may come any number of times.
const mostRepeats = 4

// dangerKind keeps the spellings of a kind, each also as it is said of several and
// with its last letter swallowed: "lowerin".
func (d *dialect) dangerKind(name string, spellings []string) {
	for _, s := range spellings {
		words := slices.DeleteFunc(dangerSpelling(s), d.leftOut)
		if len(words) == 0 {
			continue // "está" is left out as "esta" is
		}
		for _, form := range d.dangerForms(words) {
			if kinds := d.dangers.kinds[form]; !slices.Contains(kinds, name) {
				d.dangers.kinds[form] = append(kinds, name)
			}
		}
	}
}

// leftOut says whether a word is left out where dangers are read.
func (d *dialect) leftOut(word string) bool { return d.optional[word] }

// dangerSpelling is a spelling as dangers are read by: without apostrophes.
func dangerSpelling(s string) []string { return splitWords(strings.ReplaceAll(fold(s), "'", "")) }

// dangerForms are the forms in which a spelling may come.
func (d *dialect) dangerForms(words []string) []string {
	swallowed := slices.Clone(words)
	for i, w := range swallowed {
		if len(w) > 4 && strings.HasSuffix(w, "ing") {
			swallowed[i] = strings.TrimSuffix(w, "g")
		}
	}
	whole := strings.Join(words, " ")
	forms := []string{whole, strings.Join(swallowed, " "), whole + "s"}
	for _, e := range d.endings {
		if stem, ok := strings.CutSuffix(whole, e.put); ok && e.put != "" {
			forms = append(forms, stem+e.cut)
		}
	}
	return forms
}

// danger reads a line of dangers: its kind, behind a colon which of the kind, "none"
// before it where the words are none, and "!" behind it where that holds anywhere.
func (d *dialect) danger(kind string, spellings []string) error {
	kind, none := strings.CutPrefix(kind, "none ")
	kind, far := strings.CutSuffix(kind, "!")
	kind, name, _ := strings.Cut(kind, ":")
	if !slices.Contains(halting, Kind(kind)) {
		return fmt.Errorf("no such danger: %q", kind)
	}
	for _, s := range spellings {
		line := &dangerLine{kind: Kind(kind), name: name, none: none, far: far}
		for _, part := range strings.Fields(s) {
			if d.leftOut(part) {
				continue
			}
			slot, err := slotOf(part)
			if err != nil {
				return err
			}
			line.slots = append(line.slots, slot)
		}
		if len(line.slots) == 0 || line.slots[0].kind == "" || line.slots[0].least == 0 {
			return fmt.Errorf("a danger begins with a word that must be there: %q", s)
		}
		d.dangers.lines = append(d.dangers.lines, line)
	}
	return nil
}

// slotOf reads one part of a line.
func slotOf(part string) (dangerSlot, error) {
	if n, ok := strings.CutPrefix(part, ".."); ok {
		most, err := strconv.Atoi(n)
		return dangerSlot{most: most}, err
	}
	if n, ok := strings.CutPrefix(part, ";;"); ok {
		most, err := strconv.Atoi(n)
		return dangerSlot{most: most, over: true}, err
	}
	slot := dangerSlot{least: 1, most: 1}
	name, often := strings.CutSuffix(part, "*")
	name, perhaps := strings.CutSuffix(name, "?")
	switch {
	case often:
		slot.least, slot.most = 0, mostRepeats
	case perhaps:
		slot.least = 0
	}
	if kind, ok := strings.CutPrefix(name, "<"); ok {
		slot.kind = strings.TrimSuffix(kind, ">")
		return slot, nil
	}
	words := dangerSpelling(name)
	if len(words) != 1 {
		return slot, fmt.Errorf("no part of a danger: %q", part)
	}
	slot.kind = "=" + words[0]
	return slot, nil
}

// add takes over what another language says of dangers.
func (w *dangerWords) add(other dangerWords) {
	for spelling, kinds := range other.kinds {
		for _, k := range kinds {
			if !slices.Contains(w.kinds[spelling], k) {
				w.kinds[spelling] = append(slices.Clip(w.kinds[spelling]), k)
			}
		}
	}
	w.lines = append(w.lines, other.lines...)
}

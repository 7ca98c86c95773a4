package reader_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"heft/parser"
)

// TestNothingTakesAStopAway puts a word that ends all arithmetic into every
// gap of every understood message: whatever is read around it, it stops.
func TestNothingTakesAStopAway(t *testing.T) {
	r := newReader(t)
	n := 0
	for _, p := range readCorpora(t) {
		words := strings.Fields(p.text)
		for gap := range len(words) + 1 {
			if gap == len(words) && slices.Contains([]string{"no", "not"}, words[gap-1]) {
				continue // "why not rotten" denies it
			}
			for _, word := range []string{"mayday", "powerline", "rotten"} {
				text := strings.Join(slices.Insert(slices.Clone(words), gap, word), " ")
				_, err := r.Read(text)
				if ask, ok := errors.AsType[*parser.Ask](err); !ok || !ask.Final() {
					t.Errorf("%s: %q is not stopped at: %v", p.at, text, err)
				}
				n++
			}
		}
	}
	if n < 10000 {
		t.Errorf("only %d messages", n)
	}
}

// TestSoundWoodIsNotAskedFor: who says at the end that wood is sound has said
// so, and who asks it has not.
func TestSoundWoodIsNotAskedFor(t *testing.T) {
	r := newReader(t)
	for _, text := range []string{"red oak limb 14 in 22 ft, no rot", "rama de roble rojo 14 pulgadas 22 pies, sin grietas"} {
		if _, err := r.Read(text); err != nil {
			t.Errorf("%q: %v", text, err)
		}
		for _, asked := range []string{text + "?", text + " ??", text + " yet", text + " maybe"} {
			_, err := r.Read(asked)
			if ask, ok := errors.AsType[*parser.Ask](err); !ok || ask.Kind != parser.Unsound {
				t.Errorf("%q: %v, want a stop", asked, err)
			}
		}
	}
}

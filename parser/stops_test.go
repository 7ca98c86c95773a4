package parser_test

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

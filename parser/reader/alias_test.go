package reader_test

import (
	"errors"
	"testing"

	"heft/parser"
	"heft/parser/reader"
)

// TestChoppedWordsStop: a stop is found however its words are chopped.
func TestChoppedWordsStop(t *testing.T) {
	r := newReader(t)
	for whole, chopped := range map[string]string{
		"climber on the piece, 600 lb":  "climber on the pc, 600 lb",
		"lost the piece, 600 lb":        "lost the pce, 600 lb",
		"pull it over with the truck":   "pul it over wif the truck",
		"600 lb, the stem is cracking":  "600 lb, the stem is crackin",
		"climber hanging on it, 600 lb": "climber hangin on it, 600 lb",
	} {
		want, got := stopped(t, r, whole), stopped(t, r, chopped)
		if want == "" || got != want {
			t.Errorf("%q stops for %q, %q for %q", whole, want, chopped, got)
		}
	}
}

// stopped is the reason that a message is stopped for, "" where it is not.
func stopped(t *testing.T, r *reader.Reader, text string) parser.Kind {
	t.Helper()
	_, err := r.Read(text)
	if ask, ok := errors.AsType[*parser.Ask](err); ok && ask.Final() {
		return ask.Kind
	}
	return ""
}

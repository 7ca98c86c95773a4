package reader_test

import (
	"errors"
	"reflect"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"heft/parser"
)

// FuzzRead reads anything at all. Nothing may panic; every span must lie in
// the text and hold its words; reading twice must give the same; and where a
// message is read without asking, no digit of it may be unaccounted for.
func FuzzRead(f *testing.F) {
	for _, p := range readCorpora(f) {
		f.Add(p.text)
	}
	for _, x := range readRefusals(f) {
		f.Add(x.text)
	}
	r := newReader(f)
	f.Fuzz(func(t *testing.T, text string) {
		q, err := r.Read(text)
		again, err2 := r.Read(text)
		if !reflect.DeepEqual(q, again) || !reflect.DeepEqual(err, err2) {
			t.Fatalf("%q is read in two ways: %v, %v and %v, %v", text, q, err, again, err2)
		}
		if err != nil {
			checkAsk(t, text, err)
		}
		checkSpans(t, text, q)
		if lost := lostDigit(text, q); err == nil && lost >= 0 {
			t.Fatalf("%q is read as %s without its %q", text, meant(q), text[lost:])
		}
	})
}

func checkAsk(t *testing.T, text string, err error) {
	t.Helper()
	ask, ok := errors.AsType[*parser.Ask](err)
	if !ok {
		t.Fatalf("%q: %v is no ask", text, err)
	}
	checkSpan(t, text, ask.Words, ask.Start, ask.End)
}

// checkSpans looks at every span of a question.
func checkSpans(t *testing.T, text string, q parser.Question) {
	t.Helper()
	if q.Species != nil {
		checkSpan(t, text, q.Species.Words, q.Species.Start, q.Species.End)
	}
	if q.Shape != nil {
		checkSpan(t, text, q.Shape.Words, q.Shape.Start, q.Shape.End)
	}
	if q.Condition != nil {
		checkSpan(t, text, q.Condition.Words, q.Condition.Start, q.Condition.End)
	}
	for _, name := range []*parser.Said[string]{q.Arborist, q.Site} {
		if name != nil {
			checkSpan(t, text, name.Words, name.Start, name.End)
		}
	}
	for _, p := range slices.Concat(q.Pieces, q.Passed, q.Left) {
		checkSpan(t, text, p.Words, p.Start, p.End)
	}
	for _, x := range q.Quantities {
		checkSpan(t, text, x.Words, x.Start, x.End)
		if !(x.Low <= x.High) {
			t.Fatalf("%q: %s from %g to %g", text, x.Field, x.Low, x.High)
		}
	}
}

// checkSpan wants the words to be in their place. In a text that is not valid
// they can only be as long.
func checkSpan(t *testing.T, text, words string, start, end int) {
	t.Helper()
	if start < 0 || end < start || end > len(text) {
		t.Fatalf("%q: %q is at %d–%d", text, words, start, end)
	}
	if got := text[start:end]; got != words && (utf8.ValidString(text) || len(got) != len(words)) {
		t.Fatalf("%q: at %d–%d is %q, not %q", text, start, end, got, words)
	}
}

// TestLongTextIsRefused wants a text past the longest to be refused, and one
// just within it to be read.
func TestLongTextIsRefused(t *testing.T) {
	r := newReader(t)
	const question = "14 in red oak limb 22 ft"
	if _, err := r.Read(question + strings.Repeat(" ", 1200-len(question))); err != nil {
		t.Errorf("1,200 characters: %v", err)
	}
	_, err := r.Read(question + strings.Repeat(" ", 1201-len(question)))
	if ask := asked(t, err); ask.Kind != parser.TooMuch {
		t.Errorf("1,201 characters: %v", ask)
	}
}

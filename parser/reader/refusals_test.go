package reader_test

import (
	"fmt"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// refusal is one line of a file of refusals: the kind of ask, and the words
// that it must point at.
type refusal struct {
	at, kind, words, text string

	language string // of the file
}

var refusalLine = regexp.MustCompile(`^([a-z-]+) at "(.+?)": (.+)$`)

func readRefusals(t testing.TB) []refusal {
	t.Helper()
	var out []refusal
	for _, l := range tongues {
		for _, f := range questionFiles(t, l, "refusals") {
			out = append(out, readRefusalsOf(t, f, l)...)
		}
	}
	return out
}

func readRefusalsOf(t testing.TB, file, language string) []refusal {
	t.Helper()
	var out []refusal
	for i, line := range lines(t, file) {
		if strings.TrimSpace(line) == "" || line[0] == '#' {
			continue
		}
		at := fmt.Sprintf("%s/%s:%d", language, filepath.Base(file), i+1)
		m := refusalLine.FindStringSubmatch(line)
		if m == nil {
			t.Fatalf("%s: not like: kind at \"words\": message", at)
		}
		out = append(out, refusal{at, m[1], m[2], strings.ReplaceAll(m[3], `\n`, "\n"), language})
	}
	return out
}

// TestRefusals wants every message asked back or refused for its reason, with
// the words in question and their place.
func TestRefusals(t *testing.T) {
	r := newReader(t)
	for _, x := range readRefusals(t) {
		q, err := r.Read(x.text)
		if err == nil {
			t.Errorf("%s: %q was read: %s", x.at, x.text, meant(q))
			continue
		}
		ask := asked(t, err)
		if string(ask.Kind) != x.kind || ask.Words != x.words {
			t.Errorf("%s: %q: %v, want %s at %q", x.at, x.text, ask, x.kind, x.words)
		}
		if ask.End > len(x.text) || ask.Start > ask.End || x.text[ask.Start:ask.End] != ask.Words {
			t.Errorf("%s: %q: %q is not at %d–%d", x.at, x.text, ask.Words, ask.Start, ask.End)
		}
		for _, f := range ask.Fields {
			if _, kept := q.Get(f); kept {
				t.Errorf("%s: %q: %s is asked about and kept all the same", x.at, x.text, f)
			}
		}
	}
}

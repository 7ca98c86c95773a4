package reader_test

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"heft/parser"
)

// questions is where the corpora lie.
const questions = "../../testdata/questions"

// phrasing is one line of a corpus, and what it must mean.
type phrasing struct {
	at   string // file:line
	text string
	want meaning

	language string // of the corpus
}

// readCorpora reads every corpus.
func readCorpora(t testing.TB) []phrasing {
	t.Helper()
	var out []phrasing
	for _, l := range tongues {
		for _, f := range questionFiles(t, l, "corpus") {
			out = append(out, readCorpus(t, f, l)...)
		}
	}
	return out
}

// tongues are the languages that have corpora: English in the folder of
// questions, the others below it.
var tongues = []string{"en", "es"}

// questionFiles lists the files of one kind in one language.
func questionFiles(t testing.TB, language, kind string) []string {
	t.Helper()
	folder := filepath.Join(questions, language)
	if language == "en" {
		folder = questions
	}
	files, err := filepath.Glob(filepath.Join(folder, "*."+kind))
	if err != nil || len(files) == 0 {
		t.Fatalf("no %s in %s: %v", kind, folder, err)
	}
	return files
}

func readCorpus(t testing.TB, file, language string) []phrasing {
	t.Helper()
	var out []phrasing
	var now meaning
	for i, line := range lines(t, file) {
		at := fmt.Sprintf("%s/%s:%d", language, filepath.Base(file), i+1)
		switch {
		case strings.TrimSpace(line) == "" || line[0] == '#':
		case line[0] == '=':
			m, err := readMeaning(line[1:])
			if err != nil {
				t.Fatalf("%s: %v", at, err)
			}
			now = m
		case now.facts == nil || !strings.HasPrefix(line, "  "):
			t.Fatalf("%s: neither a meaning nor, two spaces in, a phrasing", at)
		default:
			out = append(out, phrasing{at, strings.ReplaceAll(line[2:], `\n`, "\n"), now, language})
		}
	}
	return out
}

func lines(t testing.TB, file string) []string {
	t.Helper()
	b, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	return strings.Split(strings.TrimSuffix(string(b), "\n"), "\n")
}

// TestCorpora reads every phrasing and wants exactly its meaning: nothing
// left out, nothing added.
func TestCorpora(t *testing.T) {
	r := newReader(t)
	for _, p := range readCorpora(t) {
		q, err := r.Read(p.text)
		if p.want.intentOnly {
			checkIntent(t, p, q)
			continue
		}
		if err != nil {
			t.Errorf("%s: %q: asked back: %v", p.at, p.text, err)
			continue
		}
		got := meant(q)
		if got.String() != p.want.String() {
			t.Errorf("%s: %q\n  got  %s\n  want %s", p.at, p.text, got, p.want)
		}
		if p.want.units != "" && got.units != p.want.units {
			t.Errorf("%s: %q: units %s, want %s", p.at, p.text, got.units, p.want.units)
		}
	}
}

// checkIntent is for questions of which only the intent and some facts are
// fixed: the facts on the line must be there, others may be.
func checkIntent(t *testing.T, p phrasing, q parser.Question) {
	t.Helper()
	got := meant(q)
	for k, want := range p.want.facts {
		if got.facts[k] != want {
			t.Errorf("%s: %q: %s is %q, want %q (%s)", p.at, p.text, k, got.facts[k], want, got)
		}
	}
}

// asked returns the ask of an error; it fails where there is none.
func asked(t testing.TB, err error) *parser.Ask {
	t.Helper()
	ask, ok := errors.AsType[*parser.Ask](err)
	if !ok {
		t.Fatalf("not an ask: %v", err)
	}
	return ask
}

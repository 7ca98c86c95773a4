package reader_test

import (
	"math/rand/v2"
	"strings"
	"testing"

	"heft/parser"
	"heft/parser/language"
)

// talkOf are the words of talk of a language by what their line says.
func talkOf(t *testing.T, tag string) map[string][]string {
	t.Helper()
	languages, err := language.All()
	if err != nil {
		t.Fatal(err)
	}
	out := map[string][]string{}
	for _, l := range languages {
		if l.Tag != tag {
			continue
		}
		for _, line := range l.Talk {
			what, list, _ := strings.Cut(line.Text, " | ")
			out[what] = append(out[what], strings.Split(list, ", ")...)
		}
	}
	return out
}

// breaths are the places where something else can be said in between.
func breaths(words []string) []int {
	at := []int{0, len(words)}
	for i, w := range words {
		if strings.HasSuffix(w, ",") || strings.HasSuffix(w, ";") {
			at = append(at, i+1)
		}
	}
	return at
}

// ownNext says whether what stands behind a word of talk is the word's own: "hunter 20 ft
// away", "ranchers its old".
func ownNext(what, next string) bool {
	return next == "its" || next == "de" || what == "someone" && strings.ContainsAny(next, "0123456789")
}

// TestTalkChangesNothing says a word of talk between what a crew asks: it means
// the same, or is asked about. A word that could bear on the piece is said back.
// The draws are the same on every run.
func TestTalkChangesNothing(t *testing.T) {
	r := newReader(t)
	spelled := map[string]bool{} // in the other language, which may say nothing by it
	for _, s := range spellings(t) {
		spelled[s.words] = true
	}
	draw := rand.New(rand.NewPCG(1, 1))
	pick := func(from []string) string { return from[draw.IntN(len(from))] }
	read := 0
	for _, tag := range tongues {
		talk := talkOf(t, tag)
		for _, p := range readCorpora(t) {
			before, err := r.Read(p.text)
			if err != nil || p.language != tag || p.want.intentOnly || before.Intent == parser.AskJob {
				continue // what stands before "job" makes it another's
			}
			if !strings.Contains(p.text, " ") {
				continue // "log" alone is the record, beside another word it may be wood
			}
			what := pick([]string{"chatter", "perhaps", "someone"})
			word, words := pick(talk[what]), strings.Fields(p.text)
			at := breaths(words)
			i := at[draw.IntN(len(at))]
			if i < len(words) && ownNext(what, words[i]) {
				continue
			}
			text := strings.Join(append(append(append([]string{}, words[:i]...), word), words[i:]...), " ")
			q, err := r.Read(text)
			if err != nil {
				continue
			}
			read++
			got, want := meant(q), meant(before)
			// The log shows what was asked, whatever else was said of it; what stands
			// before a list is said of none of its pieces.
			saysBack := before.Intent != parser.AskLog && before.Intent != parser.AskTree
			if what == "perhaps" && saysBack && !strings.Contains(got.facts["passed"], word) && !spelled[word] {
				t.Errorf("%q: %q is not said back: %s", text, word, got)
			}
			for _, back := range []string{"passed", "left"} { // said back with the word
				delete(got.facts, back)
				delete(want.facts, back)
			}
			if got.String() != want.String() {
				t.Errorf("%q\n  got  %s\n  want %s", text, got, want)
			}
		}
	}
	if read < 1000 {
		t.Errorf("only %d of them were read: the others are asked about", read)
	}
}

// TestTalkCanStandInsideASpelling swears in the middle of what is asked.
func TestTalkCanStandInsideASpelling(t *testing.T) {
	r := newReader(t)
	for plain, dressed := range map[string]string{
		"how long a piece of red oak 26 in, limit 500 lb": "how freaking long a piece of red oak 26 in, limit 500 lb",
		"600 lb limb, tied 12 ft from the cut":            "600 lb limb, tied 12 ft from the damned cut",
		"rope 4,000 lb break, how strong":                 "rope 4,000 lb coffee break, how strong",
	} {
		if got, want := read(r, dressed), read(r, plain); got != want && !strings.HasPrefix(got, "asked back") {
			t.Errorf("%q\n  got  %s\n  want %s", dressed, got, want)
		}
	}
}

package bot_test

import (
	"maps"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"heft/parser/language"
)

// translations are the languages besides English.
func translations(t testing.TB) []language.Language {
	t.Helper()
	all, err := language.All()
	if err != nil {
		t.Fatal(err)
	}
	all = slices.DeleteFunc(all, func(l language.Language) bool { return l.Tag == "en" })
	if len(all) == 0 {
		t.Fatal("nothing but English")
	}
	return all
}

// TestEveryLanguageHasEverySentence compares what the sources say with what a
// language has: all of it, and nothing that is no longer said.
func TestEveryLanguageHasEverySentence(t *testing.T) {
	said := listen(t)
	for _, at := range said.lost {
		t.Errorf("%s: hand say a literal, or an entry of a map of them", at)
	}
	if len(said.sentences) < 200 || len(said.whys) < 40 {
		t.Fatalf("only %d sentences and %d reasons were found", len(said.sentences), len(said.whys))
	}
	for _, l := range translations(t) {
		for _, s := range slices.Sorted(maps.Keys(said.sentences)) {
			if _, ok := l.Sentences[s]; !ok {
				t.Errorf("%s.txt lacks, from %s:\n%s", l.Tag, said.sentences[s], s)
			}
		}
		for s := range l.Sentences {
			if _, ok := said.sentences[s]; !ok {
				t.Errorf("%s.txt has what nobody says any more:\n%s", l.Tag, s)
			}
		}
	}
}

var verb = regexp.MustCompile(`%(\[(\d+)\])?([^\[%]|%)`)

// partsOf lists which parts a sentence takes.
func partsOf(t *testing.T, sentence string) (parts []int) {
	t.Helper()
	next := 1
	for _, m := range verb.FindAllStringSubmatch(sentence, -1) {
		if m[3] == "%" {
			continue
		}
		if m[3] != "s" {
			t.Errorf("%q: %s is no %%s", sentence, m[0])
		}
		if m[2] != "" {
			next, _ = strconv.Atoi(m[2]) // digits only
		}
		parts = append(parts, next)
		next++
	}
	slices.Sort(parts)
	return parts
}

// TestTranslationsTakeTheSameParts: each part once, in any order.
func TestTranslationsTakeTheSameParts(t *testing.T) {
	filled := listen(t).filled
	for _, l := range translations(t) {
		for s, own := range l.Sentences {
			if !filled[s] {
				if strings.Contains(s+own, "%") {
					t.Errorf("%s.txt: word fills nothing in: hand it to say: %s", l.Tag, s)
				}
				continue
			}
			if want, got := partsOf(t, s), partsOf(t, own); !slices.Equal(got, want) {
				t.Errorf("%s.txt: parts %v, want %v: %s", l.Tag, got, want, own)
			}
		}
	}
}

// TestNoSentenceIsSpokenPastSay finds words in the sources that no language
// can translate.
func TestNoSentenceIsSpokenPastSay(t *testing.T) {
	said := listen(t)
	words := regexp.MustCompile(`[A-Za-z]{2,} [a-z]{2,}`)
	kinds := map[string]bool{"natural crotch": true, "rigging ring": true, "ball-bearing sheave": true} // names in calc/tackle
	checked := 0
	for lit, at := range said.literals {
		text, err := strconv.Unquote(lit.Value)
		if err != nil || said.silent[lit] || kinds[text] || !words.MatchString(text) {
			continue
		}
		checked++
		if _, ok := said.sentences[text]; !ok {
			t.Errorf("%s: spoken past say: %q", at, text)
		}
	}
	if checked < 100 {
		t.Errorf("only %d sentences were checked", checked)
	}
}

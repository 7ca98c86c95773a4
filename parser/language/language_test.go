package language

import (
	"strings"
	"testing"
)

func TestEnglishHasWordsAndNeedsNoSentences(t *testing.T) {
	all, err := All()
	if err != nil {
		t.Fatal(err)
	}
	for _, l := range all {
		if len(l.Words) == 0 {
			t.Errorf("%s has no words", l.Tag)
		}
		if l.Tag == "en" && len(l.Sentences) > 0 {
			t.Errorf("English translates into itself: %v", l.Sentences)
		}
	}
}

func TestAFileIsDividedIntoItsParts(t *testing.T) {
	l, err := read("xx", "# head\n[words]\nfiller | le, la\n\n[sentences]\nRope %s.\n  Corde %s.\nHold\\n%s\n  Tenir\\n%s\n")
	if err != nil {
		t.Fatal(err)
	}
	if len(l.Words) != 1 || l.Words[0] != (Line{3, "filler | le, la"}) {
		t.Errorf("words %v", l.Words)
	}
	if l.Sentences["Rope %s."] != "Corde %s." || l.Sentences["Hold\n%s"] != "Tenir\n%s" {
		t.Errorf("sentences %v", l.Sentences)
	}
}

func TestAMalformedFileIsNamedByItsLine(t *testing.T) {
	for text, want := range map[string]string{
		"filler | le":                     "line 1",
		"[sentences]\n  Corde.":           "line 2",
		"[sentences]\nRope.\nDrum.\n  X.": "Rope.",
		"[sentences]\nRope.":              "Rope.",
		"[sentences]\nA.\n  B.\nA.\n  C.": "line 4",
	} {
		if _, err := read("xx", text); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v", text, err)
		}
	}
}

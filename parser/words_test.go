package parser_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"heft/parser"
	"heft/parser/language"
)

// spellings reads the word file: every meaning of every spelling, with
// articles inside it left out as the reader does.
func spellings(t testing.TB) map[string][]string {
	t.Helper()
	languages, err := language.All()
	if err != nil {
		t.Fatal(err)
	}
	out := map[string][]string{}
	for _, l := range languages {
		for _, line := range l.Words {
			meaning, list, ok := strings.Cut(line.Text, "|")
			if !ok {
				t.Fatalf("%s.txt:%d: no bar", l.Tag, line.Number)
			}
			for _, s := range strings.Split(list, ",") {
				s = bare(s)
				if s != strings.ToLower(s) || s == "" {
					t.Errorf("%s.txt:%d: %q is empty or not in lower case", l.Tag, line.Number, s)
				}
				out[s] = append(out[s], strings.TrimSpace(meaning))
			}
		}
	}
	return out
}

// bare leaves out the articles before other words.
func bare(spelling string) string {
	var out []string
	words := strings.Fields(strings.ReplaceAll(spelling, "-", " "))
	for i, w := range words {
		if i+1 < len(words) && slices.Contains([]string{"a", "an", "the", "this", "that", "my", "our", "your", "his", "her", "their", "its"}, w) {
			continue
		}
		out = append(out, w)
	}
	return strings.Join(out, " ")
}

// contradiction says why two meanings cannot be one word's, "" where they
// can.
func contradiction(a, b string) string {
	kind := func(m string) string { return strings.Fields(m)[0] }
	ka, kb := kind(a), kind(b)
	one := []string{"shape", "condition", "ask", "units", "stop", "note"}
	alone := []string{"stop", "twist", "girth", "breast-high", "own"}
	empty := []string{"role", "shape", "condition", "stop", "twist", "girth", "breast-high", "own", "units", "note", "ask"}
	switch {
	case a == b:
		return "is there twice"
	case ka == kb && slices.Contains(one, ka):
		return "is two of a kind"
	case slices.Contains(alone, ka) || slices.Contains(alone, kb):
		return "ends or turns the meaning, and has another"
	case ka == "filler" && slices.Contains(empty, kb), kb == "filler" && slices.Contains(empty, ka):
		return "says nothing and something"
	case ka == "role" && kb == "role":
		return sameSide(a, b)
	}
	return ""
}

// sameSide says whether two roles want the same number for different fields.
func sameSide(a, b string) string {
	fa, fb := strings.Fields(a), strings.Fields(b)
	side := func(s string) string { return strings.TrimSuffix(s, "?") }
	if fa[1] != fb[1] && (side(fa[2]) == side(fb[2]) || side(fa[2]) == "either" || side(fb[2]) == "either") {
		return "gives one number two fields"
	}
	return ""
}

func TestNoWordContradictsItself(t *testing.T) {
	for s, meanings := range spellings(t) {
		for i, a := range meanings {
			for _, b := range meanings[i+1:] {
				if why := contradiction(a, b); why != "" {
					t.Errorf("%q %s: %s | %s", s, why, a, b)
				}
			}
		}
	}
}

// TestTreesAreNoOtherWords wants no name of a tree to be a word with another
// meaning: "hedge" is a tree to some, and what a limb hangs over to all.
func TestTreesAreNoOtherWords(t *testing.T) {
	words := spellings(t)
	names := map[string]string{}
	for _, n := range crewNames(t) {
		names[n.name] = n.tree
	}
	for _, k := range knownTrees(t) {
		names[strings.ToLower(k.Name)] = k.Scientific
	}
	for name, tree := range names {
		if m := words[bare(name)]; len(m) > 0 {
			t.Errorf("%q is %s, and %s", name, tree, strings.Join(m, "; "))
		}
	}
}

// TestEveryWordIsKnown reads every spelling of the word file by itself: it
// must not be asked about as unknown, unless the file says so.
func TestEveryWordIsKnown(t *testing.T) {
	r := newReader(t)
	for s, meanings := range spellings(t) {
		if slices.Contains(meanings, "own") {
			continue
		}
		if _, err := r.Read(s); err != nil && strings.HasPrefix(fmt.Sprint(err), "unknown") {
			t.Errorf("%q: %v", s, err)
		}
	}
}

// TestTurningWordsAreNeverRead puts every word that ends or turns a meaning
// before, into and behind a whole question: it must never be answered.
func TestTurningWordsAreNeverRead(t *testing.T) {
	r := newReader(t)
	want := map[string]parser.Kind{
		"stop power-line": parser.PowerLine, "stop emergency": parser.Emergency, "stop unsound": parser.Unsound,
		"twist": parser.Twist, "girth": parser.Girth, "breast-high": parser.BreastHigh, "own": parser.Unknown,
	}
	for s, meanings := range spellings(t) {
		kind, ok := want[meanings[0]]
		if !ok {
			continue
		}
		for _, text := range []string{
			s + ", red oak limb 14 in 22 ft long hitched at 35 ft",
			"red oak limb, 14 in, " + s + ", 22 ft long hitched at 35 ft",
			"red oak limb 14 in 22 ft long hitched at 35 ft. " + strings.ToUpper(s),
		} {
			q, err := r.Read(text)
			if err == nil {
				t.Errorf("%q is answered: %s", text, meant(q))
				continue
			}
			if ask := asked(t, err); ask.Kind != kind && !(kind == parser.PowerLine && ask.Kind == parser.Emergency) {
				t.Errorf("%q: %v, want %s", text, ask, kind)
			}
		}
	}
}

package reader_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	edlib "github.com/hbollon/go-edlib"

	"heft/parser"
	"heft/parser/language"
)

// spelling is one of a word file: its language, and all that it means there.
type spelling struct {
	tag, words string
	meanings   []string
}

// spellings reads the word files, without the lines about the form of
// messages, and with the words that are optional left out as the reader does.
func spellings(t testing.TB) []*spelling {
	t.Helper()
	languages, err := language.All()
	if err != nil {
		t.Fatal(err)
	}
	var out []*spelling
	for _, l := range languages {
		known := map[string]*spelling{}
		optional := optionalIn(l)
		for _, line := range l.Words {
			meaning, list, ok := strings.Cut(line.Text, "|")
			if !ok {
				t.Fatalf("%s.txt:%d: no bar", l.Tag, line.Number)
			}
			if form := strings.Fields(meaning); slices.Contains(forms, form[0]) && (form[0] != "unit" || len(form) > 1) {
				continue
			}
			for _, s := range strings.Split(list, ",") {
				s = unaccented.Replace(bare(s, optional))
				if s != strings.ToLower(s) || s == "" {
					t.Errorf("%s.txt:%d: %q is empty or not in lower case", l.Tag, line.Number, s)
				}
				if known[s] == nil {
					known[s] = &spelling{tag: l.Tag, words: s}
					out = append(out, known[s])
				}
				known[s].meanings = append(known[s].meanings, strings.TrimSpace(meaning))
			}
		}
	}
	return out
}

// forms begin the lines of a word file that are about form.
var forms = []string{"pattern", "optional", "glued", "small", "leads", "counted", "a", "cue", "danger", "kind", "decimal", "ending", "join", "number", "sound", "topic", "unit"}

var unaccented = strings.NewReplacer("á", "a", "é", "e", "í", "i", "ó", "o", "ú", "u", "ü", "u", "ñ", "n")

func optionalIn(l language.Language) []string {
	var out []string
	for _, line := range l.Words {
		if meaning, list, _ := strings.Cut(line.Text, "|"); strings.TrimSpace(meaning) == "optional" {
			for _, w := range strings.Split(list, ",") {
				out = append(out, strings.TrimSpace(w))
			}
		}
	}
	return out
}

// bare leaves out what is optional before other words.
func bare(spelling string, optional []string) string {
	var out []string
	words := strings.Fields(strings.ReplaceAll(spelling, "-", " "))
	for i, w := range words {
		if i+1 < len(words) && slices.Contains(optional, w) {
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
	alone := []string{"stop", "twist", "denies", "half", "contrast", "self", "stand", "girth", "breast-high", "own"}
	empty := []string{"role", "shape", "condition", "stop", "twist", "girth", "breast-high", "own", "units", "note", "ask"}
	beside := []string{"damaged", "lacks", "stays", "strays", "let-fall", "after-fall", "of-kit", "may-harm", "body", "body-of", "whose", "bears", "topples", "machine", "self-holds", "at-anchor", "hangs-block", "pulls-aside", "how-much", "receives", "rated", "label", "gone", "unread", "personal", "employs", "serves", "storm", "nears", "lets-go", "carries-on", "footing", "stirs", "upheaves"} // say something by what they stand beside alone
	switch {
	case a == b:
		return "is there twice"
	case slices.Contains(beside, ka) || slices.Contains(beside, kb):
		return ""
	case ka == kb && slices.Contains(one, ka):
		return "is two of a kind"
	case ka == "overhead" && kb == "own", ka == "own" && kb == "overhead":
		return "" // asked about, but where a swing may meet it: then it is taken for a power line
	case ka == "denies" && kb == "corrects" || ka == "corrects" && kb == "denies":
		return "" // "no" is both, and asked about where it matters
	case slices.Contains(alone, ka) || slices.Contains(alone, kb):
		return "ends or turns the meaning, and has another"
	case ka == "chatter" || kb == "chatter":
		return "says nothing and something"
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
	for _, s := range spellings(t) {
		for i, a := range s.meanings {
			for _, b := range s.meanings[i+1:] {
				if why := contradiction(a, b); why != "" {
					t.Errorf("%s: %q %s: %s | %s", s.tag, s.words, why, a, b)
				}
			}
		}
	}
}

// TestTreesAreNoOtherWords wants no name of a tree to be a word with another
// meaning: "hedge" is a tree to some, and what a limb hangs over to all.
func TestTreesAreNoOtherWords(t *testing.T) {
	words := map[string][]string{}
	for _, s := range spellings(t) {
		words[s.words] = append(words[s.words], s.meanings...)
	}
	names := map[string]string{}
	for _, n := range crewNames(t) {
		names[n.name] = n.tree
	}
	for _, k := range knownTrees(t) {
		names[strings.ToLower(k.Name)] = k.Scientific
	}
	for name, tree := range names {
		if m := words[unaccented.Replace(bare(name, nil))]; len(m) > 0 {
			t.Errorf("%q is %s, and %s", name, tree, strings.Join(m, "; "))
		}
	}
}

// TestEveryWordIsKnown reads every spelling of the word file by itself: it
// must not be asked about as unknown, unless the file says so.
func TestEveryWordIsKnown(t *testing.T) {
	r := newReader(t)
	for _, x := range spellings(t) {
		s := x.words
		if slices.Contains(x.meanings, "own") || slices.Contains(x.meanings, "stand") || slices.Contains(x.meanings, "stays") {
			continue
		}
		if _, err := r.Read(s); err != nil && strings.HasPrefix(fmt.Sprint(err), "unknown") {
			t.Errorf("%q: %v", s, err)
		}
	}
}

// wholeAround puts a spelling before, into and behind a whole question of its
// language.
func wholeAround(x *spelling) []string {
	if x.tag == "es" {
		return []string{
			x.words + ", rama de roble rojo de 14 pulgadas y 22 pies de largo amarrada a 35 pies",
			"rama de roble rojo, 14 pulgadas, " + x.words + ", 22 pies de largo amarrada a 35 pies",
			"rama de roble rojo de 14 pulgadas, 22 pies de largo, amarrada a 35 pies. " + strings.ToUpper(x.words),
		}
	}
	return []string{
		x.words + ", red oak limb 14 in 22 ft long hitched at 35 ft",
		"red oak limb, 14 in, " + x.words + ", 22 ft long hitched at 35 ft",
		"red oak limb 14 in 22 ft long hitched at 35 ft. " + strings.ToUpper(x.words),
	}
}

// TestTurningWordsAreNeverRead puts every word that ends or turns a meaning
// before, into and behind a whole question: it must never be answered.
func TestTurningWordsAreNeverRead(t *testing.T) {
	r := newReader(t)
	want := map[string]parser.Kind{
		"stop power-line": parser.PowerLine, "stop emergency": parser.Emergency, "stop unsound": parser.Unsound,
		"stop rider": parser.Rider, "stop below": parser.Below, "stop damaged": parser.Damaged, "stop felling": parser.Felling,
		"stop machine": parser.Machine, "jams": parser.Unknown, "erases": parser.Unknown, "stop span-line": parser.SpanLine,
		"twist": parser.Twist, "twist denied": parser.Twist, "twist part": parser.Twist, "twist sum": parser.Twist, "twist compared": parser.Twist,
		"twist several": parser.Twist, "twist radius": parser.Twist, "twist measure": parser.Twist, "half": parser.Twist, "contrast": parser.Twist, "self": parser.Twist, "stand": parser.Unknown, "girth": parser.Girth, "breast-high": parser.BreastHigh, "own": parser.Unknown,
	}
	for _, x := range spellings(t) {
		kind, ok := want[x.meanings[0]]
		if !ok {
			continue
		}
		for _, text := range wholeAround(x) {
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

// TestTalkIsNoOtherWord wants every word of talk to stand there once, and to
// begin nothing that means something: there it would never be looked for, or
// hide a slip of the second word.
func TestTalkIsNoOtherWord(t *testing.T) {
	languages, err := language.All()
	if err != nil {
		t.Fatal(err)
	}
	begins := map[string]map[string]string{} // by language, the spelling that a word begins
	for _, s := range spellings(t) {
		if begins[s.tag] == nil {
			begins[s.tag] = map[string]string{}
		}
		first, _, _ := strings.Cut(s.words, " ")
		begins[s.tag][first] = s.words
	}
	for _, n := range crewNames(t) {
		first, _, _ := strings.Cut(n.name, " ")
		for tag := range begins {
			begins[tag][first] = n.name
		}
	}
	words := 0
	for _, l := range languages {
		seen := map[string]bool{}
		for _, line := range l.Talk {
			_, list, _ := strings.Cut(line.Text, " | ")
			for _, w := range strings.Split(list, ", ") {
				w = unaccented.Replace(w)
				switch whole := begins[l.Tag][w]; {
				case whole != "":
					t.Errorf("%s.txt:%d: %q begins %q: a line of [words] is its place", l.Tag, line.Number, w, whole)
				case seen[w], w == "", w != strings.ToLower(w), strings.ContainsAny(w, " ,|"):
					t.Errorf("%s.txt:%d: %q stands there twice, or is not one word in lower case", l.Tag, line.Number, w)
				}
				seen[w], words = true, words+1
			}
		}
	}
	if words < 1500 {
		t.Errorf("only %d words of talk", words)
	}
}

// TestTalkIsNoSlipOfAStop wants no word of talk one slip away from a word that
// stops the work: "pink" may be "punk" on a wet screen, and would pass as talk.
func TestTalkIsNoSlipOfAStop(t *testing.T) {
	stops := map[string][]string{} // by language, the stops of one word
	for _, s := range spellings(t) {
		if strings.HasPrefix(s.meanings[0], "stop ") && !strings.Contains(s.words, " ") && len(s.words) > 2 {
			stops[s.tag] = append(stops[s.tag], s.words)
		}
	}
	languages, err := language.All()
	if err != nil {
		t.Fatal(err)
	}
	for _, l := range languages {
		for _, line := range l.Talk {
			_, list, _ := strings.Cut(line.Text, " | ")
			for _, w := range strings.Split(unaccented.Replace(list), ", ") {
				for _, s := range stops[l.Tag] {
					if w[0] == s[0] && edlib.OSADamerauLevenshteinDistance(w, s) == 1 {
						t.Errorf("%s.txt:%d: %q is one slip away from %q", l.Tag, line.Number, w, s)
					}
				}
			}
		}
	}
}

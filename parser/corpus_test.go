package parser_test

import (
	"errors"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"heft/parser"
)

// questions is where the corpora lie.
const questions = "../testdata/questions"

// phrasing is one line of a corpus, and what it must mean.
type phrasing struct {
	at   string // file:line
	text string
	want meaning
}

// meaning is what a corpus says a phrasing means: facts by name, written so
// that two of them compare as text.
type meaning struct {
	facts      map[string]string
	intentOnly bool
	units      string // "" where the corpus leaves them open
}

func (m meaning) String() string {
	var out []string
	for _, k := range slices.Sorted(maps.Keys(m.facts)) {
		out = append(out, k+"="+m.facts[k])
	}
	return strings.Join(out, " ")
}

// readCorpora reads every corpus.
func readCorpora(t testing.TB) []phrasing {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(questions, "*.corpus"))
	if err != nil || len(files) == 0 {
		t.Fatalf("no corpora in %s: %v", questions, err)
	}
	var out []phrasing
	for _, f := range files {
		out = append(out, readCorpus(t, f)...)
	}
	return out
}

func readCorpus(t testing.TB, file string) []phrasing {
	t.Helper()
	var out []phrasing
	var now meaning
	for i, line := range lines(t, file) {
		at := fmt.Sprintf("%s:%d", filepath.Base(file), i+1)
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
			out = append(out, phrasing{at, strings.ReplaceAll(line[2:], `\n`, "\n"), now})
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

// readMeaning reads the facts of a meaning line.
func readMeaning(line string) (meaning, error) {
	m := meaning{facts: map[string]string{}}
	for i, fact := range facts(line) {
		name, value, given := strings.Cut(fact, "=")
		value = strings.Trim(value, `"`)
		switch {
		case i == 0 && !given:
			m.facts["intent"] = name
		case name == "intent-only":
			m.intentOnly = true
		case name == "followup":
			m.facts[name] = "yes"
		case name == "units":
			m.units = value
		case name == "species" || name == "shape" || name == "condition" || name == "note" || name == "fix":
			m.facts[name] = value
		default:
			v, err := readValue(name, value)
			if err != nil {
				return m, err
			}
			m.facts[name] = v
		}
	}
	return m, nil
}

// facts splits a meaning line at the spaces outside quotation marks and
// brackets.
func facts(line string) []string {
	inside := false
	return strings.FieldsFunc(line, func(r rune) bool {
		switch r {
		case '"', '[', ']':
			inside = !inside
		}
		return r == ' ' && !inside
	})
}

// scale is a unit as the corpora write it: to SI, and the system it is of.
// Exact by definition (NIST Special Publication 811, appendix B).
type scale struct {
	toSI   float64
	system parser.System
}

var scales = map[string]scale{
	"": {1, ""}, "deg": {1, ""},
	"in": {0.0254, parser.Imperial}, "ft": {0.3048, parser.Imperial}, "yd": {0.9144, parser.Imperial},
	"mm": {0.001, parser.Metric}, "cm": {0.01, parser.Metric}, "m": {1, parser.Metric},
	"lb": {0.45359237, parser.Imperial}, "kg": {1, parser.Metric}, "t": {1000, parser.Metric},
	"kN": {1000, parser.Metric}, "lbf": {4.4482216152605, parser.Imperial},
}

// readValue reads "14in", "3" or "[14in 16in]".
func readValue(name, text string) (string, error) {
	ends := strings.Fields(strings.Trim(text, "[]"))
	if len(ends) == 0 || len(ends) > 2 {
		return "", fmt.Errorf("%s: %q is neither a value nor a range", name, text)
	}
	var si []float64
	var system parser.System
	for _, e := range ends {
		n := strings.TrimLeft(e, "-.0123456789")
		v, err := strconv.ParseFloat(strings.TrimSuffix(e, n), 64)
		u, ok := scales[n]
		if err != nil || !ok {
			return "", fmt.Errorf("%s: cannot read %q", name, e)
		}
		if n == "kN" && strings.HasSuffix(name, "_kg") {
			u.toSI /= 9.80665 // standard gravity, m/s²
		}
		si, system = append(si, v*u.toSI), u.system
	}
	return writeValue(si[0], si[len(si)-1], system), nil
}

func writeValue(low, high float64, s parser.System) string {
	out := fmt.Sprintf("%.6g", low)
	if low != high {
		out += fmt.Sprintf("..%.6g", high)
	}
	return strings.TrimSpace(out + " " + string(s))
}

// meant writes a question the way a corpus does.
func meant(q parser.Question) meaning {
	m := meaning{facts: map[string]string{"intent": string(q.Intent)}, units: string(q.Units)}
	if q.Species != nil {
		m.facts["species"] = q.Species.Value.Scientific
	}
	if q.Shape != nil {
		m.facts["shape"] = string(q.Shape.Value)
	}
	if q.Condition != nil {
		m.facts["condition"] = string(q.Condition.Value)
	}
	for _, x := range q.Quantities {
		m.facts[string(x.Field)] = writeValue(x.Low, x.High, x.System)
	}
	if len(q.Notes) > 0 {
		m.facts["note"] = strings.Join(q.Notes, ",")
	}
	var fixes []string
	for _, f := range q.Fixes {
		fixes = append(fixes, f.Words+">"+f.As)
	}
	if len(fixes) > 0 {
		m.facts["fix"] = strings.Join(fixes, ",")
	}
	if q.FollowUp {
		m.facts["followup"] = "yes"
	}
	return m
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

package reader_test

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"heft/parser"
)

// meaning is what a corpus says a phrasing means: facts by name, written so
// that two of them compare as text.
type meaning struct {
	facts      map[string]string
	intentOnly bool
	units      string // "" where the corpus leaves them open
	language   string // of the message, "" where it is the corpus's
}

func (m meaning) String() string {
	var out []string
	for _, k := range slices.Sorted(maps.Keys(m.facts)) {
		out = append(out, k+"="+m.facts[k])
	}
	return strings.Join(out, " ")
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
		case name == "followup" || name == "clear" || name == "says-units":
			m.facts[name] = "yes"
		case name == "units":
			m.units = value
		case name == "language":
			m.language = value
		case name == "species" || name == "shape" || name == "condition" || name == "note" || name == "fix" || name == "passed" || name == "left" || name == "explain" || name == "topic" || name == "drops":
			m.facts[name] = value
		case name == string(parser.Turn):
			v, err := readTurns(value)
			if err != nil {
				return m, err
			}
			m.facts[name] = v
		case name == "arborist" || name == "site":
			m.facts[name] = strings.ToLower(value)
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

// readTurns reads "top-block:180deg,redirect:20deg", in rope order.
func readTurns(text string) (string, error) {
	var out []string
	for one := range strings.SplitSeq(text, ",") {
		at, angle, _ := strings.Cut(one, ":")
		v, err := readValue(at, angle)
		if err != nil {
			return "", err
		}
		out = append(out, at+":"+v)
	}
	return strings.Join(out, ","), nil
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
		v := writeValue(x.Low, x.High, x.System)
		if x.Field == parser.Turn { // said once for every block
			v = strings.TrimPrefix(m.facts[string(x.Field)]+","+x.At+":"+v, ",")
		}
		m.facts[string(x.Field)] = v
	}
	if len(q.Notes) > 0 {
		m.facts["note"] = strings.Join(q.Notes, ",")
	}
	var fixes []string
	for _, f := range q.Fixes {
		fixes = append(fixes, f.Words+">"+f.As)
	}
	for name, words := range map[string][]parser.Said[string]{"passed": q.Passed, "left": q.Left} {
		var out []string
		for _, p := range words {
			out = append(out, strings.Join(strings.Fields(strings.ToLower(p.Value)), " "))
		}
		if len(out) > 0 {
			m.facts[name] = strings.Join(out, ",")
		}
	}
	if len(fixes) > 0 {
		m.facts["fix"] = strings.Join(fixes, ",")
	}
	for name, yes := range map[string]bool{"followup": q.FollowUp, "clear": q.Clear, "says-units": q.Intent == parser.AskJob && q.SaysUnits} {
		if yes {
			m.facts[name] = "yes"
		}
	}
	for name, said := range map[string]*parser.Said[string]{"arborist": q.Arborist, "site": q.Site} {
		if said != nil {
			m.facts[name] = strings.ToLower(said.Value)
		}
	}
	var drops []string
	for _, f := range q.Drops {
		drops = append(drops, string(f))
	}
	if len(drops) > 0 {
		m.facts["drops"] = strings.Join(drops, ",")
	}
	if q.Explain != "" {
		m.facts["explain"] = q.Explain
	}
	if told := strings.TrimPrefix(string(q.Topic), "about-"); parser.Told(told) {
		m.facts["topic"] = told
	}
	return m
}

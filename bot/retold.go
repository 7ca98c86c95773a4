package bot

import (
	"cmp"
	"encoding/json"
	"slices"
	"strings"

	"heft/calc/unit"
	"heft/calc/wood"
	"heft/parser"
)

// Language is the tag of the language that a question was asked in; empty
// where none of its words tells, and where a button asked it.
func (e Entry) Language() string {
	if _, pressed := e.pressed(); pressed || e.Schema != SchemaVersion {
		return ""
	}
	var q struct{ Language string }
	_ = json.Unmarshal(e.Question, &q) // where it is torn, nothing is told
	if answered := marksOf(e.Result).Language; answered != english {
		return cmp.Or(q.Language, answered) // a question that was stopped keeps no words
	}
	return q.Language
}

// Spoken is the language that most questions were asked in: English where
// none tells, or as many tell another.
func Spoken(entries []Entry) Voice {
	count := map[string]int{}
	for _, e := range entries {
		count[speaker{language: e.Language()}.tag()] += min(1, len(e.Language()))
	}
	most := english
	for _, tag := range Languages() {
		if count[tag] > count[most] {
			most = tag
		}
	}
	return VoiceOf(most)
}

// retold is a question with its tree and its figures said in the speaker's
// language. In the language that it was asked in, and where that is unknown,
// its figures stay as they were told: no unit and no rounding comes between.
func (s speaker) retold(q parser.Question) parser.Question {
	if q.Species != nil {
		tree := *q.Species
		tree.Value.Name = s.tree(tree.Value)
		q.Species = &tree
	}
	if q.Language == "" || q.Language == s.tag() {
		return q
	}
	q.Quantities = slices.Clone(q.Quantities)
	for i, x := range q.Quantities {
		q.Quantities[i].Words = exact(x)
	}
	return q
}

// tree is what a tree is called.
func (s speaker) tree(of parser.Species) string {
	name, known := of.In(s.tag())
	if row, ok := wood.Find(of.Scientific); !known && ok && s.tag() == english {
		return row.Common
	}
	return name
}

// exact says a quantity in the units that it was told in, to what a tape, a
// scale or a label shows.
func exact(x parser.Quantity) string {
	scale, name := unitOf(x)
	low, high := figure(x.Low/scale), figure(x.High/scale)
	return span(low, high) + name
}

// unitOf is the unit that a quantity was told in, by its field.
func unitOf(x parser.Quantity) (scale float64, name string) {
	metric := x.System == parser.Metric
	pick := func(m float64, of string, i float64, or string) (float64, string) {
		if metric {
			return m, " " + of
		}
		return i, " " + or
	}
	switch field := string(x.Field); {
	case strings.HasSuffix(field, "diameter_m"):
		return pick(float64(unit.Centimetre), "cm", float64(unit.Inch), "in")
	case strings.HasSuffix(field, "_m"):
		return pick(float64(unit.Metre), "m", float64(unit.Foot), "ft")
	case strings.HasSuffix(field, "_kg"):
		return pick(float64(unit.Kilogram), "kg", float64(unit.Pound), "lb")
	case strings.HasSuffix(field, "_n"):
		return pick(float64(unit.Kilonewton), "kN", float64(unit.PoundForce), "lb")
	case strings.HasSuffix(field, "_deg"):
		return 1, "°"
	}
	return 1, ""
}

// figure writes a number to two decimals, its thousands apart.
func figure(v float64) string {
	whole, part, some := strings.Cut(trimmed(v, 2), ".")
	if some {
		return inThousands(whole) + "." + part
	}
	return inThousands(whole)
}

package bot

import (
	"encoding/json"
	"strings"

	"heft/calc/limits"
	"heft/calc/unit"
	"heft/parser"
)

// read is the question as it was read; false where the row is torn, of
// another schema, or of several questions, of which it holds but one.
func (e Entry) read() (parser.Question, bool) {
	var q parser.Question
	if e.Schema != SchemaVersion || json.Unmarshal(e.Question, &q) != nil || len(marksOf(e.Result).Also) > 0 {
		return q, false
	}
	return q, true
}

// Metric says whether the question was asked in metric units.
func (e Entry) Metric() bool {
	q, ok := e.read()
	return ok && q.Units == parser.Metric
}

// Reading is the question as it was read, fact by fact in the words that told
// it; empty where nothing was.
func (e Entry) Reading(v Voice) string {
	q, ok := e.read()
	if !ok || e.setsJob() {
		return ""
	}
	var out []string
	if q.Species != nil {
		out = append(out, q.Species.Value.Name)
	}
	if q.Shape != nil {
		out = append(out, string(q.Shape.Value))
	}
	if q.Condition != nil {
		out = append(out, string(q.Condition.Value))
	}
	for _, x := range q.Quantities {
		out = append(out, v.s.asTold(limits.Quantity(x.Field), x))
	}
	for _, n := range q.Notes {
		if noteWords[n] != "" {
			out = append(out, v.s.word(noteWords[n]))
		}
	}
	return strings.Join(out, ", ")
}

// Told are the facts of a job as they are said back: its site, and the rest.
func (j Job) Told(v Voice) (site string, facts []string) {
	if j.facts.Site != nil {
		site = j.facts.Site.Value
	}
	f := j
	f.facts.Site, f.facts.Arborist = nil, nil
	return site, (&answer{voice: v.s}).jobWords(f)
}

// Metric says whether the job asked for metric units, and whether for any.
func (j Job) Metric() (metric, asked bool) {
	return j.facts.Units == parser.Metric, j.facts.SaysUnits
}

// VoiceIn speaks English in one system of units first.
func VoiceIn(metric bool) Voice { return Voice{speaker{metric: metric}} }

// Pick says a weight to plan on, in both systems of units.
func (v Voice) Pick(m unit.Mass) string {
	return v.s.heavy(m) + " (" + v.s.other().heavy(m) + ")"
}

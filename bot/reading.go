package bot

import (
	"encoding/json"
	"slices"
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

// Reading is the question as it was read, fact by fact; empty where nothing
// was.
func (e Entry) Reading(v Voice) string {
	q, ok := e.read()
	if !ok || e.setsJob() {
		return ""
	}
	q = v.s.retold(q)
	var out []string
	if q.Species != nil {
		out = append(out, q.Species.Value.Name)
	}
	if q.Shape != nil {
		out = append(out, v.s.word(shapeWords[q.Shape.Value]))
	}
	if q.Condition != nil {
		out = append(out, v.s.word(conditionWords[q.Condition.Value]))
	}
	for _, x := range q.Quantities {
		out = append(out, v.s.asTold(limits.Quantity(x.Field), x))
	}
	for _, n := range q.Notes {
		if noteWords[n] != "" {
			out = append(out, v.s.word(noteWords[n]))
		}
	}
	return strings.Join(v.s.listed(out), ", ")
}

var (
	shapeWords     = map[parser.Shape]string{parser.Log: "log", parser.Limb: "limb"}
	conditionWords = map[parser.Condition]string{parser.Green: "green", parser.Dead: "dead"}
)

// Told are the facts of a job as they are said back: its site, and the rest.
func (j Job) Told(v Voice) (site string, facts []string) {
	if j.facts.Site != nil {
		site = j.facts.Site.Value
	}
	f := Job{v.s.retold(j.facts)}
	f.facts.Site, f.facts.Arborist = nil, nil
	return site, v.s.listed((&answer{voice: v.s}).jobWords(f))
}

// listed are the items of a list, which go without the article that they have
// in a sentence.
func (s speaker) listed(items []string) []string {
	out := slices.Clone(items)
	for i := range out {
		for _, article := range strings.Fields(s.word(articles)) {
			if bare, ok := strings.CutPrefix(out[i], article+" "); ok {
				out[i] = bare
				break
			}
		}
	}
	return out
}

// articles are all that a noun of ours can begin with.
const articles = "the"

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

package bot

import (
	"errors"
	"slices"
	"strings"

	"heft/calc/gear"
	"heft/calc/limits"
	"heft/parser"
)

// A crew stands at one tree for a day, its top block at one height. The job keeps both, and
// lends them where neither the message nor the talk tells any and the question needs one:
// every answer that rests on them says so. A tree told by a name that several share is kept
// by that name, and asked about with what hangs on it.

// besides is the job as a talk sees it: what the talk tells of its tree, or of its hitch,
// goes before what the job keeps.
func (j Job) besides(t Turn) Job {
	f := j.facts
	if t.question.Species != nil || t.which != nil {
		f.Species = nil
	}
	if t.question.Has(parser.HitchHeight) {
		f.Quantities = slices.DeleteFunc(slices.Clone(f.Quantities), func(x parser.Quantity) bool { return x.Field == parser.HitchHeight })
	}
	return Job{f}
}

// lends says whether the tree of the job and its hitch go for what is asked: not for the
// next tree, nor for what the block hangs from, which may stand in another.
func lends(q parser.Question) bool {
	return !slices.Contains(q.Notes, noteNewTree) && q.Intent != parser.AskAnchor
}

// needs says whether a question cannot be answered without a fact.
func needs(q parser.Question, f parser.Field) bool { return slices.Contains(q.Missing(), f) }

// lend adds the tree and the hitch that the job keeps to a question that needs them, and
// names them. What a lower takes of rope goes by the hitch, where nothing more is to be
// asked then.
func (j Job) lend(q parser.Question) (parser.Question, []parser.Field) {
	var used []parser.Field
	if !lends(q) {
		return q, nil
	}
	if tree := j.facts.Species; tree != nil && tree.Value.Scientific != "" && q.Species == nil && needs(q, parser.SpeciesField) {
		q.Species, used = tree, append(used, parser.SpeciesField)
	}
	hitch, kept := j.facts.Get(parser.HitchHeight)
	if !kept || q.Has(parser.HitchHeight) || !needs(q, parser.HitchHeight) && q.Intent != parser.AskLower {
		return q, used
	}
	with := q
	with.Quantities = append(slices.Clone(q.Quantities), hitch)
	if len(with.Missing()) > len(q.Missing()) {
		return q, used
	}
	return with, append(used, parser.HitchHeight)
}

// askJobsTree is what is to be asked of a question that needs the tree of the job, where
// that is kept by a name that several share: nil where it needs none, or the weight hardly
// hangs on which it is.
func (d *Desk) askJobsTree(a *answer, job Job) *parser.Ask {
	tree := job.facts.Species
	if tree == nil || tree.Value.Scientific != "" || a.question.Species != nil || !lends(a.question) || !needs(a.question, parser.SpeciesField) {
		return nil
	}
	which := d.whichOf(tree.Words)
	if which == nil {
		return nil
	}
	if any, ok := anyOf(a.question, which); ok {
		if any != nil {
			a.question.Species, a.ofJob = any, append(a.ofJob, parser.SpeciesField)
		}
		return nil
	}
	return which
}

// whichOf asks which of the trees is meant that share a name, nil where one alone goes by it.
func (d *Desk) whichOf(name string) *parser.Ask {
	_, err := d.reader.Read(name)
	ask, _ := errors.AsType[*parser.Ask](err)
	if ask == nil || ask.Kind != parser.WhichTree {
		return nil
	}
	ask.Start, ask.End = 0, 0 // its words stand in an earlier message
	return ask
}

// knownBy is a tree that is known by a name alone.
func knownBy(ask *parser.Ask) *parser.Said[parser.Species] {
	name := strings.ToLower(trimQuote(ask.Words))
	return &parser.Said[parser.Species]{Value: parser.Species{Name: name}, Words: ask.Words}
}

// askTreeOfJob asks which tree the job's is, behind what is kept: until it is told, each
// question that needs it asks.
func (d *Desk) askTreeOfJob(a *answer, which *parser.Ask) {
	v := a.voice
	a.lines = append(a.lines, v.say("Which %s? Several trees go by that name.", trimQuote(strings.ToLower(which.Words))))
	for i, c := range which.Choices[:min(len(which.Choices), manyChoices)] {
		a.lines = append(a.lines, numbered(i, c.Words))
		a.choices = append(a.choices, Choice{c.Words, v.say("job: %s", c.Words)})
	}
}

// jobsTree reads the answer to which tree the job's is, "red" or "red oak", as what is told
// of the job; false where a message says anything else.
func (d *Desk) jobsTree(text string, before Turn) (string, bool) {
	if before.ofJob == nil {
		return "", false
	}
	for _, whole := range append([]string{text}, named(text, before.ofJob.Words)...) {
		q, err := d.reader.Read(whole)
		if err == nil && q.Species != nil && q.Shape == nil && q.Condition == nil && len(q.Quantities) == 0 && !q.Asks && !q.FollowUp &&
			oneOf(before.ofJob, q.Species.Value) {
			return speaker{language: before.language}.say("job: %s", whole), true
		}
	}
	return "", false
}

// withoutTree is the job without the tree that it stands at.
func (j Job) withoutTree() Job {
	j, _ = j.without([]parser.Field{parser.SpeciesField, parser.HitchHeight})
	return j
}

// without is the job without some of what it keeps, and which of these it did keep.
func (j Job) without(fields []parser.Field) (Job, []parser.Field) {
	f := j.facts
	var gone []parser.Field
	for _, x := range fields {
		if f.Has(x) || x == parser.SpeciesField && f.Species != nil {
			gone = append(gone, x)
		}
	}
	if slices.Contains(gone, parser.SpeciesField) {
		f.Species = nil
	}
	f.Quantities = slices.DeleteFunc(slices.Clone(f.Quantities), func(x parser.Quantity) bool { return slices.Contains(gone, x.Field) })
	f.Notes = slices.DeleteFunc(slices.Clone(f.Notes), func(n string) bool { return slices.Contains(fields, noteIsOf(n)) })
	return Job{f}, gone
}

// noteIsOf is a fact of the gear that a note of the job goes with: without its rope a job
// has no wet one.
func noteIsOf(note string) parser.Field {
	switch {
	case note == "wet", note == wornGear, strings.HasPrefix(note, "rope-"), knots[note] != gear.None:
		return parser.RopeBreak
	case note == "carabiner":
		return parser.ConnectorBreak
	case note == "ball-bearing", note == "rigging-ring", note == naturalCrotch:
		return parser.BlockBreak
	}
	return ""
}

// treeNamed is what a tree is called, as a crew named it where several share the name.
func (s speaker) treeNamed(of parser.Species) string {
	if of.Scientific == "" {
		return of.Name
	}
	return s.tree(of)
}

// dropOfJob forgets some of what the job keeps, and says what is left of it.
func (a *answer) dropOfJob(ev Event, drops []parser.Field) {
	v := a.voice
	left, gone := ev.Job.without(drops)
	if ev.Alone || len(gone) == 0 && len(left.facts.Notes) == len(ev.Job.facts.Notes) {
		const most = 3 // more of them go by one name: "the gear"
		if len(drops) > most && !ev.Alone && !ev.Job.empty() {
			a.refuse(v.say("Nothing of that is kept for this job. Kept: %s.", v.and(a.jobWords(ev.Job))))
			return
		}
		a.refuse(v.say("Nothing of that is kept for this job: %s.", v.and(nouns(v, drops[:min(len(drops), most)]))))
		return
	}
	a.status, a.question = Answered, left.facts
	a.question.Intent, a.question.Language = parser.AskJob, a.voice.language
	lost := nouns(v, gone)
	for _, n := range ev.Job.facts.Notes {
		if words := v.jobNote(n); words != "" && !slices.Contains(left.facts.Notes, n) {
			lost = append(lost, words)
		}
	}
	a.lines = []string{v.say("Not kept any more: %s.", v.and(lost))}
	if !left.empty() {
		a.lines = append(a.lines, v.say("Kept for this job: %s.", v.and(a.jobWords(left))))
	}
}

// asToldOrCalled words what is not kept of a message: its numbers as they were told.
func (a *answer) asToldOrCalled(said parser.Question, fields []parser.Field) (out []string) {
	for _, f := range fields {
		x, ok := said.Get(f)
		switch {
		case ok && noun[f] != "":
			out = append(out, a.voice.asTold(limits.Quantity(f), x))
		case f == parser.ConditionField && said.Condition != nil:
			out = append(out, quote(said.Condition.Words))
		default:
			out = append(out, nouns(a.voice, []parser.Field{f})...)
		}
	}
	return out
}

// askLimit asks which of several limits holds now.
func (a *answer) askLimit(ask *parser.Ask) {
	v := a.voice
	a.lines = []string{v.word("One limit holds at a time. Which one now?")}
	for i, c := range ask.Choices {
		limit := strings.Trim(v.say(hint[parser.Limit], c.Words), "“”")
		a.lines = append(a.lines, numbered(i, limit))
		a.choices = append(a.choices, plain(limit))
	}
}

// changesJobsTree says whether a message tells anew which tree it is, or how high the block,
// that the job keeps and the talk does not tell itself: "the tree is ash now".
func (t Turn) changesJobsTree(q parser.Question, job Job) bool {
	f := job.besides(t).facts
	hitch, tree := q.Has(parser.HitchHeight), !q.Has(parser.HitchHeight) || q.Species != nil
	return q.Facts && onlyOfTree(q) && (!hitch || f.Has(parser.HitchHeight)) && (!tree || f.Species != nil)
}

// onlyOfTree says whether a message that tells only facts tells none but the tree and the
// hitch.
func onlyOfTree(q parser.Question) bool {
	return !slices.ContainsFunc(q.Quantities, func(x parser.Quantity) bool { return x.Field != parser.HitchHeight })
}

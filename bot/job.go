package bot

import (
	"cmp"
	"encoding/json"
	"regexp"
	"slices"
	"strings"

	"heft/calc/gear"
	"heft/calc/limits"
	"heft/parser"
)

// Job is what a crew told to hold for every question in a channel: its gear,
// its limit, its usual units, its arborist. The zero Job holds nothing.
type Job struct{ facts parser.Question }

// JobOf reads the job that an entry of the journal left behind. An entry of
// another kind, or of another schema, leaves none.
func JobOf(e Entry) Job {
	var j Job
	if e.setsJob() && e.Schema == SchemaVersion {
		_ = json.Unmarshal(e.Question, &j.facts) // torn: no job, and the crew is told that there is none
	}
	return j
}

// setsJob says whether the entry holds what is kept for its channel.
func (e Entry) setsJob() bool { return e.Intent == string(parser.AskJob) && e.Status == Answered }

// empty says whether nothing was told.
func (j Job) empty() bool {
	f := j.facts
	return len(f.Quantities) == 0 && len(f.Notes) == 0 && !f.SaysUnits && f.Arborist == nil && f.Site == nil
}

// ofWork are the facts that can hold for a whole job; everything else is of
// one piece.
var ofWork = append([]parser.Field{
	parser.Limit, parser.RopeLength, parser.RopeDiameter, parser.WinchPull, parser.People, parser.Efficiency,
}, gearFacts...)

// over adds the job's facts to a question, as far as its answer takes them
// into account, and names them. The people of a job haul; how many of them
// hold the rope of a lower is told with the lower.
func (j Job) over(q parser.Question) (parser.Question, []parser.Field) {
	var used []parser.Field
	if methods[q.Intent] == nil {
		return q, nil
	}
	said := q
	q.Quantities = slices.Clone(q.Quantities)
	for _, x := range j.facts.Quantities {
		serves := usedBy(q.Intent, x.Field)
		hauling := x.Field != parser.People || q.Intent == parser.AskLift || q.Intent == parser.AskRaise
		if serves && hauling && !tells(said, x.Field) && !(x.Field == parser.People && q.Has(parser.WinchPull)) {
			q.Quantities = append(q.Quantities, x)
			used = append(used, x.Field)
		}
	}
	for _, n := range j.facts.Notes { // a used rope is used in every answer
		if !slices.Contains(q.Notes, n) {
			q.Notes = append(slices.Clone(q.Notes), n)
		}
	}
	slices.Sort(used)
	return q, used
}

// takeJob keeps, shows or clears what holds for a channel.
func (d *Desk) takeJob(a *answer, ev Event, before Turn, text string, ask *parser.Ask) (answer, Turn) {
	said := a.question
	a.voice, a.question.Intent = voiceFor(ev, said), parser.AskJob
	if ask != nil && ask.Kind != parser.WhichTree { // whichever tree it is, it is the piece's
		if out, turn, ok := d.inJobUnits(a, ev, before, text, ask); ok {
			return out, turn
		}
		d.askBack(a, ask)
		a.offer(text, ask)
		return *a, before.offering(a.choices, before)
	}
	alien := notOfWork(said)
	if ask != nil {
		alien = append(alien, parser.SpeciesField)
	}
	switch of := ofJobAlone(said); {
	case len(alien) > 0 && ((Job{of}).empty() || said.Has(acrossFields...) || said.Has(parser.Weight)): // a piece, and perhaps its own limit
		a.refuse(a.voice.say("Of a piece, not of the job: %s. Say that with the piece; the job is as it was.", a.voice.and(nouns(a.voice, alien))))
	case (Job{of}).empty() && len(said.Left) > 0:
		a.refuse(a.voice.say("Not kept: %s. A job keeps its limit, gear, units, how many people, site and arborist.", a.voice.and(wordsOf(said.Left))))
	default:
		a.question = of
		a.holdJob(ev, of)
		a.tellLeft(said, alien)
	}
	return *a, before
}

// holdJob keeps, shows or clears the job, where nothing is left to be asked.
func (a *answer) holdJob(ev Event, said parser.Question) {
	v, tells := a.voice, !(Job{said}).empty()
	switch {
	case ev.Alone && tells:
		a.refuse(v.say("Read for a job: %s. One question by itself keeps nothing: tell it in a channel, or in `heft chat`.", v.and(a.jobWords(Job{said}))))
	case ev.Alone:
		a.refuse(v.say("A job is kept with a channel, or in a conversation: `heft chat`."))
	case ev.Bound && !ev.mayName(said):
		a.refuse(a.whoNames(ev))
	case said.Clear && !tells:
		a.noJob(v.say("Job cleared: nothing is kept here."))
	case !tells && ev.Job.empty():
		a.noJob(v.say("No job is kept here."))
	case !tells:
		a.tellJob(ev.Job, func(facts string) string { return v.say("The job here: %s.", facts) })
	default:
		was := ev.Job
		if said.Clear {
			was = Job{}
		}
		other := was.otherRope(said)
		if other {
			was = was.withoutRope()
		}
		a.note(was, said)
		a.tellJob(was.with(said), func(facts string) string { return v.say("Kept for this job: %s.", facts) })
		if other {
			a.lines = append(a.lines, v.word("What the rope before bore is not kept: type what this one breaks at, like “rope breaks at 10,000 lb”."))
		}
	}
}

// ofJobAlone is what a message tells that can hold for a whole job.
func ofJobAlone(q parser.Question) parser.Question {
	q.Quantities = slices.DeleteFunc(slices.Clone(q.Quantities), func(x parser.Quantity) bool { return !slices.Contains(ofWork, x.Field) })
	q.Notes = slices.DeleteFunc(slices.Clone(q.Notes), func(n string) bool { return (speaker{}).jobNote(n) == "" })
	q.Species, q.Shape, q.Condition, q.Left = nil, nil, nil, nil
	return q
}

// tellLeft says back what of a message was not kept.
func (a *answer) tellLeft(said parser.Question, alien []parser.Field) {
	v := a.voice
	if len(alien) > 0 {
		a.lines = append(a.lines, v.say("Not kept, of a piece: %s. Say that with the piece.", v.and(nouns(v, alien))))
	}
	if len(said.Left) > 0 {
		a.lines = append(a.lines, v.say("Not kept: %s.", v.and(wordsOf(said.Left))))
	}
	a.tellPassed()
}

// mayName says whether somebody who does not supervise may say who confirms
// the job's answers: nobody themselves, and where somebody was named, they
// alone who it is from then on.
func (ev Event) mayName(said parser.Question) bool {
	now, then := ev.Job, Job{said}
	switch {
	case now.arborist(ev.User):
		return true
	case then.arborist(ev.User):
		return false
	case now.Arborist() == "" || then.Arborist() == now.Arborist():
		return true
	}
	return then.Arborist() == "" && !said.Clear
}

// whoNames says who may name the job's arborist.
func (a *answer) whoNames(ev Event) string {
	if named := ev.Job.Arborist(); named != "" {
		a.named = named
		return a.voice.say("The arborist of this job is %s: only they or a supervisor change that. The job is as it was.", quote(named))
	}
	return a.voice.say("Nobody names themselves the arborist: a supervisor does, or somebody else here. The job is as it was.")
}

// notOfWork lists the facts of a message that belong to a piece.
func notOfWork(q parser.Question) []parser.Field {
	var out []parser.Field
	for _, x := range q.Quantities {
		if !slices.Contains(ofWork, x.Field) {
			out = append(out, x.Field)
		}
	}
	if q.Species != nil {
		out = append(out, parser.SpeciesField)
	}
	if q.Shape != nil {
		out = append(out, parser.ShapeField)
	}
	return out
}

// with lays what was said over a job.
func (j Job) with(said parser.Question) Job {
	f := j.facts
	f.Quantities = slices.Clone(said.Quantities)
	for _, x := range j.facts.Quantities {
		if !said.Has(x.Field) {
			f.Quantities = append(f.Quantities, x)
		}
	}
	for _, n := range said.Notes {
		if !slices.Contains(f.Notes, n) {
			f.Notes = append(slices.Clone(f.Notes), n)
		}
	}
	if said.SaysUnits {
		f.Units, f.SaysUnits = said.Units, true
	}
	f.Arborist = cmp.Or(said.Arborist, f.Arborist)
	f.Site = cmp.Or(said.Site, f.Site)
	f.Language = cmp.Or(said.Language, f.Language)
	f.Clear, f.Intent = false, parser.AskJob
	return Job{f}
}

// note names what a job kept from before and what was changed.
func (a *answer) note(was Job, said parser.Question) {
	for _, x := range was.facts.Quantities {
		if said.Has(x.Field) {
			a.changed = append(a.changed, string(x.Field))
		} else {
			a.kept = append(a.kept, string(x.Field))
		}
	}
	slices.Sort(a.kept)
	slices.Sort(a.changed)
}

// tellJob says what is kept.
func (a *answer) tellJob(j Job, sentence func(facts string) string) {
	a.status, a.question = Answered, j.facts
	a.question.Intent = parser.AskJob
	a.lines = []string{sentence(a.voice.and(a.jobWords(j))),
		a.voice.say("Used in every answer here until you change it. “Clear the job” ends it.")}
}

// noJob says that nothing is kept.
func (a *answer) noJob(head string) {
	a.status, a.question = Answered, parser.Question{Intent: parser.AskJob}
	a.lines = []string{head,
		a.voice.say("Tell me, like “job: limit 600 lb, rope breaks at 16,000 lb, 3 people, metric, arborist Dana”.")}
}

// jobWords are the facts of a job, each as it is said back.
func (a *answer) jobWords(j Job) []string {
	v, f := a.voice, j.facts
	var out []string
	if f.Site != nil {
		out = append(out, quote(f.Site.Value))
	}
	for _, field := range ofWork {
		q := limits.Quantity(field)
		if x, ok := f.Get(field); ok {
			told := v.asTold(q, x)
			if field == parser.People {
				told = v.say("%s to haul", told) // who climbs is none of them
			}
			out = append(out, told)
		}
	}
	for _, n := range f.Notes {
		if words := v.jobNote(n); words != "" {
			out = append(out, words)
		}
	}
	if f.SaysUnits {
		out = append(out, v.word(unitWords[f.Units]))
	}
	if f.Arborist != nil {
		out = append(out, v.say("arborist %s", quote(f.Arborist.Value)))
		a.named = f.Arborist.Value
	}
	return out
}

// jobNote is what a note is called that can hold for a job, "" for one that
// cannot: what is not said back is not kept.
func (s speaker) jobNote(n string) string {
	switch {
	case noteWords[n] != "":
		return s.word(noteWords[n])
	case kindName[n] != "":
		return s.word(kindName[n])
	case knots[n] != gear.None:
		return strings.TrimPrefix(s.word(knotNames[knots[n]]), "the ")
	}
	return ""
}

// jobsFacts are the facts of the job that an answer made use of, as they were
// told.
func (a *answer) jobsFacts() []string {
	out := make([]string, len(a.ofJob))
	for i, f := range a.ofJob {
		x, _ := a.question.Get(f)
		out[i] = a.voice.asTold(limits.Quantity(f), x)
	}
	return out
}

// asTold says a fact of a job in the words that told it: no unit and no
// rounding comes between the crew and its own figure.
func (s speaker) asTold(q limits.Quantity, x parser.Quantity) string {
	if x.Field == parser.People {
		return s.people(int(x.Low))
	}
	if x.Girth {
		return s.say("girth %s", trimQuote(x.Words))
	}
	return strings.TrimPrefix(s.called(q), "the ") + " " + trimQuote(x.Words) + lentUnit(x)
}

// lentUnit is the unit of a bare number that was read by those around it: what is
// kept is said with it.
func lentUnit(x parser.Quantity) string {
	heavy := isHeavy(x.Field) || partOf(x.Field) != ""
	if !heavy || strings.HasSuffix(string(x.Field), "diameter_m") || weighty.MatchString(x.Words) || !endsBare.MatchString(x.Words) {
		return ""
	}
	if x.System == parser.Metric {
		return " kg"
	}
	return " lb"
}

// endsBare is a number that has no unit behind it: "9,800", "4k".
var endsBare = regexp.MustCompile(`(?i)[0-9]k?$`)

var unitWords = map[parser.System]string{parser.Metric: "metric units", parser.Imperial: "feet and pounds"}

var noteWords = map[string]string{
	wornGear: "used gear", naturalCrotch: "natural crotch", "wet": "wet rope", "rigging-ring": "rigging ring",
	"carabiner": "carabiner", "ball-bearing": "ball-bearing blocks",
}

// Arborist is who confirms the job's answers, as they were named; empty where
// nobody was.
func (j Job) Arborist() string {
	if j.facts.Arborist == nil {
		return ""
	}
	return j.facts.Arborist.Value
}

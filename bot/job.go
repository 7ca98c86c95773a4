package bot

import (
	"cmp"
	"encoding/json"
	"slices"

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
	return len(f.Quantities) == 0 && f.Species == nil && len(f.Notes) == 0 && !f.SaysUnits && f.Arborist == nil && f.Site == nil
}

// ofWork are the facts that can hold for a whole job, besides its tree; everything else is
// of one piece.
var ofWork = append([]parser.Field{
	parser.HitchHeight, parser.Limit, parser.RopeLength, parser.RopeDiameter, parser.DrumAcross, parser.WinchPull, parser.People, parser.Efficiency,
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
		serves := usedBy(q.Intent, x.Field) && x.Field != parser.HitchHeight
		hauling := x.Field != parser.People || q.Intent == parser.AskLift || q.Intent == parser.AskRaise
		wound := x.Field != parser.DrumAcross || q.Intent == parser.AskRope && said.Has(parser.Wraps) // what the wraps take of the rope
		if serves && hauling && wound && !tells(said, x.Field) && !(x.Field == parser.People && q.Has(parser.WinchPull)) {
			q.Quantities = append(q.Quantities, x)
			used = append(used, x.Field)
		}
	}
	for _, n := range j.facts.Notes { // a used rope is used in every answer
		if !slices.Contains(q.Notes, n) {
			q.Notes = append(slices.Clone(q.Notes), n)
		}
	}
	q, lent := j.lend(q)
	used = append(used, lent...)
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
		a.keepRest(ev, said, ask)
		return *a, before.offering(a.choices, before)
	}
	if ask != nil {
		said.Species = knownBy(ask)
	}
	alien := notOfWork(said)
	of := ofJobAlone(said)
	if !(Job{of}).empty() {
		ev.Job, _ = ev.Job.without(said.Drops)
	}
	switch {
	case (Job{of}).empty() && len(said.Drops) > 0 && len(alien) == 0:
		a.dropOfJob(ev, said.Drops)
		a.tellLeft(said, nil)
	case len(alien) > 0 && ((Job{of}).empty() || tellsOnePiece(said)): // a piece, and perhaps its own limit
		a.refuse(a.voice.say("Of a piece, not of the job: %s. Say that with the piece; the job is as it was.", a.voice.and(nouns(a.voice, alien))))
	case said.Noted(parser.LimitAhead):
		a.refuse(a.voice.say("Not kept: %s. A limit holds from when it is told: tell it on the day.", a.voice.and(wordsOf(said.Left))))
	case (Job{of}).empty() && len(said.Left) > 0 && !said.Clear:
		a.refuse(a.voice.say("Not kept: %s. A job keeps its tree, hitch height, limit, gear, units, how many people, site and arborist.", a.voice.and(wordsOf(said.Left))))
	default:
		a.question = of
		a.holdJob(ev, of)
		a.tellLeft(said, alien)
		if a.status == Answered {
			before = d.jobTold(a, before, of)
		}
	}
	return *a, before
}

// keepRest keeps what a message tells of the job besides the one figure or clause of the job
// that is asked about: nobody tells it over again.
func (a *answer) keepRest(ev Event, said parser.Question, ask *parser.Ask) {
	of := ofJobAlone(said)
	asked := func(left parser.Said[string]) bool { return left.Start <= ask.Start && ask.End <= left.End }
	aside := slices.ContainsFunc(said.Left, asked) // the clause in doubt is none of what is kept
	if !gearAsk(ask) && !ofWorkAsk(ask) && !aside || ev.Alone || (Job{of}).empty() || len(notOfWork(said)) > 0 {
		return
	}
	asks := a.lines
	a.question = of
	a.question.Intent = parser.AskJob
	ev.Job, _ = ev.Job.without(said.Drops)
	if a.holdJob(ev, of); a.status != Answered {
		a.choices = nil // nothing of it is taken from whoever says it
		return
	}
	a.lines = append(a.lines[:1:1], asks...)
	said.Passed = nil // said with what is asked
	said.Left = slices.DeleteFunc(slices.Clone(said.Left), asked)
	a.tellLeft(said, nil)
}

// ofWorkAsk says whether it is asked only which unit a figure has that can hold for a job.
func ofWorkAsk(ask *parser.Ask) bool {
	alien := func(f parser.Field) bool { return !slices.Contains(ofWork, f) && f != parser.Weight } // what a rope is good for may be a weight
	return (ask.Kind == parser.NoUnit || ask.Kind == parser.WhichTon) && !slices.ContainsFunc(ask.Fields, alien)
}

// jobTold is the talk after what was told of the job, which may wait for which tree it is.
func (d *Desk) jobTold(a *answer, before Turn, of parser.Question) Turn {
	before = before.overtaken(of)
	before.ofJob = nil
	if of.Species == nil || of.Species.Value.Scientific != "" {
		return before
	}
	if which := d.whichOf(of.Species.Words); which != nil {
		d.askTreeOfJob(a, which)
		after := before
		after.ofJob = which
		return after.offering(a.choices, before)
	}
	return before
}

// overtaken is a talk without what the job tells anew: "we're 2 now" holds for the lift
// before as well.
func (t Turn) overtaken(of parser.Question) Turn {
	t.question.Quantities = slices.DeleteFunc(slices.Clone(t.question.Quantities), func(x parser.Quantity) bool { return of.Has(x.Field) })
	if of.Species != nil {
		t.question.Species, t.which = nil, nil
	}
	return t
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
	q.Shape, q.Condition, q.Left = nil, nil, nil
	return q
}

// tellsOnePiece says whether a message tells of a piece rather than of the job: its size
// or weight, or log or limb with nothing that holds for more than a tree.
func tellsOnePiece(q parser.Question) bool {
	return q.Has(acrossFields...) || q.Has(parser.Weight) || q.Shape != nil && Job{ofJobAlone(q)}.withoutTree().empty()
}

// tellLeft says back what of a message was not kept.
func (a *answer) tellLeft(said parser.Question, alien []parser.Field) {
	v := a.voice
	if len(alien) > 0 {
		a.lines = append(a.lines, v.say("Not kept, of a piece: %s. Say that with the piece.", v.and(a.asToldOrCalled(said, alien))))
	}
	if len(said.Left) > 0 {
		a.lines = append(a.lines, v.say("Not kept: %s.", v.and(wordsOf(said.Left))))
	}
	a.question.Fixes = said.Fixes
	a.tellFixes()
	a.question.Passed = said.Passed // "3 people, me on the rope" keeps one: the three are said
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
	if q.Shape != nil {
		out = append(out, parser.ShapeField)
	}
	if q.Condition != nil {
		out = append(out, parser.ConditionField)
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
	f.Species = cmp.Or(said.Species, f.Species)
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
	if was.facts.Species != nil && said.Species != nil {
		a.changed = append(a.changed, string(parser.SpeciesField))
	} else if was.facts.Species != nil {
		a.kept = append(a.kept, string(parser.SpeciesField))
	}
	slices.Sort(a.kept)
	slices.Sort(a.changed)
}

// Arborist is who confirms the job's answers, as they were named; empty where
// nobody was.
func (j Job) Arborist() string {
	if j.facts.Arborist == nil {
		return ""
	}
	return j.facts.Arborist.Value
}

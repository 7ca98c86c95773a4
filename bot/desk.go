package bot

import (
	"cmp"
	"encoding/json"
	"errors"
	"fmt"
	"slices"

	"heft/calc"
	"heft/calc/wood"
	"heft/parser"
	"heft/parser/reader"
)

// Desk reads a question, works it out and words the reply. It does no I/O and
// reads no clock. It is safe for use by many goroutines.
type Desk struct{ reader crewReader }

// crewReader reads a crew's words: a reader.Reader.
type crewReader interface {
	Read(text string) (parser.Question, error)
	ReadAfter(text string, before parser.Question) (parser.Question, error)
}

// NewDesk returns a desk that knows every tree of the wood table.
func NewDesk() (*Desk, error) {
	rows := append(wood.All(), wood.Groups()...)
	known := make([]parser.Species, len(rows))
	for i, r := range rows {
		known[i] = parser.Species{Scientific: r.Scientific, Name: r.Common}
	}
	r, err := reader.New(known)
	if err != nil {
		return nil, fmt.Errorf("the desk's words: %w", err)
	}
	return &Desk{reader: r}, nil
}

// Answer answers one event, leaning on what its conversation had established.
// It returns the reply, the entry for the journal, and the conversation's new
// turn.
func (d *Desk) Answer(ev Event, before Turn) (Reply, Entry, Turn) {
	if parts, whole := d.parts(ev.Text); len(parts) > 1 {
		return d.answerAll(ev, before, parts, whole)
	}
	a, turn := d.consider(ev, before)
	if parts := piecesOf(a.question); len(parts) > 1 {
		return d.answerAll(ev, before, parts, parser.Question{Compares: a.question.Compares, TakesMost: a.question.TakesMost, InRow: a.question.InRow})
	}
	turn.language, turn.tree = a.voice.language, before.counting(a)
	reply := ev.aside(a.reply())
	return reply, entryOf(ev, a, reply), turn
}

// answerAll answers each part of a message, and what is asked of all of them.
func (d *Desk) answerAll(ev Event, before Turn, parts []string, whole parser.Question) (Reply, Entry, Turn) {
	all, turn := d.several(ev, before, parts)
	all.whole = whole
	reply := ev.aside(all.reply())
	return reply, entryOf(ev, all.summary(), reply), turn
}

// heard reads a message in its talk, a choice as the message that it stands for. The ask
// is what is in doubt about it.
func (d *Desk) heard(ev Event, before Turn) (text string, q parser.Question, ask *parser.Ask, stood Turn) {
	text = ev.Text
	if message, earlier, ok := before.chosen(text); ok {
		text, before = message, earlier
	} else if message, earlier, ok := d.byUnit(text, before); ok {
		text, before = message, earlier
	} else if message, earlier, ok := d.byHaul(text, before); ok {
		text, before = message, earlier
	} else if message, earlier, ok := d.byStrength(text, before); ok {
		text, before = message, earlier
	} else if message, ok := d.jobsTree(text, before); ok {
		text = message
	}
	q, err := before.reread(d.reader, text)
	if turn, fix, ok := d.bySystem(ev, q, before); ok {
		before = turn
		q, err = before.reread(d.reader, text)
		q.Fixes = append(slices.Clone(q.Fixes), fix)
	}
	if err == nil {
		q = before.ofGearSpoken(d.reader, text, q)
	}
	q.Language = cmp.Or(ev.Language, q.Language, before.language)
	q = before.ofLast(q)
	if q.OnlyLine() {
		q.Species = nil // "redirect on the ash, 2 kN in the line": what it hangs on
	}
	another := q.FollowUp // "what about 16 ft" changes what was told, "16 ft" tells what was asked
	q.FollowUp = q.FollowUp || q.Bare && before.known || before.weighsAnew(q)
	ask, _ = errors.AsType[*parser.Ask](err)
	ask = before.notchOnStem(q, clearFirst(q, ask))
	if q, ask = before.saysWhy(q, ask, text); ask == nil {
		if ask = d.bareLength(q, ev, before, text, another); ask != nil {
			q.Quantities = nil
		}
	}
	return text, before.inItsUnits(q, ask), before.tieOfTalk(before.gearOfTalk(ask)), before
}

// consider decides between answering, asking back and refusing.
func (d *Desk) consider(ev Event, before Turn) (answer, Turn) {
	text, q, ask, before := d.heard(ev, before)
	if out, turn, ok := d.atOnce(q, ask, ev, before, text); ok {
		return out, turn
	}
	q, ask, again := before.settleName(q, ask)
	a := answer{question: q, tree: before.tree}
	a.lean(before, q, ask, ev.Job)
	if ask == nil {
		ask = a.restsOnDenied(q, before.question)
	}
	if a.voice = voiceFor(ev, a.question); ask == nil && a.leaned && a.askJoined(before, q) {
		return a, before.unsettled(a.asked, text).offering(a.choices, before)
	}
	a.question = withoutStem(a.question)
	said := a.established(before) // the channel's job may change under it
	job := ev.Job.besides(before)
	if ask != nil && ask.AsTree {
		job = job.withoutTree() // the word in doubt may be the tree
	}
	a.question, a.ofJob = job.over(a.question)
	a.voice = voiceFor(ev, a.question)
	if told := before.question; ask != nil && a.question.Units == "" && told.Units != "" {
		told.Language = a.question.Language
		a.voice = voiceFor(ev, told) // what has no unit is asked about in those of the talk
	}
	if ask == nil {
		ask = d.askJobsTree(&a, job)
	}
	ask = a.goOn(before, ask, a.leaned || again)
	switch {
	case a.aboutUs(ev, q, ask):
		return a, before
	case ask != nil:
		return d.askAnew(a, ev, before, said, q, text, ask)
	}
	a.work()
	a.tellUnsaid()
	a.tellNothingNew(q, text)
	if q.Intent == parser.AskTree && q.Pieceless() {
		return a, before
	}
	a.explain(q.Explain)
	return a.settled(before, said, q)
}

// atOnce is what needs no question made whole: what was refused and is again, a number
// that answers or changes one thing, a stop, the channel's job; false where it is none.
func (d *Desk) atOnce(q parser.Question, ask *parser.Ask, ev Event, before Turn, text string) (answer, Turn, bool) {
	a := answer{question: q, tree: before.tree, voice: voiceFor(ev, q)}
	switch {
	case before.refusesAgain(q, ask, ev.Job):
		a.refuseAgain(before.refused, text)
		return a, before, true
	case before.callsWiresDead(q, ask):
		a.refuseAgain(before.stopped, text)
		return a, before, true
	}
	for _, read := range []func(parser.Question, *parser.Ask, Event, Turn, string) (answer, Turn, bool){d.cutUp, d.asBefore, d.oneOfTwo, d.lastPutRight, d.wrapsBy, d.asAsked, d.asCut, d.ropeOfTalk, d.unitTold} {
		if out, turn, ok := read(q, ask, ev, before, text); ok {
			return out, turn, true
		}
	}
	switch {
	case ask != nil && ask.Final():
		if a.stop(ask); !mended[ask.Kind] {
			a.stillStopped(before.stopped)
		}
		return a, before.refusing(ask), true
	case before.takesJob(q, ev.Job):
		out, turn := d.takeJob(&a, ev, before, text, ask)
		return out, turn, true
	}
	return answer{}, Turn{}, false
}

// settled is an answer that was worked out, with what can be asked next, and the talk as
// it stands then.
func (a answer) settled(before Turn, said, q parser.Question) (answer, Turn) {
	open := before.openWith(q)
	a.leftOpen(open)
	a.afterStop(before.stopped)
	a.actions = a.variations(said, q.Explain)
	turn := Turn{question: said, known: true, pending: a.stillNeeded(), cutTo: a.cutTo, wraps: a.wrapsStoodAt()}
	if a.leaned {
		turn.open = open
	}
	if long, ok := said.Get(parser.Length); ok && long == before.parted.each {
		turn.parted = before.parted
	}
	turn = turn.goingBy(before.which, a.leaned || a.unsaid != nil)
	turn.told = fieldsOf(q)
	return a, turn.behind(before, a.leaned, true)
}

// askAnew asks what is in doubt or missing, unless the job settles it.
// A follow-up that is in doubt leaves the talk where it stood.
func (d *Desk) askAnew(a answer, ev Event, before Turn, said, q parser.Question, text string, ask *parser.Ask) (answer, Turn) {
	if out, turn, ok := d.inJobUnits(&a, ev, before, text, ask); ok {
		return out, turn
	}
	if turn, ok := d.unitAgain(&a, ev, before, said, q, ask); ok {
		return a, turn
	}
	if turn, ok := d.strengthAgain(&a, ev, before, said, q, ask); ok {
		return a, turn
	}
	a.inTalk = before.known && !tellsAnew(q) && (before.question.Species != nil || before.question.Has(parser.Weight))
	if bareNumber(ask) {
		a.changed = slices.DeleteFunc(slices.Clone(a.changed), func(f string) bool { return slices.Contains(ask.Fields, parser.Field(f)) })
	}
	d.askBack(&a, ask)
	if ev.tried > 0 {
		d.tryReadings(&a, ev, before, text, ask)
		return a, before
	}
	if ask.Kind == parser.Missing || ask.Kind == parser.WhichTree {
		if ask.Start == ask.End {
			a.tellNothingNew(q, text)
		}
		a.stillOpen(before.openWith(q))
	}
	a.offer(text, ask)
	d.tryReadings(&a, ev, before, text, ask)
	if turn, ok := d.readWithout(&a, ev, before, text, ask); ok {
		return a, turn
	}
	d.offerWithout(&a, ev, before, text, ask)
	d.askAsBefore(&a, q, ask, ev, before, text)
	if a.leaned || !tellsPiece(q) {
		a.stillStopped(before.stopped)
	}
	turn := a.behindAsk(before, said, q, text, ask)
	turn = turn.goingBy(before.which, a.leaned)
	turn = turn.behind(before, true, tellsPiece(q) || ask.Kind == parser.WhichTree)
	turn.told = fieldsOf(q)
	if ask.Kind == parser.WhichTree && ask.End == 0 {
		before = turn // a name alone goes with all that was told since it was asked for
	}
	return a, turn.offering(a.choices, before)
}

// behindAsk is where a talk stands behind what is asked: at what the message told, or where it
// stood where the message is in doubt.
func (a *answer) behindAsk(before Turn, said, q parser.Question, text string, ask *parser.Ask) Turn {
	turn := asked(said, ask, text)
	if a.leaned {
		turn = turn.withTold(before, q, ask)
	}
	if a.leaned && turn.known {
		turn.open = append(before.openWith(q), turn.open...)
	}
	if before.known && ask.Kind != parser.Missing && !(a.leaned && before.tellsBesides(q, ask)) && keepsTalk(ask) && (q.Bare || !tellsAnew(q) || before.fillsInDoubt(q, ask) || a.leaned && !turn.known && ask.Turning == parser.TurnsBound) {
		turn = before.unsettled(ask, text).unheard(q, text)
	}
	if !a.leaned && before.goesOnFrom(q, ask) || a.leaned && !turn.known && len(q.MissingPiece()) > 0 {
		turn = before.unsettled(ask, text).unheard(q, text) // it changes a piece, and is none of its own
	}
	return turn
}

// aboutUs answers what is asked about the desk itself: help, the log.
func (a *answer) aboutUs(ev Event, q parser.Question, ask *parser.Ask) bool {
	switch {
	case q.Intent == parser.AskHelp:
		a.help()
	case q.Intent == parser.AskLog && ask == nil:
		a.tellLog(ev.Day)
	default:
		return false
	}
	return true
}

// lean makes the question whole with what its talk had established before.
func (a *answer) lean(before Turn, q parser.Question, ask *parser.Ask, job Job) {
	limit, planned := before.holdsPlan(q, ask, job)
	switch {
	case q.Explain != "" && q.Species == nil && q.Condition == nil && len(q.Quantities) == 0 && before.known:
		// "why is it more than the log weighs" makes no log of a limb
		a.question, a.leaned = before.question, true
		a.question.Passed = slices.DeleteFunc(slices.Clone(q.Passed), func(p parser.Said[string]) bool { return !typedNumber.MatchString(p.Value) })
	case planned:
		a.holdPlan(before, q, limit)
	case before.leans(q, ask, job), before.holdsGear(q, ask), before.completesGear(q, ask):
		if before.answersGear(q) || before.completesGear(q, ask) || checked[before.question.Intent] && before.holdsGear(q, ask) {
			q.Intent = parser.AskWeight // the strength of a rope changes nothing of what was asked
		}
		a.question, a.kept, a.changed = merge(before.question, q)
		a.leaned = true
	case q.Intent == parser.AskTree && q.Pieceless():
		a.question.Units = cmp.Or(q.Units, before.question.Units) // counted in those of its pieces
	case methods[q.Intent] != nil && q.Intent != parser.AskTree:
		a.question, a.kept = before.carry(q)
	}
}

// missing turns the facts that a question lacks into an ask: two at the most.
func missing(q parser.Question) *parser.Ask {
	fields := q.Missing()
	if weightless(q) != nil || len(fields) == 0 || methods[q.Intent] == nil || q.Intent == parser.AskGear && slices.Contains(q.Notes, wornGear) {
		return nil
	}
	if len(fields) > 2 && (!q.Empty() || q.OfPlaces()) {
		fields = fields[:2]
	}
	return &parser.Ask{Kind: parser.Missing, Fields: fields}
}

// voiceFor chooses the system to speak in: the asker's wish, else the
// question's own units, else the job's, else feet and pounds; and the language:
// that of the question.
func voiceFor(ev Event, q parser.Question) speaker {
	if ev.Units != AsAsked {
		return speaker{metric: ev.Units == Metric, language: q.Language}
	}
	if q.Units == "" && ev.Job.facts.SaysUnits {
		q.Units = ev.Job.facts.Units
	}
	return speaker{metric: q.Units == parser.Metric, language: q.Language}
}

func entryOf(ev Event, a answer, r Reply) Entry {
	e := Entry{
		ID: ev.ID, Asked: ev.At, Workspace: ev.Workspace, Channel: ev.Channel, Thread: ev.Thread, User: ev.User,
		Words: ev.Text, Status: r.status, Intent: string(a.question.Intent), Result: r.figures, Reply: r.Text(),
		Calc: calc.Version, Schema: SchemaVersion, Message: ev.Message, Posted: ev.Shown,
	}
	e.Question, _ = json.Marshal(a.question) // plain data: it cannot fail
	if a.result != nil {
		e.PlanKg = float64(a.result.Weight.High)
	}
	return e
}

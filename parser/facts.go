package parser

import (
	"slices"
	"strings"
)

// Crews tell what holds for the day in a message of its own, in free words and
// with talk between: "crew is 5 today, me and Tanner climbing, three on the
// ground". Such a message is the job's where it tells nothing else and asks
// nothing. What is only talk is left out clause by clause, and said back.

// The cues of such a message.
const (
	cueAils       cue = "ails"        // behind somebody, that they stay at home
	cueAloft      cue = "aloft"       // where who climbs is
	cueCrew       cue = "crew"        // beside how many there are in all
	cueGround     cue = "ground"      // behind how many are on the ground
	cueQuery      cue = "query"       // in what asks rather than tells
	cueQueryFirst cue = "query-first" // likewise, where it stands first
	cueReason     cue = "reason"      // begins why, or how long, what stands before it holds
)

// tellsFacts notes whether a message tells what can hold for a job, and no more.
// Where a word says that it is to be kept, or that it holds today, it is the
// job's whatever was spoken of before. What gear is good for asks what it may
// carry where nothing says that it is to be kept.
func (rd *reading) tellsFacts(q *Question, asks []*Ask) {
	told := slices.Clone(q.Quantities)
	for _, f := range askedAbout(asks) {
		told = append(told, Quantity{Field: f})
	}
	whole := *q
	whole.Quantities = told
	held := rd.anyAt(func(i int) bool { return rd.termAt(i).day }) || rd.keeps() || rd.changed
	switch {
	case !whole.jobs() && !rd.keptBeside(whole), q.Asks, q.FollowUp && !rd.changed, q.Clear, q.Explain != "", q.noted(peopleBelow), rd.queries() && !(held && len(told) == 0), !slices.Contains(ofFacts, q.Intent):
		return
	case strings.ContainsAny(rd.text, "?¿") && !rd.keeps() && !(held && len(told) == 1 && q.Has(People)):
		return
	case !held && len(told) > 0 && !whole.Has(Limit, People):
		return
	}
	const many = 3 // facts that nobody tells of one piece alone
	q.Facts = true
	if held || len(told) >= many || len(told) == 0 && rd.first {
		q.Intent = AskJob
	}
}

// keptBeside says whether something is to be kept that can hold for a job, and a
// tree is named beside it of which no piece is told.
func (rd *reading) keptBeside(q Question) bool {
	return rd.keeps() && q.Shape == nil && q.Has(ofJob...) && !q.Has(across...) && !q.Has(Weight)
}

// ofFacts are what a message seems to ask for that only tells of the job.
var ofFacts = []Intent{AskWeight, AskLower, AskLift, AskRope, AskGear, AskHelp, AskJob}

// keeps says whether a word says that what is told is to be kept.
func (rd *reading) keeps() bool {
	return rd.anyAt(func(i int) bool { return rd.termAt(i).keeps })
}

// queries says whether a message asks something rather than tells it: with a word
// that asks or supposes.
func (rd *reading) queries() bool {
	if words := rd.plainWords(); len(words) > 0 && (rd.in.cues[cueQueryFirst][words[0]] || rd.in.cues[cueAsking][words[0]]) {
		return true
	}
	return !rd.changed && rd.typed(cueQuery) || rd.anyAt(func(i int) bool { return rd.termAt(i).supposes })
}

// mostLeft is how many clauses of talk a message of the job may hold: with more
// of them it is not understood.
const mostLeft = 6

// withoutTalk reads a message of the job once more without the clauses that are
// only talk, and notes what was left out. A clause that holds a number, or that
// could turn another's meaning, is none.
func (r *Reader) withoutTalk(rd *reading, q Question, err error, labelled bool, again func(text string) (*reading, Question, error)) (Question, error) {
	first, firstErr := q, err
	if !labelled && (!rd.maybeFacts() || rd.queries()) {
		return q, err
	}
	var left []Said[string]
	for text := rd.text; len(left) <= mostLeft; {
		from, to := rd.talk(err)
		if from >= to {
			break
		}
		said := rd.text[from:to]
		left = append(left, Said[string]{Value: said, Words: said, Start: from, End: to})
		text = text[:from] + "," + strings.Repeat(" ", to-from-1) + text[to:]
		rd, q, err = again(text)
	}
	if len(left) == 0 || !labelled && !q.Facts && !rd.onlyKeeps(q, err) {
		return first, firstErr
	}
	slices.SortFunc(left, func(a, b Said[string]) int { return a.Start - b.Start })
	q.Left = left
	if rd.onlyKeeps(q, err) {
		q.Intent, err = AskJob, nil
	}
	return q, err
}

// maybeFacts says whether a message could tell of the job at all.
func (rd *reading) maybeFacts() bool {
	return rd.anyAt(func(i int) bool {
		return rd.elems[i].plays(Limit) || rd.elems[i].plays(People) || rd.termAt(i).keeps || rd.termAt(i).day
	})
}

// onlyKeeps says whether something is to be kept, and nothing that can be is told.
func (rd *reading) onlyKeeps(q Question, err error) bool {
	a, _ := err.(*Ask)
	return (a == nil || a.Kind == Nonsense) && rd.keeps() && q.Empty() && !q.Asks
}

// talk finds a clause that is only talk: one that says why, or how long, or the
// one that holds the word in doubt. It returns nothing where there is none.
func (rd *reading) talk(err error) (from, to int) {
	for i, e := range rd.elems {
		var reason bool
		switch {
		case rd.typedAt(i, cueReason):
			_, to = rd.breath(e.start)
			from, reason = e.start, true
		case rd.termAt(i).someone && !rd.at(i-1).marked(markHello):
			from, to = rd.breath(e.start)
		}
		if from < to && rd.leavable(from, to, reason) {
			return from, to
		}
	}
	a, _ := err.(*Ask)
	if a == nil || a.Kind != Unknown && (a.Kind != Twist || a.Turning != "") || a.LikeStop != "" || a.Start >= a.End {
		return 0, 0
	}
	if from, to = rd.breath(a.Start); rd.leavable(from, to, false) {
		return from, to
	}
	return 0, 0
}

// breath is where the clause around a place begins and ends: at what a reader
// stops at, and at "and" where it holds a number else.
func (rd *reading) breath(at int) (from, to int) {
	from, to = rd.span(at, func(e element) bool { return e.pause > 0 })
	if rd.numbered(from, to) {
		from, to = rd.span(at, func(e element) bool { return e.pause > 0 || e.marked(markAnd) })
	}
	from += len(rd.text[from:to]) - len(strings.TrimLeft(rd.text[from:to], " "))
	return from, from + len(strings.TrimRight(rd.text[from:to], " "))
}

// span is the stretch around a place between two elements that end one.
func (rd *reading) span(at int, ends func(element) bool) (from, to int) {
	to = len(rd.text)
	for _, e := range rd.elems {
		switch {
		case !ends(e):
		case e.end <= at:
			from = e.end
		case e.start >= at:
			to = min(to, e.start)
		}
	}
	return from, to
}

// numbered says whether a number stands in a stretch.
func (rd *reading) numbered(from, to int) bool {
	return rd.anyAt(func(i int) bool {
		e := rd.elems[i]
		return e.fig != nil && e.start >= from && e.end <= to
	})
}

// leavable says whether a clause can be left out of what a job is told: it
// holds no number and takes nothing back. Only where it says why may it name
// wood, or gear that is told of elsewhere: else it could say how they are.
func (rd *reading) leavable(from, to int, reason bool) bool {
	ofGear, is := false, false
	for i, e := range rd.elems {
		if e.end <= from || e.start >= to {
			continue
		}
		t := rd.termAt(i)
		turns := !reason && (t.ask == Twist && rd.turnedBy(i) != "" && !t.andSelf || t.denies || t.corrects || t.lacks)
		if e.fig != nil || turns || t.keeps || t.note == peopleBelow || !reason && (rd.toldElsewhere(e, from, to) || e.piece() || t.tree != nil || t.condition != "") {
			return false
		}
		ofGear, is = ofGear || e.part() != "", is || e.marked(markIs)
	}
	return from < to && (reason || !ofGear || !is) // "the rope is …" says how it is
}

// toldElsewhere says whether an element of a stretch is of gear that is told of
// outside of it too.
func (rd *reading) toldElsewhere(e element, from, to int) bool {
	return e.part() != "" && rd.anyAt(func(i int) bool {
		other := rd.elems[i]
		return other.part() == e.part() && (other.end <= from || other.start >= to)
	})
}

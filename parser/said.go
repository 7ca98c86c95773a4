package parser

import (
	"slices"
	"strings"
)

// nonsense says whether nothing in the message is of the trade: something is
// not known, or it is all chatter.
func (rd *reading) nonsense(q Question, asks []*Ask) bool {
	if len(asks) == 0 && !rd.chatters() && !rd.talked && len(rd.passed) == 0 || !q.Empty() || q.SaysUnits && q.Intent == AskJob || slices.ContainsFunc(asks, func(a *Ask) bool { return a.Kind != Unknown }) {
		return false
	}
	for _, e := range rd.elems {
		t := e.term
		if e.fig != nil || t != nil && (t.intent != "" || t.units != "" || t.tree != nil || t.marks&markFollow != 0) {
			return false
		}
	}
	return true
}

// acknowledges says whether a message begins with a word that greets or thanks,
// whatever talk follows: "thanks, back after lunch".
func (rd *reading) acknowledges() bool {
	return len(rd.elems) > 0 && rd.elems[0].marked(markHello) && !slices.ContainsFunc(rd.asks, func(a *Ask) bool { return a.Start < rd.elems[0].start })
}

// small takes small talk for what it is: where every word says nothing here but
// for one that turns a meaning, "wont", there is no meaning to turn, degrees are
// the weather's and 12:45 is an hour.
func (rd *reading) small() {
	chats := slices.ContainsFunc(rd.elems, func(e element) bool { return e.term != nil && e.term.chatter && !e.term.someone })
	if !chats && !rd.talked && !slices.ContainsFunc(rd.asks, ofClock) ||
		slices.ContainsFunc(rd.elems, func(e element) bool { return e.pause == 0 && !e.idle() }) ||
		slices.ContainsFunc(rd.asks, func(a *Ask) bool { return a.Kind != Unknown && !ofClock(a) }) {
		return
	}
	for i := len(rd.elems) - 1; i >= 0; i-- {
		if rd.elems[i].fig != nil {
			rd.pass(i, i+1)
		} else if rd.termAt(i).ask == Twist {
			rd.alter(i, func(t *term) { t.ask = "" })
		}
	}
	for _, a := range rd.asks {
		if ofClock(a) {
			rd.passed = append(rd.passed, Said[string]{Value: a.Words, Words: a.Words, Start: a.Start, End: a.End})
		}
	}
	rd.asks = slices.DeleteFunc(rd.asks, ofClock)
}

// idle says whether an element can stand in small talk: degrees, or a word that
// tells of no piece, gear or place.
func (e element) idle() bool {
	if e.fig != nil {
		return e.fig.dim == dimAngle
	}
	if e.term == nil {
		return false // "x" between two sizes
	}
	t := *e.term
	if t.ask == Twist {
		t.ask = ""
	}
	const joining = markHello | markArticle | markIs | markAt | markAnd | markPronoun | markRelation | markWhere | markIn | markAdverb | markAdjective | markMade
	return t.says(joining)
}

// chatters says whether the message has words that say nothing here, and none
// that greets.
func (rd *reading) chatters() bool {
	return !rd.has(markHello) && slices.ContainsFunc(rd.elems, func(e element) bool { return e.term != nil && e.term.chatter })
}

// saysUnits says whether a system was asked for, rather than used.
func (rd *reading) saysUnits() bool {
	return rd.bareUnits() != "" || slices.ContainsFunc(rd.elems, func(e element) bool { return e.term != nil && e.term.units != "" })
}

// bareUnits is the system of the units that are named in a message without a
// number, "use kilos from now on": nothing else can be wanted of them. There is
// none where two systems are named.
func (rd *reading) bareUnits() (out System) {
	for _, e := range rd.elems {
		u := rd.in.units[rd.word(e)]
		switch {
		case e.fig != nil:
			return ""
		case !e.marked(markUnit) || u == nil || u.system == "" || u.dim == dimAngle:
		case out != "" && out != u.system:
			return ""
		default:
			out = u.system
		}
	}
	return out
}

// wantsHelp says whether help was asked for in so many words.
func (rd *reading) wantsHelp() bool {
	return slices.ContainsFunc(rd.elems, func(e element) bool { return e.term != nil && e.term.intent == AskHelp })
}

// asksHow says whether the message asks how a kind of question is asked, rather
// than asking it: "what do you need from me for a swing". "Help" alone goes with
// any question.
func (rd *reading) asksHow(q Question) bool {
	switch {
	case q.Intent == AskHelp, q.Intent == AskLog, q.Intent == AskJob, q.Species != nil, len(q.Quantities) > 0:
		return false
	}
	return slices.ContainsFunc(rd.elems, func(e element) bool {
		words := rd.text[e.start:e.end]
		return e.term != nil && e.term.intent == AskHelp && strings.Contains(words, " ") && !strings.HasSuffix(strings.ToLower(words), " me")
	})
}

// kindAsked is a kind of question where its own words name it, "" elsewhere: "what
// are you able for" names none.
func (rd *reading) kindAsked(in Intent) Intent {
	asked, besides, _ := rd.intents()
	if in == AskWeight && !slices.Contains(asked, in) && !slices.Contains(besides, in) {
		return ""
	}
	return in
}

// units is the system asked for, or else that of most numbers.
func (rd *reading) units() System {
	if bare := rd.bareUnits(); bare != "" {
		return bare
	}
	count := map[System]int{}
	for _, e := range rd.elems {
		switch {
		case e.term != nil && e.term.units != "":
			return e.term.units
		case e.fig != nil && e.fig.unit != nil:
			count[e.fig.unit.system]++
		}
	}
	switch {
	case count[Imperial] > count[Metric]:
		return Imperial
	case count[Metric] > 0:
		return Metric
	}
	return ""
}

// notes are what the message said besides, such as a wet rope.
func (rd *reading) notes() []string {
	var out []string
	for i, e := range rd.elems {
		if e.term == nil || e.term.note == bridled && (rd.slung() || rd.legsOfRope()) || e.term.near && rd.at(i+1).fig == nil {
			continue
		}
		for _, n := range []string{e.term.note, redirecting[e.term.block]} {
			if n != "" && !slices.Contains(out, n) {
				out = append(out, n)
			}
		}
	}
	return out
}

// leavesOn is the note of a piece that has its branches or leaves on.
const leavesOn = "leafed"

// leafed notes it of a piece of which it is not said whether it is a log or a
// limb: of a limb it goes without saying.
func (rd *reading) leafed(q *Question) {
	if q.Shape == nil && !q.Pieceless() && rd.anyAt(func(i int) bool { return rd.termAt(i).leafed }) {
		q.Notes = append(q.Notes, leavesOn)
	}
}

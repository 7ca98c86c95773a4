package bot

import (
	"cmp"
	"slices"
	"strings"

	"heft/parser"
)

// A word that is not known may change everything: then it is asked about. Where it
// stands beside nothing that it could change, the message has its answer without it,
// which says so, or is asked in the same breath for what it lacks.

// mostUnread is how many such words a message may hold: with more of them it is
// not understood.
const mostUnread = 3

// unread are the words of a message that are not known, and what it comes to
// without them: nothing where any of them may change what is told.
type unread struct {
	words []string
	lines []string
	text  string // the message without them, where that has its answer
	comes string // what that answer comes to, beside the choice to leave them out
}

// readWithout says what the message comes to without a word that is not known; true
// where that is its answer.
func (d *Desk) readWithout(a *answer, ev Event, before Turn, text string, ask *parser.Ask) (Turn, bool) {
	if ev.unread++; ask.Kind != parser.Unknown || ask.Start >= ask.End || ask.End > len(text) || ev.unread > mostUnread {
		return Turn{}, false
	}
	ev.Text = strings.TrimSpace(text[:ask.Start] + " " + text[ask.End:])
	rest, turn := d.consider(ev, before)
	u := rest.unread
	if !ask.Spare || rest.asksForWord() {
		a.leaveAllOut(ask, rest)
		a.showLeft(ask, rest)
		onlyShape := before.known && !a.leaned && a.question.Pieceless() && len(a.question.Quantities) == 0 // "14 top" is no limb
		if a.unread.comes == "" && a.asksForWord() && a.asked.LikeStop == "" && !onlyShape {
			a.tellSoFar(ask)
		}
		return Turn{}, false
	}
	if u.words == nil && rest.comesToNothing() {
		return Turn{}, false
	}
	if u.words = append([]string{ask.Words}, u.words...); rest.status == Answered {
		*a, u.text = rest, cmp.Or(u.text, ev.Text)
		a.unread = u
		return turn, true
	}
	if u.lines == nil {
		u.lines = rest.lines
	}
	a.unread, a.needs = u, rest.needs
	a.sayWithout(rest.choices)
	return Turn{}, false
}

// offerWithout offers to leave out the clause that a word turns round, where the rest
// of the message has its answer or lacks but what is told next: only who typed it knows
// whether it was talk, and so no figures are told before it is out.
func (d *Desk) offerWithout(a *answer, ev Event, before Turn, text string, ask *parser.Ask) {
	from, to := ask.Clause[0], ask.Clause[1]
	if ev.unread++; ask.Kind != parser.Twist || ask.Turning == parser.TurnsSuch || from >= to || to > len(text) || len(a.choices) > 0 || ev.unread > mostUnread {
		return
	}
	ev.Text = strings.TrimSpace(text[:from] + " " + text[to:])
	if rest, _ := d.consider(ev, before); rest.comesToNothing() || rest.status != Answered && !rest.lacksOnly() {
		return
	}
	leave := a.voice.say("leave out “%s”", trimQuote(text[from:to]))
	a.lines, a.choices = append(a.lines, numbered(0, leave)), []Choice{{leave, ev.Text}}
}

// lacksOnly says whether nothing is in doubt of what a message tells, and something of
// it is missing.
func (a *answer) lacksOnly() bool {
	return a.asked != nil && (a.asked.Kind == parser.Missing || a.asked.Kind == parser.WhichTree || a.asked.Kind == parser.WhichParts)
}

// asksForWord says whether a word that is not known is asked about, and nothing is
// said of what the message comes to without it.
func (a *answer) asksForWord() bool {
	return a.asked != nil && a.asked.Kind == parser.Unknown && len(a.unread.lines) == 0
}

// comesToNothing says whether an answer tells nothing of what was asked.
func (a *answer) comesToNothing() bool {
	q := a.question
	switch {
	case a.asked != nil && a.asked.Kind == parser.Nonsense:
		return true
	case q.Intent == parser.AskJob:
		return a.status == Answered // nothing is kept before the word is out
	case q.Intent == parser.AskHelp:
		return !q.Hello
	}
	return a.asked != nil && a.asked.Kind == parser.Missing && q.Empty() && !q.Asks
}

// leaveAllOut asks about all the words that are not known at once: the one asked about
// first, and those of the rest. What one of them may be, a stop, comes before all.
func (a *answer) leaveAllOut(ask *parser.Ask, rest answer) {
	u := rest.unread
	if u.words == nil && rest.asksForWord() {
		u.words = []string{rest.asked.Words}
	}
	if u.words == nil || ask.LikeStop != "" {
		return
	}
	if rest.asksForWord() && rest.asked.LikeStop != "" {
		a.lines, a.choices, a.asked = rest.lines, nil, rest.asked
		return
	}
	v := a.voice
	a.unread = unread{words: append([]string{ask.Words}, u.words...)}
	a.lines = a.lines[:len(a.lines)-len(a.choices)]
	names, leave := a.unread.names(), v.word("leave them out")
	if a.choices = nil; len(names) > 1 {
		a.lines[0] = v.say("I do not know %s. Leave them out or say it another way.", v.and(names))
	} else {
		leave = v.say("leave out “%s”", trimQuote(ask.Words))
	}
	if without := rest.leftOut(); without != "" {
		a.lines, a.choices = append(a.lines, numbered(0, leave)), []Choice{{leave, without}}
	}
}

// showLeft puts what the message comes to without the words beside the choice to leave
// them out, as beside each of several trees: one tap, and the crew sees what it gives.
// Not where a number may be of what the word names, nor of how somebody fares.
func (a *answer) showLeft(ask *parser.Ask, rest answer) {
	if len(a.choices) == 0 || a.asked.LikeStop != "" || a.asked.OfSomebody || ask.OfNumber {
		return
	}
	switch {
	case rest.status != Answered:
		a.unread.comes = cmp.Or(rest.unread.comes, rest.whichWeighs())
	case !rest.comesToNothing() && methods[rest.question.Intent] != nil:
		a.unread.comes = rest.lines[0]
	}
	leave := numbered(0, a.choices[0].Label)
	if at := slices.Index(a.lines, leave); at >= 0 && a.unread.comes != "" {
		a.lines[at] = a.voice.say("%s: %s", leave, a.unread.comes)
	}
}

// leftOut is the message without all the words that are not known, "" where it is
// not offered.
func (a *answer) leftOut() string {
	if a.asksForWord() && len(a.choices) == 1 {
		return a.choices[0].Message
	}
	return a.unread.text
}

// names quotes the words, each of them once.
func (u unread) names() []string {
	var out []string
	for _, w := range u.words {
		same := func(said string) bool { return strings.EqualFold(said, quote(w)) }
		if !slices.ContainsFunc(out, same) {
			out = append(out, quote(w))
		}
	}
	return out
}

// sayWithout words what it still lacks, with the choices that complete it.
func (a *answer) sayWithout(choices []Choice) {
	v, u := a.voice, a.unread
	names := u.names()
	head := v.say("I do not know %s. Without it: %s", v.and(names), u.lines[0])
	if len(names) > 1 {
		head = v.say("I do not know %s. Without them: %s", v.and(names), u.lines[0])
	}
	a.lines, a.choices = append([]string{head}, u.lines[1:]...), choices
}

// leftUnread says which words an answer was given without.
func (a *answer) leftUnread() string {
	if len(a.unread.words) == 0 || a.status != Answered {
		return ""
	}
	return a.voice.say("I do not know %s: left out. If it matters, say it another way.", a.voice.and(a.unread.names()))
}

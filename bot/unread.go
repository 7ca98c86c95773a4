package bot

import (
	"strings"

	"heft/parser"
)

// A word that is not known is asked about: it may change everything. What the
// message says without it is said in the same breath, so that a crew whose word
// changes nothing has its answer at once.

// mostUnread is how many such words a message may hold: with more of them it is
// not understood.
const mostUnread = 3

// unread are the words of a message that are not known, and what it comes to
// without them.
type unread struct {
	words []string
	lines []string
	whole bool // it is answered, not asked back
	text  string
}

// readWithout says what the message comes to without a word that is not known.
func (d *Desk) readWithout(a *answer, ev Event, before Turn, text string, ask *parser.Ask) {
	if ev.unread++; !ask.Spare || ask.Start >= ask.End || ask.End > len(text) || ev.unread > mostUnread {
		return
	}
	ev.Text = strings.TrimSpace(text[:ask.Start] + " " + text[ask.End:])
	rest, _ := d.consider(ev, before)
	u := rest.unread
	switch {
	case u.words != nil:
	case rest.question.Intent == parser.AskTree, rest.question.Intent == parser.AskWeight && rest.question.Has(parser.Weight) && len(rest.question.MissingSizes()) > 0:
		return // it comes to nothing that was not said
	case methods[rest.question.Intent] == nil, rest.asked != nil && (rest.asked.Kind == parser.Unknown || beside(text, ask, rest.asked.Words)):
		return
	case rest.status == Answered:
		u = unread{lines: append(rest.lines[:1:1], rest.problems...), whole: true, text: ev.Text}
	case rest.status == Needs && !rest.question.Empty():
		u = unread{lines: rest.lines}
	default:
		return
	}
	u.words = append([]string{ask.Words}, u.words...)
	a.unread, a.needs = u, rest.needs
	a.sayWithout(rest.choices)
}

// sayWithout words it, with the choices that complete it.
func (a *answer) sayWithout(choices []Choice) {
	v, u := a.voice, a.unread
	names := make([]string, len(u.words))
	for i, w := range u.words {
		names[i] = quote(w)
	}
	head, leave := v.say("I do not know %s. Without it: %s", v.and(names), u.lines[0]), v.say("leave out “%s”", trimQuote(u.words[0]))
	if len(names) > 1 {
		head, leave = v.say("I do not know %s. Without them: %s", v.and(names), u.lines[0]), v.word("leave them out")
	}
	a.lines, a.choices = append([]string{head}, u.lines[1:]...), choices
	if u.whole {
		a.lines, a.choices = append(a.lines, numbered(0, leave)), []Choice{{leave, u.text}}
	}
}

// beside says whether some words stand right beside those of an ask: "spotted
// gum".
func beside(text string, ask *parser.Ask, words string) bool {
	return words != "" && (strings.HasPrefix(strings.TrimSpace(text[ask.End:]), words) || strings.HasSuffix(strings.TrimSpace(text[:ask.Start]), words))
}

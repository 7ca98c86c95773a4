package practice

import (
	"net/http"
	"slices"
	"strconv"
	"strings"

	"heft/bot/standin"
)

// lesson leads to where one of the questions to try is asked, as it is when
// the card is tapped: what it builds on may have come up since the page was
// made.
func (p *page) lesson(w http.ResponseWriter, r *http.Request) {
	n, err := strconv.Atoi(r.PathValue("n"))
	if err != nil || n < 1 || n > len(lessons) {
		http.NotFound(w, r)
		return
	}
	p.at.Store(int32(n))
	http.Redirect(w, r, p.builder(r).way(n-1), http.StatusSeeOther)
}

// next leads to the lesson that one is at until its words are sent, then to
// the one after it, and behind the last to the day sheet.
func (b *builder) next() link {
	n, say := b.at, "try.now"
	if n == 0 || b.done(n-1) {
		n, say = n+1, "try.next"
	}
	switch {
	case n > len(lessons) && !b.days:
		return link{}
	case n > len(lessons):
		of := b.place
		of.Who, of.Front = "supervisor", false
		return link{Name: b.Say("try.last"), To: "/day?" + of.Query()}
	}
	return link{Name: b.Say(say, strconv.Itoa(n)), To: "/try/" + strconv.Itoa(n) + "?lang=" + b.place.Lang}
}

// done says whether a lesson's words were sent; of a button it is enough that
// what it stands under is there.
func (b *builder) done(i int) bool {
	l := lessons[i]
	if l.Tap {
		_, missing := b.basis(l)
		return missing < 0
	}
	return slices.ContainsFunc(b.snap.Messages[jobs[l.Job]], func(m standin.Message) bool {
		return m.User == roles[l.Role].User && m.For == "" && b.asks(i, m)
	})
}

// asks says whether a message is a lesson's question, in any language.
func (b *builder) asks(i int, m standin.Message) bool {
	text := entities.Replace(b.unmentioned(strings.TrimSpace(strings.ReplaceAll(m.Text, b.mention(), ""))))
	return slices.ContainsFunc([]texts{english, spanish}, func(t texts) bool { return strings.EqualFold(text, t.lesson(i, "ask")) })
}

// way is the address at which a lesson is done, down to the field that is
// filled or the button to tap; where something has to come before it, that is
// filled in instead.
func (b *builder) way(i int) string {
	l := lessons[i]
	on, missing := b.basis(l)
	if missing >= 0 {
		return b.of(lessons[missing]).To() + "&draft=" + strconv.Itoa(missing+1) + "&for=" + strconv.Itoa(i+1) + "#write"
	}
	to := b.of(l).To()
	switch {
	case l.Tap:
		return to + "#" + on
	case l.Follows:
		return to + "&draft=" + strconv.Itoa(i+1) + "#r" + on
	}
	return to + "&draft=" + strconv.Itoa(i+1) + "#write"
}

// of is the place of a lesson.
func (b *builder) of(l lesson) place {
	return place{Lang: b.place.Lang, Who: roles[l.Role].Key, Job: jobs[l.Job]}
}

// basis is what a lesson builds on: the anchor of the ticket that it follows
// up, or of the button that it taps; else the first lesson that is missing.
func (b *builder) basis(l lesson) (anchored string, missing int) {
	var asked []string
	for _, need := range l.Needs {
		if asked = b.asked(need); len(asked) == 0 {
			return "", need
		}
	}
	switch {
	case l.Tap:
		if id := b.button(l, asked); id != "" {
			return id, -1
		}
		return "", l.Needs[len(l.Needs)-1]
	case l.Follows:
		return anchor(asked[0]), -1
	}
	return "", -1
}

// asked are the tickets that ask a lesson's question, in any language, the
// newest first.
func (b *builder) asked(i int) []string {
	var list []string
	for _, m := range slices.Backward(b.snap.Messages[jobs[lessons[i].Job]]) {
		if m.BotID != "" || m.For != "" || m.Thread() != m.TS {
			continue
		}
		if b.asks(i, m) {
			list = append(list, m.TS)
		}
	}
	return list
}

// button is the anchor of the newest one under some tickets that a lesson
// names, in any language.
func (b *builder) button(l lesson, under []string) string {
	i := slices.IndexFunc(lessons, func(o lesson) bool { return o.Tap && o.Job == l.Job })
	labels := []string{english.lesson(i, "ask"), spanish.lesson(i, "ask")}
	for _, m := range slices.Backward(b.snap.Messages[jobs[l.Job]]) {
		if m.For != "" || !slices.Contains(under, m.Thread()) {
			continue
		}
		for k, bl := range m.Blocks {
			for n, e := range bl.Elements {
				if e.Text != nil && slices.Contains(labels, e.Text.Shown()) {
					return buttonID(m.TS, k, n)
				}
			}
		}
	}
	return ""
}

// buttonID is the anchor of an element of a message, which stays the same when
// the message is written anew.
func buttonID(ts string, block, n int) string {
	return "b" + anchor(ts) + "-" + strconv.Itoa(block) + "-" + strconv.Itoa(n)
}

// draft fills in a question to try: under the ticket that it follows up, else
// as a new one, with what it is filled in for where that came before its turn.
func (b *builder) draft(s *sheet, i, before int) {
	l, ask := lessons[i], b.texts.lesson(i, "ask")
	if l.Follows {
		on, missing := b.basis(l)
		for _, list := range [][]ticket{s.Tickets, s.Older} {
			for t := range list {
				if missing < 0 && list[t].Anchor == on {
					list[t].Open, list[t].Draft = true, ask
				}
			}
		}
		s.Unfold = slices.ContainsFunc(s.Older, func(t ticket) bool { return t.Open })
		return
	}
	s.Draft = ask
	if before >= 0 && slices.Contains(lessons[before].Needs, i) {
		s.First = b.Say("try.first", strconv.Itoa(before+1), b.list(lessons[before].Needs), strconv.Itoa(i+1), strconv.Itoa(before+1))
	}
}

// list names some lessons.
func (b *builder) list(of []int) string {
	named := strconv.Itoa(of[0] + 1)
	for _, i := range of[1:] {
		named = b.Say("and", named, strconv.Itoa(i+1))
	}
	return named
}

// drafted reads which lesson is to be filled in, and for which other one.
func drafted(r *http.Request) (i, before int, ok bool) {
	number := func(name string) int {
		n, err := strconv.Atoi(r.FormValue(name))
		if err != nil || n < 1 || n > len(lessons) {
			return -1
		}
		return n - 1
	}
	i, before = number("draft"), number("for")
	return i, before, i >= 0 && !lessons[i].Tap
}

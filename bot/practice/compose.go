package practice

import (
	"slices"
	"strconv"
)

// sheet puts a page together.
func (b *builder) sheet() *sheet {
	s := &sheet{
		texts: b.texts, Lang: b.place.Lang, Place: b.place, Version: b.snap.Version, Front: b.place.Front,
		Direct: b.place.Job == "direct", Site: b.Say(b.place.Job), Topic: b.Say(b.place.Job + ".topic"), Modal: b.modal(),
		Role: b.role.Key, Newest: newest, Fronted: b.Say("front"),
	}
	if b.role.User == Supervisor {
		s.Fronted = b.Say("front.day")
	}
	back := b.place
	back.Front = false
	s.Back = back.To()
	b.links(s)
	for i, l := range lessons {
		s.Lessons = append(s.Lessons, try{
			Ask: b.texts.lesson(i, "ask"), Why: b.texts.lesson(i, "why"), Role: roles[l.Role].Key,
			Follows: l.Follows, Tap: l.Tap, To: "/try/" + strconv.Itoa(i+1) + "?lang=" + b.place.Lang,
		})
	}
	s.Next = b.next()
	if b.place.Front {
		s.Home = b.blocks(b.snap.Homes[b.role.User].Blocks, target{View: b.snap.Homes[b.role.User].ID})
		return s
	}
	all := b.tickets()
	s.Tickets, s.Older = all[:min(newest, len(all))], all[min(newest, len(all)):]
	return s
}

// links lead to the page of another role, job or language.
func (b *builder) links(s *sheet) {
	for _, r := range roles {
		to := b.place
		to.Who = r.Key
		s.Roles = append(s.Roles, link{Name: b.Say(r.Key), To: to.To(), Mark: r.Key, Current: r.Key == b.role.Key})
	}
	for _, job := range append(append([]string{}, jobs...), "direct") {
		to := b.place
		to.Job, to.Front = job, false
		s.Jobs = append(s.Jobs, link{Name: b.Say(job), To: to.To(), Current: job == b.place.Job && !b.place.Front})
	}
	for _, lang := range languages {
		to := b.place
		to.Lang = lang
		name := map[string]texts{"en": english, "es": spanish}[lang].Say("language")
		s.Langs = append(s.Langs, link{Name: name, To: to.To(), Mark: lang, Current: lang == b.place.Lang})
	}
}

// note says something by what it is about: the box, the ticket or the switch;
// else at the head of the page.
func (s *sheet) note(words string, good bool, at string) {
	s.Note, s.Good = words, good
	if at == "write" || at == "switch" {
		s.At = at
		return
	}
	for _, list := range [][]ticket{s.Tickets, s.Older} {
		for i := range list {
			t := &list[i]
			box := at == "r"+t.Anchor
			if !box && at != t.Anchor && !slices.ContainsFunc(t.Replies, func(r slip) bool { return r.Anchor == at }) {
				continue
			}
			s.At, t.Note, t.Open = at, words, box
			s.Unfold = slices.ContainsFunc(s.Older, func(t ticket) bool { return t.Note != "" })
			return
		}
	}
}

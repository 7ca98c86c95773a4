package practice

import "strconv"

// sheet puts a page together.
func (b *builder) sheet() *sheet {
	s := &sheet{
		texts: b.texts, Lang: b.place.Lang, Place: b.place, Version: b.snap.Version, Front: b.place.Front,
		Direct: b.place.Job == "direct", Site: b.Say(b.place.Job), Topic: b.Say(b.place.Job + ".topic"), Modal: b.modal(),
	}
	back := b.place
	back.Front = false
	s.Back = back.To()
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
	for i, l := range lessons {
		to := place{Lang: b.place.Lang, Who: roles[l.Role].Key, Job: jobs[l.Job]}
		way := "&draft=" + strconv.Itoa(i+1) + "#write"
		if l.Tap {
			way = "#tickets"
		}
		s.Lessons = append(s.Lessons, try{
			Ask: b.texts.lesson(i, "ask"), Why: b.texts.lesson(i, "why"), Role: roles[l.Role].Key,
			Follows: l.Follows, Tap: l.Tap, To: to.To() + way,
		})
	}
	if b.place.Front {
		s.Home = b.blocks(b.snap.Homes[b.role.User].Blocks, target{View: b.snap.Homes[b.role.User].ID})
		return s
	}
	s.Tickets = b.tickets()
	return s
}

// draft fills in a question to try: under the newest ticket that the desk
// has answered where it follows up, else as a new one.
func (s *sheet) draft(lesson int) {
	ask := s.texts.lesson(lesson, "ask")
	if lessons[lesson].Follows {
		for i := range s.Tickets {
			t := &s.Tickets[i]
			for _, r := range t.Replies {
				if r.Role == "desk" && !r.Private {
					t.Open, t.Draft = true, ask
					return
				}
			}
		}
	}
	s.Draft = ask
}

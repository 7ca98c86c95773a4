package practice

import (
	"net/url"
	"slices"
	"strconv"
	"strings"
	"time"

	"heft/bot/standin"
)

// sheet is what a page shows.
type sheet struct {
	texts
	Lang    string
	Place   place
	Version int64
	Roles   []link
	Jobs    []link
	Langs   []link
	Role    string
	Site    string // name of the job
	Topic   string
	Direct  bool
	Front   bool   // the front sheet is shown, not the tickets
	Fronted string // what the front sheet is called
	Back    string // from there to the tickets
	Home    []block
	Modal   *form
	Tickets []ticket // newest first
	Older   []ticket // and those before them, folded away
	Unfold  bool
	Newest  int // how many hang unfolded
	Lessons []try
	Next    link // to the lesson at hand, or the one after it
	Draft   string
	First   string // why something else is filled in than what was tapped
	Note    string
	Good    bool   // the note is no complaint
	At      string // what the note stands by
	Day     string // where the day sheet is, if it is offered
	Restart bool
}

// newest is how many tickets hang unfolded.
const newest = 5

// place is where a form was filled in: who, and at which job.
type place struct {
	Lang, Who, Job string
	Front          bool
}

// Query is the place as an address has it.
func (p place) Query() string {
	v := url.Values{"lang": {p.Lang}, "who": {p.Who}, "job": {p.Job}}
	if p.Front {
		v.Set("front", "1")
	}
	return v.Encode()
}

// To is the address of the place.
func (p place) To() string { return "/?" + p.Query() }

// link leads to another view of the page.
type link struct {
	Name, To, Mark string
	Current        bool
}

// ticket is a question and what came of it.
type ticket struct {
	Place   place
	TS      string
	Anchor  string
	Top     slip
	Number  string
	Replies []slip
	Waiting bool
	Open    bool // its follow-up is being written
	Draft   string
	Note    string
}

// slip is one message.
type slip struct {
	Place     place
	TS        string
	Anchor    string
	Who       string
	Role      string // a role's key, or desk
	Mine      bool
	Loose     bool // a person's, and not for the desk
	Clock     string
	Stamp     string
	Head      []span // of the desk: the first line, which alone is the answer
	Body      []span
	Raw       string // what is corrected
	Blocks    []block
	Pictures  []image
	Files     []link // other than pictures
	Reactions []string
	Edited    bool
	Private   bool
}

// try is one of the questions to try.
type try struct {
	Ask, Why, Role, To string
	Follows, Tap       bool
}

// builder makes a sheet out of a snapshot.
type builder struct {
	texts
	snap  standin.Snapshot
	files func(id string) (standin.File, bool)
	place place
	role  role
	steps []step
	users map[string]standin.User
	zone  *time.Location
	days  bool // a day sheet is offered
	at    int  // the lesson that was last gone to, counted from one
}

// who is the name of a user.
func (b *builder) who(id string) string {
	if i := slices.IndexFunc(roles, func(r role) bool { return r.User == id }); i >= 0 {
		return b.users[id].RealName
	}
	if u := b.users[id]; u.Bot {
		return b.Say("desk")
	}
	return id
}

// channel is the conversation of a place: the job, or the role's own with
// the desk.
func (b *builder) channel() string {
	if b.place.Job == "direct" {
		return b.role.Direct
	}
	return b.place.Job
}

// calls says whether a person's message is for the desk.
func (b *builder) calls(m standin.Message) bool {
	return m.BotID == "" && (b.place.Job == "direct" || slices.ContainsFunc(m.Pings(), func(p string) bool {
		return b.users[strings.TrimPrefix(p, "@")].Bot
	}))
}

// slip is a message as the page shows it. Blocks stand for the text where
// there are any (documented: chat.postMessage, text is then the fallback).
func (b *builder) slip(m standin.Message) slip {
	s := slip{
		Place: b.place, TS: m.TS, Anchor: anchor(m.TS), Who: b.who(m.User), Role: "desk",
		Mine: m.User == b.role.User, Edited: m.Edited, Private: m.For != "", Loose: m.BotID == "" && !b.calls(m),
	}
	if i := slices.IndexFunc(roles, func(r role) bool { return r.User == m.User }); i >= 0 {
		s.Role = roles[i].Key
	}
	at := moment(m.TS).In(b.zone)
	s.Clock, s.Stamp = at.Format("15:04"), at.Format(time.RFC3339)
	text := m.Text
	if s.Role != "desk" {
		text = strings.TrimSpace(strings.ReplaceAll(text, b.mention(), ""))
		s.Raw = entities.Replace(b.unmentioned(text))
	}
	switch first, rest, more := strings.Cut(text, "\n"); {
	case len(m.Blocks) > 0:
		s.Blocks = b.blocks(m.Blocks, target{Channel: m.Channel, TS: m.TS})
		b.lead(m.Blocks, s.Blocks)
	case s.Role == "desk" && text != "":
		s.Head = b.said(first, m.Plain)
		if more {
			s.Body = b.said(rest, m.Plain)
		}
	default:
		s.Body = b.spans(text, m.Plain)
	}
	b.attach(&s, m.Files)
	for _, r := range m.Reactions {
		s.Reactions = append(s.Reactions, strings.ReplaceAll(r.Name, "_", " "))
	}
	return s
}

// attach shows the files of a message: pictures as such, others as links.
func (b *builder) attach(s *slip, list []standin.File) {
	for _, f := range list {
		switch {
		case pictureOf(f) != "":
			s.Pictures = append(s.Pictures, *b.pictured(f.AltText, &standin.FileRef{ID: f.ID}, target{TS: s.TS}))
		case paged(f):
			s.Files = append(s.Files, link{Name: f.Name, To: b.look("/file/", f.ID, s.TS)})
		default:
			s.Files = append(s.Files, link{Name: f.Name, To: b.look("/look/", f.ID, s.TS)})
		}
	}
}

// mention is how the desk is called in a message.
func (b *builder) mention() string {
	for _, u := range b.snap.Users {
		if u.Bot {
			return "<@" + u.ID + ">"
		}
	}
	return ""
}

// unmentioned is a text with the names of people as they are typed.
func (b *builder) unmentioned(text string) string {
	return angled.ReplaceAllStringFunc(text, func(m string) string {
		if u, ok := b.users[strings.Trim(m, "<@>")]; ok {
			return "@" + u.Name
		}
		return m
	})
}

func anchor(ts string) string { return "t" + strings.ReplaceAll(ts, ".", "-") }

// moment reads a stamp: seconds, a dot and six digits.
func moment(ts string) time.Time {
	micro, err := strconv.ParseInt(strings.ReplaceAll(ts, ".", ""), 10, 64)
	if err != nil {
		return time.Time{}
	}
	return time.UnixMicro(micro)
}

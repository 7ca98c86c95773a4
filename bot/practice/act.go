package practice

import (
	"net/http"
	"strings"
	"unicode/utf8"

	"heft/bot/standin"
)

// maxTicket is the longest text of a ticket, in characters, and maxForm the
// most bytes of a form.
const (
	maxTicket = 3_000
	maxForm   = 64 << 10
)

// act is who does something, and where.
type act struct {
	*builder
	user, channel string
}

// acting does what a form asks for and leads back to the page, to the ticket
// it was about and with a note where something was wrong.
func (p *page) acting(do func(*http.Request, act) (anchor, note string)) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		r.Body = http.MaxBytesReader(w, r.Body, maxForm)
		if err := r.ParseForm(); err != nil {
			http.Error(w, "that is too long", http.StatusRequestEntityTooLarge)
			return
		}
		b := p.builder(r)
		anchor, note := do(r, act{builder: b, user: b.role.User, channel: b.channel()})
		to := b.place.To()
		if note != "" {
			to += "&note=" + note
		}
		if anchor != "" {
			to += "&at=" + anchor + "#" + anchor // a script does not see what follows the sign
		}
		http.Redirect(w, r, to, http.StatusSeeOther)
	}
}

// words reads what was written, or the note that says what is wrong with it.
func words(r *http.Request) (text, note string) {
	text = strings.TrimSpace(strings.ReplaceAll(r.PostFormValue("text"), "\r\n", "\n"))
	switch {
	case text == "":
		return "", "empty"
	case utf8.RuneCountInString(text) > maxTicket:
		return "", "long"
	}
	return text, ""
}

// slash is the desk's command, and shortcut its entry in the menu of a
// message, as the app's manifest names them.
const (
	slash    = "/heft"
	shortcut = "work_out"
)

// say hangs up a ticket, or adds to one. The tick for the desk puts its
// mention in front, which a message in a channel needs; what a person typed
// is escaped, so that it pings nobody but the crew named in it.
func (p *page) say(r *http.Request, a act) (string, string) {
	box := "write"
	thread := r.PostFormValue("thread")
	if thread != "" && a.has(thread) {
		box = "r" + anchor(thread)
	}
	text, note := words(r)
	if note != "" {
		return box, note
	}
	if r.PostFormValue("alone") != "" && !strings.HasPrefix(text, "/") {
		text = slash + " " + text
	}
	if command, rest, ok := command(text); ok {
		p.did(a, step{asked: rest})
		if _, err := p.space.Command(a.channel, a.user, command, p.space.Typed(rest)); err != nil {
			return box, "failed"
		}
		return "tickets", ""
	}
	text = p.space.Typed(text)
	if r.PostFormValue("desk") != "" && a.place.Job != "direct" && !strings.Contains(text, p.space.Mention()) {
		text = p.space.Mention() + " " + text
	}
	var in []standin.SayOption
	if thread != "" {
		if !a.has(thread) {
			return box, "gone"
		}
		in = append(in, standin.InThread(thread))
	}
	return anchor(p.space.Say(a.channel, a.user, text, in...).TS), ""
}

// command splits a text that begins with a slash and a word.
func command(text string) (name, rest string, ok bool) {
	if len(text) < 2 || text[0] != '/' || text[1] < 'a' || text[1] > 'z' {
		return "", "", false
	}
	name, rest, _ = strings.Cut(text, " ")
	return name, strings.TrimSpace(rest), true
}

// has says whether a ticket hangs in the channel.
func (a act) has(ts string) bool {
	for _, m := range a.snap.Messages[a.channel] {
		if m.TS == ts && m.For == "" && m.Thread() == ts {
			return true
		}
	}
	return false
}

// correct rewrites what the role said.
func (p *page) correct(r *http.Request, a act) (string, string) {
	text, note := words(r)
	if note != "" {
		return "", note
	}
	for _, m := range a.snap.Messages[a.channel] {
		if m.TS != r.PostFormValue("ts") || m.User != a.user {
			continue
		}
		text = p.space.Typed(text)
		if a.calls(m) && a.place.Job != "direct" {
			text = p.space.Mention() + " " + text
		}
		p.space.Edit(m, text)
		return anchor(m.TS), ""
	}
	return "", "gone"
}

// press uses a part of a message or of the front sheet.
func (p *page) press(r *http.Request, a act) (string, string) {
	ts := r.PostFormValue("ts")
	p.did(a, step{ts: ts})
	_, err := p.space.Press(standin.Press{
		User: a.user, Channel: r.PostFormValue("channel"), TS: ts, View: r.PostFormValue("view"),
		Block: r.PostFormValue("block"), Action: r.PostFormValue("action"), Options: r.PostForm["option"],
	})
	at := ""
	if ts != "" {
		at = anchor(ts)
	}
	if err != nil {
		return at, "failed"
	}
	return at, ""
}

// workOut chooses the desk's entry in the menu of a message.
func (p *page) workOut(r *http.Request, a act) (string, string) {
	for _, m := range a.snap.Messages[a.channel] {
		if m.TS != r.PostFormValue("ts") || m.For != "" {
			continue
		}
		p.did(a, step{ts: m.TS})
		if _, err := p.space.Shortcut(m, a.user, shortcut); err != nil {
			return anchor(m.TS), "failed"
		}
		return anchor(m.TS), ""
	}
	return "", "gone"
}

// restart switches the desk off and on.
func (p *page) restart(r *http.Request, _ act) (string, string) {
	if err := p.desk.Restart(r.Context()); err != nil {
		return "switch", "failed"
	}
	return "switch", "restarted"
}

// submit sends the form on the role's screen.
func (p *page) submit(r *http.Request, a act) (string, string) {
	entered := map[string]map[string]string{}
	for name, values := range r.PostForm {
		block, action, ok := strings.Cut(name, "/")
		if !ok {
			continue
		}
		if entered[block] == nil {
			entered[block] = map[string]string{}
		}
		entered[block][action] = values[0]
	}
	if _, err := p.space.Submit(a.user, entered); err != nil {
		return a.opened(), "failed"
	}
	return a.opened(), ""
}

// opened is where the button is that brought up the form.
func (a act) opened() string {
	if s, ok := a.latest(); ok && s.ts != "" {
		return anchor(s.ts)
	}
	return ""
}

// dismiss puts the form on the role's screen away.
func (p *page) dismiss(_ *http.Request, a act) (string, string) {
	p.space.Dismiss(a.user)
	return a.opened(), ""
}

// front looks at the front sheet, which the desk is told of.
func (p *page) front(_ *http.Request, a act) (string, string) {
	a.place.Front = true
	p.space.OpenHome(a.user)
	return "", ""
}

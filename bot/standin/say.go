package standin

import (
	"fmt"
	"slices"
	"time"
)

// SayOption changes how a message is said.
type SayOption func(*said)

type said struct {
	message Message
	silent  bool
}

// InThread says it as a reply in the thread of that stamp.
func InThread(ts string) SayOption { return func(s *said) { s.message.ThreadTS = ts } }

// ByBot says it as some other bot.
func ByBot(id string) SayOption { return func(s *said) { s.message.BotID = id } }

// Subtype says it as a message of a special kind, such as channel_join.
func Subtype(kind string) SayOption { return func(s *said) { s.message.Subtype = kind } }

// Undelivered holds the events back, as when every first try is lost:
// Redeliver sends them when the test says so.
func Undelivered() SayOption { return func(s *said) { s.silent = true } }

// Say puts a message into a channel and tells the app of it, as far as the
// app subscribed. The text is as the platform keeps it; see Typed.
func (w *Workspace) Say(channel, user, text string, opts ...SayOption) Message {
	m, send := w.record(channel, user, text, nil, opts)
	send()
	return m
}

// record keeps a message that a person says, and returns what tells the app.
// A reply to it goes to the channel, where there is one.
func (w *Workspace) record(channel, user, text string, reply chan Message, opts []SayOption) (Message, func()) {
	s := said{message: Message{Channel: channel, User: user, Text: text}}
	for _, o := range opts {
		o(&s)
	}
	w.mu.Lock()
	defer w.mu.Unlock()
	m := s.message
	m.TS = w.now()
	m.At = time.Now()
	if reply != nil {
		w.replies[thread{m.Channel, m.Thread()}] = reply
	}
	events := w.tell(&m)
	if s.silent {
		return m, func() {}
	}
	return m, func() { w.deliverAll(events) }
}

// tell makes the events that speak of a new message, and keeps it. The lock
// is held.
//
// A mention makes an app_mention in a channel and none in a direct message;
// an app hears of a channel only as a member (documented:
// app_mention, message.im, message.channels). It hears of its own posts too.
func (w *Workspace) tell(m *Message) []*event {
	ch := w.channels[m.Channel]
	in := m.inner()
	in.Channel, in.Team, in.EventTS = m.Channel, w.opts.Team, m.TS
	var events []*event
	switch {
	case ch.Absent || !w.installed:
	case ch.direct():
		if in.ChannelType = "im"; w.opts.sends("message.im") {
			events = append(events, w.newEvent(in))
		}
	default:
		if in.ChannelType = "channel"; w.opts.sends("message.channels") {
			events = append(events, w.newEvent(in))
		}
		if in.ChannelType = ""; w.mentioned(m.Text) && w.opts.sends("app_mention") {
			in.Type = "app_mention"
			events = append(events, w.newEvent(in))
		}
	}
	for _, e := range events {
		m.Events = append(m.Events, e.id)
	}
	w.messages[m.Channel] = append(w.messages[m.Channel], m)
	w.known[thread{m.Channel, m.TS}] = true
	w.show()
	return events
}

// Edit changes a message, as its author would.
func (w *Workspace) Edit(m Message, text string) Message {
	return w.change(m, text, "message_changed")
}

// Delete takes a message back, as its author would.
func (w *Workspace) Delete(m Message) Message {
	return w.change(m, "", "message_deleted")
}

// change rewrites a message or takes it away, and tells the app.
func (w *Workspace) change(m Message, text, subtype string) Message {
	w.mu.Lock()
	kept := w.find(m.Channel, m.TS)
	if kept == nil {
		w.mu.Unlock()
		panic("standin: no message " + m.TS + " in " + m.Channel) // a fault of the test
	}
	before := kept.inner()
	after := before
	after.Text, after.Edited = text, &edit{User: m.User, TS: w.now()}
	kept.Text, kept.Edited, kept.Events = text, true, nil
	events := w.tellChange(m.Channel, subtype, before, after)
	for _, e := range events {
		kept.Events = append(kept.Events, e.id)
	}
	m = *kept
	if subtype == "message_deleted" {
		w.messages[m.Channel] = slices.DeleteFunc(w.messages[m.Channel], func(o *Message) bool { return o == kept })
		delete(w.known, thread{m.Channel, m.TS})
	}
	w.show()
	w.mu.Unlock()
	w.deliverAll(events)
	return m
}

// tellChange makes the events that speak of a change: message_changed or
// message_deleted where the app reads the messages (documented: the pages of
// the two), and an app_mention marked as edited where a person's new text in
// a channel calls the bot (from memory). The lock is held.
func (w *Workspace) tellChange(channel, subtype string, before, after inner) []*event {
	ch := w.channels[channel]
	kind := "channel"
	if ch.direct() {
		kind = "im"
	}
	var events []*event
	if ch.Absent || !w.installed {
		return nil
	}
	if w.opts.sends(map[string]string{"im": "message.im", "channel": "message.channels"}[kind]) {
		out := inner{
			Type: "message", Subtype: subtype, Channel: channel, ChannelType: kind,
			TS: after.Edited.TS, EventTS: after.Edited.TS, Previous: &before,
		}
		if subtype == "message_deleted" {
			out.DeletedTS = before.TS
		} else {
			out.Message = &after
		}
		events = append(events, w.newEvent(out))
	}
	if kind == "channel" && subtype == "message_changed" && after.BotID == "" && w.mentioned(after.Text) && w.opts.sends("app_mention") {
		after.Type, after.Channel, after.EventTS = "app_mention", channel, after.Edited.TS
		events = append(events, w.newEvent(after))
	}
	return events
}

// Redeliver tells the app of an event once more, in a new envelope, in
// whatever order the caller chooses (documented: Events API,
// retries: the reasons are timeouts and errors of several kinds).
func (p *platform) Redeliver(eventID string, attempt int, reason string) error {
	p.mu.Lock()
	e := p.events[eventID]
	p.mu.Unlock()
	if e == nil {
		return fmt.Errorf("no event %q", eventID)
	}
	p.deliver(retry{event: e, attempt: attempt, reason: reason})
	return nil
}

// Send tells the app of an event of any shape and returns its id.
func (w *Workspace) Send(innerEvent map[string]any) string {
	w.mu.Lock()
	e := w.newEvent(innerEvent)
	w.mu.Unlock()
	w.deliver(retry{event: e})
	return e.id
}

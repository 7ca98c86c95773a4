package standin

import (
	"net/url"
	"slices"
	"strings"
	"time"
	"unicode/utf8"
)

// Longest texts, in characters.
const (
	maxText   = 40_000 // documented: chat.postMessage, longer ones are cut off
	maxUpdate = 4_000  // chat.update, from memory: longer ones are refused
)

// room finds the channel of a call (documented: chat.postMessage, errors; a
// user's id stands for the direct message with them). The lock is held.
func (w *Workspace) room(id string) (Channel, answer) {
	c, ok := w.channels[id]
	if !ok && strings.HasPrefix(id, "U") {
		for _, name := range w.order {
			if other := w.channels[name]; other.direct() && slices.Contains(other.Members, id) {
				c, ok = other, true
			}
		}
	}
	switch {
	case !ok:
		return c, failed("channel_not_found")
	case c.Absent:
		return c, failed("not_in_channel")
	}
	return c, nil
}

// content reads what a message is to say. Text may be missing only where
// there are blocks, and is then missing from the phone's notification too
// (documented: chat.postMessage, text and blocks).
func (w *Workspace) content(args url.Values) (Message, answer) {
	blocks, refused := w.blocks(args.Get("blocks"), messageBlocks)
	if refused == nil && args.Get("text") == "" && len(blocks) == 0 {
		refused = failed("no_text")
	}
	return Message{
		User: w.botUser, BotID: w.botID, Text: cut(args.Get("text"), maxText), Blocks: blocks,
		ThreadTS: args.Get("thread_ts"), At: time.Now(),
		Plain: !on(args, "mrkdwn", true), Parse: args.Get("parse"), LinkNames: on(args, "link_names", false),
		Unfurls: on(args, "unfurl_links", false) || on(args, "unfurl_media", true),
	}, refused
}

// postMessage puts the bot's words into a channel.
func (w *Workspace) postMessage(args url.Values) answer {
	m, bad := w.content(args)
	w.mu.Lock()
	defer w.mu.Unlock()
	c, refused := w.room(args.Get("channel"))
	if refused = first(refused, bad); refused != nil {
		return refused
	}
	m.Channel = c.ID
	w.post(&m)
	return answer{"ok": true, "channel": m.Channel, "ts": m.TS, "message": m.wire(w)}
}

// post keeps what the bot says and tells the app of it. The lock is held.
func (w *Workspace) post(m *Message) {
	// The parent was deleted: the reply is posted outside any thread (from
	// memory).
	if !w.known[thread{m.Channel, m.ThreadTS}] {
		m.ThreadTS = ""
	}
	m.TS = w.now()
	events := w.tell(m)
	key := thread{m.Channel, m.ThreadTS}
	if waits, ok := w.replies[key]; ok {
		delete(w.replies, key)
		waits <- *m // has room for one
	}
	// Told in the background: the call's answer does not wait for the event.
	if len(events) > 0 {
		w.background(func() { w.deliverAll(events) })
	}
}

// postEphemeral shows the bot's words to one person (documented:
// chat.postEphemeral).
func (w *Workspace) postEphemeral(args url.Values) answer {
	m, bad := w.content(args)
	w.mu.Lock()
	defer w.mu.Unlock()
	c, refused := w.room(args.Get("channel"))
	if refused == nil && !c.has(args.Get("user")) {
		refused = failed("user_not_in_channel")
	}
	if args.Get("user") == "" {
		refused = failed("missing_argument")
	}
	if refused = first(refused, bad); refused != nil {
		return refused
	}
	m.Channel, m.For = c.ID, args.Get("user")
	w.whisper(&m)
	return answer{"ok": true, "message_ts": m.TS}
}

// whisper keeps a message for one person: nobody is told of it, and no call
// finds it again (documented: chat.postEphemeral). The lock is held.
func (w *Workspace) whisper(m *Message) {
	m.TS = w.now()
	w.messages[m.Channel] = append(w.messages[m.Channel], m)
	w.show()
}

// own finds a message that the bot posted for all. The lock is held.
func (w *Workspace) own(channel, ts, cannot string) (*Message, answer) {
	m := w.find(channel, ts)
	switch {
	case m == nil || m.For != "":
		return nil, failed("message_not_found")
	case m.BotID != w.botID:
		return nil, failed(cannot)
	}
	return m, nil
}

// find looks a message up. The lock is held.
func (w *Workspace) find(channel, ts string) *Message {
	list := w.messages[channel]
	i := slices.IndexFunc(list, func(m *Message) bool { return m.TS == ts })
	if i < 0 {
		return nil
	}
	return list[i]
}

// update rewrites what the bot posted. New text without blocks takes the
// blocks away; blocks leave no mark of an edit (documented: chat.update).
func (w *Workspace) update(args url.Values) answer {
	with, bad := w.content(args)
	w.mu.Lock()
	defer w.mu.Unlock()
	c, refused := w.room(args.Get("channel"))
	if refused = first(refused, bad); refused != nil {
		return refused
	}
	if utf8.RuneCountInString(args.Get("text")) > maxUpdate {
		return failed("msg_too_long")
	}
	m, refused := w.own(c.ID, args.Get("ts"), "cant_update_message")
	if refused != nil {
		return refused
	}
	w.rewrite(m, with)
	return answer{"ok": true, "channel": c.ID, "ts": m.TS, "text": m.Text, "message": m.wire(w)}
}

// rewrite gives a message new content and tells the app. The lock is held.
func (w *Workspace) rewrite(m *Message, with Message) {
	before := m.inner()
	m.Text, m.Blocks, m.Edited = with.Text, with.Blocks, len(with.Blocks) == 0
	after := m.inner()
	after.Edited = &edit{User: m.User, TS: w.now()}
	w.show()
	if m.For != "" {
		return
	}
	if events := w.tellChange(m.Channel, "message_changed", before, after); len(events) > 0 {
		w.background(func() { w.deliverAll(events) })
	}
}

// deleteCall takes back what the bot posted (documented: chat.delete).
func (w *Workspace) deleteCall(args url.Values) answer {
	w.mu.Lock()
	defer w.mu.Unlock()
	c, refused := w.room(args.Get("channel"))
	if refused != nil {
		return refused
	}
	m, refused := w.own(c.ID, args.Get("ts"), "cant_delete_message")
	if refused != nil {
		return refused
	}
	w.remove(m)
	return answer{"ok": true, "channel": c.ID, "ts": m.TS}
}

// remove takes a message away and tells the app. The lock is held.
func (w *Workspace) remove(m *Message) {
	before := m.inner()
	after := before
	after.Edited = &edit{User: m.User, TS: w.now()}
	w.messages[m.Channel] = slices.DeleteFunc(w.messages[m.Channel], func(o *Message) bool { return o == m })
	delete(w.known, thread{m.Channel, m.TS})
	w.show()
	if m.For != "" {
		return
	}
	if events := w.tellChange(m.Channel, "message_deleted", before, after); len(events) > 0 {
		w.background(func() { w.deliverAll(events) })
	}
}

// permalink is the address of a message (documented: chat.getPermalink).
func (w *Workspace) permalink(args url.Values) answer {
	w.mu.Lock()
	defer w.mu.Unlock()
	c, ok := w.channels[args.Get("channel")]
	m := w.find(c.ID, args.Get("message_ts"))
	switch {
	case !ok:
		return failed("channel_not_found")
	case m == nil || m.For != "":
		return failed("message_not_found")
	}
	link := "http://" + w.addr + "/archives/" + c.ID + "/p" + strings.ReplaceAll(m.TS, ".", "")
	if m.ThreadTS != "" {
		link += "?thread_ts=" + m.ThreadTS + "&cid=" + c.ID
	}
	return answer{"ok": true, "channel": c.ID, "permalink": link}
}

func cut(text string, most int) string {
	if utf8.RuneCountInString(text) <= most {
		return text
	}
	return string([]rune(text)[:most])
}

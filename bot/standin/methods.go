package standin

import (
	"fmt"
	"net/url"
	"strconv"
	"time"
	"unicode/utf8"
)

// Longest texts, in characters.
const (
	maxText   = 40_000 // platform documentation, chat.postMessage: longer ones are cut off
	maxUpdate = 4_000  // chat.update, from memory: longer ones are refused
)

func (w *Workspace) authTest(url.Values) answer {
	return answer{
		"ok": true, "url": "http://" + w.addr + "/", "team": "crew", "user": w.opts.BotName,
		"team_id": TeamID, "user_id": BotUser, "bot_id": BotID, "is_enterprise_install": false,
	}
}

// openConnection hands out an address that serves once (platform
// documentation, apps.connections.open and Socket Mode).
func (w *Workspace) openConnection(url.Values) answer {
	w.mu.Lock()
	defer w.mu.Unlock()
	ticket := fmt.Sprintf("ticket-%d", w.next())
	w.tickets[ticket] = true
	return answer{"ok": true, "url": "ws://" + w.addr + "/link/?ticket=" + ticket + "&app_id=" + AppID}
}

// room finds the channel of a call (platform documentation,
// chat.postMessage, errors).
func (w *Workspace) room(args url.Values) (Channel, answer) {
	c, ok := w.channels[args.Get("channel")]
	switch {
	case !ok:
		return c, failed("channel_not_found")
	case c.Absent:
		return c, failed("not_in_channel")
	case args.Get("text") == "":
		return c, failed("no_text")
	}
	return c, nil
}

// on reads a switch of a call; left out, it has the page's default.
func on(args url.Values, name string, byDefault bool) bool {
	if v, err := strconv.ParseBool(args.Get(name)); err == nil {
		return v
	}
	return byDefault
}

// postMessage puts the bot's words into a channel.
func (w *Workspace) postMessage(args url.Values) answer {
	m, refused := w.post(args)
	if refused != nil {
		return refused
	}
	return answer{"ok": true, "channel": m.Channel, "ts": m.TS, "message": map[string]any{
		"type": "message", "user": m.User, "bot_id": m.BotID, "app_id": AppID,
		"text": m.Text, "ts": m.TS, "thread_ts": m.ThreadTS, "team": TeamID,
	}}
}

func (w *Workspace) post(args url.Values) (Message, answer) {
	w.mu.Lock()
	defer w.mu.Unlock()
	c, refused := w.room(args)
	if refused != nil {
		return Message{}, refused
	}
	m := Message{
		Channel: c.ID, User: BotUser, BotID: BotID, Text: cut(args.Get("text"), maxText),
		ThreadTS: args.Get("thread_ts"), At: time.Now(),
		Plain: !on(args, "mrkdwn", true), Parse: args.Get("parse"), LinkNames: on(args, "link_names", false),
		Unfurls: on(args, "unfurl_links", false) || on(args, "unfurl_media", true),
	}
	// The parent was deleted: the reply is posted outside any thread (from
	// memory).
	if !w.known[thread{c.ID, m.ThreadTS}] {
		m.ThreadTS = ""
	}
	m.TS = w.now()
	events := w.tell(&m)
	key := thread{m.Channel, m.ThreadTS}
	if waits, ok := w.replies[key]; ok {
		delete(w.replies, key)
		waits <- m // has room for one
	}
	// Told in the background: the call's answer does not wait for the event.
	if len(events) > 0 && !w.closed {
		w.work.Go(func() { w.deliverAll(events) })
	}
	w.bump()
	return m, nil
}

// update rewrites what the bot posted (platform documentation, chat.update).
func (w *Workspace) update(args url.Values) answer {
	w.mu.Lock()
	defer w.mu.Unlock()
	c, refused := w.room(args)
	if refused != nil {
		return refused
	}
	text, ts := args.Get("text"), args.Get("ts")
	if utf8.RuneCountInString(text) > maxUpdate {
		return failed("msg_too_long")
	}
	for _, m := range w.messages[c.ID] {
		switch {
		case m.TS != ts:
		case m.BotID != BotID:
			return failed("cant_update_message")
		default:
			m.Text, m.Edited = text, true
			w.bump()
			return answer{"ok": true, "channel": c.ID, "ts": ts, "text": text}
		}
	}
	return failed("message_not_found")
}

func cut(text string, most int) string {
	if utf8.RuneCountInString(text) <= most {
		return text
	}
	return string([]rune(text)[:most])
}

package standin_test

import (
	"strings"
	"testing"

	"heft/bot/standin"
)

// Platform documentation: chat.postEphemeral.
func TestEphemeral(t *testing.T) {
	w := start(t, standin.Options{Channels: []standin.Channel{
		{ID: standin.Yard, Name: "yard", Members: []string{crew}}, {ID: standin.Away, Name: "away", Absent: true},
	}})
	for _, c := range []struct{ channel, user, text, want string }{
		{standin.Yard, "U0CREW0002", "x", "user_not_in_channel"},
		{standin.Yard, "", "x", "missing_argument"},
		{standin.Away, crew, "x", "not_in_channel"},
		{"C0NOWHERE1", crew, "x", "channel_not_found"},
		{standin.Yard, crew, "", "no_text"},
	} {
		if a := form(t, w, "chat.postEphemeral", "channel", c.channel, "user", c.user, "text", c.text); a["error"] != c.want {
			t.Errorf("%+v: %v", c, a)
		}
	}
	a := form(t, w, "chat.postEphemeral", "channel", standin.Yard, "user", crew, "text", "for you")
	ts, _ := a["message_ts"].(string)
	if got := w.Messages(standin.Yard); len(got) != 1 || got[0].For != crew || got[0].TS != ts {
		t.Fatalf("%v, kept %+v", a, got)
	}
	for method, want := range map[string]string{"chat.update": "message_not_found", "chat.delete": "message_not_found"} {
		if a := form(t, w, method, "channel", standin.Yard, "ts", ts, "text", "x"); a["error"] != want {
			t.Errorf("%s of a private message: %v", method, a)
		}
	}
}

// Platform documentation, chat.update: text alone takes the blocks away, and
// blocks leave no mark of an edit.
func TestUpdateOfBlocks(t *testing.T) {
	w := start(t, standin.Options{})
	ts, _ := form(t, w, "chat.postMessage", "channel", standin.Yard, "text", "x", "blocks", "["+section("one")+"]")["ts"].(string)
	form(t, w, "chat.update", "channel", standin.Yard, "ts", ts, "text", "x", "blocks", "["+section("two")+"]")
	if m := w.Messages(standin.Yard)[0]; m.Edited || m.Blocks[0].Text.Text != "two" {
		t.Errorf("new blocks: %+v", m)
	}
	form(t, w, "chat.update", "channel", standin.Yard, "ts", ts, "text", "three")
	if m := w.Messages(standin.Yard)[0]; !m.Edited || len(m.Blocks) != 0 || m.Text != "three" {
		t.Errorf("text alone: %+v", m)
	}
	if a := form(t, w, "chat.update", "channel", standin.Yard, "ts", ts, "blocks", "["+section("")+"]"); a["error"] != "invalid_blocks" {
		t.Errorf("bad blocks: %v", a)
	}
}

// Platform documentation: chat.delete, chat.getPermalink.
func TestDeleteAndPermalink(t *testing.T) {
	w := start(t, standin.Options{})
	theirs := w.Say(standin.Yard, crew, "mine")
	a := form(t, w, "chat.postMessage", "channel", standin.Yard, "text", "one", "thread_ts", theirs.TS)
	ours, _ := a["ts"].(string)
	link, _ := form(t, w, "chat.getPermalink", "channel", standin.Yard, "message_ts", ours)["permalink"].(string)
	if !strings.Contains(link, standin.Yard+"/p"+strings.ReplaceAll(ours, ".", "")) || !strings.Contains(link, "thread_ts="+theirs.TS) {
		t.Errorf("permalink %q", link)
	}
	if got := get(t, w, "chat.getPermalink?channel="+standin.Yard+"&message_ts="+ours); got["permalink"] != link {
		t.Errorf("asked by a query: %v", got)
	}
	for _, c := range []struct{ method, channel, ts, want string }{
		{"chat.delete", standin.Yard, theirs.TS, "cant_delete_message"},
		{"chat.delete", standin.Yard, "1.000001", "message_not_found"},
		{"chat.delete", "C0NOWHERE1", ours, "channel_not_found"},
		{"chat.getPermalink", standin.Yard, "1.000001", "message_not_found"},
		{"chat.getPermalink", "C0NOWHERE1", ours, "channel_not_found"},
	} {
		if a := form(t, w, c.method, "channel", c.channel, "ts", c.ts, "message_ts", c.ts); a["error"] != c.want {
			t.Errorf("%+v: %v", c, a)
		}
	}
	if a := form(t, w, "chat.delete", "channel", standin.Yard, "ts", ours); a["ok"] != true || len(w.Messages(standin.Yard)) != 1 {
		t.Errorf("deletion: %v, left %+v", a, w.Messages(standin.Yard))
	}
}

// Platform documentation: reactions.add, reactions.remove.
func TestReactions(t *testing.T) {
	w := start(t, standin.Options{Scopes: []string{"reactions:write"}})
	m := w.Say(standin.Yard, crew, "14 in")
	react := func(verb, name, ts string) any {
		return form(t, w, "reactions."+verb, "channel", standin.Yard, "name", name, "timestamp", ts)["error"]
	}
	for _, c := range []struct {
		verb, name, ts string
		want           any
	}{
		{"add", "no name at all", m.TS, "invalid_name"},
		{"add", "eyes", "", "no_item_specified"},
		{"add", "eyes", "1.000001", "message_not_found"},
		{"remove", "eyes", m.TS, "no_reaction"},
		{"add", "eyes", m.TS, nil},
		{"add", "eyes", m.TS, "already_reacted"},
		{"add", "hourglass", m.TS, nil},
		{"remove", "eyes", m.TS, nil},
	} {
		if got := react(c.verb, c.name, c.ts); got != c.want {
			t.Errorf("%s %q: %v, want %v", c.verb, c.name, got, c.want)
		}
	}
	if got := w.Messages(standin.Yard)[0].Reactions; len(got) != 1 || got[0].Name != "hourglass" || got[0].Users[0] != standin.BotUser {
		t.Errorf("left %+v", got)
	}
	without := start(t, standin.Options{})
	a := form(t, without, "reactions.add", "channel", standin.Yard, "name", "eyes", "timestamp", m.TS)
	if a["error"] != "missing_scope" || a["needed"] != "reactions:write" || !strings.Contains(a["provided"].(string), "chat:write") {
		t.Errorf("without the scope: %v", a)
	}
}

// Platform documentation, chat.postMessage: a user's id stands for the
// direct message with them.
func TestPostToAPerson(t *testing.T) {
	w := start(t, standin.Options{Channels: []standin.Channel{{ID: "D0BO000001", Name: "bo", Members: []string{"U0CREW0002"}}}})
	if a := form(t, w, "chat.postMessage", "channel", "U0CREW0002", "text", "x"); a["channel"] != "D0BO000001" {
		t.Errorf("answered %v", a)
	}
	if a := form(t, w, "chat.postMessage", "channel", crew, "text", "x"); a["error"] != "channel_not_found" {
		t.Errorf("somebody without one: %v", a)
	}
}

// Platform documentation: users.info, conversations.info and members.
func TestLookups(t *testing.T) {
	w := start(t, standin.Options{Scopes: []string{"users:read", "channels:read", "im:read"}})
	a := form(t, w, "users.info", "user", crew, "include_locale", "true")
	if at(a, "user.tz") != "America/Denver" || at(a, "user.name") != "ana" || at(a, "user.locale") != "en-US" {
		t.Errorf("a person: %v", a)
	}
	// Denver is seven hours behind UTC, six in summer.
	if off := at(a, "user.tz_offset"); off != -25200.0 && off != -21600.0 {
		t.Errorf("offset %v", off)
	}
	if a := form(t, w, "users.info", "user", standin.BotUser); at(a, "user.is_bot") != true {
		t.Errorf("the bot: %v", a)
	}
	if a := form(t, w, "conversations.info", "channel", standin.Direct); at(a, "channel.is_im") != true {
		t.Errorf("direct: %v", a)
	}
	if a := form(t, w, "conversations.info", "channel", standin.Away); at(a, "channel.is_member") != false || at(a, "channel.name") != "away" {
		t.Errorf("away: %v", a)
	}
	for _, c := range []struct{ method, name, value, want string }{
		{"users.info", "user", "U0NOBODY01", "user_not_found"},
		{"conversations.info", "channel", "C0NOWHERE1", "channel_not_found"},
		{"conversations.members", "channel", "C0NOWHERE1", "channel_not_found"},
	} {
		if a := form(t, w, c.method, c.name, c.value); a["error"] != c.want {
			t.Errorf("%+v: %v", c, a)
		}
	}
	bare := start(t, standin.Options{})
	for channel, want := range map[string]string{standin.Yard: "channels:read", standin.Direct: "im:read"} {
		if a := form(t, bare, "conversations.info", "channel", channel); a["error"] != "missing_scope" || a["needed"] != want {
			t.Errorf("%s without the scope: %v", channel, a)
		}
	}
}

// Platform documentation: conversations.members, pagination.
func TestMembers(t *testing.T) {
	w := start(t, standin.Options{Scopes: []string{"channels:read"}})
	one := form(t, w, "conversations.members", "channel", standin.Yard, "limit", "2")
	rest := form(t, w, "conversations.members", "channel", standin.Yard, "limit", "2", "cursor", at(one, "response_metadata.next_cursor").(string))
	if at(one, "members.0") != crew || at(rest, "members.0") != standin.BotUser || at(rest, "response_metadata.next_cursor") != "" {
		t.Errorf("members: %v, %v", one, rest)
	}
	for _, bad := range []string{"x", "0", "9"} {
		if a := form(t, w, "conversations.members", "channel", standin.Yard, "cursor", bad); a["error"] != "invalid_cursor" {
			t.Errorf("cursor %q: %v", bad, a)
		}
	}
}

// Platform documentation: conversations.replies; fifteen at a time and one
// call a minute for newly distributed apps.
func TestReplies(t *testing.T) {
	o := standin.Options{Scopes: []string{"channels:history", "chat:write"}}
	w := start(t, o)
	top := w.Say(standin.Yard, crew, "top")
	for range 20 {
		w.Say(standin.Yard, crew, "reply", standin.InThread(top.TS))
	}
	form(t, w, "chat.postEphemeral", "channel", standin.Yard, "user", crew, "text", "private", "thread_ts", top.TS)
	a := form(t, w, "conversations.replies", "channel", standin.Yard, "ts", top.TS)
	if list, _ := a["messages"].([]any); len(list) != 21 || at(list, "0.ts") != top.TS || a["has_more"] != false {
		t.Errorf("the thread: %v", a)
	}
	if a := form(t, w, "conversations.replies", "channel", standin.Yard, "ts", "1.000001"); a["error"] != "thread_not_found" {
		t.Errorf("no such thread: %v", a)
	}
	var tick clock
	o.RepliesEvery, o.Now = 60e9, tick.now
	scarce := start(t, o)
	top = scarce.Say(standin.Yard, crew, "top")
	for range 20 {
		scarce.Say(standin.Yard, crew, "reply", standin.InThread(top.TS))
	}
	read := func() map[string]any {
		return form(t, scarce, "conversations.replies", "channel", standin.Yard, "ts", top.TS)
	}
	if a := read(); len(a["messages"].([]any)) != 15 || a["has_more"] != true {
		t.Errorf("scarce: %v", a)
	}
	if a := read(); a["error"] != "ratelimited" {
		t.Errorf("at once again: %v", a)
	}
	tick.pass(61e9)
	if a := read(); a["ok"] != true {
		t.Errorf("a minute later: %v", a)
	}
}

package standin_test

import (
	"net/url"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"heft/bot/standin"
)

const formType = "application/x-www-form-urlencoded"

// The codes are those of the platform documentation: Web API, errors, and
// the page of each method.
func TestErrors(t *testing.T) {
	w := start(t, standin.Options{Scopes: []string{"app_mentions:read"}})
	stranger := "xoxb-" + "1-2-somebodyElse"
	for _, c := range []struct{ name, method, token, want string }{
		{"unknown method", "chat.shout", w.BotToken(), "unknown_method"},
		{"no token", "auth.test", "", "not_authed"},
		{"a stranger's token", "auth.test", stranger, "invalid_auth"},
		{"app token where the bot's belongs", "auth.test", w.AppToken(), "not_allowed_token_type"},
		{"bot token where the app's belongs", "apps.connections.open", w.BotToken(), "not_allowed_token_type"},
		{"scope not granted", "chat.postMessage", w.BotToken(), "missing_scope"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, _, a := post(t, w, c.method, c.token, formType, "")
			if a["ok"] != false || a["error"] != c.want {
				t.Errorf("answered %v, want %s", a, c.want)
			}
		})
	}
}

func TestTokenTravelsInHeaderOrForm(t *testing.T) {
	w := start(t, standin.Options{})
	inForm := url.Values{"token": {w.BotToken()}}.Encode()
	if _, _, a := post(t, w, "auth.test", "", formType, inForm); a["user_id"] != standin.BotUser {
		t.Errorf("token in a form: %v", a)
	}
	if _, _, a := post(t, w, "auth.test", w.BotToken(), "application/json; charset=utf-8", "{}"); a["ok"] != true {
		t.Errorf("token in the header of a JSON call: %v", a)
	}
	inJSON := `{"token":"` + w.BotToken() + `"}`
	if _, _, a := post(t, w, "auth.test", "", "application/json", inJSON); a["error"] != "not_authed" {
		t.Errorf("token in a JSON body: %v", a)
	}
	if _, _, a := post(t, w, "auth.test", w.BotToken(), "application/json", "{"); a["error"] != "invalid_arguments" {
		t.Errorf("broken JSON: %v", a)
	}
}

func TestPostMessage(t *testing.T) {
	w := start(t, standin.Options{})
	for _, c := range []struct{ channel, text, want string }{
		{"C0NOWHERE1", "hello", "channel_not_found"},
		{standin.Away, "hello", "not_in_channel"},
		{standin.Yard, "", "no_text"},
	} {
		if a := form(t, w, "chat.postMessage", "channel", c.channel, "text", c.text); a["error"] != c.want {
			t.Errorf("%q in %s: %v, want %s", c.text, c.channel, a, c.want)
		}
	}
	asked := w.Say(standin.Yard, "U0CREW0001", "anyone?")
	_, _, a := post(t, w, "chat.postMessage", w.BotToken(), "application/json",
		`{"channel":"`+standin.Yard+`","text":"here","thread_ts":"`+asked.TS+`","mrkdwn":false}`)
	got := w.Thread(standin.Yard, asked.TS)
	if a["ok"] != true || len(got) != 2 || got[1].Text != "here" || !got[1].Plain || got[1].TS != a["ts"] {
		t.Errorf("answered %v, thread %+v", a, got)
	}
	form(t, w, "chat.postMessage", "channel", standin.Yard, "text", "late", "thread_ts", "1.000001")
	if all := w.Messages(standin.Yard); all[len(all)-1].ThreadTS != "" {
		t.Error("a reply to a message that is gone must not be in its thread")
	}
}

// Platform documentation, chat.postMessage: 40,000 characters, the rest cut.
func TestLongTextIsCut(t *testing.T) {
	w := start(t, standin.Options{})
	form(t, w, "chat.postMessage", "channel", standin.Yard, "text", strings.Repeat("é", 40_001))
	if n := utf8.RuneCountInString(w.Messages(standin.Yard)[0].Text); n != 40_000 {
		t.Errorf("%d characters kept", n)
	}
}

func TestUpdate(t *testing.T) {
	w := start(t, standin.Options{})
	theirs := w.Say(standin.Yard, "U0CREW0001", "mine").TS
	ours, _ := form(t, w, "chat.postMessage", "channel", standin.Yard, "text", "one")["ts"].(string)
	for _, c := range []struct{ ts, text, want string }{
		{theirs, "two", "cant_update_message"},
		{"1.000001", "two", "message_not_found"},
		{ours, strings.Repeat("x", 4_001), "msg_too_long"}, // from memory
	} {
		if a := form(t, w, "chat.update", "channel", standin.Yard, "ts", c.ts, "text", c.text); a["error"] != c.want {
			t.Errorf("update of %s: %v, want %s", c.ts, a, c.want)
		}
	}
	form(t, w, "chat.update", "channel", standin.Yard, "ts", ours, "text", "two")
	if m := w.Messages(standin.Yard)[1]; m.Text != "two" || !m.Edited {
		t.Errorf("after the update: %+v", m)
	}
}

func TestFaultsRunOut(t *testing.T) {
	w := start(t, standin.Options{})
	w.Fail(standin.Fault{Method: "chat.postMessage", Channel: standin.Mill, Times: 2, Status: 503})
	w.Fail(standin.Fault{Method: "chat.postMessage", Channel: standin.Mill})
	say := url.Values{"channel": {standin.Mill}, "text": {"x"}}.Encode()
	for i, want := range []int{503, 503, 200, 200} {
		status, _, a := post(t, w, "chat.postMessage", w.BotToken(), formType, say)
		if _, named := a["error"]; status != want || a["ok"] != (i == 3) || named {
			t.Errorf("call %d: %d %v", i, status, a)
		}
		form(t, w, "chat.postMessage", "channel", standin.Yard, "text", "not concerned")
	}
	if n := len(w.Messages(standin.Yard)); n != 4 {
		t.Errorf("%d of 4 posts went through elsewhere", n)
	}
}

// Platform documentation, rate limits: 429 and Retry-After in seconds.
func TestPostsOfOneChannelAreLimited(t *testing.T) {
	w := start(t, standin.Options{PostEvery: time.Hour})
	send := func(channel string) (int, string) {
		status, header, _ := post(t, w, "chat.postMessage", w.BotToken(), formType,
			url.Values{"channel": {channel}, "text": {"x"}}.Encode())
		return status, header.Get("Retry-After")
	}
	if status, _ := send(standin.Yard); status != 200 {
		t.Errorf("first post: %d", status)
	}
	if status, wait := send(standin.Yard); status != 429 || wait != "3600" {
		t.Errorf("second post: %d, Retry-After %q", status, wait)
	}
	if status, _ := send(standin.Mill); status != 200 {
		t.Errorf("post elsewhere: %d", status)
	}
}

// Platform documentation, formatting message text.
func TestPingsAndLinks(t *testing.T) {
	w := start(t, standin.Options{BotName: "desk"})
	for _, c := range []struct {
		m            standin.Message
		pings, links string
	}{
		{standin.Message{Text: "<!channel> and <@U0CREW0001|ann>"}, "!channel @U0CREW0001", ""},
		{standin.Message{Text: "&lt;!channel&gt; @channel"}, "", ""},
		{standin.Message{Text: "@channel", LinkNames: true}, "@channel", ""},
		{standin.Message{Text: "@here", Parse: "full"}, "@here", ""},
		{standin.Message{Text: "<https://a.example|tree>", Parse: "none"}, "", "<https://a.example|tree>"},
		{standin.Message{Text: "https://a.example"}, "", "https://a.example"},
		{standin.Message{Text: "https://a.example", Parse: "none"}, "", ""},
	} {
		if got := strings.Join(c.m.Pings(), " "); got != c.pings {
			t.Errorf("%q pings %q, want %q", c.m.Text, got, c.pings)
		}
		if got := strings.Join(c.m.Links(), " "); got != c.links {
			t.Errorf("%q links %q, want %q", c.m.Text, got, c.links)
		}
	}
	if got, want := w.Typed("@desk R&D <5 ft, @desktop"), "<@U0BOT00001> R&amp;D &lt;5 ft, @desktop"; got != want {
		t.Errorf("typed: %q, want %q", got, want)
	}
}

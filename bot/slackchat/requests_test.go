package slackchat_test

import (
	"bytes"
	"fmt"
	"io"
	"net"
	"net/http"
	"net/url"
	"strings"
	"testing"
	"time"

	"heft/bot"
	"heft/bot/slackchat"
	"heft/bot/standin"
)

// requested has the workspace send requests instead of opening a socket.
func requested(c *slackchat.Config) {
	c.AppToken, c.SigningSecret, c.Listen = "", "0123456789abcdef0123456789abcdef", "127.0.0.1:0"
}

func TestOverRequests(t *testing.T) {
	r := prepare(t, standin.Options{Retries: []time.Duration{0, 0, 0}}, requested).run()
	m := r.ask(standin.Yard, question)
	answer := r.answered(m)
	r.settled(m)
	for i := range 3 { // once more, and again: what was answered stays answered
		if err := r.Redeliver(m.Events[0], i+1, "http_timeout"); err != nil {
			t.Fatal(err)
		}
	}
	r.press(crew, answer, "In metric")
	r.await(func() bool { return strings.Contains(r.now(answer).Shown(), "cm") })
	edited := r.Edit(m, r.Mention()+" 16 in red oak limb 22 ft")
	r.await(func() bool { return strings.Contains(r.now(answer).Shown(), "edited") && r.Acked(edited.Events[0]) })
	r.await(func() bool { return len(r.Deliveries(m.Events[0])) == 4 })
	if n := len(r.own(m)); n != 1 {
		t.Errorf("%d answers", n)
	}
	if calls := r.Calls("apps.connections.open"); len(calls) > 0 {
		t.Error("a socket was opened as well")
	}
}

// What the journal did not take is refused, and the workspace sends it again.
func TestARequestThatIsNotTakenComesAgain(t *testing.T) {
	r := prepare(t, standin.Options{Retries: []time.Duration{0, 0, 0}}, requested)
	tries := 0
	r.journal.unreadable = io.ErrUnexpectedEOF
	r.journal.before = func(bot.Entry) error {
		if tries++; tries < 3 {
			return bot.ErrLogged // and then the entry cannot be read
		}
		return nil
	}
	r.run()
	m := r.ask(standin.Yard, question)
	r.answered(m)
	r.await(func() bool { return r.Acked(m.Events[0]) })
	got := r.Deliveries(m.Events[0])
	if len(got) != 3 || got[0].Status != http.StatusServiceUnavailable || got[2].Status != http.StatusOK {
		t.Errorf("%+v", got)
	}
}

// A body that is not signed, or not as it was signed, or too long ago, is
// neither read nor logged.
func TestOnlyTheWorkspaceIsHeard(t *testing.T) {
	r := prepare(t, standin.Options{}, requested).run()
	at, now, secret := r.address(), time.Now(), r.SigningSecret()
	body := func(id string) []byte {
		return fmt.Appendf(nil, `{"type":"event_callback","team_id":"T0CREW0001","event_id":%q,"event":{"type":"app_mention",
			"channel":%q,"user":"U0CREW0001","ts":"%d.000100","text":"blorf%s 14 in red oak log 8 ft"}}`, id, standin.Yard, now.Unix(), id)
	}
	const limit = 5 * time.Minute // platform documentation, verifying requests
	for _, c := range []struct {
		name   string
		header http.Header
		body   []byte
		want   int
	}{
		{"no signature", http.Header{}, body("EvA"), 401},
		{"another secret", standin.Sign("fedcba9876543210fedcba9876543210", now, body("EvB")), body("EvB"), 401},
		{"an empty secret", standin.Sign("", now, body("EvC")), body("EvC"), 401},
		{"another body", standin.Sign(secret, now, body("EvD")), body("EvE"), 401},
		{"too old", standin.Sign(secret, now.Add(-limit-time.Minute), body("EvF")), body("EvF"), 401},
		{"too new", standin.Sign(secret, now.Add(limit+time.Minute), body("EvG")), body("EvG"), 401},
		{"not json", standin.Sign(secret, now, []byte("{")), []byte("{"), 400},
		{"too long", standin.Sign(secret, now, bytes.Repeat([]byte(" "), 1<<20+1)), bytes.Repeat([]byte(" "), 1<<20+1), 413},
		{"old, but not too old", standin.Sign(secret, now.Add(-limit+time.Minute), body("EvH")), body("EvH"), 200},
	} {
		t.Run(c.name, func(t *testing.T) {
			req, err := http.NewRequestWithContext(t.Context(), http.MethodPost, at, bytes.NewReader(c.body))
			if err != nil {
				t.Fatal(err)
			}
			req.Header = c.header.Clone()
			req.Header.Set("Content-Type", "application/json")
			resp, err := http.DefaultClient.Do(req)
			if err != nil {
				t.Fatal(err)
			}
			defer resp.Body.Close()
			if resp.StatusCode != c.want {
				t.Errorf("status %d, want %d", resp.StatusCode, c.want)
			}
		})
	}
	if resp, err := http.Get(at); err != nil || resp.StatusCode != http.StatusMethodNotAllowed {
		t.Errorf("a look at it: %v, %v", resp, err)
	}
	if all := r.journal.all(); len(all) != 1 || all[0].ID != "EvH" {
		t.Errorf("%d entries: %+v", len(all), all)
	}
	if text := r.logs.text(); strings.Contains(strings.ReplaceAll(text, "blorfEvH", ""), "blorf") || strings.Contains(text, secret) {
		t.Errorf("the log says:\n%s", text)
	}
}

// Whoever sends half a request is cut off and holds up nobody.
func TestSlowRequestsAreCutOff(t *testing.T) {
	r := prepare(t, standin.Options{}, requested)
	slackchat.SetSlowest(r.chat, 200*time.Millisecond)
	r.run()
	to, err := url.Parse(r.address())
	if err != nil {
		t.Fatal(err)
	}
	signed := standin.Sign(r.SigningSecret(), time.Now(), []byte("{}"))
	for name, half := range map[string]string{
		"in the head": "POST / HTTP/1.1\r\nHost: heft\r\n",
		"in the body": "POST / HTTP/1.1\r\nHost: heft\r\nX-Slack-Signature: " + signed.Get("X-Slack-Signature") +
			"\r\nX-Slack-Request-Timestamp: " + signed.Get("X-Slack-Request-Timestamp") + "\r\nContent-Length: 2\r\n\r\n{",
	} {
		t.Run(name, func(t *testing.T) {
			conn, err := net.Dial("tcp", to.Host)
			if err != nil {
				t.Fatal(err)
			}
			defer conn.Close()
			if _, err := io.WriteString(conn, half); err != nil {
				t.Fatal(err)
			}
			r.answered(r.ask(standin.Yard, question))
			_ = conn.SetReadDeadline(time.Now().Add(patience))
			if got, err := io.ReadAll(conn); err != nil || strings.Contains(string(got), " 200 ") {
				t.Errorf("%q, %v", got, err)
			}
		})
	}
}

func TestTheWayInIsSaid(t *testing.T) {
	good := slackchat.Config{BotToken: "xoxb-" + "1-2-abc", SigningSecret: "0123456789abcdef0123456789abcdef", Listen: "127.0.0.1:0"}
	if _, err := slackchat.New(good, nil, quiet()); err != nil {
		t.Errorf("requests alone: %v", err)
	}
	for name, change := range map[string]func(*slackchat.Config){
		"SLACK_APP_TOKEN":      func(c *slackchat.Config) { c.SigningSecret = "" },
		"SLACK_SIGNING_SECRET": func(c *slackchat.Config) { c.SigningSecret = "“0123456789abcdef”" },
		"address":              func(c *slackchat.Config) { c.Listen = "" },
	} {
		c := good
		change(&c)
		if _, err := slackchat.New(c, nil, quiet()); err == nil || !strings.Contains(err.Error(), name) || strings.Contains(err.Error(), "0123456789") {
			t.Errorf("%s: %v", name, err)
		}
	}
}

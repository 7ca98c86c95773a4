package standin_test

import (
	"crypto/hmac"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"io"
	"net/http"
	"net/http/httptest"
	"net/url"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"heft/bot/standin"
)

// address is an app at a request URL.
type address struct {
	*testing.T
	*httptest.Server
	mu     sync.Mutex
	got    []request
	answer func(request) (int, string) // for what is no challenge
	header http.Header
}

type request struct {
	header http.Header
	body   string
}

func listen(t *testing.T, w *standin.Workspace) *address {
	t.Helper()
	a := &address{T: t, header: http.Header{}, answer: func(request) (int, string) { return 200, "" }}
	a.Server = httptest.NewServer(http.HandlerFunc(func(rw http.ResponseWriter, r *http.Request) {
		body, _ := io.ReadAll(r.Body)
		a.check(w, r.Header, body)
		var c struct{ Challenge string }
		if json.Unmarshal(body, &c); c.Challenge != "" {
			_, _ = io.WriteString(rw, c.Challenge)
			return
		}
		q := request{r.Header, string(body)}
		a.mu.Lock()
		a.got = append(a.got, q)
		answer := a.answer
		a.mu.Unlock()
		for k := range a.header {
			rw.Header().Set(k, a.header.Get(k))
		}
		status, words := answer(q)
		rw.WriteHeader(status)
		_, _ = io.WriteString(rw, words)
	}))
	t.Cleanup(a.Close)
	if err := w.Request(t.Context(), standin.RequestURLs{Events: a.URL}); err != nil {
		t.Fatal(err)
	}
	return a
}

// check proves a signature by the recipe of the platform documentation,
// verifying requests.
func (a *address) check(w *standin.Workspace, h http.Header, body []byte) {
	mac := hmac.New(sha256.New, []byte(w.SigningSecret()))
	mac.Write([]byte("v0:" + h.Get("X-Slack-Request-Timestamp") + ":" + string(body)))
	if want := "v0=" + hex.EncodeToString(mac.Sum(nil)); h.Get("X-Slack-Signature") != want {
		a.Errorf("signature %q, want %q", h.Get("X-Slack-Signature"), want)
	}
}

func (a *address) requests() []request {
	a.mu.Lock()
	defer a.mu.Unlock()
	return append([]request(nil), a.got...)
}

// The example of the platform documentation, verifying requests: secret,
// timestamp, body and signature are printed there (from memory).
func TestSign(t *testing.T) {
	body := "token=xyzz0WbapA4vBCDEFasx0q6G&team_id=T1DC2JH3J&team_domain=testteamnow&channel_id=G8PSS9T3V&channel_name=foobar" +
		"&user_id=U2CERLKJA&user_name=roadrunner&command=%2Fwebhook-collect&text=" +
		"&response_url=https%3A%2F%2Fhooks.slack.com%2Fcommands%2FT1DC2JH3J%2F397700885554%2F96rGlfmibIGlgcZRskXaIFfN" +
		"&trigger_id=398738663015.47445629121.803a0bc887a14d10d2c447fce8b6703c"
	h := standin.Sign("8f742231b10e8888abcd99yyyzzz85a5", time.Unix(1531420618, 0), []byte(body))
	if want := "v0=a2114d57b48eac39b9ad189dd8316235a7b4a8d21a10bd27519666489c69b503"; h.Get("X-Slack-Signature") != want {
		t.Errorf("signed %s", h.Get("X-Slack-Signature"))
	}
}

func TestEventsOverHTTP(t *testing.T) {
	w := interacting(t)
	a := listen(t, w)
	m := w.Say(standin.Yard, crew, w.Mention()+" hello")
	await(t, w, func() bool { return w.Acked(m.Events[0]) })
	got := a.requests()
	var body any
	if len(got) != 1 || json.Unmarshal([]byte(got[0].body), &body) != nil {
		t.Fatalf("got %+v", got)
	}
	if at(body, "type") != "event_callback" || at(body, "event_id") != m.Events[0] || at(body, "event.type") != "app_mention" ||
		got[0].header.Get("Content-Type") != "application/json" || got[0].header.Get("X-Slack-Retry-Num") != "" {
		t.Errorf("got %+v", got[0])
	}
	if err := w.Redeliver(m.Events[0], 2, "http_timeout"); err != nil {
		t.Fatal(err)
	}
	await(t, w, func() bool { return len(w.Deliveries(m.Events[0])) == 2 && len(a.requests()) == 2 })
	if h := a.requests()[1].header; h.Get("X-Slack-Retry-Num") != "2" || h.Get("X-Slack-Retry-Reason") != "http_timeout" {
		t.Errorf("again: %v", h)
	}
}

// Platform documentation, Events API, retries: three more times, with the
// reason, unless the app asks for none.
func TestRetriesOverHTTP(t *testing.T) {
	soon := func(o *standin.Options) { o.Retries = []time.Duration{0, 0, 0} }
	w := interacting(t, soon)
	a := listen(t, w)
	a.answer = func(request) (int, string) { return 500, "" }
	m := w.Say(standin.Direct, crew, "hello")
	await(t, w, func() bool {
		d := w.Deliveries(m.Events[0])
		return len(d) == 4 && d[3].Status == 500
	})
	for i, q := range a.requests() {
		if want := []string{"", "1", "2", "3"}[i]; q.header.Get("X-Slack-Retry-Num") != want {
			t.Errorf("try %d is numbered %q", i, q.header.Get("X-Slack-Retry-Num"))
		}
		if i > 0 && q.header.Get("X-Slack-Retry-Reason") != "http_error" {
			t.Errorf("try %d because of %q", i, q.header.Get("X-Slack-Retry-Reason"))
		}
	}
	enough := interacting(t, soon)
	b := listen(t, enough)
	b.header.Set("X-Slack-No-Retry", "1")
	b.answer = a.answer
	m = enough.Say(standin.Direct, crew, "hello")
	await(t, enough, func() bool { d := enough.Deliveries(m.Events[0]); return len(d) == 1 && d[0].Status == 500 })
	next := enough.Say(standin.Direct, crew, "hello")
	await(t, enough, func() bool { d := enough.Deliveries(next.Events[0]); return len(d) == 1 && d[0].Status == 500 })
	if d := enough.Deliveries(m.Events[0]); len(d) != 1 {
		t.Errorf("%d tries, though the app wanted none", len(d))
	}
}

// Who does not answer in time is asked again, and told why.
func TestSlowAnswer(t *testing.T) {
	w := interacting(t, func(o *standin.Options) { o.Retries, o.AnswerWithin = []time.Duration{0}, 50*time.Millisecond })
	a := listen(t, w)
	held := make(chan struct{})
	t.Cleanup(func() { close(held) })
	a.answer = func(q request) (int, string) {
		if q.header.Get("X-Slack-Retry-Num") == "" {
			<-held
		}
		return 200, ""
	}
	m := w.Say(standin.Direct, crew, "hello")
	await(t, w, func() bool { return w.Acked(m.Events[0]) })
	if h := a.requests()[1].header; h.Get("X-Slack-Retry-Reason") != "http_timeout" {
		t.Errorf("again: %v", h)
	}
}

// Platform documentation: interactivity, payloads; slash commands.
func TestInteractionsOverHTTP(t *testing.T) {
	w := interacting(t)
	a := listen(t, w)
	a.answer = func(q request) (int, string) {
		if strings.Contains(q.body, "command=") {
			return 200, "noted"
		}
		return 200, ""
	}
	if _, err := w.Command(standin.Yard, crew, "/job", "900 lb"); err != nil {
		t.Fatal(err)
	}
	sent, err := url.ParseQuery(a.requests()[0].body)
	if err != nil || sent.Get("command") != "/job" || sent.Get("text") != "900 lb" || sent.Get("trigger_id") == "" {
		t.Errorf("command: %v, %v", sent, err)
	}
	if m := w.Messages(standin.Yard); len(m) != 1 || m[0].For != crew || m[0].Text != "noted" {
		t.Errorf("answered %+v", m)
	}
	ts, _ := form(t, w, "chat.postMessage", "channel", standin.Yard, "text", "x", "blocks", "["+actions(button(`,"action_id":"go"`))+"]")["ts"].(string)
	p := standin.Press{User: crew, Channel: standin.Yard, TS: ts, Action: "go"}
	if _, err := w.Press(p); err != nil {
		t.Fatal(err)
	}
	sent, err = url.ParseQuery(a.requests()[1].body)
	var body any
	if err != nil || json.Unmarshal([]byte(sent.Get("payload")), &body) != nil || at(body, "actions.0.action_id") != "go" {
		t.Errorf("press: %v, %v", sent, err)
	}
	a.answer = func(request) (int, string) { return 500, "" }
	if _, err := w.Press(p); err == nil {
		t.Error("a press that failed went well")
	}
	if n := len(a.requests()); n != 3 {
		t.Errorf("%d requests: a press is not tried again", n)
	}
}

// A request proves when it was sent, whatever day the workspace has.
func TestSignedWhenItIsSent(t *testing.T) {
	long := time.Date(2001, 2, 3, 12, 0, 0, 0, time.UTC)
	w := interacting(t, func(o *standin.Options) { o.Now = func() time.Time { return long } })
	before := time.Now().Unix()
	a := listen(t, w)
	m := w.Say(standin.Direct, crew, "hello")
	await(t, w, func() bool { return w.Acked(m.Events[0]) })
	stamp, err := strconv.ParseInt(a.requests()[0].header.Get("X-Slack-Request-Timestamp"), 10, 64)
	if err != nil || stamp < before || stamp > time.Now().Unix() {
		t.Errorf("signed at %d, %v", stamp, err)
	}
}

// What has no answer yet is under way, and nothing is once all is answered.
func TestUnderway(t *testing.T) {
	w := interacting(t, func(o *standin.Options) { o.Retries = []time.Duration{0} })
	a := listen(t, w)
	held := make(chan struct{})
	a.answer = func(q request) (int, string) {
		<-held
		if q.header.Get("X-Slack-Retry-Num") == "" {
			return 500, ""
		}
		return 200, ""
	}
	m := w.Say(standin.Direct, crew, "hello")
	if n := w.Underway(); n != 1 {
		t.Errorf("%d under way", n)
	}
	close(held)
	await(t, w, func() bool { return w.Acked(m.Events[0]) && w.Underway() == 0 })
	a.answer = func(request) (int, string) { return 200, "" }
	if _, err := w.Command(standin.Yard, crew, "/job", ""); err != nil {
		t.Fatal(err)
	}
	if n := w.Underway(); n != 0 {
		t.Errorf("%d under way after the answer", n)
	}
}

func TestChallenge(t *testing.T) {
	w := start(t, standin.Options{})
	deaf := httptest.NewServer(http.NotFoundHandler())
	defer deaf.Close()
	if err := w.Request(t.Context(), standin.RequestURLs{Events: deaf.URL}); err == nil {
		t.Error("an address that does not answer the challenge was taken")
	}
}

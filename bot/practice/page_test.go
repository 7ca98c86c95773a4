package practice_test

import (
	"bufio"
	"context"
	"html"
	"net/http"
	"net/url"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

func TestTicketAndItsThread(t *testing.T) {
	r := open(t, nil)
	resp, page := r.post("/say", "text", "  14 in red oak\r\n22 ft ", "desk", "1")
	if resp.StatusCode != 200 || resp.Request.Method != http.MethodGet {
		t.Fatalf("led to %s %s: %d", resp.Request.Method, resp.Request.URL, resp.StatusCode)
	}
	m := r.space.Messages(mill)[0]
	if m.Text != r.space.Mention()+" 14 in red oak\n22 ft" || m.User != rosa {
		t.Errorf("said %+v", m)
	}
	r.want(seen(page), "Ticket 1", "Rosa, Groundworker", "14 in red oak 22 ft", "The desk has it in hand.")
	a := r.call("chat.postMessage", "channel", mill, "thread_ts", m.TS, "text", "Plan on 1,950 lb.\nConfirm with the arborist.")
	_, page = r.get("/?who=climber&job=" + mill)
	r.want(page, `<p class="head">Plan on 1,950 lb.</p>`, `<p class="body">Confirm with the arborist.</p>`, `role="status" aria-live="polite"`)
	r.without(page, "in hand", "Correct it")
	ts, _ := a["ts"].(string)
	r.call("chat.update", "channel", mill, "ts", ts, "text", "Plan on 2,000 lb.")
	r.call("reactions.add", "channel", mill, "timestamp", m.TS, "name", "white_check_mark")
	_, page = r.get("/?job=" + mill)
	r.want(seen(page), "Plan on 2,000 lb.", "corrected", "white check mark")
	r.post("/say", "text", "what about 16 ft", "desk", "1", "thread", m.TS)
	r.post("/say", "text", "nobody needs to answer this", "who", "climber")
	got := r.space.Messages(mill)
	if last := got[len(got)-1]; last.User != teo || last.ThreadTS != "" || len(last.Events) != 0 {
		t.Errorf("without the tick: %+v", last)
	}
	if follow := got[2]; follow.ThreadTS != m.TS || !strings.HasSuffix(follow.Text, "16 ft") {
		t.Errorf("the follow-up: %+v", follow)
	}
	_, page = r.get("/?job=" + mill)
	if strings.Index(page, "nobody needs") > strings.Index(page, "red oak\n22 ft") {
		t.Error("the newest ticket does not hang on top")
	}
}

// TestLinksLeadWhereTheySay follows every link of a page, and sees that the one
// that only looks again stays where it is.
func TestLinksLeadWhereTheySay(t *testing.T) {
	r := open(t, nil)
	here := "/?job=C0QUARRYRD&lang=es&who=climber"
	_, page := r.get(here)
	found := regexp.MustCompile(`href="(/\?[^"#]*)`).FindAllStringSubmatch(page, -1)
	if len(found) != 4+4+2+1 { // roles, jobs, languages, "look again"
		t.Fatalf("%d links", len(found))
	}
	again := 0
	for _, m := range found {
		to, err := url.Parse(html.UnescapeString(m[1]))
		if err != nil || to.Query().Get("who") == "" || to.Query().Get("job") == "" || to.Query().Get("lang") == "" {
			t.Errorf("%s leads nowhere: %v", m[1], err)
		}
		if html.UnescapeString(m[1]) == here {
			again++
		}
	}
	if again != 4 { // the role, the job, the language and "look again"
		t.Errorf("%d links lead here", again)
	}
}

func TestWhatIsWrongWithATicket(t *testing.T) {
	r := open(t, nil)
	for _, c := range []struct{ path, text, thread, want string }{
		{"/say", " \r\n ", "", "nothing on the ticket"},
		{"/say", strings.Repeat("x", 3001), "", "too long"},
		{"/say", "x", "1.000001", "not there any more"},
		{"/correct", "x", "", "not there any more"},
		{"/press", "", "", "did not take that"},
		{"/submit", "", "", "did not take that"},
	} {
		_, page := r.post(c.path, "text", c.text, "thread", c.thread)
		r.want(seen(page), c.want)
	}
	resp, _ := r.post("/say", "text", strings.Repeat("x", 70_000))
	if resp.StatusCode != http.StatusRequestEntityTooLarge || len(r.space.Messages(mill)) != 0 {
		t.Errorf("%d, hung up %+v", resp.StatusCode, r.space.Messages(mill))
	}
	_, page := r.get("/?note=made-up&who=king&job=C0MOON&lang=xx&draft=99")
	r.want(page, `<p id="note" class="note" role="alert"></p>`)
	r.want(seen(page), "Mill Lane", "Groundworker")
}

func TestCorrecting(t *testing.T) {
	r := open(t, nil)
	r.post("/say", "text", "14 in", "desk", "1")
	m := r.space.Messages(mill)[0]
	r.post("/correct", "ts", m.TS, "text", "theirs", "who", "climber")
	_, page := r.post("/correct", "ts", m.TS, "text", "16 in <")
	if got := r.space.Messages(mill)[0]; got.Text != r.space.Mention()+" 16 in &lt;" || !got.Edited {
		t.Errorf("corrected to %+v", got)
	}
	r.want(seen(page), "16 in <", "corrected")
}

func TestPrivateReplies(t *testing.T) {
	r := open(t, nil)
	r.call("chat.postEphemeral", "channel", mill, "user", rosa, "text", "for Rosa alone")
	_, hers := r.get("/?who=groundworker&job=" + mill)
	r.want(seen(hers), "for Rosa alone", "Only you see this")
	_, his := r.get("/?who=climber&job=" + mill)
	r.without(his, "for Rosa alone")
	r.post("/say", "text", "just us", "job", "direct")
	if got := r.space.Messages("D0ROSA0001"); len(got) != 1 || got[0].Text != "just us" || len(got[0].Events) != 1 {
		t.Errorf("directly: %+v", got)
	}
	_, his = r.get("/?who=climber&job=direct")
	r.without(his, "just us")
}

// WHATWG HTML, server-sent events: id and data, and an empty line.
func TestChanges(t *testing.T) {
	r := open(t, nil)
	version := r.space.Snapshot().Version
	ctx, cancel := context.WithCancel(t.Context())
	defer cancel()
	req, err := http.NewRequestWithContext(ctx, http.MethodGet, r.page.URL+"/changes?after="+strconv.Itoa(int(version)), nil)
	if err != nil {
		t.Fatal(err)
	}
	resp, err := http.DefaultClient.Do(req)
	if err != nil {
		t.Fatal(err)
	}
	defer resp.Body.Close()
	r.space.Say(mill, rosa, "14 in")
	lines := bufio.NewScanner(resp.Body)
	var got []string
	for len(got) < 3 && lines.Scan() {
		got = append(got, lines.Text())
	}
	want := strconv.Itoa(int(r.space.Snapshot().Version))
	if resp.Header.Get("Content-Type") != "text/event-stream" || strings.Join(got, "|") != "id: "+want+"|data: "+want+"|" {
		t.Errorf("%v: %q", resp.Header, got)
	}
	if resp, _ := r.get("/changes?after=x"); resp.StatusCode != http.StatusBadRequest {
		t.Errorf("after nothing: %d", resp.StatusCode)
	}
}

func TestLanguage(t *testing.T) {
	r := open(t, nil)
	ask := func(path, accept string) string {
		t.Helper()
		req, err := http.NewRequest(http.MethodGet, r.page.URL+path, nil)
		if err != nil {
			t.Fatal(err)
		}
		req.Header.Set("Accept-Language", accept)
		resp, err := http.DefaultClient.Do(req)
		if err != nil {
			t.Fatal(err)
		}
		_, page := r.read(resp)
		return page
	}
	r.want(ask("/", "es-MX,es;q=0.9"), `<html lang="es">`, "Boleta nueva")
	r.want(ask("/?lang=en", "es-MX"), `<html lang="en">`, "New ticket")
	r.want(ask("/", "fr"), `<html lang="en">`)
	r.want(ask("/", ";;;q"), `<html lang="en">`)
	_, page := r.post("/say", "lang", "es", "text", "hola")
	r.want(page, `<html lang="es">`, "Boleta 1")
}

package practice_test

import (
	"context"
	"io"
	"net/http"
	"regexp"
	"strings"
	"testing"

	"heft/bot/practice"
)

func TestOnlyThisMachine(t *testing.T) {
	for addr, ok := range map[string]bool{
		"127.0.0.1:8420": true, "127.0.0.2:0": true, "[::1]:8420": true, "localhost:8420": true,
		"0.0.0.0:8420": false, ":8420": false, "[::]:8420": false, "192.168.1.20:8420": false,
		"site.example:8420": false, "127.0.0.1.site.example:8420": false, "127.0.0.1": false, "": false,
	} {
		if err := practice.CheckAddr(addr); (err == nil) != ok {
			t.Errorf("%q: %v", addr, err)
		}
	}
}

// Every answer carries the policy, and no page needs more than it allows: no
// script or style within the page, no address of another machine (W3C,
// Content Security Policy Level 3).
func TestPolicy(t *testing.T) {
	r := open(t, func(_ context.Context, w io.Writer) error { _, err := io.WriteString(w, "<p>today"); return err })
	r.post("/say", "text", "14 in", "desk", "1")
	for _, path := range []string{"/", "/?lang=es&who=climber&job=direct", "/?front=1", "/page.css", "/page.mjs", "/words.mjs", "/view.mjs", "/icon.svg", "/try/2", "/nowhere", "/picture/F1", "/look/F1"} {
		resp, page := r.get(path)
		policy := resp.Header.Get("Content-Security-Policy")
		for _, part := range []string{"default-src 'none'", "script-src 'self'", "form-action 'self'", "base-uri 'none'", "frame-ancestors 'none'"} {
			if !strings.Contains(policy, part) {
				t.Errorf("%s: policy %q lacks %s", path, policy, part)
			}
		}
		if strings.Contains(policy, "unsafe") || resp.Header.Get("X-Content-Type-Options") != "nosniff" {
			t.Errorf("%s: %v", path, resp.Header)
		}
		if !strings.HasPrefix(resp.Header.Get("Content-Type"), "text/html") {
			continue
		}
		if bad := regexp.MustCompile(`(?i)<style|\sstyle=|\son[a-z]+=|<script(?:\s[^>]*)?>[^<]|javascript:|(?:src|href|action)="(?:https?:)?//`).FindString(page); bad != "" {
			t.Errorf("%s has %q", path, bad)
		}
	}
	resp, _ := r.get("/day")
	if p := resp.Header.Get("Content-Security-Policy"); !strings.Contains(p, "default-src 'none'") || strings.Contains(p, "script") {
		t.Errorf("the day sheet's policy: %q", p)
	}
}

// A page from elsewhere can neither send the crew's forms nor read along
// under a name that points here.
func TestStrangersAreRefused(t *testing.T) {
	r := open(t, nil)
	send := func(host, origin, site string) int {
		req, err := http.NewRequest(http.MethodPost, r.page.URL+"/say", strings.NewReader("text=x&job="+mill))
		if err != nil {
			t.Fatal(err)
		}
		req.Header.Set("Content-Type", "application/x-www-form-urlencoded")
		if host != "" {
			req.Host = host
		}
		if origin != "" {
			req.Header.Set("Origin", origin)
		}
		if site != "" {
			req.Header.Set("Sec-Fetch-Site", site)
		}
		resp, err := http.DefaultTransport.RoundTrip(req)
		if err != nil {
			t.Fatal(err)
		}
		defer resp.Body.Close()
		return resp.StatusCode
	}
	for _, c := range []struct {
		host, origin, site string
		want               int
	}{
		{"", r.page.URL, "same-origin", http.StatusSeeOther},
		{"", "https://site.example", "cross-site", http.StatusForbidden},
		{"", "https://site.example", "", http.StatusForbidden},
		{"site.example", "http://site.example", "same-origin", http.StatusMisdirectedRequest},
	} {
		if got := send(c.host, c.origin, c.site); got != c.want {
			t.Errorf("%+v: %d", c, got)
		}
	}
	if n := len(r.space.Messages(mill)); n != 1 {
		t.Errorf("%d tickets, want the one of our own page", n)
	}
}

// Nothing that is said becomes markup of the page or pings anybody.
func TestNothingSaidBecomesMarkup(t *testing.T) {
	r := open(t, nil)
	const nasty = `<script>alert(1)</script> <!channel> @channel <@U0TEO00002> "><img src=x onerror=alert(2)> {{.}} <https://site.example|here>`
	_, page := r.post("/say", "text", nasty, "desk", "1")
	m := r.space.Messages(mill)[0]
	if got := strings.Join(m.Pings(), " "); got != "@"+r.space.BotUser() {
		t.Errorf("pings %q", got)
	}
	r.want(seen(page), nasty)
	block := `[{"type":"header","text":{"type":"plain_text","text":"<b>&lt;i&gt;"}},` +
		`{"type":"section","text":{"type":"mrkdwn","text":"<!here> <https://site.example|click> *<u>* <javascript:alert(3)>"}},` +
		`{"type":"actions","elements":[{"type":"button","action_id":"\"><script>","text":{"type":"plain_text","text":"</button><script>x"},"value":"'><i>"}]},` +
		`{"type":"image","image_url":"https://site.example/a.png","alt_text":"\"><script>"}]`
	r.call("chat.postMessage", "channel", mill, "thread_ts", m.TS, "text", "x", "blocks", block)
	r.call("chat.postMessage", "channel", mill, "thread_ts", m.TS, "text", nasty)
	_, page = r.get("/?job=" + mill)
	r.without(page, "<script>", "<b>", "<i>", "<u>", "<img src=x", "site.example/a.png\"", `href="http`, `href="javascript`, "onerror=alert(2)>")
	r.want(seen(page), "@here click", "</button><script>x")
	// The one script of the page is its own.
	if n := strings.Count(page, "<script"); n != 1 {
		t.Errorf("%d scripts", n)
	}
}

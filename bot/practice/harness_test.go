package practice_test

import (
	"context"
	"encoding/json"
	"html"
	"io"
	"net/http"
	"net/http/httptest"
	"net/url"
	"regexp"
	"strings"
	"testing"
	"time"

	"heft/bot/practice"
	"heft/bot/standin"
)

// The people and places of the scenario, as its page names them.
const (
	rosa = "U0ROSA0001"
	teo  = "U0TEO00002"
	mill = "C0MILLLANE"
)

// rig is a page with a bot behind it that the test plays itself.
type rig struct {
	*testing.T
	space *standin.Workspace
	page  *httptest.Server
	told  chan map[string]any // interactions the bot is told of
	reply string              // what it answers them with
}

func open(t *testing.T, sheet func(context.Context, io.Writer) error) *rig {
	t.Helper()
	space, err := standin.Start(practice.Scenario())
	if err != nil {
		t.Fatal(err)
	}
	r := &rig{T: t, space: space, told: make(chan map[string]any, 8)}
	app := httptest.NewServer(http.HandlerFunc(r.bot))
	desk := practice.Desk{}
	if sheet != nil {
		desk.DaySheet = func(ctx context.Context, w io.Writer, _ string) error { return sheet(ctx, w) }
	}
	r.page = httptest.NewServer(practice.New(space, desk))
	t.Cleanup(func() {
		r.page.CloseClientConnections() // those that wait for changes
		r.page.Close()
		_ = space.Close()
		app.Close()
	})
	if err := space.Request(t.Context(), standin.RequestURLs{Events: app.URL}); err != nil {
		t.Fatal(err)
	}
	return r
}

// bot takes what the workspace sends.
func (r *rig) bot(w http.ResponseWriter, req *http.Request) {
	body, _ := io.ReadAll(req.Body)
	var c struct{ Challenge string }
	if json.Unmarshal(body, &c) == nil {
		_, _ = io.WriteString(w, c.Challenge)
		return
	}
	form, _ := url.ParseQuery(string(body))
	told := map[string]any{}
	if p := form.Get("payload"); p != "" {
		_ = json.Unmarshal([]byte(p), &told)
	}
	for k := range form {
		told[k] = form.Get(k)
	}
	r.told <- told
	w.Header().Set("Content-Type", "application/json")
	_, _ = io.WriteString(w, r.reply)
}

// call is a call of the bot's.
func (r *rig) call(method string, args ...string) map[string]any {
	r.Helper()
	v := url.Values{"token": {r.space.BotToken()}}
	for i := 0; i < len(args); i += 2 {
		v.Set(args[i], args[i+1])
	}
	resp, err := http.PostForm(r.space.URL()+method, v)
	if err != nil {
		r.Fatal(err)
	}
	defer resp.Body.Close()
	var a map[string]any
	if err := json.NewDecoder(resp.Body).Decode(&a); err != nil || a["ok"] != true {
		r.Fatalf("%s: %v, %v", method, a, err)
	}
	return a
}

// get reads an address of the page.
func (r *rig) get(path string) (*http.Response, string) {
	r.Helper()
	resp, err := http.Get(r.page.URL + path)
	if err != nil {
		r.Fatal(err)
	}
	return r.read(resp)
}

// post sends a form and follows where it leads.
func (r *rig) post(path string, args ...string) (*http.Response, string) {
	r.Helper()
	v := url.Values{"lang": {"en"}, "who": {"groundworker"}, "job": {mill}}
	for i := 0; i < len(args); i += 2 {
		v.Set(args[i], args[i+1])
	}
	resp, err := http.PostForm(r.page.URL+path, v)
	if err != nil {
		r.Fatal(err)
	}
	return r.read(resp)
}

func (r *rig) read(resp *http.Response) (*http.Response, string) {
	r.Helper()
	defer resp.Body.Close()
	body, err := io.ReadAll(resp.Body)
	if err != nil {
		r.Fatal(err)
	}
	return resp, string(body)
}

// next is the next interaction the bot is told of.
func (r *rig) next() map[string]any {
	r.Helper()
	select {
	case told := <-r.told:
		return told
	case <-time.After(time.Minute):
		r.Fatal("the bot was told of nothing")
		return nil
	}
}

var tag = regexp.MustCompile(`<[^>]*>`)

// seen is what a person reads of a page.
func seen(page string) string {
	return strings.Join(strings.Fields(html.UnescapeString(tag.ReplaceAllString(page, " "))), " ")
}

// want fails where a page does not have something.
func (r *rig) want(page string, parts ...string) {
	r.Helper()
	for _, p := range parts {
		if !strings.Contains(page, p) {
			r.Errorf("the page lacks %q:\n%s", p, page)
		}
	}
}

// without fails where a page has something.
func (r *rig) without(page string, parts ...string) {
	r.Helper()
	for _, p := range parts {
		if strings.Contains(page, p) {
			r.Errorf("the page has %q:\n%s", p, page)
		}
	}
}

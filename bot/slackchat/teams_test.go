package slackchat_test

import (
	"context"
	"errors"
	"io"
	"log/slog"
	"net/http"
	"net/http/cookiejar"
	"net/url"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"heft/bot"
	disk "heft/bot/journal"
	"heft/bot/keyring"
	"heft/bot/slackchat"
	"heft/bot/standin"
)

const (
	otherTeam = "T0MILL0002"
	ringKey   = "000102030405060708090a0b0c0d0e0f101112131415161718191a1b1c1d1e1f"
)

// both are a bot that two workspaces may install, with a journal on disk. Their channels and people
// have the same ids: nothing but the workspace tells them apart.
type both struct {
	*rig
	two *standin.Workspace
	dir string
	at  string

	disk *disk.Journal
}

func twoTeams(t *testing.T) *both {
	t.Helper()
	o := site(standin.Options{NotInstalled: true, HomeTab: true, Scopes: allScopes, Events: append([]string{"app_uninstalled", "tokens_revoked"}, allEvents...)})
	b := &both{rig: prepare(t, o, requested), dir: t.TempDir()}
	o.Team = otherTeam
	two, err := b.Another(o)
	if err != nil {
		t.Fatal(err)
	}
	b.two = two
	return b
}

// start runs the bot anew, on what it kept.
func (b *both) start() {
	b.Helper()
	ring, err := keyring.Open(b.dir, ringKey)
	if err != nil {
		b.Fatal(err)
	}
	if b.disk, err = disk.Open(b.Context(), filepath.Join(b.dir, "journal.db")); err != nil {
		b.Fatal(err)
	}
	b.logs = &logs{changed: b.Wake}
	log := slog.New(slog.NewJSONHandler(b.logs, nil))
	desk, err := bot.NewDesk()
	if err != nil {
		b.Fatal(err)
	}
	cfg := b.cfg
	cfg.Zone = time.UTC
	teams, err := slackchat.NewTeams(cfg, slackchat.Install{
		ClientID: "1000000001.4000000004", ClientSecret: "standin-client-secret", PublicURL: "http://127.0.0.1/heft/", Ring: ring,
		Supervisors: []string{standin.TeamID + "/" + boss, otherTeam + "/" + dana},
	}, bot.Clerk{Desk: desk, Journal: b.disk, Memory: &memory{}, Log: log}, log)
	if err != nil {
		b.Fatal(err)
	}
	ctx, cancel := context.WithCancel(b.Context())
	b.stop, b.ended = cancel, make(chan error, 1)
	ended := b.ended
	go func() { ended <- teams.Run(ctx) }()
	b.Cleanup(cancel)
	b.at = b.address()
	if err := b.Request(b.Context(), standin.RequestURLs{Events: b.at}); err != nil {
		b.Fatal(err)
	}
}

func (b *both) end() {
	b.Helper()
	b.stop()
	if err := errors.Join(<-b.ended, b.disk.Close()); err != nil {
		b.Fatal(err)
	}
}

// install goes through the dialogue as a person's browser does.
func (b *both) install(code string, tamper func(url.Values)) (int, string) {
	b.Helper()
	jar, err := cookiejar.New(nil)
	if err != nil {
		b.Fatal(err)
	}
	browser := &http.Client{Jar: jar, CheckRedirect: func(*http.Request, []*http.Request) error { return http.ErrUseLastResponse }}
	resp, err := browser.Get(b.at + "install")
	if err != nil {
		b.Fatal(err)
	}
	resp.Body.Close()
	to, err := url.Parse(resp.Header.Get("Location"))
	if err != nil || to.Query().Get("scope") != strings.Join(slackchat.Scopes, ",") || to.Query().Get("redirect_uri") != "http://127.0.0.1/heft/installed" {
		b.Fatalf("sent to %v, %v", to, err)
	}
	back := url.Values{"state": {to.Query().Get("state")}, "code": {code}}
	if tamper != nil {
		tamper(back)
	}
	resp, err = browser.Get(b.at + "installed?" + back.Encode())
	if err != nil {
		b.Fatal(err)
	}
	defer resp.Body.Close()
	body, err := io.ReadAll(resp.Body)
	if err != nil {
		b.Fatal(err)
	}
	return resp.StatusCode, string(body)
}

func reply(t *testing.T, w *standin.Workspace, m standin.Message) string {
	t.Helper()
	ctx, cancel := context.WithTimeout(t.Context(), patience)
	defer cancel()
	r, err := w.Reply(ctx, m)
	if err != nil {
		t.Fatal(err)
	}
	return r.Shown()
}

// Two workspaces install the bot; what one tells it is no part of what the
// other is answered or shown, though every id is the same.
func TestNothingCrossesWorkspaces(t *testing.T) {
	b := twoTeams(t)
	b.start()
	defer b.end()
	for _, w := range []*standin.Workspace{b.Workspace, b.two} {
		if status, body := b.install(w.Code(), nil); status != http.StatusOK || !strings.Contains(body, "Installed") {
			t.Fatalf("%d %s", status, body)
		}
	}
	one, two := b.Workspace, b.two
	job := one.Say(standin.Yard, crew, one.Mention()+" job: limit 600 lb, arborist <@"+dana+">")
	reply(t, one, job)
	first := one.Say(standin.Yard, crew, one.Mention()+" 24 in red oak log 10 ft, hitched at 35 ft")
	if got := reply(t, one, first); !strings.Contains(got, "OVER your limit") {
		t.Errorf("with its job: %q", got)
	}
	b.await(func() bool { return len(b.Messages(bossDM)) == 1 })
	same := two.Say(standin.Yard, crew, two.Mention()+" 24 in red oak log 10 ft, hitched at 35 ft")
	if got := reply(t, two, same); strings.Contains(got, "limit") {
		t.Errorf("with the other's job: %q", got)
	}
	// A follow-up in the same channel and the same thread, by its stamp.
	two.Say(standin.Yard, crew, two.Mention()+" what about 16 ft", standin.InThread(first.TS))
	b.await(func() bool { return len(two.Messages(standin.Yard)) == 4 }) // posted outside the thread, which is not there
	if got := two.Messages(standin.Yard)[3].Shown(); strings.Contains(got, "24 in") {
		t.Errorf("it leans on the other's words: %q", got)
	}
	// A supervisor here is nobody there.
	two.OpenHome(boss)
	two.OpenHome(dana)
	one.OpenHome(boss)
	b.await(func() bool {
		return two.Snapshot().Homes[boss].ID != "" && two.Snapshot().Homes[dana].ID != "" && one.Snapshot().Homes[boss].ID != ""
	})
	if got := words(two.Snapshot().Homes[boss]); !strings.Contains(got, "Write to me here") {
		t.Errorf("the other's supervisor sees\n%s", got)
	}
	if got := words(two.Snapshot().Homes[dana]); !strings.Contains(got, "Questions: 2.") || strings.Contains(got, "limit 600") {
		t.Errorf("its own supervisor sees\n%s", got)
	}
	if got := words(one.Snapshot().Homes[boss]); !strings.Contains(got, "Questions: 2.") || strings.Contains(got, "what about") {
		t.Errorf("its own supervisor sees\n%s", got)
	}
	if n := len(two.Messages(bossDM)); n != 0 {
		t.Errorf("%d messages to the other's supervisor", n)
	}
	all, err := b.disk.Between(t.Context(), time.Now().Add(-time.Hour), time.Now().Add(time.Hour))
	if err != nil || len(all) != 4 {
		t.Errorf("%d entries, %v", len(all), err)
	}
	for _, e := range all {
		if want := map[bool]string{true: standin.TeamID, false: otherTeam}[slices.Contains([]string{job.TS, first.TS}, e.Message)]; e.Workspace != want {
			t.Errorf("%q is kept for %s", e.Words, e.Workspace)
		}
	}
	if strings.Contains(b.logs.text(), "xoxb-1") || strings.Contains(b.logs.text(), "standin-client-secret") {
		t.Error("a secret in the log")
	}
}

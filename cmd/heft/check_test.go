package main

import (
	"encoding/json"
	"net/http"
	"net/http/httptest"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"heft/bot/slackchat"
)

// platform answers as a workspace does to whoever looks before serving
// (platform documentation: auth.test, apps.connections.open, X-OAuth-Scopes).
func platform(t *testing.T, scopes string, off time.Duration, refuse string) string {
	t.Helper()
	s := httptest.NewServer(http.HandlerFunc(func(rw http.ResponseWriter, r *http.Request) {
		rw.Header().Set("Content-Type", "application/json")
		rw.Header().Set("X-OAuth-Scopes", scopes)
		rw.Header().Set("Date", time.Now().Add(off).UTC().Format(http.TimeFormat))
		a := map[string]any{"ok": true, "user": "heft", "team": "crew", "user_id": "U0BOT", "team_id": "T0CREW", "url": "wss://example.invalid/"}
		if strings.HasSuffix(r.URL.Path, refuse) && refuse != "" {
			a = map[string]any{"ok": false, "error": "invalid_auth"}
		}
		_ = json.NewEncoder(rw).Encode(a)
	}))
	t.Cleanup(s.Close)
	return s.URL + "/api/"
}

// TestCheck runs the program as whoever sets it up would: each thing that is
// missing is said by itself, and nothing of what is secret.
func TestCheck(t *testing.T) {
	all := strings.Join(slackchat.Scopes, ",")
	for _, c := range []struct {
		name   string
		scopes string
		off    time.Duration
		refuse string
		env    []string
		code   int
		want   []string
	}{
		{"as it should be", all, 0, "", []string{"SLACK_APP_TOKEN=" + appToken, "HEFT_SUPERVISORS=U0BOSS0001"}, 0,
			[]string{"ok       bot token: heft in crew", "ok       scopes: all", "ok       way in: a socket", "ok       clock", "ok       journal", "ok       supervisors: U0BOSS0001"}},
		{"requests", all, 0, "", []string{"SLACK_SIGNING_SECRET=0123456789abcdef0123456789abcdef"}, 0, []string{"ok       way in: signed requests, on 127.0.0.1:8421", "supervisors: nobody"}},
		{"a scope is missing", strings.Replace(all, "commands,", "", 1), 0, "", []string{"SLACK_APP_TOKEN=" + appToken}, 1, []string{"missing  scopes: the token lacks commands"}},
		{"a scope too many", all + ",users:read", 0, "", []string{"SLACK_APP_TOKEN=" + appToken}, 0, []string{"more than that: users:read"}},
		{"the clock is slow", all, 10 * time.Minute, "", []string{"SLACK_APP_TOKEN=" + appToken}, 1, []string{"missing  clock: this machine's clock is off by -10m"}},
		{"a wrong bot token", all, 0, "auth.test", []string{"SLACK_APP_TOKEN=" + appToken}, 1, []string{"missing  bot token: the workspace refused SLACK_BOT_TOKEN", "ok       way in"}},
		{"a wrong app token", all, 0, "apps.connections.open", []string{"SLACK_APP_TOKEN=" + appToken}, 1, []string{"missing  way in: the workspace refused SLACK_APP_TOKEN"}},
		{"nothing set", all, 0, "", []string{"SLACK_BOT_TOKEN=", "HEFT_ZONE=Denver", "HEFT_SUMMARY=5pm"}, 1,
			[]string{"missing  settings: SLACK_BOT_TOKEN", "missing  settings: neither SLACK_APP_TOKEN", "missing  settings: the time of the summary", "missing  zone: HEFT_ZONE is a zone like America/Denver"}},
		{"several workspaces", all, 0, "", []string{"SLACK_CLIENT_ID=1.2", "SLACK_CLIENT_SECRET=hush", "SLACK_SIGNING_SECRET=0123456789abcdef0123456789abcdef",
			"HEFT_PUBLIC_URL=https://heft.example/", "HEFT_KEY=" + strings.Repeat("0f", 32)}, 0, []string{"ok       installing: at https://heft.example/install; so far by 0"}},
		{"no key", all, 0, "", []string{"SLACK_CLIENT_ID=1.2"}, 1, []string{"missing  installing: HEFT_KEY"}},
		{"no journal", all, 0, "", []string{"SLACK_APP_TOKEN=" + appToken, "HEFT_JOURNAL=/dev/null/journal.db"}, 1, []string{"missing  journal: open the journal"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			cmd := exec.Command(program(t), "check")
			cmd.Env = append([]string{
				"SLACK_BOT_TOKEN=" + botToken, "SLACK_API_URL=" + platform(t, c.scopes, c.off, c.refuse),
				"HEFT_JOURNAL=" + filepath.Join(t.TempDir(), "journal.db"), "HOME=" + t.TempDir(),
			}, c.env...)
			out, _ := cmd.CombinedOutput()
			if code := cmd.ProcessState.ExitCode(); code != c.code {
				t.Errorf("exit %d, want %d:\n%s", code, c.code, out)
			}
			for _, want := range c.want {
				if !strings.Contains(string(out), want) {
					t.Errorf("it lacks %q:\n%s", want, out)
				}
			}
			if said := string(out); strings.Contains(said, "xoxb-1") || strings.Contains(said, "xapp-1") || strings.Contains(said, "0123456789abcdef") {
				t.Errorf("a secret in\n%s", out)
			}
		})
	}
}

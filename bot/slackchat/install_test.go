package slackchat_test

import (
	"net/http"
	"net/url"
	"slices"
	"strings"
	"testing"

	"heft/bot"
	"heft/bot/keyring"
	"heft/bot/slackchat"
	"heft/bot/standin"
)

// An installation lasts past a restart; one that is taken back is forgotten,
// also where nobody listened when it was.
func TestInstallationsLastUntilTakenBack(t *testing.T) {
	b := twoTeams(t)
	b.start()
	for _, w := range []*standin.Workspace{b.Workspace, b.two} {
		b.install(w.Code(), nil)
	}
	b.end()
	b.start()
	kept := func() []string {
		ring, err := keyring.Open(b.dir, ringKey)
		if err != nil {
			t.Fatal(err)
		}
		all, err := ring.All()
		if err != nil {
			t.Fatal(err)
		}
		var teams []string
		for team := range all {
			teams = append(teams, team)
		}
		return slices.Sorted(slices.Values(teams))
	}
	for _, w := range []*standin.Workspace{b.Workspace, b.two} {
		if got := reply(t, w, w.Say(standin.Yard, crew, w.Mention()+" "+question)); !strings.Contains(got, "plan on") {
			t.Errorf("%s after the restart: %q", w.ID(), got)
		}
	}
	b.two.Uninstall()
	b.await(func() bool { return slices.Equal(kept(), []string{standin.TeamID}) })
	if got := reply(t, b.Workspace, b.ask(standin.Yard, question)); !strings.Contains(got, "plan on") {
		t.Errorf("the one that stays: %q", got)
	}
	b.end()
	b.Uninstall() // nobody hears of it
	b.start()
	b.await(func() bool { return len(kept()) == 0 })
	b.end()
}

// Whoever comes back without the state they left with installs nothing.
func TestForgedInstallations(t *testing.T) {
	b := twoTeams(t)
	b.start()
	defer b.end()
	for name, tamper := range map[string]func(url.Values){
		"no state":      func(v url.Values) { v.Del("state") },
		"another state": func(v url.Values) { v.Set("state", "ABCDEFGHIJKLMNOPQRSTUVWXYZ") },
		"no code":       func(v url.Values) { v.Del("code") },
		"a wrong code":  func(v url.Values) { v.Set("code", "1.2.3") },
	} {
		if status, body := b.install(b.Code(), tamper); status < 400 || !strings.Contains(body, "Not installed") {
			t.Errorf("%s: %d %s", name, status, body)
		}
	}
	if calls := b.Calls("auth.test"); len(calls) > 0 {
		t.Error("a token was used")
	}
	resp, err := http.Get(b.at + "installed?code=1&state=")
	if err != nil || resp.StatusCode != http.StatusBadRequest {
		t.Errorf("without a cookie: %v, %v", resp, err)
	}
}

func TestInstallIsChecked(t *testing.T) {
	cfg := slackchat.Config{SigningSecret: "0123456789abcdef0123456789abcdef", Listen: "127.0.0.1:0"}
	good := slackchat.Install{ClientID: "1.2", ClientSecret: "hush", PublicURL: "https://heft.example/", Supervisors: []string{"T0/U0"}}
	for name, change := range map[string]func(*slackchat.Install){
		"":                    func(*slackchat.Install) {},
		"SLACK_CLIENT_SECRET": func(i *slackchat.Install) { i.ClientSecret = "" },
		"HEFT_PUBLIC_URL":     func(i *slackchat.Install) { i.PublicURL = "http://heft.example/" },
		"TEAM/USER":           func(i *slackchat.Install) { i.Supervisors = []string{"U0"} },
	} {
		i := good
		change(&i)
		if _, err := slackchat.NewTeams(cfg, i, bot.Clerk{}, quiet()); (err == nil) != (name == "") || err != nil && !strings.Contains(err.Error(), name) {
			t.Errorf("%s: %v", name, err)
		}
	}
}

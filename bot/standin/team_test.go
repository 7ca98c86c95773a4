package standin_test

import (
	"context"
	"net/url"
	"testing"

	"heft/bot/standin"
)

const otherTeam = "T0MILL0002"

// Platform documentation: one app, installed in several workspaces, hears
// of all of them over the same sockets; each has its own token.
func TestTwoWorkspaces(t *testing.T) {
	one := interacting(t)
	two, err := one.Another(standin.Options{Team: otherTeam, Channels: []standin.Channel{{ID: standin.Yard, Name: "yard"}}})
	if err != nil {
		t.Fatal(err)
	}
	if _, err := one.Another(standin.Options{Team: otherTeam}); err == nil {
		t.Error("the same workspace twice")
	}
	if one.BotToken() == two.BotToken() || one.Mention() == two.Mention() {
		t.Error("the two share a token or a bot")
	}
	for w, team := range map[*standin.Workspace]string{one: standin.TeamID, two: otherTeam} {
		if a := form(t, w, "auth.test"); a["team_id"] != team || "<@"+a["user_id"].(string)+">" != w.Mention() {
			t.Errorf("%s: %v", team, a)
		}
	}
	c, _ := connect(t, two)
	m := two.Say(standin.Yard, crew, two.Mention()+" hello")
	if f := c.told(); f.Payload["team_id"] != otherTeam || f.Payload["event_id"] != m.Events[0] {
		t.Errorf("told %+v", f)
	}
	if m := one.Say(standin.Yard, crew, two.Mention()); len(m.Events) != 0 {
		t.Error("a stranger's mention called the bot")
	}
	form(t, two, "chat.postMessage", "channel", standin.Yard, "text", "there", "thread_ts", m.TS)
	if got := two.Messages(standin.Yard); len(got) != 2 || got[1].BotID != two.BotID() {
		t.Errorf("there: %+v", got)
	}
	if got := one.Messages(standin.Yard); len(got) != 1 {
		t.Errorf("here: %+v", got)
	}
	if a := form(t, two, "chat.postMessage", "channel", standin.Direct, "text", "x"); a["error"] != "channel_not_found" {
		t.Errorf("the other's channel: %v", a)
	}
}

// Platform documentation: oauth.v2.access.
func TestInstall(t *testing.T) {
	w := interacting(t, func(o *standin.Options) {
		o.NotInstalled, o.ClientID, o.ClientSecret = true, "1.2", "hush"
	})
	if a := form(t, w, "auth.test"); a["error"] != "account_inactive" {
		t.Errorf("before: %v", a)
	}
	code := w.Code()
	access := func(id, secret, code string) map[string]any {
		_, _, a := post(t, w, "oauth.v2.access", "", formType, url.Values{"client_id": {id}, "client_secret": {secret}, "code": {code}}.Encode())
		return a
	}
	for want, a := range map[string]map[string]any{
		"invalid_client_id": access("9.9", "hush", code), "bad_client_secret": access("1.2", "loud", code), "invalid_code": access("1.2", "hush", "x"),
	} {
		if a["error"] != want {
			t.Errorf("%v, want %s", a, want)
		}
	}
	if a := access("1.2", "hush", code); a["access_token"] != w.BotToken() || at(a, "team.id") != standin.TeamID || a["token_type"] != "bot" {
		t.Errorf("installed: %v", a)
	}
	if a := access("1.2", "hush", code); a["error"] != "invalid_code" {
		t.Errorf("the code twice: %v", a)
	}
	if a := form(t, w, "auth.test"); a["ok"] != true {
		t.Errorf("after: %v", a)
	}
}

// Platform documentation: apps.uninstall, app_uninstalled, tokens_revoked.
func TestUninstall(t *testing.T) {
	w := interacting(t, func(o *standin.Options) { o.ClientID, o.ClientSecret = "1.2", "hush" })
	c, _ := connect(t, w)
	if a := form(t, w, "apps.uninstall", "client_id", "1.2", "client_secret", "loud"); a["error"] != "bad_client_secret" {
		t.Errorf("uninstalled by a stranger: %v", a)
	}
	if a := form(t, w, "apps.uninstall", "client_id", "1.2", "client_secret", "hush"); a["ok"] != true {
		t.Errorf("uninstalled: %v", a)
	}
	for _, want := range []string{"app_uninstalled", "tokens_revoked"} {
		if f := c.read(); f.Payload.Event["type"] != want {
			t.Errorf("told %+v, want %s", f, want)
		}
	}
	if a := form(t, w, "auth.test"); a["error"] != "account_inactive" {
		t.Errorf("afterwards: %v", a)
	}
	if m := w.Say(standin.Direct, crew, "anyone?"); len(m.Events) != 0 {
		t.Error("told of a message after it was gone")
	}
}

// Platform documentation: member_joined_channel, of people and of the bot.
func TestJoining(t *testing.T) {
	w := interacting(t)
	c, _ := connect(t, w)
	if id := w.Join(standin.Away, crew); id != "" {
		t.Error("told of a channel the bot is not in")
	}
	for _, who := range []string{w.BotUser(), crew} {
		id := w.Join(standin.Away, who)
		if f := c.read(); f.Payload.EventID != id || f.Payload.Event["type"] != "member_joined_channel" || f.Payload.Event["user"] != who {
			t.Errorf("told %+v", f)
		}
	}
	if a := form(t, w, "chat.postMessage", "channel", standin.Away, "text", "hello"); a["ok"] != true {
		t.Errorf("invited: %v", a)
	}
}

func TestSnapshotAndNext(t *testing.T) {
	w := interacting(t)
	before := w.Snapshot()
	if len(before.Channels) != 3 || before.Channels[0].ID != standin.Yard || len(before.Users) != 3 || !before.Users[2].Bot {
		t.Fatalf("at first: %+v", before)
	}
	seen := make(chan int64, 1)
	go func() {
		v, _ := w.Next(t.Context(), before.Version)
		seen <- v
	}()
	m := w.Say(standin.Yard, crew, "14 in")
	if v := <-seen; v <= before.Version {
		t.Errorf("version %d after %d", v, before.Version)
	}
	after := w.Snapshot()
	w.Edit(m, "16 in")
	if got := after.Messages[standin.Yard]; len(got) != 1 || got[0].Text != "14 in" {
		t.Errorf("a snapshot changed: %+v", got)
	}
	if got := w.Snapshot().Messages[standin.Yard][0]; got.Text != "16 in" || !got.Edited {
		t.Errorf("edited: %+v", got)
	}
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	if _, err := w.Next(ctx, 1<<60); err == nil {
		t.Error("something newer than the newest")
	}
	still := w.Snapshot().Version
	if form(t, w, "auth.test"); w.Snapshot().Version != still {
		t.Error("a call that shows nothing changed the version")
	}
}

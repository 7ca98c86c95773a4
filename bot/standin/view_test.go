package standin_test

import (
	"strings"
	"testing"
	"time"

	"heft/bot/standin"
)

const modal = `{"type":"modal","callback_id":"job","title":{"type":"plain_text","text":"Job"},"submit":{"type":"plain_text","text":"Save"},` +
	`"blocks":[{"type":"input","block_id":"limit","label":{"type":"plain_text","text":"Limit"},"element":{"type":"plain_text_input","action_id":"lb"}}]}`

// interacting is a workspace whose crew may do everything with the app.
func interacting(t *testing.T, change ...func(*standin.Options)) *standin.Workspace {
	t.Helper()
	o := standin.Options{
		HomeTab: true,
		Scopes:  []string{"app_mentions:read", "chat:write", "im:history", "commands", "channels:read"},
		Events:  []string{"app_mention", "message.im", "app_home_opened", "member_joined_channel", "app_uninstalled", "tokens_revoked"},
		Channels: []standin.Channel{
			{ID: standin.Yard, Name: "yard"}, {ID: standin.Away, Name: "away", Absent: true},
			{ID: standin.Direct, Name: "ana", Members: []string{crew}},
		},
	}
	for _, c := range change {
		c(&o)
	}
	return start(t, o)
}

// Platform documentation: views.publish.
func TestHomeTab(t *testing.T) {
	w := interacting(t)
	c, _ := connect(t, w)
	id := w.OpenHome(crew)
	if f := c.read(); f.Payload.EventID != id || f.Payload.Event["type"] != "app_home_opened" || f.Payload.Event["channel"] != standin.Direct {
		t.Fatalf("told %+v", f)
	}
	home := `{"type":"home","blocks":[` + section("today") + `]}`
	a := form(t, w, "views.publish", "user_id", crew, "view", home)
	hash, _ := at(a, "view.hash").(string)
	if got := w.Snapshot().Homes[crew]; hash == "" || got.ID != at(a, "view.id") || got.Blocks[0].Text.Text != "today" {
		t.Fatalf("%v, kept %+v", a, got)
	}
	w.OpenHome(crew)
	if f := c.read(); at(f.Payload.Event, "view.id") != at(a, "view.id") {
		t.Errorf("opened again: %+v", f)
	}
	again := form(t, w, "views.publish", "user_id", crew, "view", home, "hash", hash)
	if again["ok"] != true || at(again, "view.id") != at(a, "view.id") {
		t.Errorf("published again: %v", again)
	}
	many := `{"type":"home","blocks":[` + strings.Join(many(101, func(int) string { return section("x") }), ",") + `]}`
	for _, c := range []struct{ name, user, view, hash, want string }{
		{"an old hash", crew, home, hash, "hash_conflict"},
		{"nobody", "U0NOBODY01", home, "", "invalid_arguments"},
		{"a modal", crew, modal, "", "invalid_arguments"},
		{"101 blocks", crew, many, "", "invalid_arguments"},
		{"no JSON", crew, "{", "", "invalid_arguments"},
		{"too large", crew, `{"type":"home","blocks":[]` + strings.Repeat(" ", 250_001) + `}`, "", "view_too_large"},
	} {
		if a := form(t, w, "views.publish", "user_id", c.user, "view", c.view, "hash", c.hash); a["error"] != c.want {
			t.Errorf("%s: %v", c.name, a)
		}
	}
	without := start(t, standin.Options{})
	if a := form(t, without, "views.publish", "user_id", crew, "view", home); a["error"] != "not_enabled" {
		t.Errorf("without a home tab: %v", a)
	}
}

// commander is an app that is called by a command, and hands out its
// triggers.
func commander(t *testing.T, w *standin.Workspace) (*client, func() string) {
	t.Helper()
	c, _ := connect(t, w)
	return c, func() string {
		t.Helper()
		i, err := w.Command(standin.Yard, crew, "/job", "")
		if err != nil {
			t.Fatal(err)
		}
		c.told()
		return i.TriggerID
	}
}

// Platform documentation, interactivity: a trigger is good for three seconds
// and for one modal.
func TestTriggers(t *testing.T) {
	var tick clock
	w := interacting(t, func(o *standin.Options) { o.Now = tick.now })
	_, trigger := commander(t, w)
	one := trigger()
	if a := form(t, w, "views.open", "trigger_id", one, "view", modal); a["ok"] != true {
		t.Fatal(a)
	}
	if got := w.Snapshot().Modals[crew]; got.Title.Text != "Job" || got.CallbackID != "job" {
		t.Errorf("on the screen: %+v", got)
	}
	if a := form(t, w, "views.open", "trigger_id", one, "view", modal); a["error"] != "exchanged_trigger_id" {
		t.Errorf("used twice: %v", a)
	}
	late := trigger()
	tick.pass(3*time.Second + time.Millisecond)
	if a := form(t, w, "views.open", "trigger_id", late, "view", modal); a["error"] != "expired_trigger_id" {
		t.Errorf("too late: %v", a)
	}
	if a := form(t, w, "views.open", "trigger_id", "made up", "view", modal); a["error"] != "invalid_arguments" {
		t.Errorf("made up: %v", a)
	}
}

// Platform documentation: views, fields of a view object.
func TestModalLimits(t *testing.T) {
	w := interacting(t)
	_, trigger := commander(t, w)
	title := `"title":{"type":"plain_text","text":"Job"},`
	for name, view := range map[string]string{
		"a home tab":             `{"type":"home","blocks":[]}`,
		"no title":               strings.Replace(modal, title, "", 1),
		"a long title":           strings.Replace(modal, `"Job"`, `"`+words(25)+`"`, 1),
		"nothing to submit with": strings.Replace(modal, `"submit":{"type":"plain_text","text":"Save"},`, "", 1),
		"long metadata":          strings.Replace(modal, `"type":"modal"`, `"type":"modal","private_metadata":"`+words(3001)+`"`, 1),
		"long callback":          strings.Replace(modal, `"job"`, `"`+words(256)+`"`, 1),
	} {
		if a := form(t, w, "views.open", "trigger_id", trigger(), "view", view); a["error"] != "invalid_arguments" {
			t.Errorf("%s: %v", name, a)
		}
	}
}

// Platform documentation: views, handling view_submission.
func TestSubmit(t *testing.T) {
	w := interacting(t)
	c, trigger := commander(t, w)
	open := func() {
		t.Helper()
		if a := form(t, w, "views.open", "trigger_id", trigger(), "view", modal); a["ok"] != true {
			t.Fatal(a)
		}
	}
	enter := map[string]map[string]string{"limit": {"lb": "900"}}
	submit := func() told {
		t.Helper()
		if _, err := w.Submit(crew, enter); err != nil {
			t.Fatal(err)
		}
		return c.told()
	}
	if _, err := w.Submit(crew, enter); err == nil {
		t.Error("submitted with nothing open")
	}
	open()
	if _, err := w.Submit(crew, nil); err == nil {
		t.Error("an empty input was submitted")
	}
	f := submit()
	if f.Type != "interactive" || !f.Accepts || f.Payload["type"] != "view_submission" || at(f.Payload, "view.state.values.limit.lb.value") != "900" {
		t.Fatalf("told %+v", f)
	}
	c.answer(f.Envelope, map[string]any{"response_action": "errors", "errors": map[string]string{"limit": "too much"}})
	await(t, w, func() bool { return w.Snapshot().Modals[crew].Errors["limit"] == "too much" })
	f = submit()
	c.answer(f.Envelope, map[string]any{"response_action": "update", "view": rawJSON(strings.Replace(modal, `"Job"`, `"Sure?"`, 1))})
	await(t, w, func() bool { return w.Snapshot().Modals[crew].Title.Text == "Sure?" })
	c.ack(submit().Envelope)
	closed := func() bool { _, open := w.Snapshot().Modals[crew]; return !open }
	await(t, w, closed)
	open()
	w.Dismiss(crew)
	if !closed() {
		t.Error("dismissed and still open")
	}
}

package standin_test

import (
	"encoding/json"
	"errors"
	"net/http"
	"testing"
	"time"

	"heft/bot/standin"
)

func rawJSON(s string) json.RawMessage { return json.RawMessage(s) }

// Platform documentation: interactivity, block_actions payloads.
func TestPress(t *testing.T) {
	w := interacting(t)
	c, _ := connect(t, w)
	asked := w.Say(standin.Yard, crew, "maple limb")
	a := form(t, w, "chat.postMessage", "channel", standin.Yard, "text", "Which maple?", "thread_ts", asked.TS,
		"blocks", `[`+actions(button(`,"action_id":"red","value":"red maple"`), choice("static_select", 3))+`]`)
	ts, _ := a["ts"].(string)
	i, err := w.Press(standin.Press{User: crew, Channel: standin.Yard, TS: ts, Action: "red"})
	if err != nil {
		t.Fatal(err)
	}
	f := c.told()
	if f.Type != "interactive" || f.Payload["type"] != "block_actions" {
		t.Fatalf("told %+v", f)
	}
	for path, want := range map[string]any{
		"user.id": crew, "team.id": standin.TeamID, "channel.id": standin.Yard, "message.ts": ts,
		"container.type": "message", "container.message_ts": ts, "container.thread_ts": asked.TS, "container.is_ephemeral": false,
		"trigger_id": i.TriggerID, "response_url": i.ResponseURL,
		"actions.0.action_id": "red", "actions.0.value": "red maple", "actions.0.text.text": "go",
	} {
		if got := at(f.Payload, path); got != want {
			t.Errorf("%s is %v, want %v", path, got, want)
		}
	}
	if _, err := w.Press(standin.Press{User: crew, Channel: standin.Yard, TS: ts, Action: "c", Options: []string{"2"}}); err != nil {
		t.Fatal(err)
	}
	if f := c.told(); at(f.Payload, "actions.0.selected_option.value") != "2" {
		t.Errorf("chosen: %+v", f)
	}
	for name, p := range map[string]standin.Press{
		"no such element": {User: crew, Channel: standin.Yard, TS: ts, Action: "blue"},
		"no such option":  {User: crew, Channel: standin.Yard, TS: ts, Action: "c", Options: []string{"9"}},
		"no option":       {User: crew, Channel: standin.Yard, TS: ts, Action: "c"},
		"no such message": {User: crew, Channel: standin.Yard, TS: "1.000001", Action: "red"},
		"no such view":    {User: crew, View: "V1", Action: "red"},
	} {
		if _, err := w.Press(p); err == nil {
			t.Errorf("%s: pressed all the same", name)
		}
	}
}

// What a program makes up comes as it is, under the person who runs it.
func TestAct(t *testing.T) {
	w := interacting(t)
	c, _ := connect(t, w)
	i, err := w.Act(crew, map[string]any{"type": "block_actions", "actions": []any{map[string]any{"value": "made up"}}})
	if err != nil {
		t.Fatal(err)
	}
	f := c.told()
	for path, want := range map[string]any{
		"type": "block_actions", "user.id": crew, "team.id": standin.TeamID, "trigger_id": i.TriggerID, "actions.0.value": "made up",
	} {
		if got := at(f.Payload, path); f.Type != "interactive" || got != want {
			t.Errorf("%s of %s is %v, want %v", path, f.Type, got, want)
		}
	}
}

func TestPressInTheHomeTabAndInPrivate(t *testing.T) {
	w := interacting(t)
	c, _ := connect(t, w)
	a := form(t, w, "views.publish", "user_id", crew, "view", `{"type":"home","blocks":[`+actions(button(`,"action_id":"today"`))+`]}`)
	view, _ := at(a, "view.id").(string)
	if _, err := w.Press(standin.Press{User: crew, View: view, Action: "today"}); err != nil {
		t.Fatal(err)
	}
	f := c.told()
	if at(f.Payload, "container.type") != "view" || at(f.Payload, "view.id") != view || f.Payload["response_url"] != nil || f.Payload["message"] != nil {
		t.Errorf("told %+v", f)
	}
	if _, err := w.Press(standin.Press{User: "U0CREW0002", View: view, Action: "today"}); err == nil {
		t.Error("pressed in somebody else's home tab")
	}
	a = form(t, w, "chat.postEphemeral", "channel", standin.Yard, "user", crew, "text", "x", "blocks", "["+actions(button(`,"action_id":"ok"`))+"]")
	ts, _ := a["message_ts"].(string)
	if _, err := w.Press(standin.Press{User: "U0CREW0002", Channel: standin.Yard, TS: ts, Action: "ok"}); err == nil {
		t.Error("pressed in somebody else's private message")
	}
	i, err := w.Press(standin.Press{User: crew, Channel: standin.Yard, TS: ts, Action: "ok"})
	if err != nil {
		t.Fatal(err)
	}
	if f := c.told(); at(f.Payload, "container.is_ephemeral") != true || f.Payload["message"] != nil {
		t.Errorf("told %+v", f)
	}
	if status, says := respond(t, i.ResponseURL, `{"replace_original":true,"text":"done"}`); status != 200 {
		t.Fatal(says)
	}
	if m := w.Messages(standin.Yard)[0]; m.Text != "done" || m.For != crew || len(m.Blocks) != 0 {
		t.Errorf("replaced by %+v", m)
	}
}

// presser is a workspace with one button in it, and what presses it and
// returns the response_url.
func presser(t *testing.T, tick *clock) (w *standin.Workspace, ts string, press func() string) {
	t.Helper()
	w = interacting(t, func(o *standin.Options) { o.Now = tick.now })
	c, _ := connect(t, w)
	a := form(t, w, "chat.postMessage", "channel", standin.Yard, "text", "x", "blocks", "["+actions(button(`,"action_id":"go"`))+"]")
	ts, _ = a["ts"].(string)
	return w, ts, func() string {
		t.Helper()
		i, err := w.Press(standin.Press{User: crew, Channel: standin.Yard, TS: ts, Action: "go"})
		if err != nil {
			t.Fatal(err)
		}
		c.told()
		return i.ResponseURL
	}
}

// Platform documentation: interactivity, message responses; five times
// within thirty minutes.
func TestResponseURL(t *testing.T) {
	w, _, press := presser(t, &clock{})
	to := press()
	for i, body := range []string{
		`{"text":"for you"}`, `{"text":"for all","response_type":"in_channel"}`,
		`{"text":""}`, `{"text":"x","blocks":[` + section("") + `]}`, `{`, `{"text":"a sixth"}`,
	} {
		want := []int{200, 200, 400, 400, 400, 404}[i]
		if status, says := respond(t, to, body); status != want {
			t.Errorf("%s: %d %s, want %d", body, status, says, want)
		}
	}
	got := w.Messages(standin.Yard)
	if len(got) != 3 || got[1].For != crew || got[1].Text != "for you" || got[2].For != "" || got[2].Text != "for all" {
		t.Errorf("said %+v", got)
	}
	if status, _ := respond(t, to+"0", `{"text":"x"}`); status != http.StatusNotFound {
		t.Errorf("made up: %d", status)
	}
}

// Platform documentation: interactivity, message responses, replacing and
// deleting the original.
func TestResponseReplaces(t *testing.T) {
	var tick clock
	w, ts, press := presser(t, &tick)
	late := press()
	w.Fail(standin.Fault{Method: "response_url", Status: 503})
	if status, _ := respond(t, late, `{"text":"x"}`); status != 503 {
		t.Errorf("made to fail: %d", status)
	}
	if status, says := respond(t, late, `{"text":"two","replace_original":true}`); status != 200 || w.Messages(standin.Yard)[0].Text != "two" {
		t.Errorf("%d %s: %+v", status, says, w.Messages(standin.Yard)[0])
	}
	tick.pass(30*time.Minute + time.Second)
	if status, says := respond(t, late, `{"text":"x"}`); status != 404 || says != "expired_url" {
		t.Errorf("too late: %d %s", status, says)
	}
	form(t, w, "chat.update", "channel", standin.Yard, "ts", ts, "text", "x", "blocks", "["+actions(button(`,"action_id":"go"`))+"]")
	if status, _ := respond(t, press(), `{"delete_original":true}`); status != 200 || len(w.Messages(standin.Yard)) != 0 {
		t.Errorf("not deleted: %d", status)
	}
}

// Platform documentation: slash commands; shortcuts.
func TestCommandAndShortcut(t *testing.T) {
	w := interacting(t)
	if _, err := w.Command(standin.Yard, crew, "/job", ""); !errors.Is(err, standin.ErrNobodyListens) {
		t.Errorf("with no socket: %v", err)
	}
	c, _ := connect(t, w)
	i, err := w.Command(standin.Yard, crew, "/job", "900 lb & up")
	if err != nil {
		t.Fatal(err)
	}
	f := c.told()
	if f.Type != "slash_commands" || !f.Accepts || f.Payload["command"] != "/job" || f.Payload["text"] != "900 lb & up" ||
		f.Payload["user_name"] != "ana" || f.Payload["channel_id"] != standin.Yard || f.Payload["response_url"] != i.ResponseURL {
		t.Errorf("told %+v", f)
	}
	c.answer(f.Envelope, map[string]string{"text": "noted"})
	await(t, w, func() bool { return len(w.Messages(standin.Yard)) == 1 })
	if m := w.Messages(standin.Yard)[0]; m.For != crew || m.Text != "noted" {
		t.Errorf("answered %+v", m)
	}
	m := w.Say(standin.Yard, crew, "14 in red oak")
	i, err = w.Shortcut(m, crew, "weigh")
	if err != nil {
		t.Fatal(err)
	}
	f = c.told()
	if f.Payload["type"] != "message_action" || f.Payload["callback_id"] != "weigh" || at(f.Payload, "message.text") != m.Text || f.Payload["response_url"] != i.ResponseURL {
		t.Errorf("told %+v", f)
	}
	if status, _ := respond(t, i.ResponseURL, `{"text":"x","replace_original":true}`); status != 400 {
		t.Error("the app rewrote what a person said")
	}
	bare := start(t, standin.Options{})
	if _, err := bare.Command(standin.Yard, crew, "/job", ""); err == nil {
		t.Error("a command without its scope")
	}
	if _, err := bare.Shortcut(bare.Say(standin.Yard, crew, "x"), crew, "weigh"); err == nil {
		t.Error("a shortcut without its scope")
	}
}

package practice_test

import (
	"context"
	"errors"
	"fmt"
	"net/http/httptest"
	"strings"
	"testing"

	"heft/bot/practice"
)

const buttons = `[{"type":"section","text":{"type":"mrkdwn","text":"*Which* maple?"},"fields":[{"type":"mrkdwn","text":"one"}]},` +
	`{"type":"divider"},{"type":"context","elements":[{"type":"mrkdwn","text":"tap one"}]},` +
	`{"type":"actions","block_id":"choices","elements":[` +
	`{"type":"button","action_id":"red","value":"red maple","style":"primary","text":{"type":"plain_text","text":"Red"},"accessibility_label":"Red maple"},` +
	`{"type":"button","action_id":"off","style":"danger","text":{"type":"plain_text","text":"Throw away"},"confirm":{"title":{"type":"plain_text","text":"Sure?"},` +
	`"text":{"type":"plain_text","text":"It is gone then."},"confirm":{"type":"plain_text","text":"Yes"},"deny":{"type":"plain_text","text":"No"}}},` +
	`{"type":"static_select","action_id":"more","placeholder":{"type":"plain_text","text":"Others"},"options":[{"text":{"type":"plain_text","text":"Sugar"},"value":"sugar maple"}]}]}]`

func TestButtons(t *testing.T) {
	r := open(t, nil)
	a := r.call("chat.postMessage", "channel", mill, "text", "fallback", "blocks", buttons)
	ts, _ := a["ts"].(string)
	_, page := r.get("/?job=" + mill)
	r.want(page, `<p class="head"><strong>Which</strong> maple?</p>`, "<hr>", `aria-label="Red maple"`, `aria-label="Others"`, ">Throw away</summary>", ">Yes</button>")
	r.want(seen(page), "tap one", "It is gone then.", "Sugar")
	r.without(page, "fallback")
	_, page = r.post("/press", "channel", mill, "ts", ts, "block", "choices", "action", "red")
	told := r.next()
	act := told["actions"].([]any)[0].(map[string]any)
	if told["type"] != "block_actions" || act["value"] != "red maple" || told["user"].(map[string]any)["id"] != rosa {
		t.Errorf("told %+v", told)
	}
	r.without(seen(page), "did not take that")
	r.post("/press", "channel", mill, "ts", ts, "action", "more", "option", "sugar maple", "who", "climber")
	told = r.next()
	act = told["actions"].([]any)[0].(map[string]any)
	if act["selected_option"].(map[string]any)["value"] != "sugar maple" || told["user"].(map[string]any)["id"] != teo {
		t.Errorf("told %+v", told)
	}
}

func TestFrontSheetAndForm(t *testing.T) {
	r := open(t, nil)
	_, page := r.post("/front")
	r.want(seen(page), "The desk has written nothing here yet.")
	r.call("views.publish", "user_id", rosa, "view", `{"type":"home","blocks":[{"type":"header","text":{"type":"plain_text","text":"Today"}},`+
		`{"type":"actions","elements":[{"type":"button","action_id":"limit","text":{"type":"plain_text","text":"Set the limit"}}]}]}`)
	_, page = r.get("/?front=1&job=" + mill)
	r.want(seen(page), "Today", "Set the limit")
	view := r.space.Snapshot().Homes[rosa].ID
	resp, _ := r.post("/press", "front", "1", "view", view, "action", "limit")
	if resp.Request.URL.Query().Get("front") != "1" {
		t.Errorf("led to %s", resp.Request.URL)
	}
	trigger, _ := r.next()["trigger_id"].(string)
	r.call("views.open", "trigger_id", trigger, "view", `{"type":"modal","title":{"type":"plain_text","text":"Limit"},"submit":{"type":"plain_text","text":"Keep"},`+
		`"blocks":[{"type":"input","block_id":"limit","hint":{"type":"plain_text","text":"in pounds"},"label":{"type":"plain_text","text":"Heaviest pick"},"element":{"type":"plain_text_input","action_id":"lb"}}]}`)
	_, page = r.get("/?job=" + mill)
	r.want(page, `<dialog class="paper modal"`, `<div class="board" inert>`, `<label for="limit/lb">Heaviest pick</label>`, ">Keep</button>", "in pounds")
	r.reply = `{"response_action":"errors","errors":{"limit":"that is no weight"}}`
	_, page = r.post("/submit", "limit/lb", "lots")
	r.want(page, `<span class="note" role="alert">that is no weight</span>`)
	r.next()
	r.reply = ""
	_, page = r.post("/submit", "limit/lb", "900")
	if state := r.next()["view"].(map[string]any)["state"].(map[string]any)["values"]; !strings.Contains(fmt.Sprint(state), "value:900") {
		t.Errorf("submitted %v", state)
	}
	r.without(page, "<dialog", " inert")
}

func TestCommandAndDismiss(t *testing.T) {
	r := open(t, nil)
	r.reply = `{"text":"noted"}`
	_, page := r.post("/say", "text", "/job limit 900 lb")
	told := r.next()
	if told["command"] != "/job" || told["text"] != "limit 900 lb" || len(r.space.Messages(mill)) != 1 {
		t.Errorf("told %v", told)
	}
	r.want(seen(page), "noted", "Only you see this")
	r.call("views.open", "trigger_id", told["trigger_id"].(string), "view", `{"type":"modal","title":{"type":"plain_text","text":"Limit"},"blocks":[]}`)
	_, page = r.get("/")
	r.want(page, `<dialog class="paper modal"`)
	_, page = r.post("/dismiss")
	r.without(page, "<dialog", " inert")
}

// Whoever is named behind an @ is mentioned, in a ticket, a correction and a
// command; nobody else is pinged.
func TestNaming(t *testing.T) {
	r := open(t, nil)
	r.post("/say", "text", "arborist @inge, not @everyone, inge@example.org", "desk", "1")
	m := r.space.Messages(mill)[0]
	if m.Text != r.space.Mention()+" arborist <@U0INGE0003>, not @everyone, inge@example.org" {
		t.Errorf("said %q", m.Text)
	}
	_, page := r.get("/?job=" + mill)
	r.want(page, ">arborist @inge, not @everyone, inge@example.org</textarea>")
	r.want(seen(page), "arborist @Inge , not")
	r.post("/correct", "ts", m.TS, "text", "arborist @Teo")
	if got := r.space.Messages(mill)[0].Text; got != r.space.Mention()+" arborist <@U0TEO00002>" {
		t.Errorf("corrected to %q", got)
	}
	r.post("/say", "text", "/heft arborist @inge")
	if told := r.next(); told["text"] != "arborist <@U0INGE0003>" {
		t.Errorf("told %v", told)
	}
}

// Asked alone, a ticket is the command; chosen on one that only the crew
// reads, the entry of its menu.
func TestAskingInOtherWays(t *testing.T) {
	r := open(t, nil)
	r.reply = `{"text":"plan on 530 lb"}`
	_, page := r.post("/say", "text", "14 in red oak log 6 ft", "desk", "1", "alone", "1")
	if told := r.next(); told["command"] != "/heft" || told["text"] != "14 in red oak log 6 ft" {
		t.Errorf("told %v", told)
	}
	r.want(seen(page), "plan on 530 lb", "Only you see this")
	r.without(seen(page), "Follow up on") // nobody can write under it
	r.reply = ""
	r.post("/say", "text", "for the desk", "desk", "1")
	r.post("/say", "text", "16 in red oak log 6 ft", "who", "climber")
	_, page = r.get("/?job=" + mill)
	if n := strings.Count(page, "/workout"); n != 1 {
		t.Errorf("%d tickets can be worked out", n)
	}
	said := r.space.Messages(mill)
	r.post("/workout", "ts", said[len(said)-1].TS)
	told := r.next()
	if told["type"] != "message_action" || told["callback_id"] != "work_out" || told["user"].(map[string]any)["id"] != rosa {
		t.Errorf("told %v", told)
	}
	_, page = r.post("/workout", "ts", said[0].TS) // one for a single reader
	r.want(seen(page), "not there any more")
}

// What leads to a message of the workspace leads to its ticket.
func TestLinksLeadToTickets(t *testing.T) {
	r := open(t, nil)
	link := func(to string) string {
		return `{"type":"actions","elements":[{"type":"button","action_id":"open","url":"` + to + `","text":{"type":"plain_text","text":"Open"}}]}`
	}
	m := r.space.Say(mill, rosa, "14 in")
	at := "https://crew.example/archives/" + mill + "/p" + strings.Replace(m.TS, ".", "", 1)
	r.call("views.publish", "user_id", rosa, "view", `{"type":"home","blocks":[`+link(at)+`,`+link(at+"?thread_ts=1.2")+`,`+link("https://example.org/")+
		`,{"type":"section","text":{"type":"mrkdwn","text":"at <#`+mill+`>"}}]}`)
	_, page := r.get("/?front=1&job=C0QUARRYRD")
	to := `href="/?job=` + mill + `&amp;lang=en&amp;who=groundworker#t` + strings.Replace(m.TS, ".", "-", 1) + `"`
	if n := strings.Count(page, to); n != 2 {
		t.Errorf("%d links to %s in %s", n, to, page)
	}
	r.without(page, "example.org")
	r.want(seen(page), "at Mill Lane")
}

func TestSwitchingTheDeskOffAndOn(t *testing.T) {
	var fault error
	space, off := open(t, nil).space, 0
	server := httptest.NewServer(practice.New(space, practice.Desk{Restart: func(context.Context) error { off++; return fault }}))
	defer server.Close()
	r := &rig{T: t, space: space, page: server}
	_, page := r.post("/restart")
	if off != 1 {
		t.Errorf("switched %d times", off)
	}
	r.want(page, `<p class="note told good" role="alert">The desk was off and is on again. It forgot nothing.</p></form>`)
	fault = errors.New("it stayed off")
	_, page = r.post("/restart")
	r.want(page, `<p class="note told" role="alert">The desk did not take that. Try again.</p></form>`)
}

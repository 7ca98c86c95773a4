package practice_test

import (
	"fmt"
	"strings"
	"testing"
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
	r.want(seen(page), "The desk has written nothing on your front sheet.")
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
	r.want(page, `role="dialog"`, `<label for="limit/lb">Heaviest pick</label>`, ">Keep</button>", "in pounds")
	r.reply = `{"response_action":"errors","errors":{"limit":"that is no weight"}}`
	_, page = r.post("/submit", "limit/lb", "lots")
	r.want(page, `<span class="note" role="alert">that is no weight</span>`)
	r.next()
	r.reply = ""
	_, page = r.post("/submit", "limit/lb", "900")
	if state := r.next()["view"].(map[string]any)["state"].(map[string]any)["values"]; !strings.Contains(fmt.Sprint(state), "value:900") {
		t.Errorf("submitted %v", state)
	}
	r.without(page, `role="dialog"`)
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
	r.want(page, `role="dialog"`)
	_, page = r.post("/dismiss")
	r.without(page, `role="dialog"`)
}

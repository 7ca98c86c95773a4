package standin

import (
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"slices"
)

// Interaction is what a person did with a part of the bot's, as the app was
// told of it.
type Interaction struct {
	Event       string // its id among the deliveries
	TriggerID   string
	ResponseURL string
}

// ErrNobodyListens is what a person sees as a failure: the app took nothing.
// An interaction is not tried again (documented: interactivity, responding).
var ErrNobodyListens = errors.New("the app did not take it")

// Press is one use of a button, a menu or a set of choices.
type Press struct {
	User    string
	Channel string // with TS, the message it stands in
	TS      string
	View    string   // or the view
	Block   string   // looked for in all blocks where empty
	Action  string   // the element's action_id
	Options []string // the values chosen, where it has options
}

// Press tells the app of an action (documented: interactivity, block_actions
// payloads).
func (w *Workspace) Press(p Press) (Interaction, error) {
	w.mu.Lock()
	payload, blocks, ok := w.container(p)
	if !ok {
		w.mu.Unlock()
		return Interaction{}, fmt.Errorf("nothing there for %s to press", p.User)
	}
	block, element, ok := sought(blocks, p.Block, p.Action)
	if !ok {
		w.mu.Unlock()
		return Interaction{}, fmt.Errorf("no element %q there", p.Action)
	}
	act := answer{"type": element.Type, "action_id": element.ActionID, "block_id": block, "action_ts": w.now()}
	if err := element.act(act, p.Options); err != nil {
		w.mu.Unlock()
		return Interaction{}, err
	}
	i := w.interaction(payload, p.User)
	payload["type"], payload["actions"] = "block_actions", []answer{act}
	if p.View == "" {
		i.ResponseURL = w.respondAt(p.Channel, p.User, p.TS)
		payload["response_url"] = i.ResponseURL
	}
	return w.tellOf(i, interactive, payload, nil)
}

// Act tells the app of an interaction of any shape, as Send does of an event:
// what it leaves out of what every interaction tells is filled in.
func (w *Workspace) Act(user string, payload map[string]any) (Interaction, error) {
	w.mu.Lock()
	all := answer{}
	i := w.interaction(all, user)
	maps.Copy(all, payload)
	return w.tellOf(i, interactive, all, nil)
}

// container is where the element stands: a message the person sees, or a
// view of theirs. The lock is held.
func (w *Workspace) container(p Press) (answer, []Block, bool) {
	if p.View != "" {
		for _, v := range []*View{w.homes[p.User], w.modals[p.User]} {
			if v != nil && v.ID == p.View {
				return answer{
					"container": answer{"type": "view", "view_id": v.ID}, "view": v.wire(w, answer{}),
				}, v.Blocks, true
			}
		}
		return nil, nil, false
	}
	c, m := w.channels[p.Channel], w.find(p.Channel, p.TS)
	if m == nil || m.For != "" && m.For != p.User || !c.has(p.User) {
		return nil, nil, false
	}
	box := answer{"type": "message", "message_ts": m.TS, "channel_id": c.ID, "is_ephemeral": m.For != ""}
	if m.ThreadTS != "" {
		box["thread_ts"] = m.ThreadTS
	}
	a := answer{"container": box, "channel": answer{"id": c.ID, "name": c.Name}, "state": answer{"values": answer{}}}
	if m.For == "" { // documented: a message for one person is not sent along
		a["message"] = m.wire(w)
	}
	return a, m.Blocks, true
}

// sought finds an element, and the id of its block.
func sought(blocks []Block, block, action string) (string, Element, bool) {
	for _, b := range blocks {
		all := slices.Clone(b.Elements)
		if b.Accessory != nil {
			all = append(all, *b.Accessory)
		}
		for _, e := range all {
			if e.ActionID == action && action != "" && (block == "" || block == b.ID) {
				return b.ID, e, true
			}
		}
	}
	return "", Element{}, false
}

// act adds what an element says when it is used.
func (e Element) act(to answer, chosen []string) error {
	if e.Type == "button" {
		to["text"], to["value"] = e.raw["text"], e.Value
		return nil
	}
	var options []Option
	for _, value := range chosen {
		i := slices.IndexFunc(e.Options, func(o Option) bool { return o.Value == value })
		if i < 0 {
			return fmt.Errorf("%s has no option %q", e.ActionID, value)
		}
		options = append(options, e.Options[i])
	}
	switch {
	case e.Type == "checkboxes":
		to["selected_options"] = options
	case len(options) == 1:
		to["selected_option"] = options[0]
	default:
		return fmt.Errorf("%s takes one option", e.ActionID)
	}
	return nil
}

// interaction adds what every interaction tells. The lock is held.
func (w *Workspace) interaction(payload answer, user string) Interaction {
	who, _ := w.user(user)
	i := Interaction{Event: fmt.Sprintf("Ix%09X", w.next()), TriggerID: w.triggered(user)}
	maps.Copy(payload, answer{
		"team": answer{"id": w.opts.Team, "domain": "crew"}, "api_app_id": AppID, "token": "standin-verification-token",
		"user":       answer{"id": user, "username": who.Name, "name": who.Name, "team_id": w.opts.Team},
		"trigger_id": i.TriggerID, "enterprise": nil, "is_enterprise_install": false,
	})
	return i
}

// tellOf sends an interaction once. The lock is held, and given back.
func (w *Workspace) tellOf(i Interaction, kind string, payload answer, reply func(json.RawMessage)) (Interaction, error) {
	data, err := json.Marshal(payload)
	e := &event{id: i.Event, kind: kind, payload: data, reply: reply}
	over, s, installed := w.requests.Events != "", (*socket)(nil), w.installed
	if !over {
		s = w.pick()
	}
	w.mu.Unlock()
	switch {
	case err != nil:
		return i, err
	case !installed || !over && s == nil:
		return i, ErrNobodyListens
	case !over:
		w.hand(s, retry{event: e})
		return i, nil
	}
	w.depart()
	w.request(retry{event: e})
	if !w.Acked(i.Event) {
		return i, ErrNobodyListens
	}
	return i, nil
}

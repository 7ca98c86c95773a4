package standin

import (
	"encoding/json"
	"fmt"
	"slices"
)

// commandScope is what commands and shortcuts need (documented: scopes,
// commands).
const commandScope = "commands"

// Command types a slash command. What the app acknowledges it with is said
// to the person, or to the channel where it asks for that (documented: slash
// commands, responding).
func (w *Workspace) Command(channel, user, command, text string) (Interaction, error) {
	if !slices.Contains(w.opts.Scopes, commandScope) {
		return Interaction{}, fmt.Errorf("the app was not granted %s", commandScope)
	}
	w.mu.Lock()
	c, who := w.channels[channel], User{}
	who, _ = w.user(user)
	i := w.interaction(answer{}, user)
	i.ResponseURL = w.respondAt(channel, user, "")
	to := &response{team: w, channel: channel, user: user}
	return w.tellOf(i, slashCommands, answer{
		"token": "standin-verification-token", "team_id": w.opts.Team, "team_domain": "crew", "api_app_id": AppID,
		"channel_id": c.ID, "channel_name": c.Name, "user_id": user, "user_name": who.Name,
		"command": command, "text": text, "response_url": i.ResponseURL, "trigger_id": i.TriggerID,
		"is_enterprise_install": "false",
	}, to.acknowledged)
}

// acknowledged says what a command was acknowledged with: an object as it
// asks for, or bare words (documented: slash commands, responding).
func (to *response) acknowledged(payload json.RawMessage) {
	if len(payload) == 0 {
		return
	}
	var a answered
	if json.Unmarshal(payload, &a) != nil {
		a = answered{Text: string(payload)}
	}
	_ = to.say(a) // one without words says nothing
}

// Shortcut chooses the app's entry in the menu of a message (documented:
// interactivity, shortcuts, message_action payloads).
func (w *Workspace) Shortcut(m Message, user, callbackID string) (Interaction, error) {
	if !slices.Contains(w.opts.Scopes, commandScope) {
		return Interaction{}, fmt.Errorf("the app was not granted %s", commandScope)
	}
	w.mu.Lock()
	c, kept := w.channels[m.Channel], w.find(m.Channel, m.TS)
	if kept == nil || kept.For != "" {
		w.mu.Unlock()
		return Interaction{}, fmt.Errorf("no message %s in %s", m.TS, m.Channel)
	}
	payload := answer{
		"type": "message_action", "callback_id": callbackID, "action_ts": w.now(), "message_ts": kept.TS,
		"channel": answer{"id": c.ID, "name": c.Name}, "message": kept.wire(w),
	}
	i := w.interaction(payload, user)
	i.ResponseURL = w.respondAt(c.ID, user, kept.TS)
	payload["response_url"] = i.ResponseURL
	return w.tellOf(i, interactive, payload, nil)
}

// Submit sends a person's modal off, with what they entered by block and
// action. The app's answer closes it, changes it, or marks what is wrong in
// it (documented: views, handling view_submission). A modal whose inputs are
// not filled in is not sent.
func (w *Workspace) Submit(user string, entered map[string]map[string]string) (Interaction, error) {
	w.mu.Lock()
	v := w.modals[user]
	if v == nil {
		w.mu.Unlock()
		return Interaction{}, fmt.Errorf("%s has no modal open", user)
	}
	values, err := v.state(entered)
	if err != nil {
		w.mu.Unlock()
		return Interaction{}, err
	}
	payload := answer{"type": "view_submission", "view": v.wire(w, values), "response_urls": []answer{}}
	i := w.interaction(payload, user)
	return w.tellOf(i, interactive, payload, func(p json.RawMessage) { w.submitted(v, p) })
}

// state is what was entered into a modal (documented: views, view state).
func (v *View) state(entered map[string]map[string]string) (answer, error) {
	values := answer{}
	for _, b := range v.Blocks {
		if b.Type != "input" || b.Element == nil {
			continue
		}
		text := entered[b.ID][b.Element.ActionID]
		if text == "" && !b.Optional {
			return nil, fmt.Errorf("the input %q is empty", b.ID)
		}
		e := answer{"type": b.Element.Type, "value": text}
		if len(b.Element.Options) > 0 {
			delete(e, "value")
			if err := b.Element.act(e, []string{text}); err != nil {
				return nil, err
			}
		}
		values[b.ID] = answer{b.Element.ActionID: e}
	}
	return values, nil
}

// submitted acts on the answer to a submission.
func (w *Workspace) submitted(v *View, payload json.RawMessage) {
	var a struct {
		Action string            `json:"response_action"`
		Errors map[string]string `json:"errors"`
		View   json.RawMessage   `json:"view"`
	}
	_ = json.Unmarshal(payload, &a) // no answer closes the modal
	var next *View
	var refused answer
	if a.Action == "update" || a.Action == "push" {
		next, refused = w.view(string(a.View), "modal")
	}
	w.mu.Lock()
	defer w.mu.Unlock()
	switch {
	case w.modals[v.User] != v || refused != nil: // the person sees a failure, the modal stays
	case a.Action == "errors":
		with := *v
		with.Errors = a.Errors
		w.modals[v.User] = &with
	case next != nil:
		w.place(next, v.User)
		w.modals[v.User] = next
	default:
		delete(w.modals, v.User)
	}
	w.show()
}

// Dismiss closes a person's modal; the app did not ask to be told.
func (w *Workspace) Dismiss(user string) {
	w.mu.Lock()
	defer w.mu.Unlock()
	delete(w.modals, user)
	w.show()
}

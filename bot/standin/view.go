package standin

import (
	"encoding/json"
	"fmt"
	"net/url"
	"time"
)

// View is a home tab or a modal.
type View struct {
	ID         string
	User       string // who sees it
	Type       string // home or modal
	Title      *Text
	Submit     *Text
	Close      *Text
	Blocks     []Block
	CallbackID string
	Metadata   string
	Hash       string
	Errors     map[string]string // of a modal's inputs, by block
}

// wireView is a view as the app sends it (documented: views, view objects).
type wireView struct {
	Type       string          `json:"type"`
	Title      *Text           `json:"title,omitempty"`
	Submit     *Text           `json:"submit,omitempty"`
	Close      *Text           `json:"close,omitempty"`
	Blocks     json.RawMessage `json:"blocks"`
	CallbackID string          `json:"callback_id"`
	Metadata   string          `json:"private_metadata"`
}

// wire is the view as payloads and answers carry it.
func (v View) wire(w *Workspace, state any) answer {
	return answer{
		"id": v.ID, "team_id": w.opts.Team, "type": v.Type, "title": v.Title, "submit": v.Submit, "close": v.Close,
		"blocks": v.Blocks, "callback_id": v.CallbackID, "private_metadata": v.Metadata, "hash": v.Hash,
		"state": answer{"values": state}, "app_id": AppID, "bot_id": w.botID, "root_view_id": v.ID,
	}
}

// maxView is the most bytes of a view (documented: views.open, errors).
const maxView = 250_000

// view reads and judges a view (documented: views, fields of a view object).
func (w *Workspace) view(text, kind string) (*View, answer) {
	var in wireView
	if err := json.Unmarshal([]byte(text), &in); err != nil {
		return nil, explained("invalid_arguments", err.Error())
	}
	blocks, refused := w.blocks(string(in.Blocks), viewBlocks)
	j := judge{}
	if refused != nil {
		j.found = refused["response_metadata"].(map[string]any)["messages"].([]string)
	}
	if in.Type != kind {
		j.wrong("/view/type", "a %s is wanted", kind)
	}
	j.long("/view/callback_id", "callback_id", in.CallbackID, 255)
	j.long("/view/private_metadata", "private_metadata", in.Metadata, 3_000)
	if kind == "modal" {
		j.modal(in, blocks)
	}
	switch {
	case len(text) > maxView:
		return nil, failed("view_too_large")
	case len(j.found) > 0:
		return nil, explained("invalid_arguments", j.found...)
	}
	return &View{
		Type: kind, Title: in.Title, Submit: in.Submit, Close: in.Close, Blocks: blocks,
		CallbackID: in.CallbackID, Metadata: in.Metadata,
	}, nil
}

// modal judges what only a modal has: a title, and a button to submit where
// it has inputs (documented: views, fields of a view object).
func (j *judge) modal(in wireView, blocks []Block) {
	if in.Title == nil {
		j.wrong("/view/title", "missing required field: title")
	}
	for _, t := range []*Text{in.Title, in.Submit, in.Close} {
		j.text("/view", t, 24, true)
	}
	for _, b := range blocks {
		if b.Type == "input" && in.Submit == nil {
			j.wrong("/view/submit", "a modal with inputs must have submit")
			return
		}
	}
}

// place gives a view its id and hash. The lock is held.
func (w *Workspace) place(v *View, user string) {
	v.ID, v.User = fmt.Sprintf("V%09X", w.next()), user
	v.Hash = fmt.Sprintf("%s.%08x", w.now(), w.next())
}

// publishView sets a person's home tab (documented: views.publish; that an
// unknown user is an invalid argument is from memory).
func (w *Workspace) publishView(args url.Values) answer {
	v, refused := w.view(args.Get("view"), "home")
	if refused != nil {
		return refused
	}
	w.mu.Lock()
	defer w.mu.Unlock()
	user, ok := w.user(args.Get("user_id"))
	before := w.homes[user.ID]
	switch hash := args.Get("hash"); {
	case !w.opts.HomeTab:
		return failed("not_enabled")
	case !ok:
		return explained("invalid_arguments", "invalid `user_id`")
	case hash != "" && (before == nil || before.Hash != hash):
		return failed("hash_conflict")
	}
	w.place(v, user.ID)
	if before != nil {
		v.ID = before.ID
	}
	w.homes[user.ID] = v
	w.show()
	return answer{"ok": true, "view": v.wire(w, answer{})}
}

// trigger is a person's action that may open one modal, soon (documented:
// interactivity, trigger_id: three seconds, once).
type trigger struct {
	team *Workspace
	user string
	at   time.Time
	used bool
}

const triggerLife = 3 * time.Second

// triggered makes a trigger. The lock is held.
func (w *Workspace) triggered(user string) string {
	id := fmt.Sprintf("%d.%s.%x", w.next(), w.opts.Team, w.next())
	w.triggers[id] = &trigger{team: w, user: user, at: w.shared.Now()}
	return id
}

// openView opens a modal on a person's screen (documented: views.open; the
// names of the errors of a trigger are from memory).
func (w *Workspace) openView(args url.Values) answer {
	v, refused := w.view(args.Get("view"), "modal")
	w.mu.Lock()
	defer w.mu.Unlock()
	t := w.triggers[args.Get("trigger_id")]
	switch {
	case t == nil || t.team != w:
		return explained("invalid_arguments", "invalid `trigger_id`")
	case t.used:
		return failed("exchanged_trigger_id")
	case w.shared.Now().Sub(t.at) > triggerLife:
		return failed("expired_trigger_id")
	case refused != nil:
		return refused
	}
	t.used = true
	w.place(v, t.user)
	w.modals[t.user] = v
	w.show()
	return answer{"ok": true, "view": v.wire(w, answer{})}
}

package standin

import (
	"crypto/rand"
	"net/http"
	"net/url"
	"strings"
)

// Code is what the platform hands the app's redirect address once a person
// has agreed to install it: good for one exchange (documented: installing
// with OAuth).
func (w *Workspace) Code() string {
	w.mu.Lock()
	defer w.mu.Unlock()
	code := rand.Text()
	w.codes[code] = w
	return code
}

// exchange turns a code into a token (documented: oauth.v2.access; id and
// secret travel as arguments or by HTTP Basic).
func (p *platform) exchange(r *http.Request, args url.Values) answer {
	id, secret := args.Get("client_id"), args.Get("client_secret")
	if user, password, ok := r.BasicAuth(); ok {
		id, secret = user, password
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	w := p.codes[args.Get("code")]
	switch {
	case id != p.shared.ClientID:
		return failed("invalid_client_id")
	case secret != p.shared.ClientSecret:
		return failed("bad_client_secret")
	case w == nil:
		return failed("invalid_code")
	}
	delete(p.codes, args.Get("code"))
	w.installed = true
	var who string // agreed to it
	if len(w.opts.Users) > 0 {
		who = w.opts.Users[0].ID
	}
	return answer{
		"ok": true, "access_token": w.opts.BotToken, "token_type": "bot", "scope": strings.Join(w.opts.Scopes, ","),
		"bot_user_id": w.botUser, "app_id": AppID, "team": answer{"id": w.opts.Team, "name": "crew"},
		"enterprise": nil, "is_enterprise_install": false, "authed_user": answer{"id": who},
	}
}

// Uninstall takes the app out of the workspace, as an owner would: its token
// is good for nothing, and it is told so (documented: app_uninstalled,
// tokens_revoked: both come, in no certain order).
func (w *Workspace) Uninstall() []string {
	w.mu.Lock()
	var events []*event
	if w.installed && w.opts.sends("app_uninstalled") {
		events = append(events, w.newEvent(answer{"type": "app_uninstalled", "event_ts": w.now()}))
	}
	if w.installed && w.opts.sends("tokens_revoked") {
		events = append(events, w.newEvent(answer{
			"type": "tokens_revoked", "event_ts": w.now(), "tokens": answer{"oauth": []string{}, "bot": []string{w.botUser}},
		}))
	}
	w.installed = false
	w.show()
	w.mu.Unlock()
	var ids []string
	for _, e := range events {
		ids = append(ids, e.id)
	}
	w.deliverAll(events)
	return ids
}

// uninstallCall is the app taking itself out (documented: apps.uninstall).
func (w *Workspace) uninstallCall(args url.Values) answer {
	switch {
	case args.Get("client_id") != w.shared.ClientID:
		return failed("invalid_client_id")
	case args.Get("client_secret") != w.shared.ClientSecret:
		return failed("bad_client_secret")
	}
	w.Uninstall()
	return answer{"ok": true}
}

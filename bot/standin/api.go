package standin

import (
	"encoding/json"
	"net/http"
	"net/url"
	"slices"
	"strings"
	"time"
)

// Call is one call of the Web API.
type Call struct {
	Method  string
	Team    string // whose token it came with; empty for none
	Channel string
	At      time.Time
	Status  int    // of HTTP
	Error   string // of the answer; empty when it went well
}

// answer is what a call returns.
type answer map[string]any

func failed(code string) answer { return answer{"ok": false, "error": code} }

// explained is a refusal with the reasons that help to mend it (documented:
// Web API, evaluating responses, response_metadata).
func explained(code string, why ...string) answer {
	a := failed(code)
	a["response_metadata"] = map[string]any{"messages": why}
	return a
}

// method is one call the workspace understands.
type method struct {
	// scope is what the token must have been granted; with an asterisk for
	// the kind of the channel it is called for.
	scope string
	app   bool // called with the app-level token
	proof bool // called with the client's id and secret, the token aside
	run   func(*Workspace, url.Values) answer
}

// methods by name (documented: the page of each method).
var methods = map[string]method{
	"auth.test":             {run: (*Workspace).authTest},
	"apps.connections.open": {app: true, run: (*Workspace).openConnection},
	"apps.uninstall":        {run: (*Workspace).uninstallCall},
	"oauth.v2.access":       {proof: true},

	"chat.postMessage":   {scope: "chat:write", run: (*Workspace).postMessage},
	"chat.postEphemeral": {scope: "chat:write", run: (*Workspace).postEphemeral},
	"chat.update":        {scope: "chat:write", run: (*Workspace).update},
	"chat.delete":        {scope: "chat:write", run: (*Workspace).deleteCall},
	"chat.getPermalink":  {run: (*Workspace).permalink},

	"reactions.add":    {scope: "reactions:write", run: (*Workspace).addReaction},
	"reactions.remove": {scope: "reactions:write", run: (*Workspace).removeReaction},

	"views.publish": {run: (*Workspace).publishView},
	"views.open":    {run: (*Workspace).openView},

	"users.info":            {scope: "users:read", run: (*Workspace).userInfo},
	"conversations.info":    {scope: "*:read", run: (*Workspace).channelInfo},
	"conversations.members": {scope: "*:read", run: (*Workspace).channelMembers},
	"conversations.replies": {scope: "*:history", run: (*Workspace).channelReplies},

	"files.getUploadURLExternal":   {scope: "files:write", run: (*Workspace).uploadURL},
	"files.completeUploadExternal": {scope: "files:write", run: (*Workspace).completeUpload},
}

// maxBody bounds what one call may send.
const maxBody = 1 << 20

// call is a call under way.
type call struct {
	name string
	args url.Values
	team *Workspace // nil until the token is known to be good
}

// serveAPI answers one call (documented: Web API).
func (p *platform) serveAPI(rw http.ResponseWriter, r *http.Request) {
	c := call{name: strings.TrimPrefix(r.URL.Path, "/api/")}
	var token string
	var err error
	if c.args, token, err = arguments(rw, r); err != nil {
		p.finish(rw, c, http.StatusOK, failed("invalid_arguments"))
		return
	}
	if channel := c.args.Get("channel_id"); channel != "" {
		c.args.Set("channel", channel) // the methods of files name it so
	}
	m, known := methods[c.name]
	if !known {
		p.finish(rw, c, http.StatusOK, failed("unknown_method"))
		return
	}
	if m.proof {
		p.finish(rw, c, http.StatusOK, p.exchange(r, c.args))
		return
	}
	var refused answer
	if c.team, refused = p.authorise(m, token, c.args); refused != nil {
		p.finish(rw, c, http.StatusOK, refused)
		return
	}
	if f := p.fault(c.name, c.args.Get("channel")); f != nil {
		p.fail(rw, c, *f)
		return
	}
	if wait := c.team.limit(c.name, c.args.Get("channel")); wait > 0 {
		p.fail(rw, c, Fault{Status: http.StatusTooManyRequests, RetryAfter: wait, Error: "ratelimited"})
		return
	}
	p.finish(rw, c, http.StatusOK, m.run(c.team, c.args))
}

// authorise checks the token and its scopes, and finds whose it is
// (documented: Web API, errors common to all methods).
func (p *platform) authorise(m method, token string, args url.Values) (*Workspace, answer) {
	p.mu.Lock()
	defer p.mu.Unlock()
	i := slices.IndexFunc(p.teams, func(w *Workspace) bool { return w.opts.BotToken == token })
	switch {
	case token == "":
		return nil, failed("not_authed")
	case token == p.shared.AppToken && m.app:
		return p.teams[0], nil
	case token == p.shared.AppToken || i >= 0 && m.app:
		return nil, failed("not_allowed_token_type")
	case i < 0:
		return nil, failed("invalid_auth")
	}
	w := p.teams[i]
	if !w.installed {
		return nil, failed("account_inactive")
	}
	if need := w.scopeFor(m.scope, args.Get("channel")); need != "" && !slices.Contains(w.opts.Scopes, need) {
		a := failed("missing_scope")
		a["needed"], a["provided"] = need, strings.Join(w.opts.Scopes, ",")
		return nil, a
	}
	return w, nil
}

// scopeFor puts the kind of a channel into a scope (documented:
// conversations, one scope for each kind).
func (w *Workspace) scopeFor(scope, channel string) string {
	kind := "channels"
	if (Channel{ID: channel}).direct() {
		kind = "im"
	}
	return strings.Replace(scope, "*", kind, 1)
}

// finish writes the answer and keeps the call.
func (p *platform) finish(rw http.ResponseWriter, c call, status int, a answer) {
	code, _ := a["error"].(string)
	if code == "" && a["ok"] == false {
		code = "none given"
	}
	kept := Call{Method: c.name, Channel: c.args.Get("channel"), At: time.Now(), Status: status, Error: code}
	if c.team != nil {
		kept.Team = c.team.opts.Team
	}
	p.mu.Lock()
	p.calls = append(p.calls, kept)
	p.bump()
	p.mu.Unlock()
	rw.Header().Set("Content-Type", "application/json; charset=utf-8")
	rw.WriteHeader(status)
	_ = json.NewEncoder(rw).Encode(a)
}

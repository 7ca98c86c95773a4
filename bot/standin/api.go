package standin

import (
	"encoding/json"
	"fmt"
	"io"
	"mime"
	"net/http"
	"net/url"
	"slices"
	"strconv"
	"strings"
	"time"
)

// Call is one call of the Web API.
type Call struct {
	Method  string
	Channel string
	At      time.Time
	Status  int    // of HTTP
	Error   string // of the answer; empty when it went well
}

// Fault is how a call is to fail.
type Fault struct {
	Method     string // such as chat.postMessage, or upload for the address that takes files
	Channel    string // only there; empty for all
	Times      int    // how many calls; 0 is taken as 1
	Status     int    // of HTTP; 0 is taken as 200 with "ok":false
	RetryAfter int    // seconds, sent along with 429
	Error      string // left out of the answer where empty
}

// Fail makes the next calls fail.
func (w *Workspace) Fail(f Fault) {
	w.mu.Lock()
	defer w.mu.Unlock()
	f.Times = max(1, f.Times)
	w.faults = append(w.faults, &f)
}

// answer is what a call returns.
type answer map[string]any

func failed(code string) answer { return answer{"ok": false, "error": code} }

// method is one call the workspace understands.
type method struct {
	scope string // what the token must have been granted
	app   bool   // called with the app-level token
	run   func(*Workspace, url.Values) answer
}

// methods by name (platform documentation, the page of each method).
var methods = map[string]method{
	"auth.test":             {run: (*Workspace).authTest},
	"apps.connections.open": {app: true, run: (*Workspace).openConnection},
	"chat.postMessage":      {scope: "chat:write", run: (*Workspace).postMessage},
	"chat.update":           {scope: "chat:write", run: (*Workspace).update},

	"files.getUploadURLExternal":   {scope: "files:write", run: (*Workspace).uploadURL},
	"files.completeUploadExternal": {scope: "files:write", run: (*Workspace).completeUpload},
}

// maxBody bounds what one call may send.
const maxBody = 1 << 20

// serveAPI answers one call (platform documentation, Web API).
func (w *Workspace) serveAPI(rw http.ResponseWriter, r *http.Request) {
	name := strings.TrimPrefix(r.URL.Path, "/api/")
	args, token, err := arguments(rw, r)
	if err != nil {
		w.finish(rw, name, args, http.StatusOK, failed("invalid_arguments"))
		return
	}
	if channel := args.Get("channel_id"); channel != "" {
		args.Set("channel", channel) // the methods of files name it so
	}
	m, known := methods[name]
	if !known {
		w.finish(rw, name, args, http.StatusOK, failed("unknown_method"))
		return
	}
	if refused := w.authorise(m, token); refused != nil {
		w.finish(rw, name, args, http.StatusOK, refused)
		return
	}
	if f := w.fault(name, args.Get("channel")); f != nil {
		w.fail(rw, name, args, *f)
		return
	}
	if wait := w.limit(name, args.Get("channel")); wait > 0 {
		w.fail(rw, name, args, Fault{Status: http.StatusTooManyRequests, RetryAfter: wait, Error: "ratelimited"})
		return
	}
	w.finish(rw, name, args, http.StatusOK, m.run(w, args))
}

// arguments reads a form or a JSON body. The token travels in the
// Authorization header or as an argument of the form, never in JSON
// (platform documentation, Web API, authentication).
func arguments(rw http.ResponseWriter, r *http.Request) (url.Values, string, error) {
	r.Body = http.MaxBytesReader(rw, r.Body, maxBody)
	token, _ := strings.CutPrefix(r.Header.Get("Authorization"), "Bearer ")
	kind, _, _ := mime.ParseMediaType(r.Header.Get("Content-Type"))
	if kind != "application/json" {
		if err := r.ParseForm(); err != nil {
			return url.Values{}, "", err
		}
		if token == "" {
			token = r.PostForm.Get("token")
		}
		return r.PostForm, token, nil
	}
	args := url.Values{}
	body := map[string]any{}
	if err := json.NewDecoder(r.Body).Decode(&body); err != nil && err != io.EOF {
		return args, token, err
	}
	for k, v := range body {
		args.Set(k, fmt.Sprint(v))
	}
	args.Del("token")
	return args, token, nil
}

// authorise checks the token and its scopes (platform documentation, Web
// API, errors common to all methods).
func (w *Workspace) authorise(m method, token string) answer {
	right, other := w.opts.BotToken, w.opts.AppToken
	if m.app {
		right, other = other, right
	}
	switch {
	case token == "":
		return failed("not_authed")
	case token == other:
		return failed("not_allowed_token_type")
	case token != right:
		return failed("invalid_auth")
	case m.scope != "" && !slices.Contains(w.opts.Scopes, m.scope):
		a := failed("missing_scope")
		a["needed"], a["provided"] = m.scope, strings.Join(w.opts.Scopes, ",")
		return a
	}
	return nil
}

// fault takes the next fault that was asked for, if there is one.
func (w *Workspace) fault(name, channel string) *Fault {
	w.mu.Lock()
	defer w.mu.Unlock()
	for i, f := range w.faults {
		if f.Method != name || f.Channel != "" && f.Channel != channel {
			continue
		}
		if f.Times--; f.Times == 0 {
			w.faults = slices.Delete(w.faults, i, i+1)
		}
		return f
	}
	return nil
}

// limit returns the seconds to wait before a channel takes another post
// (platform documentation, rate limits: about one a second and channel).
func (w *Workspace) limit(name, channel string) int {
	if name != "chat.postMessage" || w.opts.PostEvery == 0 {
		return 0
	}
	w.mu.Lock()
	defer w.mu.Unlock()
	if early := w.opts.PostEvery - time.Since(w.lastPost[channel]); early > 0 {
		return int(early/time.Second) + 1
	}
	w.lastPost[channel] = time.Now()
	return 0
}

func (w *Workspace) fail(rw http.ResponseWriter, name string, args url.Values, f Fault) {
	if f.RetryAfter > 0 {
		rw.Header().Set("Retry-After", strconv.Itoa(f.RetryAfter))
	}
	a := answer{"ok": false}
	if f.Error != "" {
		a["error"] = f.Error
	}
	status := f.Status
	if status == 0 {
		status = http.StatusOK
	}
	w.finish(rw, name, args, status, a)
}

// finish writes the answer and keeps the call.
func (w *Workspace) finish(rw http.ResponseWriter, name string, args url.Values, status int, a answer) {
	code, _ := a["error"].(string)
	if code == "" && a["ok"] == false {
		code = "none given"
	}
	w.mu.Lock()
	w.calls = append(w.calls, Call{Method: name, Channel: args.Get("channel"), At: time.Now(), Status: status, Error: code})
	w.bump()
	w.mu.Unlock()
	rw.Header().Set("Content-Type", "application/json; charset=utf-8")
	rw.WriteHeader(status)
	_ = json.NewEncoder(rw).Encode(a)
}

package standin

import (
	"net/http"
	"slices"
	"strconv"
	"time"
)

// Fault is how a call is to fail.
type Fault struct {
	Method     string // such as chat.postMessage; upload for the address that takes files, or response_url
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

// fault takes the next fault that was asked for, if there is one.
func (p *platform) fault(name, channel string) *Fault {
	p.mu.Lock()
	defer p.mu.Unlock()
	for i, f := range p.faults {
		if f.Method != name || f.Channel != "" && f.Channel != channel {
			continue
		}
		if f.Times--; f.Times == 0 {
			p.faults = slices.Delete(p.faults, i, i+1)
		}
		return f
	}
	return nil
}

func (p *platform) fail(rw http.ResponseWriter, c call, f Fault) {
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
	p.finish(rw, c, status, a)
}

// limit returns the seconds to wait before a call is taken (documented: rate
// limits, about one post a second and channel; conversations.replies, one
// reading a minute for newly distributed apps).
func (w *Workspace) limit(name, channel string) int {
	w.mu.Lock()
	defer w.mu.Unlock()
	now := w.shared.Now()
	switch name {
	case "chat.postMessage":
		if early := w.opts.PostEvery - now.Sub(w.lastPost[channel]); w.opts.PostEvery > 0 && early > 0 {
			return int(early/time.Second) + 1
		}
		w.lastPost[channel] = now
	case "conversations.replies":
		if early := w.opts.RepliesEvery - now.Sub(w.lastRead); w.opts.RepliesEvery > 0 && early > 0 {
			return int(early/time.Second) + 1
		}
		w.lastRead = now
	}
	return 0
}

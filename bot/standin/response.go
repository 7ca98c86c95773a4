package standin

import (
	"cmp"
	"encoding/json"
	"fmt"
	"net/http"
	"strings"
	"time"
)

// response is a response_url: it speaks to the place of one interaction,
// five times within half an hour (documented: interactivity, message
// responses).
type response struct {
	team     *Workspace
	channel  string
	user     string
	original string // stamp of the message that was acted on; empty for a command
	at       time.Time
	uses     int
}

const (
	// responding is the name under which posts to a response_url are kept and
	// made to fail.
	responding   = "response_url"
	responsePath = "/response/"
	responseLife = 30 * time.Minute
	responseUses = 5
)

// respondAt makes a response_url. The lock is held.
func (w *Workspace) respondAt(channel, user, original string) string {
	key := fmt.Sprintf("%s/%x", w.opts.Team, w.next())
	w.responses[key] = &response{team: w, channel: channel, user: user, original: original, at: w.shared.Now()}
	return "http://" + w.addr + responsePath + key
}

// answered is what an app may send to a response_url, or answer a command
// with (documented: interactivity, message responses; slash commands).
type answered struct {
	Text     string          `json:"text"`
	Blocks   json.RawMessage `json:"blocks"`
	Type     string          `json:"response_type"` // ephemeral where empty
	Thread   string          `json:"thread_ts"`
	Replaces bool            `json:"replace_original"`
	Deletes  bool            `json:"delete_original"`
}

// serveResponse takes a message for a response_url (documented:
// interactivity, message responses; the words of refusals are from memory).
func (p *platform) serveResponse(rw http.ResponseWriter, r *http.Request) {
	if f := p.fault(responding, ""); f != nil {
		p.fail(rw, call{name: responding}, *f)
		return
	}
	var a answered
	err := json.NewDecoder(http.MaxBytesReader(rw, r.Body, maxBody)).Decode(&a)
	p.mu.Lock()
	to := p.responses[strings.TrimPrefix(r.URL.Path, responsePath)]
	status, refusal := http.StatusOK, ""
	switch {
	case to == nil:
		status, refusal = http.StatusNotFound, "invalid_url"
	case p.shared.Now().Sub(to.at) > responseLife:
		status, refusal = http.StatusNotFound, "expired_url"
	case to.uses >= responseUses:
		status, refusal = http.StatusNotFound, "used_url"
	case err != nil:
		status, refusal = http.StatusBadRequest, "invalid_payload"
	}
	if to != nil {
		to.uses++
	}
	p.mu.Unlock()
	if status == http.StatusOK {
		if refused := to.say(a); refused != nil {
			status, refusal = http.StatusBadRequest, fmt.Sprint(refused["error"])
		}
	}
	p.mu.Lock()
	p.calls = append(p.calls, Call{Method: responding, At: time.Now(), Status: status, Error: refusal})
	p.bump()
	p.mu.Unlock()
	rw.WriteHeader(status)
	fmt.Fprint(rw, cmp.Or(refusal, "ok"))
}

// say does what an answer to an interaction asks for.
func (to *response) say(a answered) answer {
	w := to.team
	blocks, refused := w.blocks(string(a.Blocks), messageBlocks)
	if refused == nil && a.Text == "" && len(blocks) == 0 && !a.Deletes {
		refused = failed("no_text")
	}
	if refused != nil {
		return refused
	}
	w.mu.Lock()
	defer w.mu.Unlock()
	m := Message{
		Channel: to.channel, User: w.botUser, BotID: w.botID, Text: cut(a.Text, maxText), Blocks: blocks,
		ThreadTS: a.Thread, At: time.Now(),
	}
	if a.Replaces || a.Deletes {
		return to.replace(a, m)
	}
	if a.Type == "in_channel" {
		w.post(&m)
		return nil
	}
	m.For = to.user
	w.whisper(&m)
	return nil
}

// replace rewrites or takes away the message that was acted on, the bot's
// own, seen by all or by one. The lock is held.
func (to *response) replace(a answered, with Message) answer {
	m := to.team.find(to.channel, to.original)
	switch {
	case m == nil || m.BotID != to.team.botID:
		return failed("message_not_found")
	case a.Deletes:
		to.team.remove(m)
	default:
		to.team.rewrite(m, with)
	}
	return nil
}

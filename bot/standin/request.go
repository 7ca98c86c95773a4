package standin

import (
	"bytes"
	"context"
	"crypto/hmac"
	"crypto/rand"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net/http"
	"net/url"
	"os"
	"strconv"
	"strings"
	"time"
)

// RequestURLs are where the app takes what is sent over HTTP.
type RequestURLs struct {
	Events       string
	Interactions string // as Events where empty
	Commands     string // as Events where empty
}

// The headers of a request (documented: verifying requests; Events API,
// retries).
const (
	signatureHeader = "X-Slack-Signature"
	stampHeader     = "X-Slack-Request-Timestamp"
	retryHeader     = "X-Slack-Retry-Num"
	reasonHeader    = "X-Slack-Retry-Reason"
	noRetryHeader   = "X-Slack-No-Retry"
)

// Sign are the headers that prove where a body comes from: version 0, an
// HMAC-SHA256 over version, timestamp and raw body (documented: verifying
// requests).
func Sign(secret string, at time.Time, body []byte) http.Header {
	stamp := strconv.FormatInt(at.Unix(), 10)
	mac := hmac.New(sha256.New, []byte(secret))
	mac.Write([]byte("v0:" + stamp + ":")) // a hash never fails
	mac.Write(body)
	h := http.Header{}
	h.Set(stampHeader, stamp)
	h.Set(signatureHeader, "v0="+hex.EncodeToString(mac.Sum(nil)))
	return h
}

// Request has everything sent to request URLs from now on instead of down a
// socket. The address for events must answer a challenge first (documented:
// Events API, url_verification).
func (p *platform) Request(ctx context.Context, to RequestURLs) error {
	set(&to.Interactions, to.Events)
	set(&to.Commands, to.Events)
	challenge := rand.Text()
	body, _ := json.Marshal(map[string]string{ // strings: it cannot fail
		"type": "url_verification", "token": "standin-verification-token", "challenge": challenge,
	})
	status, _, answer, err := p.send(ctx, to.Events, "application/json", body, nil)
	switch {
	case err != nil:
		return fmt.Errorf("the request URL was not reached: %w", err)
	case status != http.StatusOK || !strings.Contains(string(answer), challenge):
		return fmt.Errorf("the request URL did not answer the challenge: status %d", status)
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	p.requests = to
	return nil
}

// maxAnswer is the most that is read of an answer.
const maxAnswer = 1 << 20

// caller follows no redirect, and opens a connection for each request: one
// that is kept to spare would hold up a server that stops.
var caller = &http.Client{
	Transport:     &http.Transport{DisableKeepAlives: true},
	CheckRedirect: func(*http.Request, []*http.Request) error { return http.ErrUseLastResponse },
}

// send posts a signed body and returns the answer.
func (p *platform) send(ctx context.Context, to, kind string, body []byte, more http.Header) (int, http.Header, []byte, error) {
	ctx, cancel := context.WithTimeout(ctx, p.shared.AnswerWithin)
	defer cancel()
	req, err := http.NewRequestWithContext(ctx, http.MethodPost, to, bytes.NewReader(body))
	if err != nil {
		return 0, nil, nil, err
	}
	// The moment is that of the request itself, whatever day the workspace has.
	for _, h := range []http.Header{more, Sign(p.shared.SigningSecret, time.Now(), body)} {
		for name := range h {
			req.Header.Set(name, h.Get(name))
		}
	}
	req.Header.Set("Content-Type", kind)
	resp, err := caller.Do(req)
	if err != nil {
		return 0, nil, nil, err
	}
	defer resp.Body.Close()
	answer, err := io.ReadAll(io.LimitReader(resp.Body, maxAnswer))
	return resp.StatusCode, resp.Header, answer, err
}

// pursue sends an event to its request URL until it is taken, a few times
// at most, unless the app asks for no retry (documented: Events API,
// retries).
func (p *platform) pursue(r retry) {
	for {
		again, reason := p.request(r)
		if !again || r.attempt >= len(p.shared.Retries) {
			return
		}
		wait := time.NewTimer(p.shared.Retries[r.attempt])
		select {
		case <-wait.C:
		case <-p.alive.Done():
			wait.Stop()
			return
		}
		r.attempt, r.reason = r.attempt+1, reason
		p.depart()
	}
}

// depart counts a request that goes out.
func (p *platform) depart() {
	p.mu.Lock()
	defer p.mu.Unlock()
	p.underway++
}

// arrive counts one whose answer was read, or that found nobody.
func (p *platform) arrive() {
	p.mu.Lock()
	defer p.mu.Unlock()
	p.underway--
	p.bump()
}

// Underway is the number of requests that have no answer yet.
func (p *platform) Underway() int {
	p.mu.Lock()
	defer p.mu.Unlock()
	return p.underway
}

// request makes one delivery to a request URL, and says whether it should be
// made again and why.
func (p *platform) request(r retry) (again bool, reason string) {
	defer p.arrive()
	p.mu.Lock()
	d := p.delivery(r)
	to, kind, body := p.addressed(r.event)
	p.mu.Unlock()
	more := http.Header{}
	if r.attempt > 0 {
		more.Set(retryHeader, strconv.Itoa(r.attempt))
		more.Set(reasonHeader, r.reason)
	}
	status, header, answer, err := p.send(p.alive, to, kind, body, more)
	p.mu.Lock()
	d.Status = status
	p.bump()
	p.mu.Unlock()
	if err == nil && status/100 == 2 {
		p.acked(Ack{Envelope: d.Envelope, At: time.Now(), Payload: answer})
		return false, ""
	}
	reason = "http_error"
	switch {
	case errors.Is(err, context.DeadlineExceeded) || errors.Is(err, os.ErrDeadlineExceeded):
		reason = "http_timeout"
	case err != nil:
		reason = "connection_failed"
	}
	return r.event.retried() && (header == nil || header.Get(noRetryHeader) != "1"), reason
}

// addressed is where an event goes, and in what form: events as JSON, an
// interaction as JSON in a form's one field, a command as a form
// (documented: Events API; interactivity, payloads; slash commands). The
// lock is held.
func (p *platform) addressed(e *event) (to, kind string, body []byte) {
	const form = "application/x-www-form-urlencoded"
	switch e.kind {
	case interactive:
		return p.requests.Interactions, form, []byte(url.Values{"payload": {string(e.payload)}}.Encode())
	case slashCommands:
		fields, v := map[string]string{}, url.Values{}
		_ = json.Unmarshal(e.payload, &fields) // of our own making
		for name, s := range fields {
			v.Set(name, s)
		}
		return p.requests.Commands, form, []byte(v.Encode())
	}
	return p.requests.Events, "application/json", e.payload
}

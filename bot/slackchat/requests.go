package slackchat

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"log/slog"
	"mime"
	"net"
	"net/http"
	"net/url"
	"strconv"
	"sync"
	"sync/atomic"
	"time"

	"github.com/slack-go/slack"
	"github.com/slack-go/slack/slackevents"

	"heft/bot"
)

// Limits of one request.
const (
	maxRequest = 1 << 20 // bytes; real ones have a few thousand
	maxHeader  = 16 << 10
	// slowest is the longest that a request may take to come in, and its
	// answer to go out.
	slowest  = 10 * time.Second
	idleTime = 2 * time.Minute
)

// The headers of a delivery (platform documentation, Events API, retries).
const (
	retryHeader   = "X-Slack-Retry-Num"
	reasonHeader  = "X-Slack-Retry-Reason"
	noRetryHeader = "X-Slack-No-Retry"
)

// requests takes what the platform sends to request URLs: the same things as
// down a socket, each proved by its signature before anything in it is read.
type requests struct {
	ctx    context.Context
	log    *slog.Logger
	secret string
	find   func(team string) (member, bool)
	pages  http.Handler // what people look at besides; nil for nothing

	gate   sync.RWMutex // held while a delivery is given to its lane
	closed bool
	serial atomic.Uint64
}

// member is the bot in one workspace, and the work it has in hand there.
type member struct {
	chat *Chat
	self identity
	work context.Context
	drop context.CancelFunc
}

// answerRequests takes one workspace's requests.
func (c *Chat) answerRequests(ctx context.Context, self identity) error {
	work, drop := context.WithCancel(context.WithoutCancel(ctx))
	defer drop()
	q := &requests{ctx: ctx, log: c.log, secret: c.cfg.SigningSecret, find: func(string) (member, bool) {
		return member{chat: c, self: self, work: work}, true
	}}
	return q.run(c.cfg.Listen, c.slowest, func() { c.finish(drop) })
}

// run takes requests until the context or the listener ends, and then returns
// once everything in hand is finished.
func (q *requests) run(listen string, slowest time.Duration, finish func()) error {
	l, err := net.Listen("tcp", listen)
	if err != nil {
		return fmt.Errorf("listen for the workspace: %w", err)
	}
	server := &http.Server{
		Handler: q, ReadHeaderTimeout: slowest, ReadTimeout: slowest, WriteTimeout: 2 * slowest,
		IdleTimeout: idleTime, MaxHeaderBytes: maxHeader,
		ErrorLog: slog.NewLogLogger(q.log.Handler(), slog.LevelDebug),
	}
	ended := make(chan error, 1)
	go func() { ended <- server.Serve(l) }()
	ctx := q.ctx
	q.log.InfoContext(ctx, "listening", keyAt, l.Addr().String())
	select {
	case <-ctx.Done():
		err = nil
	case err = <-ended:
		err = fmt.Errorf("listen for the workspace: %w", err)
	}
	q.close()
	q.log.InfoContext(ctx, "finishing what is in hand")
	finish()
	limit, cancel := context.WithTimeout(context.WithoutCancel(ctx), drainTimeout)
	defer cancel()
	if server.Shutdown(limit) != nil {
		_ = server.Close() // whoever still reads has been answered
	}
	return err
}

// close lets nothing more in.
func (q *requests) close() {
	q.gate.Lock()
	defer q.gate.Unlock()
	q.closed = true
}

// ServeHTTP takes one request.
func (q *requests) ServeHTTP(rw http.ResponseWriter, r *http.Request) {
	if r.Method == http.MethodGet && q.pages != nil {
		q.pages.ServeHTTP(rw, r)
		return
	}
	body, status := q.proved(rw, r)
	if status != http.StatusOK {
		q.log.WarnContext(r.Context(), "a request that is not the workspace's", keyStatus, status)
		rw.Header().Set("Connection", "close")
		rw.WriteHeader(status)
		return
	}
	data, err := opened(r, body)
	if err != nil {
		q.log.WarnContext(r.Context(), "a message nobody here understands", bot.KeyErr, err)
		rw.Header().Set(noRetryHeader, "1")
		rw.WriteHeader(http.StatusBadRequest)
		return
	}
	if event, ok := data.(slackevents.EventsAPIEvent); ok {
		if check, ok := event.Data.(*slackevents.EventsAPIURLVerificationEvent); ok {
			rw.Header().Set("Content-Type", "text/plain; charset=utf-8")
			_, _ = io.WriteString(rw, check.Challenge) // whoever asked has gone otherwise
			return
		}
	}
	q.answer(rw, r, data)
}

// proved reads a body that the workspace signed within the last five minutes.
func (q *requests) proved(rw http.ResponseWriter, r *http.Request) ([]byte, int) {
	if r.Method != http.MethodPost {
		return nil, http.StatusMethodNotAllowed
	}
	proof, err := slack.NewSecretsVerifier(r.Header, q.secret)
	if err != nil {
		return nil, http.StatusUnauthorized
	}
	body, err := io.ReadAll(http.MaxBytesReader(rw, r.Body, maxRequest))
	if _, long := errors.AsType[*http.MaxBytesError](err); long {
		return nil, http.StatusRequestEntityTooLarge
	}
	if err != nil {
		return nil, http.StatusBadRequest
	}
	_, _ = proof.Write(body) // a hash never fails
	if proof.Ensure() != nil {
		return nil, http.StatusUnauthorized
	}
	return body, http.StatusOK
}

// opened reads what a body holds: an event as JSON, an interaction as JSON in
// a form, a command as a form (platform documentation, Events API;
// interactivity, payloads; slash commands).
func opened(r *http.Request, body []byte) (any, error) {
	kind, _, _ := mime.ParseMediaType(r.Header.Get("Content-Type"))
	if kind != "application/x-www-form-urlencoded" {
		return slackevents.ParseEvent(body, slackevents.OptionNoVerifyToken())
	}
	form, err := url.ParseQuery(string(body))
	if err != nil {
		return nil, err
	}
	if form.Has("payload") {
		var pressed slack.InteractionCallback
		err := json.Unmarshal([]byte(form.Get("payload")), &pressed)
		return pressed, err
	}
	r.Body = io.NopCloser(bytes.NewReader(body))
	return slack.SlashCommandParse(r)
}

// answer gives a delivery to its lane and answers once it is taken, or not.
func (q *requests) answer(rw http.ResponseWriter, r *http.Request, data any) {
	done := make(chan func(), 1)
	again, _ := strconv.Atoi(r.Header.Get(retryHeader)) // what is no number is the first try
	d := delivery{
		id: "request/" + strconv.FormatUint(q.serial.Add(1), 10), again: again, reason: r.Header.Get(reasonHeader),
		take:  func(context.Context) { done <- func() { rw.WriteHeader(http.StatusOK) } },
		leave: func() { done <- func() { rw.WriteHeader(http.StatusServiceUnavailable) } },
	}
	if !q.admit(d, data) {
		rw.WriteHeader(http.StatusServiceUnavailable)
		return
	}
	select {
	case write := <-done:
		write()
	case <-r.Context().Done(): // the workspace has hung up, and tries again
	}
}

func (q *requests) admit(d delivery, data any) bool {
	q.gate.RLock()
	defer q.gate.RUnlock()
	if q.closed || q.ctx.Err() != nil {
		return false
	}
	m, ok := q.find(teamOf(data))
	if !ok { // it has taken the bot out since
		d.take(q.ctx)
		return true
	}
	m.chat.receive(q.ctx, m.work, m.self, d, data)
	return true
}

// teamOf is the workspace that a delivery comes from.
func teamOf(data any) string {
	switch data := data.(type) {
	case slackevents.EventsAPIEvent:
		return data.TeamID
	case slack.InteractionCallback:
		return data.Team.ID
	case slack.SlashCommand:
		return data.TeamID
	}
	return ""
}

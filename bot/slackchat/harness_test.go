package slackchat_test

import (
	"bytes"
	"context"
	"log/slog"
	"regexp"
	"slices"
	"sync"
	"testing"
	"time"

	"heft/bot"
	"heft/bot/slackchat"
	"heft/bot/standin"
)

const crew = "U0CREW0001"

// rig is a bot in a workspace.
type rig struct {
	*testing.T
	*standin.Workspace
	chat    *slackchat.Chat
	journal *journal
	logs    *logs
	clerk   *bot.Clerk
	cfg     slackchat.Config
	stop    context.CancelFunc
	ended   chan error
}

// prepare builds a bot that does not run yet.
func prepare(t *testing.T, o standin.Options, change ...func(*slackchat.Config)) *rig {
	t.Helper()
	if o.AnswerWithin == 0 {
		o.AnswerWithin = patience // tests hold the bot up
	}
	w, err := standin.Start(o)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = w.Close() })
	desk, err := bot.NewDesk()
	if err != nil {
		t.Fatal(err)
	}
	r := &rig{T: t, Workspace: w, journal: &journal{changed: w.Wake}, logs: &logs{changed: w.Wake}}
	log := slog.New(slog.NewJSONHandler(r.logs, &slog.HandlerOptions{Level: slog.LevelDebug}))
	r.clerk = &bot.Clerk{Desk: desk, Journal: r.journal, Memory: &memory{}, Log: log}
	cfg := slackchat.Config{BotToken: w.BotToken(), AppToken: w.AppToken(), APIURL: w.URL()}
	for _, c := range change {
		c(&cfg)
	}
	r.cfg = cfg
	if r.chat, err = slackchat.New(cfg, r.clerk, log); err != nil {
		t.Fatal(err)
	}
	return r
}

// run starts the bot and waits for its socket, or has requests sent to it.
func (r *rig) run() *rig {
	r.Helper()
	ctx, cancel := context.WithCancel(r.Context())
	r.stop, r.ended = cancel, make(chan error, 1)
	go func() { r.ended <- r.chat.Run(ctx) }()
	if r.requested() {
		if err := r.Request(r.Context(), standin.RequestURLs{Events: r.address()}); err != nil {
			r.Fatal(err)
		}
	} else {
		r.await(func() bool { return r.Sockets() == 1 })
	}
	r.Cleanup(func() {
		cancel()
		if err := <-r.ended; err != nil {
			r.Errorf("the bot ended with: %v", err)
		}
	})
	return r
}

// requested says whether the bot takes requests, and has no socket.
func (r *rig) requested() bool { return r.cfg.AppToken == "" }

var listening = regexp.MustCompile(`"msg":"listening","at":"([^"]+)"`)

// address is where the bot takes requests.
func (r *rig) address() string {
	r.Helper()
	r.await(func() bool { return listening.MatchString(r.logs.text()) })
	return "http://" + listening.FindStringSubmatch(r.logs.text())[1] + "/"
}

// halt stops the bot and waits until the workspace has read all it wrote.
func (r *rig) halt() {
	r.Helper()
	r.stop()
	err := <-r.ended
	r.ended <- nil // for the cleanup
	if err != nil {
		r.Fatalf("the bot ended with: %v", err)
	}
	r.await(func() bool { return r.Sockets() == 0 && r.Underway() == 0 })
}

// patience is for ever, as far as a test on one machine goes.
const patience = time.Minute

func (r *rig) await(cond func() bool) {
	r.Helper()
	ctx, cancel := context.WithTimeout(context.Background(), patience)
	defer cancel()
	if err := r.Await(ctx, cond); err != nil {
		r.Fatalf("%v; the log says:\n%s", err, r.logs.text())
	}
}

// settled waits until it is recorded what became of the reply to a message.
func (r *rig) settled(m standin.Message) bot.Entry {
	r.Helper()
	var e bot.Entry
	r.await(func() bool {
		e, _ = r.journal.of(m.Events[0])
		return e.Delivered != nil || e.Failure != ""
	})
	return e
}

// answered waits for the reply to a message.
func (r *rig) answered(m standin.Message) standin.Message {
	r.Helper()
	ctx, cancel := context.WithTimeout(context.Background(), patience)
	defer cancel()
	reply, err := r.Reply(ctx, m)
	if err != nil {
		r.Fatalf("no reply to %q: %v; the log says:\n%s", m.Text, err, r.logs.text())
	}
	return reply
}

// ask mentions the bot in a channel.
func (r *rig) ask(channel, words string, o ...standin.SayOption) standin.Message {
	return r.Say(channel, crew, r.Mention()+" "+words, o...)
}

// own are the bot's messages in a thread.
func (r *rig) own(m standin.Message) []standin.Message {
	return slices.DeleteFunc(r.Thread(m.Channel, m.Thread()), func(o standin.Message) bool {
		return o.BotID != standin.BotID
	})
}

// logs keep what was logged.
type logs struct {
	changed func()
	mu      sync.Mutex
	buf     bytes.Buffer
}

func (l *logs) Write(p []byte) (int, error) {
	if l.changed != nil {
		defer l.changed()
	}
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.buf.Write(p)
}

func (l *logs) text() string {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.buf.String()
}

// memory is a bot.Memory without limits.
type memory struct {
	mu    sync.Mutex
	ids   map[string]bool
	turns map[string]bot.Turn
	jobs  map[string]bot.Job
}

func (m *memory) Job(channel string) (bot.Job, bool) {
	m.mu.Lock()
	defer m.mu.Unlock()
	j, ok := m.jobs[channel]
	return j, ok
}

func (m *memory) KeepJob(channel string, j bot.Job) {
	m.mu.Lock()
	defer m.mu.Unlock()
	m.jobs[channel] = j
}

func (m *memory) First(id string) bool {
	m.mu.Lock()
	defer m.mu.Unlock()
	if m.ids == nil {
		m.ids, m.turns, m.jobs = map[string]bool{}, map[string]bot.Turn{}, map[string]bot.Job{}
	}
	known := m.ids[id]
	m.ids[id] = true
	return !known
}

func (m *memory) Forget(id string) {
	m.mu.Lock()
	defer m.mu.Unlock()
	delete(m.ids, id)
}

func (m *memory) Recall(conversation string) (bot.Turn, bool) {
	m.mu.Lock()
	defer m.mu.Unlock()
	t, ok := m.turns[conversation]
	return t, ok
}

func (m *memory) Remember(conversation string, t bot.Turn) {
	m.mu.Lock()
	defer m.mu.Unlock()
	m.turns[conversation] = t
}

func quiet() *slog.Logger { return slog.New(slog.DiscardHandler) }

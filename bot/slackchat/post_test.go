package slackchat_test

import (
	"context"
	"runtime"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"heft/bot/slackchat"
	"heft/bot/standin"
)

// waits stand in for the waiting between tries and keep what was asked for.
type waits struct {
	mu    sync.Mutex
	asked []time.Duration
}

func (w *waits) pause(ctx context.Context, d time.Duration) error {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.asked = append(w.asked, d)
	return ctx.Err()
}

func (w *waits) all() []time.Duration {
	w.mu.Lock()
	defer w.mu.Unlock()
	return slices.Clone(w.asked)
}

func TestTroublesThatPass(t *testing.T) { bothWays(t, troublesThatPass) }

func troublesThatPass(t *testing.T, via way) {
	const ms = time.Millisecond
	for _, c := range []struct {
		name   string
		faults []standin.Fault
		want   []time.Duration
	}{
		{"server error", []standin.Fault{{Status: 500}}, []time.Duration{250 * ms}},
		{"unavailable, three times", []standin.Fault{{Status: 503, Times: 3}}, []time.Duration{250 * ms, 500 * ms, 1000 * ms}},
		{"no reason given", []standin.Fault{{}}, []time.Duration{250 * ms}},
		{"the platform's own trouble", []standin.Fault{{Error: "internal_error"}}, []time.Duration{250 * ms}},
		{"rate limit", []standin.Fault{{Status: 429, RetryAfter: 7}}, []time.Duration{7 * time.Second}},
		{"rate limit that asks for nothing", []standin.Fault{{Status: 429}}, []time.Duration{250 * ms}},
		{"one after the other", []standin.Fault{{Status: 429, RetryAfter: 3, Times: 6}, {Status: 500}},
			slices.Concat(slices.Repeat([]time.Duration{3 * time.Second}, 6), []time.Duration{250 * ms})},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := prepare(t, standin.Options{}, via)
			w := &waits{}
			slackchat.SetPause(r.chat, w.pause)
			r.run()
			for _, f := range c.faults {
				f.Method = "chat.postMessage"
				r.Fail(f)
			}
			m := r.ask(standin.Yard, question)
			r.answered(m)
			if got := w.all(); !slices.Equal(got, c.want) {
				t.Errorf("waited %v, want %v", got, c.want)
			}
			if e := r.settled(m); e.Delivered == nil || e.Failure != "" {
				t.Errorf("entry: %+v", e)
			}
		})
	}
}

func TestTroublesThatStay(t *testing.T) { bothWays(t, troublesThatStay) }

func troublesThatStay(t *testing.T, via way) {
	for _, c := range []struct {
		name  string
		fault standin.Fault
		calls int
		want  string
	}{
		{"archived", standin.Fault{Error: "is_archived", Times: 9}, 1, "is_archived"},
		{"client error", standin.Fault{Status: 403, Times: 9}, 1, "403"},
		{"server error", standin.Fault{Status: 500, Times: 9}, 5, "500"},
		{"never a reason", standin.Fault{Times: 9}, 5, "no reason"},
		{"limited for too long", standin.Fault{Status: 429, RetryAfter: 50, Times: 9}, 3, "rate limit"},
		{"limited for an hour", standin.Fault{Status: 429, RetryAfter: 3600, Times: 9}, 1, "rate limit"},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := prepare(t, standin.Options{}, via)
			slackchat.SetPause(r.chat, (&waits{}).pause)
			r.run()
			c.fault.Method, c.fault.Channel = "chat.postMessage", standin.Yard
			r.Fail(c.fault)
			m := r.ask(standin.Yard, question)
			r.answered(r.ask(standin.Mill, question)) // elsewhere all is well
			e := r.settled(m)
			calls := slices.DeleteFunc(r.Calls("chat.postMessage"), func(c standin.Call) bool { return c.Channel != standin.Yard })
			if len(calls) != c.calls || e.Delivered != nil || !strings.Contains(e.Failure, c.want) {
				t.Errorf("%d calls, want %d; recorded %q, want %q", len(calls), c.calls, e.Failure, c.want)
			}
		})
	}
}

// While one channel waits, its later replies queue up behind the first and
// the other channels go on.
func TestSlowChannelHoldsUpNobodyElse(t *testing.T) { bothWays(t, slowChannelHoldsUpNobodyElse) }

func slowChannelHoldsUpNobodyElse(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via)
	waiting, over := make(chan struct{}, 1), make(chan struct{})
	slackchat.SetPause(r.chat, func(ctx context.Context, d time.Duration) error {
		waiting <- struct{}{}
		<-over
		return ctx.Err()
	})
	r.run()
	r.Fail(standin.Fault{Method: "chat.postMessage", Channel: standin.Yard, Status: 429, RetryAfter: 30})
	first := r.ask(standin.Yard, question)
	<-waiting
	second := r.ask(standin.Yard, question)
	r.queued(2)
	r.answered(r.ask(standin.Mill, question))
	if n := len(r.own(first)) + len(r.own(second)); n != 0 {
		t.Errorf("%d posts to a channel that was told to wait", n)
	}
	close(over)
	if a, b := r.answered(first), r.answered(second); a.TS > b.TS {
		t.Error("the second reply overtook the first")
	}
	r.queued(0)
}

// A reply that has to be tried again is not overtaken by the next one of its
// conversation.
func TestRepliesOfAConversationDoNotOvertake(t *testing.T) {
	bothWays(t, repliesOfAConversationDoNotOvertake)
}

func repliesOfAConversationDoNotOvertake(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via)
	waiting, over := make(chan struct{}, 1), make(chan struct{})
	slackchat.SetPause(r.chat, func(ctx context.Context, _ time.Duration) error {
		waiting <- struct{}{}
		<-over
		return ctx.Err()
	})
	r.run()
	r.Fail(standin.Fault{Method: "chat.postMessage", Status: 500})
	first := r.ask(standin.Yard, question)
	<-waiting
	second := r.ask(standin.Yard, "16 in", standin.InThread(first.TS))
	r.await(func() bool { return r.Acked(second.Events[0]) })
	for range 3 { // time enough to overtake
		r.answered(r.ask(standin.Mill, question))
	}
	if n := len(r.own(first)); n != 0 {
		t.Errorf("%d replies before the first could be posted", n)
	}
	close(over)
	r.settled(second)
	e, _ := r.journal.of(first.Events[0])
	if got := r.own(first); len(got) != 2 || got[0].Shown() != e.Reply {
		t.Errorf("posted: %+v", got)
	}
}

// queued waits until a channel has so many posts in its queue. Nothing tells
// of that, so it looks again and again.
func (r *rig) queued(n int) {
	r.Helper()
	for end := time.Now().Add(patience); slackchat.Queued(r.chat, standin.Yard) != n; runtime.Gosched() {
		if time.Now().After(end) {
			r.Fatalf("never %d in the queue", n)
		}
	}
}

// The waiting itself, once for real: the platform's least is a second.
func TestRetryAfterIsWaitedFor(t *testing.T) { bothWays(t, retryAfterIsWaitedFor) }

func retryAfterIsWaitedFor(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via).run()
	r.Fail(standin.Fault{Method: "chat.postMessage", Status: 429, RetryAfter: 1})
	r.answered(r.ask(standin.Yard, question))
	r.await(func() bool { return len(r.Calls("chat.postMessage")) == 2 })
	c := r.Calls("chat.postMessage")
	if len(c) != 2 || c[1].At.Sub(c[0].At) < time.Second {
		t.Errorf("calls: %+v", c)
	}
}

// Workspace that takes one post at once and the next only much later: every
// reply is posted or recorded, and none is tried before its time.
func TestEveryReplyIsAccountedFor(t *testing.T) { bothWays(t, everyReplyIsAccountedFor) }

func everyReplyIsAccountedFor(t *testing.T, via way) {
	r := prepare(t, standin.Options{PostEvery: time.Hour}, via)
	slackchat.SetPause(r.chat, (&waits{}).pause)
	r.run()
	var asked []standin.Message
	for range 5 {
		asked = append(asked, r.ask(standin.Yard, question))
	}
	posted := 0
	for _, m := range asked {
		r.settled(m)
		posted += len(r.own(m))
	}
	if posted != 1 {
		t.Errorf("%d posts, want the one the workspace took", posted)
	}
}

package slackchat_test

import (
	"context"
	"fmt"
	"strings"
	"testing"
	"time"

	"heft/bot"
	"heft/bot/slackchat"
	"heft/bot/standin"
)

// Stopped with questions in hand, the bot answers and acknowledges every one
// before it goes.
func TestShutdownLosesNothing(t *testing.T) { bothWays(t, shutdownLosesNothing) }

func shutdownLosesNothing(t *testing.T, via way) {
	const questions = 60
	r := prepare(t, standin.Options{}, via)
	taken, open := make(chan struct{}, questions), make(chan struct{})
	r.journal.before = func(bot.Entry) error {
		taken <- struct{}{}
		<-open
		return nil
	}
	r.run()
	var asked []standin.Message
	for i := range questions {
		asked = append(asked, r.ask(standin.Yard, fmt.Sprintf("%d in red oak log 10 ft", 5+i)))
		<-taken
	}
	r.stop()
	close(open)
	r.halt()
	for _, m := range asked {
		r.await(func() bool { return r.Acked(m.Events[0]) })
		e, _ := r.journal.of(m.Events[0])
		if len(r.own(m)) != 1 || e.Delivered == nil || len(r.Deliveries(m.Events[0])) != 1 {
			t.Errorf("%q: %d replies, delivered %v", m.Text, len(r.own(m)), e.Delivered)
		}
	}
}

// Acknowledgements with no post behind them are the last that a run does, and
// the library has only queued them when it is told to hang up.
func TestShutdownLosesNoAcknowledgement(t *testing.T) {
	const deliveries = 60
	r := prepare(t, standin.Options{})
	open := make(chan struct{})
	m := r.ask(standin.Yard, question, standin.Undelivered())
	now := time.Now()
	r.journal.entries = []bot.Entry{{ID: m.Events[0], Workspace: standin.TeamID, Channel: m.Channel, Delivered: &now}}
	r.journal.before = func(e bot.Entry) error {
		if e.ID == m.Events[0] {
			<-open
		}
		return nil
	}
	r.run()
	for range deliveries {
		if err := r.Redeliver(m.Events[0], 1, "timeout"); err != nil {
			t.Fatal(err)
		}
	}
	r.answered(r.ask(standin.Mill, question)) // what was sent before it has come in
	r.stop()
	close(open)
	r.halt()
	if n := len(r.Acks()); n != deliveries+1 || len(r.own(m)) != 0 {
		t.Errorf("%d acknowledgements, want %d; %d posts", n, deliveries+1, len(r.own(m)))
	}
}

// What cannot be posted within the grace is recorded, and comes late from the
// next run.
func TestShutdownDoesNotWaitForEver(t *testing.T) { bothWays(t, shutdownDoesNotWaitForEver) }

func shutdownDoesNotWaitForEver(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via, func(c *slackchat.Config) { c.Grace = time.Millisecond })
	waiting := make(chan struct{}, 1)
	slackchat.SetPause(r.chat, func(ctx context.Context, _ time.Duration) error {
		waiting <- struct{}{}
		<-ctx.Done()
		return ctx.Err()
	})
	r.run()
	r.Fail(standin.Fault{Method: "chat.postMessage", Status: 429, RetryAfter: 100})
	m := r.ask(standin.Yard, question)
	<-waiting
	r.halt()
	e, _ := r.journal.of(m.Events[0])
	if e.Delivered != nil || e.Failure == "" || !r.Acked(m.Events[0]) {
		t.Fatalf("entry: %+v", e)
	}
	if err := r.chat.Recover(t.Context(), e.Asked.Add(time.Minute)); err != nil {
		t.Fatal(err)
	}
	if got := r.own(m); len(got) != 1 || !strings.Contains(strings.ToLower(got[0].Text), "late") {
		t.Errorf("after the restart: %+v", got)
	}
}

// Questions that the journal could not take before the grace was over are left
// to the platform, which sends them again.
func TestDroppedQuestionsComeAgain(t *testing.T) { bothWays(t, droppedQuestionsComeAgain) }

func droppedQuestionsComeAgain(t *testing.T, via way) {
	const questions = 12
	r := prepare(t, standin.Options{}, via, func(c *slackchat.Config) { c.Grace = time.Millisecond })
	taken, open := make(chan struct{}, questions), make(chan struct{})
	r.journal.before = func(bot.Entry) error {
		taken <- struct{}{}
		<-open
		return nil
	}
	r.run()
	for range questions {
		r.ask(standin.Yard, question)
		<-taken
	}
	r.stop()
	r.await(func() bool { return strings.Contains(r.logs.text(), "does not wait any longer") })
	close(open)
	r.halt()
	if len(r.Acks()) > 0 || len(r.Calls("chat.postMessage")) > 0 || len(r.journal.all()) > 0 {
		t.Error("acknowledged, answered or logged, though the journal had no time for it")
	}
}

// A question that arrives during the shutdown is left to the next run.
func TestNothingIsTakenOnceStopped(t *testing.T) { bothWays(t, nothingIsTakenOnceStopped) }

func nothingIsTakenOnceStopped(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via)
	taken, open := make(chan struct{}, 2), make(chan struct{})
	r.journal.before = func(bot.Entry) error {
		taken <- struct{}{}
		<-open
		return nil
	}
	r.run()
	first := r.ask(standin.Yard, question)
	<-taken
	r.stop()
	r.await(func() bool { return strings.Contains(r.logs.text(), "finishing") })
	second := r.ask(standin.Yard, question)
	close(open)
	r.halt()
	r.await(func() bool { return r.Acked(first.Events[0]) })
	if len(r.own(first)) != 1 || len(r.own(second)) != 0 || r.Acked(second.Events[0]) {
		t.Error("want the first question answered and the second left alone")
	}
}

func TestRecover(t *testing.T) {
	r := prepare(t, standin.Options{})
	now := time.Now()
	top := r.Say(standin.Yard, crew, "fresh")
	entry := func(id, workspace string, age time.Duration) bot.Entry {
		return bot.Entry{
			ID: id, Workspace: workspace, Channel: standin.Yard, Thread: top.TS, User: crew,
			Asked: now.Add(-age), Reply: "reply of " + id, Status: bot.Answered,
		}
	}
	posted := entry("Ev3", standin.TeamID, time.Minute)
	posted.Delivered = &now
	r.journal.entries = []bot.Entry{
		entry("Ev1", standin.TeamID, 11*time.Minute),
		entry("Ev2", "terminal", time.Minute),
		posted,
		entry("Ev4", standin.TeamID, 9*time.Minute),
	}
	for range 2 { // the second time there is nothing left to do
		if err := r.chat.Recover(t.Context(), now); err != nil {
			t.Fatal(err)
		}
	}
	got := r.own(top)
	if len(got) != 1 || !strings.Contains(got[0].Text, "reply of Ev4") || !strings.HasPrefix(got[0].Text, "Late") {
		t.Errorf("posted: %+v", got)
	}
	if e, _ := r.journal.of("Ev4"); e.Delivered == nil {
		t.Error("the late post was not recorded")
	}
}

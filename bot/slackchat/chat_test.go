package slackchat_test

import (
	"errors"
	"fmt"
	"runtime"
	"strings"
	"sync/atomic"
	"testing"

	"heft/bot"
	"heft/bot/slackchat"
	"heft/bot/standin"
)

const question = "14 in red oak limb 22 ft, hitched at 35 ft"

func TestAnswersWhereItWasAsked(t *testing.T) { bothWays(t, answersWhereItWasAsked) }

func answersWhereItWasAsked(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via).run()
	earlier := r.Say(standin.Yard, crew, "about that oak")
	for _, c := range []struct {
		name, channel, text string
		opts                []standin.SayOption
	}{
		{"mention", standin.Yard, r.Mention() + " " + question, nil},
		{"mention in the middle", standin.Mill, "hey " + r.Mention() + ", " + question, nil},
		{"in a thread", standin.Yard, r.Mention() + ": " + question, []standin.SayOption{standin.InThread(earlier.TS)}},
		{"direct message", standin.Direct, question, nil},
		{"nothing but the mention", standin.Yard, r.Mention(), nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			m := r.Say(c.channel, crew, c.text, c.opts...)
			reply := r.answered(m)
			e, ok := r.journal.of(m.Events[0])
			if !ok || reply.Shown() != e.Reply {
				t.Fatalf("posted %q, in the journal %q", reply.Text, e.Reply)
			}
			if e.Workspace != standin.TeamID || e.Channel != c.channel || e.Thread != m.Thread() || e.User != crew {
				t.Errorf("entry: %+v", e)
			}
			if got := fmt.Sprintf("%d.%06d", e.Asked.Unix(), e.Asked.Nanosecond()/1000); got != m.TS {
				t.Errorf("asked at %s, want %s", got, m.TS)
			}
			if strings.Contains(e.Words, standin.BotUser) || strings.Contains(c.text, question) != strings.HasSuffix(e.Words, question) {
				t.Errorf("words: %q", e.Words)
			}
			if e := r.settled(m); e.Failure != "" {
				t.Errorf("recorded as failed: %s", e.Failure)
			}
		})
	}
}

// Journal, then acknowledgement, then reply: each is looked for from within
// the step before it.
func TestJournalThenAckThenPost(t *testing.T) { bothWays(t, journalThenAckThenPost) }

func journalThenAckThenPost(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via)
	var early atomic.Bool
	r.journal.before = func(e bot.Entry) error {
		early.Store(early.Load() || r.Acked(e.ID) || len(r.Calls("chat.postMessage")) > 0)
		return nil
	}
	r.run()
	m := r.ask(standin.Yard, question)
	reply := r.answered(m)
	r.await(func() bool { return r.Acked(m.Events[0]) })
	if early.Load() {
		t.Error("acknowledged or posted before the journal had it")
	}
	if a := r.Acks()[0]; len(a.Payload) > 0 || a.At.After(reply.At.Add(patience)) {
		t.Errorf("acknowledgement: %+v", a)
	}
}

func TestNotOursToAnswer(t *testing.T) { bothWays(t, notOursToAnswer) }

func notOursToAnswer(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via).run()
	var ignored []string
	note := func(m standin.Message) standin.Message {
		ignored = append(ignored, m.Events...)
		return m
	}
	note(r.ask(standin.Yard, question, standin.ByBot("B0OTHER001")))
	note(r.Say(standin.Direct, standin.BotUser, question))
	note(r.Say(standin.Direct, "USLACKBOT", question))
	note(r.Say(standin.Direct, crew, question, standin.Subtype("channel_topic")))
	first := r.Say(standin.Direct, crew, question)
	r.answered(first)
	note(r.Delete(first))
	mention := r.ask(standin.Yard, question)
	r.answered(mention)
	unmentioned := r.Say(standin.Yard, crew, question)
	if len(ignored) != 5 || len(unmentioned.Events) != 0 {
		t.Fatalf("%d events to ignore, want 5", len(ignored))
	}
	for _, id := range ignored {
		r.await(func() bool { return r.Acked(id) })
	}
	if got := r.journal.all(); len(got) != 2 {
		t.Errorf("%d entries, want the two questions: %+v", len(got), got)
	}
}

// A crew shows the limb it asks about.
func TestAPhotoWithAQuestionIsAnswered(t *testing.T) { bothWays(t, aPhotoWithAQuestionIsAnswered) }

func aPhotoWithAQuestionIsAnswered(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via).run()
	r.answered(r.Say(standin.Direct, crew, question, standin.Subtype("file_share")))
	if got := r.journal.all(); len(got) != 1 || got[0].Words != question {
		t.Errorf("logged %+v", got)
	}
}

// Within a thread replies keep their order, so a second reply to the first
// question would stand before the reply to the next one.
func TestRepeatedDeliveriesAreAnsweredOnce(t *testing.T) {
	bothWays(t, repeatedDeliveriesAreAnsweredOnce)
}

func repeatedDeliveriesAreAnsweredOnce(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via).run()
	m := r.ask(standin.Yard, question)
	for i := range 3 {
		if err := r.Redeliver(m.Events[0], i+1, "timeout"); err != nil {
			t.Fatal(err)
		}
	}
	r.await(func() bool { return len(r.Acks()) == 4 })
	next := r.ask(standin.Yard, "16 in", standin.InThread(m.TS))
	r.await(func() bool { return r.Acked(next.Events[0]) && len(r.own(m)) >= 2 })
	if got := r.own(m); len(got) != 2 {
		t.Errorf("%d replies, want 2", len(got))
	}
}

func TestRetryMayBeAllThatComes(t *testing.T) { bothWays(t, retryMayBeAllThatComes) }

func retryMayBeAllThatComes(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via).run()
	later := r.ask(standin.Yard, "how do I ask?", standin.Undelivered())
	sooner := r.ask(standin.Yard, question, standin.Undelivered())
	for _, m := range []standin.Message{sooner, later} { // out of order, too
		if err := r.Redeliver(m.Events[0], 3, "http_error"); err != nil {
			t.Fatal(err)
		}
		r.answered(m)
	}
	if n := strings.Count(r.logs.text(), `"delivered again","attempt":3,"reason":"http_error"`); n != 2 {
		t.Errorf("%d of the two are logged as what they are:\n%s", n, r.logs.text())
	}
}

func TestConversationKeepsItsOrder(t *testing.T) { bothWays(t, conversationKeepsItsOrder) }

func conversationKeepsItsOrder(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via).run()
	top := r.Say(standin.Yard, crew, "the big one")
	var said []string
	for i := range 20 {
		m := r.ask(standin.Yard, fmt.Sprintf("%d in red oak log 10 ft", 10+i), standin.InThread(top.TS))
		said = append(said, m.Events[0])
		if r.requested() { // on the way they would overtake each other
			r.await(func() bool { return r.Acked(m.Events[0]) })
		}
	}
	r.await(func() bool { return len(r.own(top)) == len(said) })
	posted := r.own(top)
	for i, e := range r.journal.all() {
		if e.ID != said[i] || posted[i].Shown() != e.Reply {
			t.Errorf("place %d: event %s, want %s; posted %q, want %q", i, e.ID, said[i], posted[i].Text, e.Reply)
		}
	}
}

func TestWorkIsBoundedAndConnectionsAreKept(t *testing.T) {
	bothWays(t, workIsBoundedAndConnectionsAreKept)
}

func workIsBoundedAndConnectionsAreKept(t *testing.T, via way) {
	const workers = 8
	r := prepare(t, standin.Options{}, via, func(c *slackchat.Config) { c.Workers = workers })
	var now, most atomic.Int32
	r.journal.before = func(bot.Entry) error {
		n := now.Add(1)
		defer now.Add(-1)
		for m := most.Load(); n > m && !most.CompareAndSwap(m, n); m = most.Load() {
		}
		for range 200 { // room for the others to come in as well
			runtime.Gosched()
		}
		return nil
	}
	r.run()
	s, err := r.Drive(t.Context(), standin.DriveOptions{
		Total: 400, InFlight: 4 * workers, Channels: []string{standin.Yard, standin.Mill},
		Text: func(i int) string { return fmt.Sprintf("%d in red oak log 10 ft", 5+i%40) },
	})
	if err != nil || len(s.Latencies) != 400 {
		t.Fatalf("%d replies: %v", len(s.Latencies), err)
	}
	if n := most.Load(); n > workers {
		t.Errorf("%d events in hand, want %d at most", n, workers)
	}
	// One for each worker, the socket, and one to spare.
	if n := r.Connections(); n > workers+2 {
		t.Errorf("%d connections for 400 replies", n)
	}
}

func TestWithoutAJournalThereAreNoFigures(t *testing.T) {
	bothWays(t, withoutAJournalThereAreNoFigures)
}

func withoutAJournalThereAreNoFigures(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via)
	r.journal.before = func(bot.Entry) error { return errors.New("disk full") }
	r.run()
	m := r.ask(standin.Yard, question)
	reply := r.answered(m)
	if strings.ContainsAny(reply.Text, "0123456789") {
		t.Errorf("figures that nobody can find afterwards: %q", reply.Text)
	}
	r.await(func() bool { return r.Acked(m.Events[0]) })
}

func TestWhatWasNotTakenIsNotAcknowledged(t *testing.T) {
	bothWays(t, whatWasNotTakenIsNotAcknowledged)
}

func whatWasNotTakenIsNotAcknowledged(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via)
	r.journal.before = func(bot.Entry) error { return bot.ErrLogged }
	r.journal.unreadable = errors.New("disk gone")
	r.run()
	m := r.ask(standin.Yard, question)
	r.await(func() bool { return strings.Contains(r.logs.text(), "disk gone") })
	r.halt()
	if r.Acked(m.Events[0]) || len(r.own(m)) > 0 {
		t.Error("acknowledged or answered all the same")
	}
}

func TestUnfamiliarMessages(t *testing.T) { bothWays(t, unfamiliarMessages) }

func unfamiliarMessages(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via).run()
	strange := []string{
		r.Send(map[string]any{"type": "weather_changed", "wind": "rising"}),
		r.Send(map[string]any{"type": "app_mention", "channel": 7}),
		r.Send(map[string]any{}),
	}
	r.await(func() bool { return strings.Count(r.logs.text(), "nobody here understands") == len(strange) })
	r.answered(r.ask(standin.Yard, question))
	for _, id := range strange {
		if r.Acked(id) {
			t.Errorf("%s was acknowledged, though nobody understood it", id)
		}
	}
	// Known to the platform, but nothing to answer: taken off its hands.
	for _, in := range []map[string]any{
		{"type": "app_mention", "channel": standin.Yard, "user": crew, "text": "no stamp"},
		{"type": "message", "channel_type": "im", "channel": standin.Direct, "ts": "1.000001", "text": "nobody's"},
		{"type": "app_home_opened", "user": crew},
	} {
		id := r.Send(in)
		r.await(func() bool { return r.Acked(id) })
	}
	if n := len(r.journal.all()); n != 1 {
		t.Errorf("%d entries, want 1", n)
	}
}

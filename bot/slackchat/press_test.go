package slackchat_test

import (
	"errors"
	"strings"
	"sync/atomic"
	"testing"

	"heft/bot"
	"heft/bot/slackchat"
	"heft/bot/standin"
)

func answered(t *testing.T, r *rig, ev bot.Event, reply bot.Reply) bool {
	t.Helper()
	return slackchat.Answer(t.Context(), r.chat, ev, reply)
}

// press uses the button with that label under a message.
func (r *rig) press(user string, m standin.Message, label string) standin.Interaction {
	r.Helper()
	for _, e := range buttons(m) {
		if e.Text.Text == label {
			i, err := r.Press(standin.Press{User: user, Channel: m.Channel, TS: m.TS, Action: e.ActionID})
			if err != nil {
				r.Fatal(err)
			}
			return i
		}
	}
	r.Fatalf("no button %q under %q", label, m.Text)
	return standin.Interaction{}
}

// now is a message as it stands.
func (r *rig) now(m standin.Message) standin.Message {
	for _, o := range r.Messages(m.Channel) {
		if o.TS == m.TS {
			return o
		}
	}
	return standin.Message{}
}

// A button under an answer is a question of its own, logged before it is
// shown, and its answer takes the place of the one it hangs under.
func TestAButtonAsksInPlace(t *testing.T) { bothWays(t, aButtonAsksInPlace) }

func aButtonAsksInPlace(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via)
	var shown []string
	r.journal.before = func(e bot.Entry) error {
		for _, m := range r.Messages(standin.Yard) {
			shown = append(shown, m.Shown())
		}
		return nil
	}
	r.run()
	for _, c := range []struct{ question, label, want string }{
		{question, "In metric", "cm"},
		{question, "Show the working", "e^(−2π"},
		{question, "If it is 16 in", "16 in"},
		{"red oak limb 14, 22 ft", "14 in", "plan on"},
		{"maple limb 12 in 15 ft", "silver maple", "plan on"},
	} {
		t.Run(c.label, func(t *testing.T) {
			m := r.ask(standin.Yard, c.question)
			answer := r.answered(m)
			r.settled(m)
			shown = nil
			i := r.press("U0CREW0002", answer, c.label)
			r.await(func() bool {
				shown := r.now(answer).Shown()
				return shown != answer.Shown() && strings.Contains(shown, c.want)
			})
			after := r.now(answer)
			r.await(func() bool { return r.Acked(i.Event) })
			all := r.journal.all()
			e := all[len(all)-1]
			if e.Reply != after.Shown() || e.User != "U0CREW0002" || e.Thread != m.Thread() || e.Posted != answer.TS || !strings.HasPrefix(e.ID, "press/") {
				t.Errorf("logged %s by %s in %s, shown in %s: %q", e.ID, e.User, e.Thread, e.Posted, e.Reply)
			}
			for _, s := range shown {
				if s == e.Reply {
					t.Error("shown before it was logged")
				}
			}
			if own := r.own(m); len(own) != 1 || after.Edited {
				t.Errorf("%d messages of ours, marked as edited: %v", len(own), after.Edited)
			}
		})
	}
}

// What a button was pressed for is what a follow-up leans on.
func TestAFollowUpLeansOnAPress(t *testing.T) { bothWays(t, aFollowUpLeansOnAPress) }

func aFollowUpLeansOnAPress(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via).run()
	m := r.ask(standin.Yard, "red oak limb 14, 22 ft")
	answer := r.answered(m)
	r.press(crew, answer, "14 in")
	r.await(func() bool { return !strings.Contains(r.now(answer).Shown(), "has no unit") })
	r.ask(standin.Yard, "what about 16 ft", standin.InThread(m.TS))
	r.await(func() bool { return len(r.own(m)) == 2 })
	if got := r.own(m)[1].Shown(); !strings.Contains(got, "14 in") || !strings.Contains(got, "16 ft") {
		t.Errorf("the follow-up reads %q", got)
	}
}

// The picture is posted again only where it would show something else.
func TestAPictureIsNotPostedTwice(t *testing.T) { bothWays(t, aPictureIsNotPostedTwice) }

func aPictureIsNotPostedTwice(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via, drawing).run()
	m := r.ask(standin.Yard, seen)
	words, _ := r.pictured(m)
	r.press(crew, words, "Show the working")
	r.await(func() bool { return r.now(words).Shown() != words.Shown() })
	r.press(crew, r.now(words), "One more part of line")
	r.await(func() bool { return len(r.own(m)) == 3 })
	r.halt()
	if n := len(r.Calls("files.completeUploadExternal")); n != 2 {
		t.Errorf("%d pictures, want one for 3:1 and one for 4:1", n)
	}
}

// Buttons of another's making, and presses that lack what a press has, are
// taken off the platform's hands and answered with nothing.
func TestUnfamiliarButtons(t *testing.T) { bothWays(t, unfamiliarButtons) }

func unfamiliarButtons(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via).run()
	m := r.ask(standin.Yard, question)
	answer := r.answered(m)
	r.settled(m)
	if err := r.forge(answer, `[{"type":"actions","block_id":"strange","elements":[
		{"type":"button","action_id":"x","value":"16 in red oak log 8 ft","text":{"type":"plain_text","text":"x"}}]},
		{"type":"actions","block_id":"actions/","elements":[
		{"type":"button","action_id":"empty","text":{"type":"plain_text","text":"empty"}}]}]`); err != nil {
		t.Fatal(err)
	}
	for _, label := range []string{"x", "empty"} {
		i := r.press(crew, r.now(answer), label)
		r.await(func() bool { return r.Acked(i.Event) })
	}
	if n := len(r.journal.all()); n != 1 {
		t.Errorf("%d entries", n)
	}
}

// With the journal out a button's answer does not take the place of one that
// still holds.
func TestAGoodAnswerOutlastsTheJournal(t *testing.T) { bothWays(t, aGoodAnswerOutlastsTheJournal) }

func aGoodAnswerOutlastsTheJournal(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via)
	var out atomic.Bool
	r.journal.before = func(bot.Entry) error {
		if out.Load() {
			return errors.New("disk full")
		}
		return nil
	}
	r.run()
	m := r.ask(standin.Yard, question)
	answer := r.answered(m)
	r.settled(m)
	out.Store(true)
	r.press(crew, answer, "In metric")
	r.await(func() bool { return len(r.own(m)) == 2 })
	if got := r.own(m); got[0].Shown() != answer.Shown() || !strings.Contains(got[1].Shown(), "cannot write to my log") {
		t.Errorf("the thread reads %q and %q", got[0].Shown(), got[1].Shown())
	}
}

package slackchat_test

import (
	"strings"
	"testing"
	"time"

	"heft/bot/slackchat"
	"heft/bot/standin"
)

// allScopes and allEvents are what the manifest asks for, as far as a
// stand-in knows it.
var (
	allScopes = append([]string{"commands", "channels:read", "reactions:write"}, standinScopes...)
	allEvents = []string{"app_mention", "message.im", "member_joined_channel", "app_home_opened"}
)

// whole is a workspace with all of the bot's surfaces, at noon: no test of a
// day runs past its end.
func whole(t *testing.T, change ...func(*slackchat.Config)) *rig {
	t.Helper()
	noon := func() time.Time { return time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC) }
	return supervised(t, standin.Options{Scopes: allScopes, Events: allEvents, HomeTab: true, Now: noon},
		append(change, func(c *slackchat.Config) { c.Now = noon })...)
}

// privately waits for the n-th message that one person alone sees.
func (r *rig) privately(channel, user string, n int) standin.Message {
	r.Helper()
	var got standin.Message
	r.await(func() bool {
		seen := 0
		for _, m := range r.Messages(channel) {
			if m.For == user {
				if seen++; seen == n {
					got = m
				}
			}
		}
		return seen >= n
	})
	return got
}

func (r *rig) command(channel, user, text string) {
	r.Helper()
	if _, err := r.Command(channel, user, "/heft", text); err != nil {
		r.Fatal(err)
	}
}

// posted are the bot's messages for all of a channel.
func (r *rig) posted(channel string) []standin.Message {
	var out []standin.Message
	for _, m := range r.Messages(channel) {
		if m.BotID != "" && m.For == "" {
			out = append(out, m)
		}
	}
	return out
}

// A question behind the command is answered to the asker alone, also where
// the bot was not invited, and logged like any other.
func TestTheCommandAnswersInPrivate(t *testing.T) { bothWays(t, theCommandAnswersInPrivate) }

func theCommandAnswersInPrivate(t *testing.T, via way) {
	r := whole(t, via).run()
	for _, channel := range []string{standin.Yard, standin.Away} {
		before := len(r.journal.all())
		r.command(channel, crew, question)
		m := r.privately(channel, crew, 1)
		all := r.journal.all()
		if len(all) != before+1 || all[before].Reply != m.Shown() || all[before].Channel != channel || all[before].User != crew || all[before].Words != question {
			t.Fatalf("%s: logged %d", channel, len(all))
		}
		if !strings.Contains(m.Shown(), "plan on") || len(r.posted(channel)) != 0 {
			t.Errorf("%s: %q, and %d messages for all", channel, m.Shown(), len(r.posted(channel)))
		}
		// A button under it answers in its place, to the same person.
		if _, err := r.Press(standin.Press{User: crew, Channel: channel, TS: m.TS, Action: "actions/1"}); err != nil {
			t.Fatal(err)
		}
		r.await(func() bool { return strings.Contains(r.now(m).Shown(), "cm") })
		if n := len(r.whispered(channel, crew)); n != 1 || r.now(m).For != crew {
			t.Errorf("%s: %d private messages", channel, n)
		}
	}
}

// What is kept for a channel is said to the channel, whoever said it.
func TestAJobSaidInPrivateIsToldToAll(t *testing.T) { bothWays(t, aJobSaidInPrivateIsToldToAll) }

func aJobSaidInPrivateIsToldToAll(t *testing.T, via way) {
	r := whole(t, via).run()
	r.command(standin.Yard, crew, "job: limit 600 lb")
	r.await(func() bool { return len(r.posted(standin.Yard)) == 1 })
	if got := r.posted(standin.Yard)[0].Shown(); !strings.Contains(got, "Kept for this job") {
		t.Errorf("the channel reads %q", got)
	}
}

// A private answer is shared by its asker, once: the words, and the answer in
// their thread, where follow-ups lean on it.
func TestAPrivateAnswerIsShared(t *testing.T) { bothWays(t, aPrivateAnswerIsShared) }

func aPrivateAnswerIsShared(t *testing.T, via way) {
	r := whole(t, via).run()
	r.command(standin.Yard, crew, question)
	m := r.privately(standin.Yard, crew, 1)
	r.press(crew, m, "Share to the channel")
	r.await(func() bool { return len(r.posted(standin.Yard)) == 2 })
	words, answer := r.posted(standin.Yard)[0], r.posted(standin.Yard)[1]
	if !strings.Contains(read(words), "<@"+crew+"> asks: “14 in red oak limb") || answer.Shown() != m.Shown() || answer.ThreadTS != words.TS {
		t.Errorf("the channel reads %q and %q in %s", read(words), answer.Shown(), answer.ThreadTS)
	}
	r.ask(standin.Yard, "what about 16 ft", standin.InThread(words.TS))
	r.await(func() bool { return len(r.posted(standin.Yard)) == 3 })
	if got := r.posted(standin.Yard)[2].Shown(); !strings.Contains(got, "14 in butt × 16 ft") {
		t.Errorf("the follow-up reads %q", got)
	}
	r.press(crew, m, "Share to the channel")
	if got := r.privately(standin.Yard, crew, 2).Shown(); !strings.Contains(got, "already") {
		t.Errorf("the second time: %q", got)
	}
	if n := len(r.posted(standin.Yard)); n != 3 {
		t.Errorf("%d messages for all", n)
	}
}

func TestWhatIsSharedIsNotDressedUp(t *testing.T) { bothWays(t, whatIsSharedIsNotDressedUp) }

func whatIsSharedIsNotDressedUp(t *testing.T, via way) {
	r := whole(t, via).run()
	r.command(standin.Yard, crew, "*14* in <!channel> red oak limb 22 ft")
	r.press(crew, r.privately(standin.Yard, crew, 1), "Share to the channel")
	r.await(func() bool { return len(r.posted(standin.Yard)) == 2 })
	for _, m := range r.posted(standin.Yard) {
		if len(m.Pings()) > 0 {
			t.Errorf("%q pings", m.Text)
		}
		for _, b := range m.Blocks {
			for _, e := range b.Elements {
				if e.Text != nil && !e.Text.Plain() {
					t.Errorf("markup is read in %q", e.Text.Text)
				}
			}
		}
	}
}

// Where the bot was not invited nothing can be shared, and the asker is told
// how to invite it.
func TestInviteTheBot(t *testing.T) { bothWays(t, inviteTheBot) }

func inviteTheBot(t *testing.T, via way) {
	r := whole(t, via).run()
	r.command(standin.Away, crew, question)
	r.press(crew, r.privately(standin.Away, crew, 1), "Share to the channel")
	if got := r.privately(standin.Away, crew, 2).Shown(); !strings.Contains(got, "invite me") {
		t.Errorf("on sharing: %q", got)
	}
	// A mention that the platform tells of all the same.
	id := r.Send(map[string]any{
		"type": "app_mention", "channel": standin.Away, "user": crew, "ts": "1795637575.000100", "text": r.Mention() + " " + question,
	})
	r.await(func() bool { return len(r.posted(standin.Direct)) == 2 })
	told := r.posted(standin.Direct)
	if !strings.Contains(told[0].Shown(), "invite me") || !strings.Contains(told[1].Shown(), "plan on") {
		t.Errorf("the asker reads %q and %q", told[0].Shown(), told[1].Shown())
	}
	r.await(func() bool { e, ok := r.journal.of(id); return ok && e.Delivered != nil })
}

// The entry in the menu of a message works that message out, in its thread.
func TestWorkThisOut(t *testing.T) { bothWays(t, workThisOut) }

func workThisOut(t *testing.T, via way) {
	r := whole(t, via).run()
	m := r.Say(standin.Yard, "U0CREW0002", question)
	if _, err := r.Shortcut(m, crew, "work_out"); err != nil {
		t.Fatal(err)
	}
	answer := r.answered(m)
	all := r.journal.all()
	if len(all) != 1 || all[0].User != crew || all[0].Words != question || all[0].Thread != m.TS || answer.Shown() != all[0].Reply {
		t.Errorf("logged %+v", all)
	}
	away := r.Say(standin.Away, "U0CREW0002", question)
	if _, err := r.Shortcut(away, crew, "work_out"); err != nil {
		t.Fatal(err)
	}
	if got := r.privately(standin.Away, crew, 1).Shown(); !strings.Contains(got, "invite me") {
		t.Errorf("where it was not invited: %q", got)
	}
	if got := r.privately(standin.Away, crew, 2).Shown(); !strings.Contains(got, "plan on") {
		t.Errorf("and its answer: %q", got)
	}
}

// A private answer that a crash kept from its asker is never posted to the
// channel.
func TestAPrivateAnswerStaysPrivateAfterACrash(t *testing.T) {
	bothWays(t, aPrivateAnswerStaysPrivateAfterACrash)
}

func aPrivateAnswerStaysPrivateAfterACrash(t *testing.T, via way) {
	r := whole(t, via)
	r.run()
	r.command(standin.Yard, crew, question)
	r.privately(standin.Yard, crew, 1)
	r.halt()
	e := r.journal.all()[0]
	r.journal.entries[0].Delivered = nil
	if err := r.chat.Recover(t.Context(), e.Asked); err != nil {
		t.Fatal(err)
	}
	if n := len(r.posted(standin.Yard)); n != 0 {
		t.Errorf("%d messages for all", n)
	}
}

func TestAGreetingOnJoining(t *testing.T) { bothWays(t, aGreetingOnJoining) }

func aGreetingOnJoining(t *testing.T, via way) {
	r := whole(t, via).run()
	r.Join(standin.Away, crew) // somebody else
	id := r.Join(standin.Away, r.BotUser())
	r.await(func() bool { return len(r.posted(standin.Away)) == 1 })
	if err := r.Redeliver(id, 1, "timeout"); err != nil {
		t.Fatal(err)
	}
	r.await(func() bool { return len(r.Acks()) == 2 })
	got := r.posted(standin.Away)
	if len(got) != 1 || strings.Count(got[0].Shown(), "\n") != 2 || !strings.Contains(got[0].Shown(), "qualified arborist") {
		t.Errorf("%d greetings: %q", len(got), got[0].Shown())
	}
}

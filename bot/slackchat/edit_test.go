package slackchat_test

import (
	"strings"
	"sync"
	"testing"
	"time"

	"heft/bot"
	"heft/bot/slackchat"
	"heft/bot/standin"
)

// An edited question has its answer edited, which says what changed; both
// wordings are in the journal.
func TestAnEditedQuestionHasItsAnswerEdited(t *testing.T) {
	bothWays(t, anEditedQuestionHasItsAnswerEdited)
}

func anEditedQuestionHasItsAnswerEdited(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via).run()
	for _, channel := range []string{standin.Yard, standin.Direct} {
		prefix := ""
		if channel == standin.Yard {
			prefix = r.Mention() + " "
		}
		before := len(r.journal.all())
		m := r.Say(channel, crew, prefix+question)
		answer := r.answered(m)
		r.settled(m)
		edited := r.Edit(m, prefix+"16 in red oak limb 22 ft, hitched at 35 ft")
		r.await(func() bool { return strings.Contains(r.now(answer).Shown(), "16 in butt") })
		got := strings.Split(r.now(answer).Shown(), "\n")[1]
		if want := "The question was edited. Kept the hitch height, the length, log or limb and the tree; changed the butt diameter."; got != want {
			t.Errorf("%s: it says %q, want %q", channel, got, want)
		}
		all := r.journal.all()[before:]
		if len(all) != 2 || all[0].Message != m.TS || all[1].Message != m.TS || all[1].Posted != answer.TS || all[1].ID != edited.Events[0] {
			t.Errorf("%s: logged %+v", channel, all)
		}
		if all[1].Reply != r.now(answer).Shown() {
			t.Error("the log has other words than the channel")
		}
		if n := len(r.own(m)); channel == standin.Yard && n != 1 {
			t.Errorf("%d messages of ours", n)
		}
	}
}

// What was asked behind an edited question leans on its new words.
func TestAFollowUpLeansOnTheEditedWords(t *testing.T) { bothWays(t, aFollowUpLeansOnTheEditedWords) }

func aFollowUpLeansOnTheEditedWords(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via).run()
	first := r.ask(standin.Yard, question)
	answer := r.answered(first)
	second := r.ask(standin.Yard, "what about 16 ft", standin.InThread(first.TS))
	r.settled(second)
	r.Edit(first, r.Mention()+" 14 in sugar maple limb 22 ft, hitched at 35 ft")
	r.await(func() bool { return strings.Contains(r.now(answer).Shown(), "ugar maple") })
	r.ask(standin.Yard, "and 12 ft", standin.InThread(first.TS))
	r.await(func() bool { return len(r.own(first)) == 3 })
	if got := r.own(first)[2].Shown(); !strings.Contains(got, "ugar maple") || !strings.Contains(got, "12 ft") {
		t.Errorf("the follow-up reads %q", got)
	}
	// The follow-up edited: it leans on what stood before it, itself left out.
	r.Edit(second, r.Mention()+" what about 18 ft")
	r.await(func() bool { return strings.Contains(r.own(first)[1].Shown(), "18 ft") })
	if got := r.own(first)[1].Shown(); !strings.Contains(got, "ugar maple") {
		t.Errorf("the edited follow-up reads %q", got)
	}
}

// An edit that changes no word for us, such as a link's preview, and one of a
// message that asked nothing before.
func TestEditsThatAreNone(t *testing.T) { bothWays(t, editsThatAreNone) }

func editsThatAreNone(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via).run()
	m := r.ask(standin.Yard, question)
	answer := r.answered(m)
	r.settled(m)
	same := r.Edit(m, r.Mention()+"  "+question)
	r.await(func() bool { return r.Acked(same.Events[0]) })
	if got := r.journal.all(); len(got) != 1 || r.now(answer).Shown() != got[0].Reply {
		t.Errorf("%d entries", len(got))
	}
	unasked := r.Say(standin.Yard, crew, question)
	now := r.Edit(unasked, r.Mention()+" "+question)
	if got := r.answered(now).Shown(); strings.Contains(got, "edited") || !strings.Contains(got, "plan on") {
		t.Errorf("a message that became a question: %q", got)
	}
}

// An answer that was deleted cannot be edited: the new one is posted.
func TestAnAnswerThatIsGoneIsPostedAnew(t *testing.T) { bothWays(t, anAnswerThatIsGoneIsPostedAnew) }

func anAnswerThatIsGoneIsPostedAnew(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via).run()
	m := r.ask(standin.Yard, question)
	r.settled(m)
	r.Delete(r.answered(m))
	r.Edit(m, r.Mention()+" 16 in red oak limb 22 ft, hitched at 35 ft")
	r.await(func() bool { own := r.own(m); return len(own) == 1 && strings.Contains(own[0].Shown(), "16 in butt") })
}

func TestAnOldQuestionSaysSo(t *testing.T) { bothWays(t, anOldQuestionSaysSo) }

func anOldQuestionSaysSo(t *testing.T, via way) {
	for age, want := range map[time.Duration]string{
		119 * time.Second: "", 121 * time.Second: "2 min old", 50 * time.Minute: "50 min old", 200 * time.Minute: "3 h old",
	} {
		var said time.Time
		var mu sync.Mutex
		r := prepare(t, standin.Options{}, via, func(c *slackchat.Config) {
			c.Now = func() time.Time { mu.Lock(); defer mu.Unlock(); return said.Add(age) }
		})
		m := r.ask(standin.Yard, question, standin.Undelivered())
		mu.Lock()
		said = stamped(t, m.TS)
		mu.Unlock()
		r.run()
		if err := r.Redeliver(m.Events[0], 1, "timeout"); err != nil {
			t.Fatal(err)
		}
		got := r.answered(m).Shown()
		if strings.Contains(got, " old: check") != (want != "") || !strings.Contains(got, want) {
			t.Errorf("%v: %q", age, got)
		}
	}
}

// stamped is the time of a message stamp.
func stamped(t *testing.T, ts string) time.Time {
	t.Helper()
	at, err := time.Parse("2006-01-02T15:04:05Z", "1970-01-01T00:00:00Z")
	if err != nil {
		t.Fatal(err)
	}
	passed, err := time.ParseDuration(ts + "s")
	if err != nil {
		t.Fatal(err)
	}
	return at.Add(passed)
}

// The sign of work comes when an answer takes long, and goes with it.
func TestASignOfWork(t *testing.T) { bothWays(t, aSignOfWork) }

func aSignOfWork(t *testing.T, via way) {
	r := prepare(t, standin.Options{Scopes: append(standinScopes, "reactions:write")}, via)
	long, over := make(chan func(), 1), make(chan struct{})
	slackchat.SetAfter(r.chat, func(d time.Duration, f func()) func() bool {
		if d != time.Second {
			t.Errorf("after %v", d)
		}
		long <- f
		return func() bool { return false }
	})
	r.journal.before = func(bot.Entry) error { <-over; return nil }
	r.run()
	m := r.ask(standin.Yard, question)
	(<-long)()
	if now := r.now(m).Reactions; len(now) != 1 || now[0].Users[0] != standin.BotUser {
		t.Errorf("under the question: %+v", now)
	}
	close(over)
	r.answered(m)
	r.await(func() bool { return len(r.now(m).Reactions) == 0 })
}

func TestNoSignUnderAQuickAnswer(t *testing.T) { bothWays(t, noSignUnderAQuickAnswer) }

func noSignUnderAQuickAnswer(t *testing.T, via way) {
	r := prepare(t, standin.Options{Scopes: append(standinScopes, "reactions:write")}, via)
	slackchat.SetAfter(r.chat, func(time.Duration, func()) func() bool { return func() bool { return true } })
	r.run()
	r.answered(r.ask(standin.Yard, question))
	r.halt()
	if n := len(r.Calls("reactions.add")) + len(r.Calls("reactions.remove")); n != 0 {
		t.Errorf("%d calls", n)
	}
}

// standinScopes are those of a stand-in that is told none.
var standinScopes = []string{"app_mentions:read", "chat:write", "files:write", "im:history"}

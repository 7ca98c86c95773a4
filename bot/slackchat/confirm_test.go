package slackchat_test

import (
	"strings"
	"testing"
	"time"

	"heft/bot/slackchat"
	"heft/bot/standin"
)

const (
	dana      = "U0DANA0001" // the arborist
	boss      = "U0BOSS0001" // a supervisor
	bossDM    = "D0BOSS0001"
	confirmIt = "Confirmed on site"
	overLimit = "24 in red oak log 10 ft, limit 600 lb, hitched at 35 ft"
)

// site is a workspace with an arborist and a supervisor besides the crew.
func site(o standin.Options) standin.Options {
	o.Channels = []standin.Channel{
		{ID: standin.Yard, Name: "yard"}, {ID: standin.Mill, Name: "mill"}, {ID: standin.Away, Name: "away", Absent: true},
		{ID: standin.Direct, Name: "direct", Members: []string{crew}}, {ID: bossDM, Name: "boss", Members: []string{boss}},
	}
	o.Users = []standin.User{{ID: crew, Name: "ana"}, {ID: "U0CREW0002", Name: "bo"}, {ID: dana, Name: "dana"}, {ID: boss, Name: "boss"}}
	return o
}

func supervised(t *testing.T, o standin.Options, change ...func(*slackchat.Config)) *rig {
	t.Helper()
	r := prepare(t, site(o), append(change, func(c *slackchat.Config) { c.Zone = time.UTC })...)
	r.clerk.Supervisors = []string{boss}
	return r
}

// whispered are the messages that one person alone sees in a channel.
func (r *rig) whispered(channel, user string) []string {
	var out []string
	for _, m := range r.Messages(channel) {
		if m.For == user {
			out = append(out, read(m))
		}
	}
	return out
}

// Only the arborist named in the channel's job, by the platform's own id, and
// the supervisors confirm an answer; it is logged and shown, with the note.
func TestConfirmedOnSite(t *testing.T) { bothWays(t, confirmedOnSite) }

func confirmedOnSite(t *testing.T, via way) {
	r := supervised(t, standin.Options{}, via).run()
	kept := r.ask(standin.Yard, "job: arborist <@"+dana+">, limit 3,000 lb")
	if got := read(r.answered(kept)); !strings.Contains(got, "arborist <@"+dana+">") {
		t.Errorf("the arborist is not named as the platform names her:\n%s", got)
	}
	r.settled(kept)
	for _, c := range []struct{ user, note, question string }{
		{dana, "", seen},
		{dana, "two <!here> *slings*\non the stem", "600 lb log, swing it, 20 ft of line out, 8 ft to the side"},
		{boss, "ok", overLimit},
	} {
		m := r.ask(standin.Yard, c.question)
		answer := r.answered(m)
		r.settled(m)
		i := r.press(c.user, answer, confirmIt)
		r.await(func() bool { _, open := r.Snapshot().Modals[c.user]; return open && r.Acked(i.Event) })
		if _, err := r.Submit(c.user, map[string]map[string]string{"note": {"note": c.note}}); err != nil {
			t.Fatal(err)
		}
		r.await(func() bool { return strings.Contains(r.now(answer).Shown(), confirmIt) })
		after := r.now(answer)
		e, _ := r.journal.of(m.Events[0])
		if e.Confirmed == nil || e.Confirmed.User != c.user || e.Confirmed.Note != strings.ReplaceAll(c.note, "\n", " ") || e.Confirmed.At.IsZero() {
			t.Errorf("%q: logged %+v", c.question, e.Confirmed)
		}
		if !strings.Contains(read(after), "Confirmed on site by <@"+c.user+"> at ") || len(buttons(after)) > 0 {
			t.Errorf("%q: it shows\n%s", c.question, read(after))
		}
		if c.note != "" && !strings.Contains(read(after), "Note: "+e.Confirmed.Note) || len(after.Pings()) > 0 {
			t.Errorf("%q: it shows\n%s\nand pings %v", c.question, read(after), after.Pings())
		}
		r.await(func() bool { _, open := r.Snapshot().Modals[c.user]; return !open })
	}
}

func TestNobodyElseConfirms(t *testing.T) { bothWays(t, nobodyElseConfirms) }

func nobodyElseConfirms(t *testing.T, via way) {
	r := supervised(t, standin.Options{}, via).run()
	r.settled(r.ask(standin.Yard, "job: arborist <@"+dana+">"))
	m := r.ask(standin.Yard, seen)
	answer := r.answered(m)
	r.settled(m)
	elsewhere := r.ask(standin.Mill, seen) // a channel that names no arborist
	other := r.answered(elsewhere)
	r.settled(elsewhere)
	for _, c := range []struct {
		user string
		at   standin.Message
		want string
	}{{crew, answer, "Only the arborist, <@" + dana + ">, or"}, {"U0CREW0002", answer, "<@" + dana + ">"}, {dana, other, "no arborist is named"}} {
		r.press(c.user, c.at, confirmIt)
		r.await(func() bool { return len(r.whispered(c.at.Channel, c.user)) == 1 })
		if got := r.whispered(c.at.Channel, c.user)[0]; !strings.Contains(got, c.want) || strings.Contains(got, "lb") {
			t.Errorf("%s reads %q, not %q", c.user, got, c.want)
		}
		if _, open := r.Snapshot().Modals[c.user]; open {
			t.Errorf("%s was shown the form", c.user)
		}
	}
	// The arborist of one channel, with the form open, when another was named.
	r.press(dana, answer, confirmIt)
	r.await(func() bool { _, open := r.Snapshot().Modals[dana]; return open })
	r.settled(r.Say(standin.Yard, boss, r.Mention()+" job: arborist <@U0CREW0002>"))
	if _, err := r.Submit(dana, nil); err != nil {
		t.Fatal(err)
	}
	r.await(func() bool { return len(r.whispered(standin.Yard, dana)) == 1 })
	for _, e := range r.journal.all() {
		if e.Confirmed != nil {
			t.Errorf("%q is confirmed by %+v", e.Words, e.Confirmed)
		}
	}
}

// A name is no proof: whoever is called like the arborist confirms nothing.
func TestANameConfirmsNothing(t *testing.T) { bothWays(t, aNameConfirmsNothing) }

func aNameConfirmsNothing(t *testing.T, via way) {
	r := supervised(t, standin.Options{}, via).run()
	r.settled(r.ask(standin.Yard, "job: arborist dana"))
	m := r.ask(standin.Yard, seen)
	answer := r.answered(m)
	r.press(dana, answer, confirmIt)
	r.await(func() bool { return len(r.whispered(standin.Yard, dana)) == 1 })
}

// Two stand by one answer: the first is kept, the second told so. What is
// confirmed stays as it is when its question is edited.
func TestConfirmedOnce(t *testing.T) { bothWays(t, confirmedOnce) }

func confirmedOnce(t *testing.T, via way) {
	r := supervised(t, standin.Options{}, via).run()
	r.settled(r.ask(standin.Yard, "job: arborist <@"+dana+">"))
	m := r.ask(standin.Yard, seen)
	answer := r.answered(m)
	r.settled(m)
	for _, user := range []string{dana, boss} {
		r.press(user, answer, confirmIt)
		r.await(func() bool { _, open := r.Snapshot().Modals[user]; return open })
	}
	for _, user := range []string{dana, boss} {
		if _, err := r.Submit(user, nil); err != nil {
			t.Fatal(err)
		}
		r.await(func() bool { _, open := r.Snapshot().Modals[user]; return !open })
	}
	r.await(func() bool { return len(r.whispered(standin.Yard, boss)) == 1 })
	if got := r.whispered(standin.Yard, boss)[0]; !strings.Contains(got, dana) {
		t.Errorf("the second reads %q", got)
	}
	kept := r.now(answer).Shown()
	r.Edit(m, r.Mention()+" "+strings.Replace(seen, "600", "700", 1))
	r.await(func() bool {
		for _, o := range r.own(m) {
			if strings.Contains(o.Shown(), "700 lb") {
				return true
			}
		}
		return false
	})
	if got := r.now(answer).Shown(); got != kept {
		t.Errorf("the confirmed answer now reads %q", got)
	}
}

// An answer that has given way to another is not confirmed by an old form.
func TestAnAnswerThatChangedIsNotConfirmed(t *testing.T) {
	bothWays(t, anAnswerThatChangedIsNotConfirmed)
}

func anAnswerThatChangedIsNotConfirmed(t *testing.T, via way) {
	r := supervised(t, standin.Options{}, via).run()
	m := r.ask(standin.Yard, seen)
	answer := r.answered(m)
	r.settled(m)
	r.press(boss, answer, confirmIt)
	r.await(func() bool { _, open := r.Snapshot().Modals[boss]; return open })
	r.press(crew, answer, "One more part of line")
	r.await(func() bool { return r.now(answer).Shown() != answer.Shown() })
	if _, err := r.Submit(boss, nil); err != nil {
		t.Fatal(err)
	}
	r.await(func() bool { return len(r.whispered(standin.Yard, boss)) == 1 })
	if got := r.whispered(standin.Yard, boss)[0]; !strings.Contains(got, "changed") {
		t.Errorf("it says %q", got)
	}
}

// What needs nobody on site has no such button.
func TestWhatNeedsNoConfirmation(t *testing.T) { bothWays(t, whatNeedsNoConfirmation) }

func whatNeedsNoConfirmation(t *testing.T, via way) {
	r := supervised(t, standin.Options{}, via).run()
	for _, words := range []string{question, "maple limb 12 in 15 ft", "help", "how much rope for a hitch at 45 ft"} {
		for _, b := range buttons(r.answered(r.ask(standin.Yard, words))) {
			if b.Text.Text == confirmIt {
				t.Errorf("%q has the button", words)
			}
		}
	}
}

// An answer over the limit is raised to the supervisors once, with the way to
// it, however often it is asked in other units.
func TestOverTheLimitIsRaisedOnce(t *testing.T) { bothWays(t, overTheLimitIsRaisedOnce) }

func overTheLimitIsRaisedOnce(t *testing.T, via way) {
	r := supervised(t, standin.Options{}, via).run()
	m := r.ask(standin.Yard, overLimit)
	answer := r.answered(m)
	r.await(func() bool { return len(r.Messages(bossDM)) == 1 })
	told := r.Messages(bossDM)[0]
	link, err := r.link(answer)
	if err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(told.Shown(), "Over the limit") || !strings.Contains(told.Shown(), "OVER your limit of 600 lb") || len(told.Pings()) > 0 {
		t.Errorf("the supervisor reads %q", told.Shown())
	}
	if b := buttons(told); len(b) != 1 || b[0].URL != link {
		t.Errorf("it leads to %+v, want %s\n%s", b, link, r.logs.text())
	}
	r.press(crew, answer, "In metric")
	r.await(func() bool { return strings.Contains(r.now(answer).Shown(), "cm") })
	r.Edit(m, r.Mention()+" "+strings.Replace(overLimit, "24 in", "26 in", 1))
	r.await(func() bool { return strings.Contains(r.now(answer).Shown(), "26 in") })
	r.settled(r.ask(standin.Yard, question))
	r.halt()
	if n := len(r.Messages(bossDM)); n != 1 {
		t.Errorf("%d messages to the supervisor", n)
	}
}

// However the arborist is named, it is the person who is mentioned.
func TestTheArboristIsNamedInManyWays(t *testing.T) { bothWays(t, theArboristIsNamedInManyWays) }

func theArboristIsNamedInManyWays(t *testing.T, via way) {
	r := supervised(t, standin.Options{}, via).run()
	m := r.ask(standin.Yard, seen)
	r.settled(m)
	tell := func(words string) standin.Message { // a supervisor may name anybody, in place of anybody
		job := r.Say(standin.Yard, boss, r.Mention()+" "+words)
		r.settled(job)
		return job
	}
	for _, words := range []string{
		"job: arborist <@" + dana + ">", "job: limit 600 lb, arborist: <@" + dana + ">, 3 people", "Job: qualified arborist is <@" + dana + "|dana>; metric",
		"job: arborist on site: <@" + dana + ">", "job: arborist <@" + dana + "> limit 700 lb", "job: arborist here <@" + dana + ">. limit 600 lb",
		"trabajo: arborista <@" + dana + ">", "trabajo: límite 600 lb, arborista calificado: <@" + dana + ">",
	} {
		tell("job: arborist <@" + crew + ">")
		if _, err := r.clerk.MayConfirm(t.Context(), standin.TeamID, standin.Yard, m.Events[0], dana); err == nil {
			t.Fatal("somebody else is the arborist")
		}
		job := tell(words)
		if _, err := r.clerk.MayConfirm(t.Context(), standin.TeamID, standin.Yard, m.Events[0], dana); err != nil {
			t.Errorf("%q: %v; answered with %q", words, err, r.answered(job).Shown())
		}
	}
}

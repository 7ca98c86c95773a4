package slackchat_test

import (
	"context"
	"strings"
	"sync"
	"testing"
	"time"

	"heft/bot/slackchat"
	"heft/bot/standin"
)

// homed opens a person's home tab and waits for it to be drawn anew.
func (r *rig) homed(user string) standin.View {
	r.Helper()
	before := r.Snapshot().Homes[user].Hash
	r.OpenHome(user)
	return r.redrawn(user, before)
}

func (r *rig) redrawn(user, before string) standin.View {
	r.Helper()
	r.await(func() bool { return r.Snapshot().Homes[user].Hash != before })
	return r.Snapshot().Homes[user]
}

// look uses the button with that label in a home tab, the n-th of that name,
// and waits for what it shows.
func (r *rig) look(v standin.View, label string, n int) standin.View {
	r.Helper()
	r.use(v, label, n)
	return r.redrawn(v.User, v.Hash)
}

// use uses the button with that label in a home tab, the n-th of that name.
func (r *rig) use(v standin.View, label string, n int) {
	r.Helper()
	for _, b := range v.Blocks {
		all := b.Elements
		if b.Accessory != nil {
			all = append(all, *b.Accessory)
		}
		for _, e := range all {
			if e.Text == nil || e.Text.Text != label {
				continue
			}
			if n--; n > 0 {
				continue
			}
			if _, err := r.Press(standin.Press{User: v.User, View: v.ID, Block: b.ID, Action: e.ActionID}); err != nil {
				r.Fatal(err)
			}
			return
		}
	}
	r.Fatalf("no button %q in %s", label, words(v))
}

// words are all that a home tab shows, a line a block.
func words(v standin.View) string {
	var out []string
	for _, b := range v.Blocks {
		var line []string
		if b.Text != nil {
			line = append(line, b.Text.Shown())
		}
		for _, f := range b.Fields {
			line = append(line, f.Shown())
		}
		for _, e := range b.Elements {
			if e.Text != nil {
				line = append(line, e.Text.Shown())
			}
		}
		if b.Accessory != nil {
			line = append(line, "["+b.Accessory.Text.Text+" "+b.Accessory.URL+"]")
		}
		out = append(out, strings.Join(line, " | "))
	}
	return strings.Join(out, "\n")
}

// A supervisor sees the day by channel, what is to be looked at again, and
// the way to each question; and narrows it down.
func TestASupervisorSeesTheDay(t *testing.T) { bothWays(t, aSupervisorSeesTheDay) }

func aSupervisorSeesTheDay(t *testing.T, via way) {
	r := whole(t, via).run()
	plain := r.ask(standin.Yard, question)
	over := r.Say(standin.Yard, "U0CREW0002", r.Mention()+" "+overLimit)
	lift := r.ask(standin.Mill, seen)
	left := r.ask(standin.Mill, "maple limb 12 in 15 ft")
	done := r.ask(standin.Mill, "red oak limb 14, 22 ft")
	for _, m := range []standin.Message{plain, over, lift, left, done} {
		r.settled(m)
	}
	answer := r.answered(done)
	r.press(crew, answer, "14 in")
	r.await(func() bool { return !strings.Contains(r.now(answer).Shown(), "has no unit") })

	v := r.homed(boss)
	got := words(v)
	for _, want := range []string{
		"<#C0YARD0001> | Questions: 2. Heaviest pick: 2,600 lb (1,200 kg). Over the limit: 1. Not confirmed: 1. Never completed: 0. | [Only this channel ]",
		"<#C0MILL0002> | Questions: 4. ", "Not confirmed: 1. Never completed: 1. | [Only this channel ]",
		"<@U0CREW0002> | Questions: 1. ", "<@U0CREW0002> | over the limit, not confirmed", "<@U0CREW0001> | never completed",
	} {
		if !strings.Contains(got, want) {
			t.Errorf("it lacks %q:\n%s", want, got)
		}
	}
	link, err := r.link(r.answered(over))
	if err != nil || !strings.Contains(got, "[Open the thread "+link+"]") {
		t.Errorf("no way to %s, %v:\n%s", link, err, got)
	}
	for _, c := range []struct {
		label string
		n     int
		asked int
		has   string
	}{
		{"Only this channel", 2, 2, "24 in red oak log"}, {"Over the limit", 1, 1, "24 in red oak log"},
		{"Not confirmed", 1, 2, "600 lb piece"}, {"Never completed", 1, 1, "maple limb"}, {"Only this person", 2, 1, "24 in red oak log"},
		{"Day before", 1, 0, "nothing was asked"},
	} {
		now := r.look(v, c.label, c.n)
		if got := words(now); strings.Count(got, "[Open the thread ") != c.asked || !strings.Contains(got, c.has) {
			t.Errorf("%s: want %d questions and %q:\n%s", c.label, c.asked, c.has, got)
		}
		v = r.homed(boss)
	}
	back := r.look(r.look(v, "Day before", 1), "Day after", 1)
	if strings.Count(words(back), "[Open the thread ") != 6 {
		t.Errorf("there and back again:\n%s", words(back))
	}
}

// Nobody else sees what others asked, whatever their program sends.
func TestNobodyElseSeesTheDay(t *testing.T) { bothWays(t, nobodyElseSeesTheDay) }

func nobodyElseSeesTheDay(t *testing.T, via way) {
	r := whole(t, via).run()
	r.settled(r.Say(standin.Yard, "U0CREW0002", r.Mention()+" "+overLimit))
	v := r.homed(crew)
	got := words(v)
	if strings.Contains(got, "24 in") || strings.Contains(got, standin.Yard) || strings.Contains(got, "U0CREW0002") || !strings.Contains(got, "Write to me here") {
		t.Errorf("they see\n%s", got)
	}
	// What a supervisor's button sends, sent by somebody else.
	for _, value := range []string{`{"Channel":"` + standin.Yard + `"}`, `{"Flag":"over"}`, `{}`} {
		before := r.Snapshot().Homes[crew].Hash
		r.forgePress(crew, "home/flags", "home/0", value)
		if got := words(r.redrawn(crew, before)); strings.Contains(got, "24 in") || strings.Contains(got, standin.Yard) {
			t.Errorf("%s shows them\n%s", value, got)
		}
	}
	// Off the list, the next look shows nothing any more.
	was := r.homed(boss)
	if !strings.Contains(words(was), "24 in") {
		t.Fatalf("the supervisor sees\n%s", words(was))
	}
	r.clerk.Supervisors = nil
	if got := words(r.homed(boss)); strings.Contains(got, "24 in") {
		t.Errorf("off the list they see\n%s", got)
	}
}

// An example is asked in the person's own conversation with the bot, and its
// answer leans on nothing.
func TestExamplesAreAsked(t *testing.T) { bothWays(t, examplesAreAsked) }

func examplesAreAsked(t *testing.T, via way) {
	r := whole(t, via).run()
	v := r.homed(crew)
	examples := 0
	for _, b := range v.Blocks {
		for _, e := range b.Elements {
			before := len(r.posted(standin.Direct))
			if _, err := r.Press(standin.Press{User: crew, View: v.ID, Block: b.ID, Action: e.ActionID}); err != nil {
				t.Fatal(err)
			}
			r.await(func() bool { return len(r.posted(standin.Direct)) == before+2 })
			got := r.posted(standin.Direct)[before:]
			if got[0].Shown() != e.Value || got[1].ThreadTS != got[0].TS {
				t.Errorf("%q: %q, and the answer in %s", e.Value, got[0].Shown(), got[1].ThreadTS)
			}
			examples++
		}
	}
	for _, e := range r.journal.all() {
		if e.Status != "answered" {
			t.Errorf("%q is answered with %q", e.Words, e.Reply)
		}
	}
	if examples < 3 {
		t.Errorf("only %d examples", examples)
	}
}

// A day as full as it gets still fits into a home tab.
func TestAFullDayFits(t *testing.T) { bothWays(t, aFullDayFits) }

func aFullDayFits(t *testing.T, via way) {
	r := whole(t, via).run()
	m := r.ask(standin.Yard, overLimit)
	r.settled(m)
	e, _ := r.journal.of(m.Events[0])
	for i := range 300 {
		n := e
		n.ID, n.Posted = n.ID+"/"+strings.Repeat("x", i), ""
		n.Channel, n.User = "C0"+strings.Repeat("Y", i%40), "U0"+strings.Repeat("Z", i%40)
		n.Words, n.Reply = strings.Repeat("oak ", 4000), strings.Repeat("<!here> *oak*", 4000)
		r.journal.entries = append(r.journal.entries, n)
	}
	if got := words(r.homed(boss)); !strings.Contains(got, "And 271 more") {
		t.Errorf("it shows\n%s", got[:2000])
	}
}

// The supervisors, and nobody else, are told of the day at the set time, once
// a day.
func TestTheSummaryOfTheDay(t *testing.T) { bothWays(t, theSummaryOfTheDay) }

func theSummaryOfTheDay(t *testing.T, via way) {
	var mu sync.Mutex
	now := time.Date(2026, 11, 25, 9, 0, 0, 0, time.UTC)
	clock := func() time.Time { mu.Lock(); defer mu.Unlock(); return now }
	r := supervised(t, standin.Options{Now: clock}, via, func(c *slackchat.Config) { c.Now, c.Summary = clock, "17:00" })
	due := make(chan time.Time)
	slackchat.SetWait(r.chat, func(ctx context.Context, at time.Time) error {
		select {
		case due <- at:
			return nil
		case <-ctx.Done():
			return ctx.Err()
		}
	})
	r.run()
	r.settled(r.ask(standin.Yard, question))
	for _, want := range []string{"2026-11-25 17:00", "2026-11-26 17:00"} {
		at := <-due
		if got := at.Format("2006-01-02 15:04"); got != want {
			t.Errorf("due at %s, want %s", got, want)
		}
	}
	r.await(func() bool { return len(r.posted(bossDM)) == 2 })
	first, second := r.posted(bossDM)[0], r.posted(bossDM)[1]
	if !strings.Contains(first.Shown(), "2026-11-25: what was asked\nQuestions: 1.") || !strings.Contains(second.Shown(), "2026-11-26: nothing was asked") {
		t.Errorf("they read %q and %q", first.Shown(), second.Shown())
	}
	if n := len(r.posted(standin.Direct)); n != 0 {
		t.Errorf("%d messages to others", n)
	}
}

// The clock goes back on 2026-11-01 in this zone (tz database).
func TestTheSummaryKeepsItsTimeThroughTheYear(t *testing.T) {
	zone, err := time.LoadLocation("America/Denver")
	if err != nil {
		t.Fatal(err)
	}
	at := time.Date(0, 1, 1, 17, 0, 0, 0, time.UTC)
	now := time.Date(2026, 10, 31, 17, 0, 0, 0, zone)
	if next := slackchat.Following(now, at); next.Sub(now) != 25*time.Hour || next.Hour() != 17 {
		t.Errorf("the next one is at %v", next)
	}
}

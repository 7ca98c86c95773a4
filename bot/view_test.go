package bot_test

import (
	"context"
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"heft/bot"
	"heft/parser/language"
)

// site is a clerk of whom a crew asks by message and by button, each answer
// in a message of its own until a button has it give way.
type site struct {
	*testing.T
	*bot.Clerk
	shelf *shelf
	n     int
}

func newSite(t *testing.T) *site {
	s := &shelf{}
	c := newClerk(t, s)
	c.Supervisors = []string{"U0BOSS"}
	return &site{T: t, Clerk: c, shelf: s}
}

func (s *site) take(ev bot.Event) bot.Reply {
	s.Helper()
	s.n++
	ev.Workspace, ev.At = "T1", asked.Add(time.Duration(s.n)*time.Second)
	r, err := s.Take(context.Background(), ev)
	if err != nil {
		s.Fatal(err)
	}
	return r
}

// asks opens a thread, and returns the reply and the message that shows it.
func (s *site) asks(channel, user, text string) (bot.Reply, string) {
	s.Helper()
	name := fmt.Sprint("asked", s.n)
	shown := "shown" + name
	return s.take(bot.Event{ID: name, Channel: channel, User: user, Text: text, Thread: name, Message: name, Shown: shown, Opens: true}), shown
}

// presses has a button of a message asked, whose answer goes where to says.
func (s *site) presses(channel, user, text, under, to string) bot.Reply {
	s.Helper()
	thread := strings.TrimPrefix(under, "shown")
	return s.take(bot.Event{ID: bot.PressID(under, user, fmt.Sprint(s.n)), Channel: channel, User: user, Text: text, Thread: thread, Shown: to})
}

// questions are the words of the day's questions, with how often the answer
// of each was seen in another way.
func (s *site) questions() (out []string) {
	for _, a := range bot.Flagged(s.shelf.entries) {
		out = append(out, fmt.Sprintf("%s (%d)", a.Words, len(a.Views)))
	}
	return out
}

// looks says whether a button only shows an answer in another way.
func looks(t *testing.T, label string) bool {
	all, err := language.All()
	if err != nil {
		t.Fatal(err)
	}
	for _, english := range []string{"Show the working", "Back to the answer", "In metric", "In feet and pounds"} {
		if label == english || slices.ContainsFunc(all, func(l language.Language) bool { return l.Sentences[english] == label }) {
			return true
		}
	}
	return false
}

// tried presses the buttons of an answer and, under what each then shows, the
// buttons of that, and hands out how many questions each press made.
func (s *site) tried(question string, each func(c bot.Choice, asks int)) {
	s.Helper()
	use := func(c bot.Choice, under string) bot.Reply {
		before := len(s.questions())
		r := s.presses("C1", "U2", c.Message, under, under)
		each(c, len(s.questions())-before)
		return r
	}
	s.shelf.entries = nil
	reply, shown := s.asks("C1", "U1", question)
	for _, first := range reply.Actions() {
		for _, second := range use(first, shown).Actions() {
			s.shelf.entries = nil
			_, again := s.asks("C1", "U1", question)
			s.presses("C1", "U2", first.Message, again, again)
			use(second, again)
		}
		s.shelf.entries = nil
		_, shown = s.asks("C1", "U1", question)
	}
}

// What shows the same answer in another way is no question, with a job told in
// the channel and without; what any other button of any accepted answer asks
// is one.
func TestAButtonThatShowsTheSameAnswerAsksNothing(t *testing.T) {
	_, all := golden(t, "en")
	_, spanish := golden(t, "es-asked")
	views, others := 0, 0
	for _, job := range []string{"help", "job: limit 900 lb, rope 16,000 lb break, bowline, wet rope, 3 people"} {
		s := newSite(t)
		s.asks("C1", "U1", job)
		for _, a := range append(all, spanish...) {
			s.tried(a.question, func(c bot.Choice, asks int) {
				switch looks := looks(t, c.Label); {
				case looks && asks == 0:
					views++
				case !looks && asks == 1:
					others++
				default:
					t.Errorf("%q, then %q: %q (%q) makes %d questions", job, a.question, c.Label, c.Message, asks)
				}
			})
		}
	}
	if views < 400 || others < 200 {
		t.Errorf("only %d views and %d questions", views, others)
	}
}

const (
	limb    = "14 in red oak limb 22 ft, hitched at 35 ft"
	working = "show the numbers, lower it, red oak limb, 14 in at the butt, 22 ft long, hitched at 35 ft"
	metric  = "lower it, red oak limb, 14 in at the butt, 22 ft long, hitched at 35 ft, in metric"
	heavier = "lower it, red oak limb, 16 in at the butt, 22 ft long, hitched at 35 ft"
)

// What only looks like another view of an answer is a question all the same.
func TestWhatIsNoView(t *testing.T) {
	for name, c := range map[string]struct {
		then func(s *site, shown string)
		want []string
	}{
		"typed again": {func(s *site, _ string) { s.asks("C1", "U1", metric) }, []string{limb + " (0)", metric + " (0)"}},
		"why, typed": {func(s *site, shown string) {
			s.take(bot.Event{ID: "why", Channel: "C1", User: "U1", Text: "why?", Thread: strings.TrimPrefix(shown, "shown"), Message: "why", Shown: "shownwhy"})
		}, []string{limb + " (0)", "why? (0)"}},
		"edited": {func(s *site, shown string) {
			thread := strings.TrimPrefix(shown, "shown")
			ev, err := s.Edited(context.Background(), bot.Event{ID: "edit", Workspace: "T1", Channel: "C1", User: "U1", Text: metric, Thread: thread, Message: thread, At: asked.Add(time.Minute)})
			if err != nil || ev.Shown != shown {
				s.Fatalf("%+v, %v", ev, err)
			}
			s.take(ev)
		}, []string{limb + " (0)", metric + " (0)"}},
		"under another answer": {func(s *site, _ string) {
			_, other := s.asks("C1", "U1", "600 lb limb")
			s.presses("C1", "U1", working, other, other)
		}, []string{limb + " (0)", "600 lb limb (0)", working + " (0)"}},
		"after another answer": {func(s *site, shown string) {
			s.presses("C1", "U1", heavier, shown, shown)
			s.presses("C1", "U1", working, shown, shown)
		}, []string{limb + " (0)", heavier + " (0)", working + " (0)"}},
		"in another channel": {func(s *site, shown string) { s.presses("C2", "U1", working, shown, shown) }, []string{limb + " (0)", working + " (0)"}},
		"under another job": {func(s *site, shown string) {
			s.asks("C1", "U1", "job: limit 600 lb")
			s.presses("C1", "U1", working, shown, shown)
		}, []string{limb + " (0)", "job: limit 600 lb (0)", working + " (0)"}},
		"by another calculator": {func(s *site, shown string) {
			s.shelf.entries[0].Calc = "0"
			s.presses("C1", "U1", working, shown, shown)
		}, []string{limb + " (0)", working + " (0)"}},
		"out of a torn row": {func(s *site, shown string) {
			s.shelf.entries[0].Question = []byte(`{"Intent":`)
			s.presses("C1", "U1", working, shown, shown)
		}, []string{limb + " (0)", working + " (0)"}},
		"in private, of somebody else's": {func(s *site, _ string) {
			s.take(bot.Event{ID: "command/1", Channel: "C1", User: "U1", Text: limb, Opens: true})
			s.take(bot.Event{ID: bot.PressID("9.9", "U2", "1"), Channel: "C1", User: "U2", Text: metric, Opens: true})
		}, []string{limb + " (0)", limb + " (0)", metric + " (0)"}},
	} {
		s := newSite(t)
		_, shown := s.asks("C1", "U1", limb)
		c.then(s, shown)
		if got := s.questions(); !slices.Equal(got, c.want) {
			t.Errorf("%s:\n%q, want\n%q", name, got, c.want)
		}
	}
}

// However often and wherever the same answer is looked at, it is that of one
// question, asked by whoever typed it.
func TestAnAnswerIsLookedAtInManyWays(t *testing.T) {
	s := newSite(t)
	_, shown := s.asks("C1", "U1", "rama de roble rojo 14 pulgadas, 22 pies, amarrada a 35 pies")
	spanish := s.shelf.entries[0].Words
	s.presses("C1", "U2", working, shown, shown)
	s.presses("C1", "U3", metric, shown, shown)
	s.presses("C1", "U2", working, shown, shown+"beside") // somebody stands by what is there
	s.presses("C1", "U2", metric, shown+"beside", shown+"beside")
	s.presses("C1", "U2", heavier, shown, shown)
	s.presses("C1", "U2", "show the numbers, "+heavier, shown, shown)
	s.take(bot.Event{ID: "command/1", Channel: "C1", User: "U1", Text: limb, Opens: true})
	s.take(bot.Event{ID: bot.PressID("9.9", "U1", "1"), Channel: "C1", User: "U1", Text: metric, Opens: true})
	want := []string{spanish + " (4)", heavier + " (1)", limb + " (1)"}
	if got := s.questions(); !slices.Equal(got, want) {
		t.Errorf("%q, want\n%q", got, want)
	}

	day, err := s.Day(t.Context(), "T1", "U0BOSS", bot.Look{}, asked)
	if err != nil || len(day.Asked) != 3 {
		t.Fatalf("%d questions, %v", len(day.Asked), err)
	}
	counted := map[string]int{}
	for _, g := range append(day.Channels, day.People...) {
		counted[g.Name] = g.Questions
	}
	if fmt.Sprint(counted) != "map[C1:3 U1:2 U2:1]" {
		t.Errorf("the day counts %v", counted)
	}
	if all := day.Entries(); len(all) != len(s.shelf.entries) || !slices.IsSortedFunc(all, func(a, b bot.Entry) int { return a.Asked.Compare(b.Asked) }) {
		t.Errorf("%d of %d entries are left", len(all), len(s.shelf.entries))
	}
	// The words of a button are no language of whoever presses it.
	if tag := s.VoiceFor(t.Context(), "T1", "U2", asked.Add(time.Minute)).Tag(); tag != "en" {
		t.Errorf("U2 reads %q", tag)
	}
	_, more := s.asks("C1", "U4", spanish)
	s.presses("C1", "U4", working, more, more)
	if tag := s.VoiceFor(t.Context(), "T1", "U4", asked.Add(time.Minute)).Tag(); tag != "es" {
		t.Errorf("U4 reads %q", tag)
	}
}

// Whoever confirms an answer while its working is shown stands by the answer,
// and what is over the limit is flagged once.
func TestAViewIsConfirmedAsTheAnswer(t *testing.T) {
	const over = "14 in red oak limb 22 ft, limit 600 lb"
	s := newSite(t)
	reply, shown := s.asks("C1", "U1", over)
	s.presses("C1", "U1", reply.Actions()[0].Message, shown, shown)
	flags := func() string {
		var out []string
		for _, a := range bot.Flagged(s.shelf.entries) {
			out = append(out, fmt.Sprint(a.Words, a.Flags))
		}
		return strings.Join(out, "; ")
	}
	if got := flags(); got != over+"[over unconfirmed]" {
		t.Errorf("flags %s", got)
	}
	_, err := s.Confirm(t.Context(), "C1", bot.Confirmation{Workspace: "T1", ID: s.shelf.entries[1].ID, User: "U0BOSS", At: asked})
	if got := flags(); err != nil || got != over+"[over]" {
		t.Errorf("confirmed: flags %s, %v", got, err)
	}
	if by := bot.Flagged(s.shelf.entries)[0].Confirmed; by == nil || by.User != "U0BOSS" {
		t.Errorf("confirmed by %+v", by)
	}
}

// TestAButtonAnswersInTheLanguageOfItsAnswer: what a button stands for is in
// English, what it hangs under may be in Spanish.
func TestAButtonAnswersInTheLanguageOfItsAnswer(t *testing.T) {
	s := &shelf{}
	c := newClerk(t, s)
	first := event("levantar un tronco de 600 libras con un 2:1, somos 2")
	reply, err := c.Take(t.Context(), first)
	if err != nil {
		t.Fatal(err)
	}
	s.entries[0].Posted = "post"
	for i, button := range reply.Actions() {
		ev := first
		ev.ID, ev.Text, ev.Shown = bot.PressID("post", "U1", string(rune('a'+i))), button.Message, "post"
		again, err := c.Take(t.Context(), ev)
		if err != nil {
			t.Fatal(err)
		}
		s.entries[len(s.entries)-1].Posted = "post"
		if !strings.Contains(again.Text(), "Solo es un estimado") || strings.Contains(again.Text(), "Estimate only") {
			t.Errorf("%q answers\n%s", button.Label, again.Text())
		}
	}
}

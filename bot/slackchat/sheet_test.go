package slackchat_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"heft/bot"
	"heft/bot/slackchat"
	"heft/bot/standin"
)

// listing writes a day as its questions, a line each, newest first.
func listing(c *slackchat.Config) {
	c.Sheet = func(d bot.Day, format string) (string, []byte, error) {
		out := format + " of " + d.From.Format("2006-01-02") + "\n"
		for _, a := range d.Asked {
			out += a.Words + "\n"
		}
		return "day." + format, []byte(out), nil
	}
}

// handed waits for the n-th message to the supervisor, and returns it.
func (r *rig) handed(n int) standin.Message {
	r.Helper()
	r.await(func() bool { return len(r.posted(bossDM)) == n })
	return r.posted(bossDM)[n-1]
}

// A supervisor who presses for it is sent the whole of the shown day, however
// it is narrowed down, and nothing of another workspace's.
func TestASupervisorIsSentTheDay(t *testing.T) { bothWays(t, aSupervisorIsSentTheDay) }

func aSupervisorIsSentTheDay(t *testing.T, via way) {
	r := whole(t, via, listing).run()
	for _, channel := range []string{standin.Yard, standin.Mill} {
		r.settled(r.ask(channel, question+" "+map[string]string{standin.Yard: "first", standin.Mill: "second"}[channel]))
	}
	theirs := r.journal.all()[0]
	theirs.Workspace, theirs.ID, theirs.Words = "T0ELSEWHERE", "elsewhere", "asked elsewhere"
	r.journal.entries = append(r.journal.entries, theirs)
	whole := []string{r.journal.all()[1].Words, r.journal.all()[0].Words}

	for i, c := range []struct {
		shown         []string // by which buttons
		label, format string
		day           string
		lines         []string
	}{
		{nil, "Day sheet", "html", "2026-11-25", whole}, {nil, "CSV", "csv", "2026-11-25", whole},
		{[]string{"Only this channel", "Never completed"}, "CSV", "csv", "2026-11-25", whole},
		{[]string{"Day before"}, "Day sheet", "html", "2026-11-24", nil},
		{[]string{"Day before", "Day after"}, "Day sheet", "html", "2026-11-25", whole},
	} {
		v := r.homed(boss)
		for _, label := range c.shown {
			v = r.look(v, label, 1)
		}
		r.use(v, c.label, 1)
		m := r.handed(2 * (i + 1))
		said := r.posted(bossDM)[2*i]
		want := c.day + ", the whole day. Questions: " + map[int]string{0: "0", 2: "2"}[len(c.lines)] + "."
		if said.Shown() != want || len(said.Pings()) > 0 {
			t.Errorf("%s: they read %q, want %q", c.label, said.Shown(), want)
		}
		if len(m.Files) != 1 {
			t.Fatalf("%s: %+v", c.label, m)
		}
		f := m.Files[0]
		text := strings.Join(append([]string{c.format + " of " + c.day}, c.lines...), "\n") + "\n"
		if f.Name != "day."+c.format || f.Title != want || string(f.Content) != text {
			t.Errorf("%s: %q, %q:\n%swant\n%s", c.label, f.Name, f.Title, f.Content, text)
		}
	}
	if n := len(r.posted(standin.Direct)); n != 0 {
		t.Errorf("%d messages to others", n)
	}
}

// Nobody else is sent anything, whatever their program sends; and a supervisor
// off the list no more.
func TestNobodyElseIsSentTheDay(t *testing.T) { bothWays(t, nobodyElseIsSentTheDay) }

func nobodyElseIsSentTheDay(t *testing.T, via way) {
	r := whole(t, via, listing).run()
	r.settled(r.ask(standin.Yard, question))
	if got := words(r.homed(crew)); strings.Contains(got, "Day sheet") || strings.Contains(got, "CSV") {
		t.Errorf("they see\n%s", got)
	}
	v := r.homed(boss)
	r.clerk.Supervisors = nil
	before := r.Snapshot().Homes[boss].Hash
	r.use(v, "CSV", 1)
	if got := words(r.redrawn(boss, before)); !strings.Contains(got, "Write to me here") || strings.Contains(got, "CSV") {
		t.Errorf("off the list they see\n%s", got)
	}
	for _, value := range []string{`{"Day":"2026-11-25","Format":"csv"}`, `{"Format":"html"}`} {
		r.forgePress(crew, "sheet/", "sheet/0", value)
	}
	r.sentNobody()
}

// A press that asks for no day sheet that there is sends none.
func TestNoSheetOfAnotherForm(t *testing.T) { bothWays(t, noSheetOfAnotherForm) }

func noSheetOfAnotherForm(t *testing.T, via way) {
	r := whole(t, via, listing).run()
	r.settled(r.ask(standin.Yard, question))
	for _, value := range []string{`{"Format":"table"}`, `{}`, `{"Format":7}`, "csv", ""} {
		r.forgePress(boss, "sheet/", "sheet/0", value)
	}
	r.sentNobody()
}

// sentNobody stops the bot and sees that no file left it.
func (r *rig) sentNobody() {
	r.Helper()
	r.halt()
	if calls := r.Calls(steps[0]); len(calls) > 0 || len(r.posted(bossDM)) > 0 || len(r.posted(standin.Direct)) > 0 {
		r.Errorf("%+v; to the supervisor %d, to the crew %d", calls, len(r.posted(bossDM)), len(r.posted(standin.Direct)))
	}
}

// Where there is nobody to write it there are no buttons, and a press from
// before does nothing.
func TestNoSheetWithoutAWriter(t *testing.T) { bothWays(t, noSheetWithoutAWriter) }

func noSheetWithoutAWriter(t *testing.T, via way) {
	r := whole(t, via).run()
	if got := words(r.homed(boss)); strings.Contains(got, "CSV") {
		t.Errorf("they see\n%s", got)
	}
	r.forgePress(boss, "sheet/", "sheet/0", `{"Format":"csv"}`)
	r.halt()
	if n := len(r.posted(bossDM)); n != 0 {
		t.Errorf("%d messages", n)
	}
}

// A file that does not come is told of in words, in the place of its
// announcement; the log shows neither a token nor where files are sent to.
func TestASheetThatFailsIsToldOf(t *testing.T) { bothWays(t, aSheetThatFailsIsToldOf) }

func aSheetThatFailsIsToldOf(t *testing.T, via way) {
	const failed = "The file of 2026-11-25 did not go through. Press again in a minute, or see `heft log`."
	fail := func(step string, f standin.Fault) func(*rig) {
		f.Method, f.Times = step, 9
		return func(r *rig) { r.Fail(f) }
	}
	cases := map[string]func(*rig){}
	for _, step := range steps {
		cases[step+", down"] = fail(step, standin.Fault{Status: 500})
		cases[step+", limited for too long"] = fail(step, standin.Fault{Status: 429, RetryAfter: 600})
		if step != "upload" { // that address answers with a status alone
			cases[step+", refused"] = fail(step, standin.Fault{Error: "file_uploads_disabled"})
			cases[step+", no reason"] = fail(step, standin.Fault{})
		}
	}
	for name, spoil := range cases {
		t.Run(name, func(t *testing.T) {
			r := whole(t, via, listing)
			slackchat.SetPause(r.chat, (&waits{}).pause)
			r.run()
			v := r.homed(boss)
			spoil(r)
			r.use(v, "CSV", 1)
			r.await(func() bool { return len(r.posted(bossDM)) == 1 && r.posted(bossDM)[0].Shown() == failed })
			r.halt()
			if n := len(r.posted(bossDM)); n != 1 {
				t.Errorf("%d messages", n)
			}
			clean(t, r.Workspace, "the log", r.logs.text())
			if strings.Contains(r.logs.text(), "upload/v1/F") {
				t.Errorf("the log shows the address of a file:\n%s", r.logs.text())
			}
		})
	}
}

func TestASheetThatIsNotWrittenIsToldOf(t *testing.T) { bothWays(t, aSheetThatIsNotWrittenIsToldOf) }

func aSheetThatIsNotWrittenIsToldOf(t *testing.T, via way) {
	for name, write := range map[string]func(bot.Day, string) (string, []byte, error){
		"with an error": func(bot.Day, string) (string, []byte, error) { return "", nil, errors.New("no ink") },
		"with a fault":  func(bot.Day, string) (string, []byte, error) { panic("no ink") },
		"with nothing":  func(bot.Day, string) (string, []byte, error) { return "day.csv", nil, nil },
	} {
		t.Run(name, func(t *testing.T) {
			r := whole(t, via, func(c *slackchat.Config) { c.Sheet = write })
			slackchat.SetPause(r.chat, (&waits{}).pause)
			r.run()
			r.use(r.homed(boss), "Day sheet", 1)
			r.await(func() bool {
				return slices.ContainsFunc(r.posted(bossDM), func(m standin.Message) bool { return strings.Contains(m.Shown(), "did not go through") })
			})
		})
	}
}

// A journal that cannot be read is told of, too.
func TestADayThatIsNotReadIsToldOf(t *testing.T) { bothWays(t, aDayThatIsNotReadIsToldOf) }

func aDayThatIsNotReadIsToldOf(t *testing.T, via way) {
	r := whole(t, via, listing).run()
	v := r.homed(boss)
	r.journal.dayless = errors.New("torn")
	r.use(v, "CSV", 1)
	if got := r.handed(1); !strings.Contains(got.Shown(), "cannot read my log") {
		t.Errorf("they read %q", got.Shown())
	}
}

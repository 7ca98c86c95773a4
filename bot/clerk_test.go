package bot_test

import (
	"cmp"
	"context"
	"errors"
	"log/slog"
	"slices"
	"strings"
	"testing"
	"time"
	"unicode"

	"heft/bot"
)

// shelf is a journal that can be told to fail. What a real one does is tested
// in its own room; here it is the clerk's order of work.
type shelf struct {
	entries []bot.Entry
	err     error
	noted   []bot.Delivery
}

func (s *shelf) Append(_ context.Context, e bot.Entry) error {
	if s.err != nil {
		return s.err
	}
	for _, old := range s.entries {
		if old.ID == e.ID && old.Workspace == e.Workspace {
			return bot.ErrLogged
		}
	}
	s.entries = append(s.entries, e)
	return nil
}

func (s *shelf) Deliver(_ context.Context, d bot.Delivery) error {
	s.noted = append(s.noted, d)
	for i := range s.entries {
		if s.entries[i].ID == d.ID && d.Failure == "" {
			s.entries[i].Delivered = &d.At
		}
	}
	return nil
}

func (s *shelf) Conversation(_ context.Context, ev bot.Event, since time.Time) ([]bot.Entry, error) {
	var out []bot.Entry
	for _, e := range s.entries {
		if e.Channel == ev.Channel && (e.Thread == ev.Thread || ev.Direct) && !e.Asked.Before(since) {
			out = append(out, e)
		}
	}
	return out, s.err
}

func (s *shelf) Job(_ context.Context, _, channel string) (bot.Entry, error) {
	for _, e := range slices.Backward(s.entries) {
		if e.Channel == channel && e.Intent == "job" && e.Status == bot.Answered {
			return e, s.err
		}
	}
	return bot.Entry{}, cmp.Or(s.err, bot.ErrNotLogged)
}

func (s *shelf) About(_ context.Context, workspace, channel, message string, since time.Time) (bot.Entry, error) {
	for _, e := range slices.Backward(s.entries) {
		if e.Workspace == workspace && e.Channel == channel && (e.Message == message || e.Posted == message) && !e.Asked.Before(since) {
			return e, nil
		}
	}
	return bot.Entry{}, bot.ErrNotLogged
}

func (s *shelf) Confirm(_ context.Context, c bot.Confirmation) error {
	for i, e := range s.entries {
		if e.Workspace == c.Workspace && e.ID == c.ID {
			if e.Confirmed != nil {
				return bot.ErrConfirmed
			}
			s.entries[i].Confirmed = &c
			return nil
		}
	}
	return bot.ErrNotLogged
}

func (s *shelf) Find(_ context.Context, _, id string) (bot.Entry, error) {
	for _, e := range s.entries {
		if e.ID == id {
			return e, nil
		}
	}
	return bot.Entry{}, bot.ErrNotLogged
}

func (s *shelf) Between(_ context.Context, from, to time.Time) (out []bot.Entry, err error) {
	for _, e := range s.entries {
		if !e.Asked.Before(from) && e.Asked.Before(to) {
			out = append(out, e)
		}
	}
	return out, nil
}

func (s *shelf) Undelivered(context.Context, time.Time) ([]bot.Entry, error) { return nil, nil }

// recall is a memory that lasts as long as the test.
type recall struct {
	ids   map[string]bool
	turns map[string]bot.Turn
	jobs  map[string]bot.Job
}

func newRecall() *recall {
	return &recall{map[string]bool{}, map[string]bot.Turn{}, map[string]bot.Job{}}
}

func (r *recall) Job(c string) (bot.Job, bool) {
	j, ok := r.jobs[c]
	return j, ok
}
func (r *recall) KeepJob(c string, j bot.Job) { r.jobs[c] = j }

func (r *recall) First(id string) bool {
	if r.ids[id] {
		return false
	}
	r.ids[id] = true
	return true
}
func (r *recall) Forget(id string) { delete(r.ids, id) }
func (r *recall) Recall(c string) (bot.Turn, bool) {
	t, ok := r.turns[c]
	return t, ok
}
func (r *recall) Remember(c string, t bot.Turn) { r.turns[c] = t }

func newClerk(t *testing.T, j bot.Journal) *bot.Clerk {
	return &bot.Clerk{Desk: newDesk(t), Journal: j, Memory: newRecall(), Log: slog.New(slog.DiscardHandler)}
}

const question = "14 in red oak limb 22 ft, hitched at 35 ft"

func TestNoFigureLeavesWithoutTheLog(t *testing.T) {
	s := &shelf{err: errors.New("disk full")}
	c := newClerk(t, s)
	r, err := c.Take(t.Context(), event(question))
	if err != nil {
		t.Fatal(err)
	}
	if strings.ContainsFunc(r.Text(), unicode.IsDigit) || !strings.Contains(r.Text(), "log") || !strings.Contains(r.Text(), reminder) {
		t.Errorf("with the journal out the crew reads %q", r.Text())
	}
	s.err = nil // the platform delivers it again
	if r, err = c.Take(t.Context(), event(question)); err != nil || r.Status() != bot.Answered {
		t.Errorf("the next delivery: %v, %v", r.Status(), err)
	}
}

func TestAnEventIsAnsweredOnce(t *testing.T) {
	s := &shelf{}
	c := newClerk(t, s)
	if _, err := c.Take(t.Context(), event(question)); err != nil {
		t.Fatal(err)
	}
	if _, err := c.Take(t.Context(), event(question)); !errors.Is(err, bot.ErrRepeated) {
		t.Errorf("the second delivery: %v", err)
	}
	if len(s.entries) != 1 {
		t.Errorf("%d entries", len(s.entries))
	}
}

// After a restart the memory is empty and the journal is not.
func TestAfterARestart(t *testing.T) {
	s := &shelf{}
	if _, err := newClerk(t, s).Take(t.Context(), event(question)); err != nil {
		t.Fatal(err)
	}
	c := newClerk(t, s)
	again := event(question)
	again.At = asked.Add(5 * time.Minute)
	r, err := c.Take(t.Context(), again)
	if err != nil {
		t.Fatal(err)
	}
	if !strings.Contains(r.Headline(), "asked at 14:02") || !strings.Contains(r.Text(), "plan on") || strings.Count(r.Text(), reminder) != 1 {
		t.Errorf("an answer that never left: %q", r.Text())
	}
	c.Delivered(t.Context(), again, again.At, nil)
	if _, err := newClerk(t, s).Take(t.Context(), again); !errors.Is(err, bot.ErrRepeated) {
		t.Errorf("an answer that did leave: %v", err)
	}
	if len(s.noted) != 1 || s.noted[0].Failure != "" {
		t.Errorf("deliveries %+v", s.noted)
	}
}

// A fault of ours takes neither the program nor the question with it.
func TestAFaultIsLoggedAndAnswered(t *testing.T) {
	s := &shelf{}
	c := newClerk(t, s)
	c.Desk = &bot.Desk{} // a desk without a reader fails on every word
	r, err := c.Take(t.Context(), event(question))
	if err != nil {
		t.Fatal(err)
	}
	if r.Status() != bot.Refused || strings.ContainsFunc(r.Text(), unicode.IsDigit) || !strings.Contains(r.Text(), reminder) {
		t.Errorf("the crew reads %q", r.Text())
	}
	if len(s.entries) != 1 || s.entries[0].Words != question {
		t.Errorf("the log holds %+v", s.entries)
	}
}

// What the clerk says by itself is said in the language of the conversation.
func TestTheClerkKeepsTheLanguage(t *testing.T) {
	const ownReminder, sorry, late = "etiquetas del equipo.", "así que no doy cifras", "Respuesta atrasada, la pregunta fue a las 14:02."
	s := &shelf{}
	c := newClerk(t, s)
	c.Desk = c.Desk.Speaking("es")
	take := func(id string) bot.Reply {
		t.Helper()
		ev := event(question)
		ev.ID = id
		r, err := c.Take(t.Context(), ev)
		if err != nil {
			t.Fatal(err)
		}
		return r
	}
	take("answered")
	s.err = errors.New("disk full")
	if r := take("unlogged"); !strings.Contains(r.Text(), sorry) || !strings.HasSuffix(r.Text(), ownReminder) {
		t.Errorf("with the journal out the crew reads %q", r.Text())
	}
	s.err = nil
	c.Desk = &bot.Desk{}
	if r := take("failed"); !strings.Contains(r.Text(), sorry) || !strings.HasSuffix(r.Text(), ownReminder) {
		t.Errorf("after a fault the crew reads %q", r.Text())
	}
	c.Memory = newRecall()
	if r := take("answered"); !strings.HasPrefix(r.Text(), late) || strings.Count(r.Text(), ownReminder) != 1 {
		t.Errorf("an answer that never left: %q", r.Text())
	}
}

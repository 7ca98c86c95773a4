package journal

import (
	"errors"
	"testing"
	"time"

	"heft/bot"
)

func TestTheFirstConfirmationStands(t *testing.T) {
	path := newPath(t)
	j := mustOpen(t, path)
	mustAppend(t, j, question(1))
	first := bot.Confirmation{Workspace: question(1).Workspace, ID: question(1).ID, User: "U-dana", At: noon, Note: "looked at the anchor"}
	second := first
	second.User = "U-eve"
	if err := j.Confirm(t.Context(), first); err != nil {
		t.Fatal(err)
	}
	if err := j.Confirm(t.Context(), second); !errors.Is(err, bot.ErrConfirmed) {
		t.Errorf("a second one: %v", err)
	}
	second.ID = "Ev-nobody-asked"
	if err := j.Confirm(t.Context(), second); !errors.Is(err, bot.ErrNotLogged) {
		t.Errorf("one for nothing: %v", err)
	}
	elsewhere := first
	elsewhere.Workspace = "T-valley"
	if err := j.Confirm(t.Context(), elsewhere); !errors.Is(err, bot.ErrNotLogged) {
		t.Errorf("one from another workspace: %v", err)
	}
	if err := j.Close(); err != nil {
		t.Fatal(err)
	}
	again := mustOpen(t, path)
	for name, find := range map[string]func() (bot.Entry, error){
		"find": func() (bot.Entry, error) { return again.Find(t.Context(), first.Workspace, first.ID) },
		"the day": func() (bot.Entry, error) {
			es, err := again.Between(t.Context(), question(1).Asked, question(1).Asked.Add(time.Second))
			return append(es, bot.Entry{})[0], err
		},
	} {
		if e, err := find(); err != nil || e.Confirmed == nil || *e.Confirmed != first {
			t.Errorf("%s, after a restart: %+v, %v", name, e.Confirmed, err)
		}
	}
}

// An answer is found by the message that asked and by the one that shows it,
// in its own channel, and only the last one.
func TestAboutAMessage(t *testing.T) {
	j := mustOpen(t, newPath(t))
	asked, edited, other := question(1), question(2), question(3)
	asked.Message, edited.Message, other.Message = "10.1", "10.1", "10.1"
	asked.Posted, edited.Posted, other.Channel = "", "10.2", "C-elsewhere"
	for _, e := range []bot.Entry{asked, edited, other} {
		mustAppend(t, j, e)
	}
	about := func(message string, since time.Time) string {
		e, err := j.About(t.Context(), asked.Workspace, asked.Channel, message, since)
		if err != nil && !errors.Is(err, bot.ErrNotLogged) {
			t.Fatal(err)
		}
		return e.ID
	}
	if err := j.Deliver(t.Context(), bot.Delivery{Workspace: asked.Workspace, ID: asked.ID, At: noon, Posted: "10.3"}); err != nil {
		t.Fatal(err)
	}
	for message, want := range map[string]string{"10.1": edited.ID, "10.2": edited.ID, "10.3": asked.ID, "10.4": ""} {
		if got := about(message, asked.Asked.Add(-time.Hour)); got != want {
			t.Errorf("%s: %q, want %q", message, got, want)
		}
	}
	if got := about("10.1", other.Asked.Add(time.Hour)); got != "" {
		t.Errorf("past its time: %q", got)
	}
	// A delivery that tells no message leaves the one that is known.
	if err := j.Deliver(t.Context(), bot.Delivery{Workspace: edited.Workspace, ID: edited.ID, At: noon}); err != nil {
		t.Fatal(err)
	}
	if got := about("10.2", asked.Asked.Add(-time.Hour)); got != edited.ID {
		t.Errorf("after its delivery: %q", got)
	}
}

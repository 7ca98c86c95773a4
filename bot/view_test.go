package bot_test

import (
	"testing"
	"time"

	"heft/bot"
)

// TestAnAnswerShownAgainIsNoQuestion: the working and other units under one
// answer are in the log, and count for nothing; a heavier butt is a question.
func TestAnAnswerShownAgainIsNoQuestion(t *testing.T) {
	s := &shelf{}
	c := newClerk(t, s)
	c.Supervisors = []string{"U0BOSS"}
	at := time.Date(2026, 11, 25, 9, 0, 0, 0, time.UTC)
	n := 0
	take := func(text, shown string) string {
		t.Helper()
		n++
		id := string(rune('a' + n))
		ev := bot.Event{ID: id, Workspace: "T1", Channel: "C1", Thread: "1", User: "U0ROSA", Text: text, At: at.Add(time.Duration(n) * time.Minute), Shown: shown}
		if _, err := c.Take(t.Context(), ev); err != nil {
			t.Fatal(err)
		}
		s.entries[len(s.entries)-1].Posted = "post"
		return id
	}
	take("lift a 600 lb log on a 2:1, 2 people", "")
	take("show the numbers, lift it, log, weighs 600 lb, 2 parts of line, 2 people", "post")
	metric := take("lift it, log, weighs 600 lb, 2 parts of line, 2 people, in metric", "post")
	day := func() bot.Day {
		t.Helper()
		d, err := c.Day(t.Context(), "T1", "U0BOSS", bot.Look{}, at.Add(time.Hour))
		if err != nil {
			t.Fatal(err)
		}
		return d
	}
	if d := day(); len(d.Asked) != 1 || d.Channels[0].Questions != 1 || d.Channels[0].Flagged[bot.Unconfirmed] != 1 {
		t.Fatalf("after two looks: %d questions, %+v", len(d.Asked), d.Channels)
	}
	// What is confirmed while it is shown in metric is confirmed.
	if err := s.Confirm(t.Context(), bot.Confirmation{Workspace: "T1", ID: metric, User: "U0BOSS", At: at}); err != nil {
		t.Fatal(err)
	}
	if d := day(); len(d.Asked) != 1 || d.Asked[0].Confirmed == nil || d.Channels[0].Flagged[bot.Unconfirmed] != 0 {
		t.Errorf("confirmed in metric: %+v", d.Channels)
	}
	take("lift it, log, weighs 600 lb, 3 parts of line, 2 people", "post")
	if d := day(); len(d.Asked) != 2 || d.Asked[0].View || d.Asked[0].Confirmed != nil || d.Channels[0].Flagged[bot.Unconfirmed] != 1 {
		t.Errorf("with one more part: %d questions, %+v", len(d.Asked), d.Channels)
	}
	if len(s.entries) != 4 {
		t.Errorf("%d entries in the log, want all 4", len(s.entries))
	}
}

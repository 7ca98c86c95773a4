package bot_test

import (
	"strings"
	"testing"
	"time"

	"heft/bot"
)

// TestTheDayIsReadOutToSupervisorsAlone: who asks for the log in a direct
// message and supervises is told of it, nobody else is, and nobody anywhere
// else.
func TestTheDayIsReadOutToSupervisorsAlone(t *testing.T) {
	noon := time.Date(2026, 11, 25, 12, 0, 0, 0, time.FixedZone("", -7*3600))
	c := newClerk(t, &shelf{})
	c.Supervisors = []string{"U0BOSS"}
	n := 0
	ask := func(workspace, user, text string, direct bool, at time.Time) string {
		t.Helper()
		n++
		ev := bot.Event{ID: string(rune('a' + n)), Workspace: workspace, Channel: "C" + user, User: user, Text: text, At: at, Direct: direct}
		reply, err := c.Take(t.Context(), ev)
		if err != nil {
			t.Fatal(err)
		}
		return reply.Text()
	}
	ask("T1", "U0GROUND", "600 lb limb, 3 wraps, limit 500 lb", true, noon)
	ask("T1", "U0GROUND", "maple limb 12 in 15 ft", true, noon.Add(time.Minute))
	ask("T1", "U0GROUND", "300 lb ash log, 3 wraps", true, noon.AddDate(0, 0, -1))
	ask("T2", "U0OTHER", "777 lb limb, 3 wraps, limit 500 lb", true, noon)
	for _, q := range []struct {
		workspace, user, text string
		direct                bool
		shown, hidden         string // in the reply, and not in it
	}{
		{"T1", "U0BOSS", "what was asked today", true, "12:00 “600 lb limb", "777"},
		{"T1", "U0BOSS", "what was asked today", true, "Over the limit: 1.", "300 lb ash"},
		{"T1", "U0BOSS", "what went over the limit today", true, "2026-11-25, over the limit: 1.", "maple"},
		{"T1", "U0BOSS", "what was never completed", true, "maple limb", "600 lb limb"},
		{"T1", "U0BOSS", "yesterday's log", true, "300 lb ash", "600 lb limb"},
		{"T1", "U0BOSS", "registro de ayer", true, "300 lb ash", "600 lb limb"},
		{"T1", "U0BOSS", "what was the heaviest we done today", true, "Heaviest that was asked about: plan on 600 lb.\n12:00 “600 lb limb", "300 lb ash"},
		{"T1", "U0BOSS", "how many pieces have we lowered today", true, "not what came down", "300 lb ash"},
		{"T1", "U0BOSS", "cuantas libras llevamos en total hoy", true, "no lo que se bajó", "300 lb ash"},
		{"T1", "U0BOSS", "what did luis ask yesterday", true, "300 lb ash", "600 lb limb"},
		{"T1", "U0GROUND", "what was the heaviest we done today", true, "home tab", "600"},
		{"T1", "U0BOSS", "what was the heaviest today", false, "home tab", "600"},
		{"T1", "U0BOSS", "what was asked today", false, "home tab", "600"},
		{"T1", "U0GROUND", "what was asked today", true, "home tab", "600"},
		{"T3", "U0BOSS", "what went over the limit today", true, "2026-11-25, over the limit: 0.", "600"},
	} {
		got := ask(q.workspace, q.user, q.text, q.direct, noon.Add(time.Hour))
		if !strings.Contains(got, q.shown) || strings.Contains(got, q.hidden) {
			t.Errorf("%s asks %q (direct: %v):\n%s\nwant %q in it, and not %q", q.user, q.text, q.direct, got, q.shown, q.hidden)
		}
	}
}

// TestAFullDayIsReadOutInPart: a message lists no more than fits on a phone.
func TestAFullDayIsReadOutInPart(t *testing.T) {
	noon := time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC)
	c := newClerk(t, &shelf{})
	c.Supervisors = []string{"U0BOSS"}
	for i := range 30 {
		ev := bot.Event{ID: string(rune('A' + i)), Workspace: "T1", Channel: "C1", Thread: string(rune('A' + i)), User: "U1", Text: "600 lb limb, 3 wraps", At: noon}
		if _, err := c.Take(t.Context(), ev); err != nil {
			t.Fatal(err)
		}
	}
	reply, err := c.Take(t.Context(), bot.Event{ID: "log", Workspace: "T1", Channel: "D1", User: "U0BOSS", Text: "log", At: noon, Direct: true})
	if err != nil || !strings.Contains(reply.Text(), "And 22 more") || strings.Count(reply.Text(), "12:00 “") != 8 {
		t.Errorf("%v\n%s", err, reply.Text())
	}
}

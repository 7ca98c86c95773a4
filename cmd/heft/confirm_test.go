package main

import (
	"context"
	"encoding/json"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"heft/bot/standin"
)

// TestConfirmedStory drives the built program through a lift that a button
// asks about once more and a supervisor confirms, in both ways in which a
// workspace speaks; the confirmation outlasts the program.
func TestConfirmedStory(t *testing.T) {
	for _, over := range []string{overSocket, overRequests} {
		t.Run(over, func(t *testing.T) { confirmedStory(t, over) })
	}
}

func confirmedStory(t *testing.T, over string) {
	const supervisor = "U0CREW0002"
	ctx, cancel := context.WithTimeout(t.Context(), 2*time.Minute)
	defer cancel()
	w := workspace(t)
	journal := filepath.Join(t.TempDir(), "journal.db")
	s := serveAt(t, w, journal, over, "HEFT_SUPERVISORS="+supervisor)
	lift := w.Say(standin.Yard, "U0CREW0001", w.Mention()+" two of us on a 2:1, 600 lb limb, enough?")
	answer, err := w.Reply(ctx, lift)
	if err != nil {
		t.Fatal(err)
	}
	until := func(what string, cond func() bool) {
		t.Helper()
		if err := w.Await(ctx, cond); err != nil {
			t.Fatalf("%s: %v\n%s", what, err, s.err.String())
		}
	}
	now := func() string {
		for _, m := range w.Messages(standin.Yard) {
			if m.TS == answer.TS {
				return m.Shown()
			}
		}
		return ""
	}
	press := func(user, action string) {
		t.Helper()
		if _, err := w.Press(standin.Press{User: user, Channel: standin.Yard, TS: answer.TS, Action: action}); err != nil {
			t.Fatal(err)
		}
	}
	press("U0CREW0001", "actions/0")
	until("the working", func() bool { return strings.Contains(now(), "Calculator") })
	press("U0CREW0001", "confirm/0")
	until("a no", func() bool {
		return slices.ContainsFunc(w.Messages(standin.Yard), func(m standin.Message) bool { return m.For == "U0CREW0001" })
	})
	press(supervisor, "confirm/0")
	until("the form", func() bool { _, open := w.Snapshot().Modals[supervisor]; return open })
	if _, err := w.Submit(supervisor, map[string]map[string]string{"note": {"note": "winch on the second oak"}}); err != nil {
		t.Fatal(err)
	}
	until("the confirmation", func() bool { return strings.Contains(now(), "Confirmed on site by @"+supervisor) })
	s.stop(t)

	out, err := exec.Command(program(t), "log", "--journal", journal, "--format", "json").Output()
	if err != nil {
		t.Fatal(err)
	}
	var day []struct {
		ID        string
		ViewOf    string `json:"view_of"`
		Confirmed *struct{ By, Note string }
	}
	if err := json.Unmarshal(out, &day); err != nil || len(day) != 2 {
		t.Fatalf("%d questions, %v", len(day), err)
	}
	if day[1].ViewOf != day[0].ID { // it was confirmed while its working was shown
		t.Errorf("the working is logged as %s", out)
	}
	for _, e := range day {
		if c := e.Confirmed; c == nil || c.By != supervisor || c.Note != "winch on the second oak" {
			t.Errorf("the log has %s", out)
		}
	}
}

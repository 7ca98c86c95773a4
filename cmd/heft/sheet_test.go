package main

import (
	"context"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"heft/bot"
	"heft/bot/journal"
	"heft/bot/standin"
)

// The supervisor, and where the bot writes to them.
const (
	boss   = "U0BOSS0001"
	bossDM = "D0BOSS0001"
)

// TestDaySheet: the built program sends the supervisor the day's questions
// out of its journal as files, over both ways in, and never a row of another
// workspace that is in the same journal.
func TestDaySheet(t *testing.T) {
	for _, over := range []string{overSocket, overRequests} {
		t.Run(over, func(t *testing.T) { sheetStory(t, over) })
	}
}

func sheetStory(t *testing.T, over string) {
	ctx, cancel := context.WithTimeout(t.Context(), 2*time.Minute)
	defer cancel()
	w := supervisedYard(t)
	path := filepath.Join(t.TempDir(), "journal.db")
	elsewhere(t, path)
	s := serveAt(t, w, path, over, "HEFT_SUPERVISORS="+boss, "HEFT_ZONE=UTC")
	if _, err := w.Reply(ctx, w.Say(standin.Yard, "U0GROUND01", "<@"+standin.BotUser+"> 14 in red oak limb 22 ft")); err != nil {
		t.Fatal(err)
	}
	w.OpenHome(boss)
	await := func(cond func() bool) {
		t.Helper()
		if err := w.Await(ctx, cond); err != nil {
			t.Fatalf("%v; the program says:\n%s", err, s.err.String())
		}
	}
	await(func() bool { return w.Snapshot().Homes[boss].Hash != "" })
	home := w.Snapshot().Homes[boss]
	files := map[string]standin.File{}
	for _, b := range home.Blocks {
		for _, e := range b.Elements {
			if e.Text == nil || e.Text.Text != "CSV" && e.Text.Text != "Day sheet" {
				continue
			}
			if _, err := w.Press(standin.Press{User: boss, View: home.ID, Block: b.ID, Action: e.ActionID}); err != nil {
				t.Fatal(err)
			}
			await(func() bool { _, n := counted(w.Messages(bossDM)); return n == len(files)+1 })
			m := w.Messages(bossDM)
			files[e.Text.Text] = m[len(m)-1].Files[0]
		}
	}
	s.stop(t)
	readSheets(t, files)
}

// elsewhere logs a question of another workspace a moment ago.
func elsewhere(t *testing.T, path string) {
	t.Helper()
	j, err := journal.Open(t.Context(), path)
	if err != nil {
		t.Fatal(err)
	}
	e := bot.Entry{
		ID: "Ev0ELSEWHERE", Asked: time.Now(), Workspace: "T0ELSEWHERE", Channel: standin.Yard, Thread: "1.2", User: "U0OTHER001",
		Words: "asked elsewhere", Status: bot.Answered, Reply: "told elsewhere", Question: []byte("{}"), Result: []byte("{}"), Schema: 1,
	}
	if err := j.Append(t.Context(), e); err != nil {
		t.Fatal(err)
	}
	if err := j.Close(); err != nil {
		t.Fatal(err)
	}
}

// readSheets finds the question that was asked in each file, and no other.
func readSheets(t *testing.T, files map[string]standin.File) {
	t.Helper()
	if len(files) != 2 {
		t.Fatalf("%d files: %v", len(files), files)
	}
	for label, end := range map[string]string{"CSV": ".csv", "Day sheet": ".html"} {
		f := files[label]
		text := string(f.Content)
		if !strings.HasPrefix(f.Name, "heft-2") || !strings.HasSuffix(f.Name, end) || !strings.Contains(text, "14 in red oak limb 22 ft") {
			t.Errorf("%s: %q holds\n%s", label, f.Name, text)
		}
		if strings.Contains(text, "elsewhere") || strings.Contains(text, "ELSEWHERE") || strings.Contains(text, "U0OTHER001") {
			t.Errorf("%s: another workspace's question in\n%s", label, text)
		}
	}
	if page := string(files["Day sheet"].Content); !strings.HasPrefix(strings.ToLower(page), "<!doctype html>") {
		t.Errorf("no page: %.80s", page)
	}
}

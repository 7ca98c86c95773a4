package main

import (
	"context"
	"encoding/csv"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"heft/bot/standin"
)

// looking is the program in a workspace whose supervisor speaks Spanish.
type looking struct {
	*testing.T
	*served
	space   *standin.Workspace
	ctx     context.Context
	journal string
}

// supervisedYard is a workspace with a crew in the yard and the boss's direct
// messages.
func supervisedYard(t *testing.T) *standin.Workspace {
	t.Helper()
	w, err := standin.Start(standin.Options{
		BotToken: botToken, AppToken: appToken, HomeTab: true,
		Scopes: []string{"app_mentions:read", "chat:write", "files:write", "reactions:write"}, Events: []string{"app_mention", "app_home_opened"},
		Channels: []standin.Channel{{ID: standin.Yard, Name: "yard"}, {ID: bossDM, Name: "boss", Members: []string{boss}}},
		Users:    []standin.User{{ID: "U0GROUND01", Name: "ana"}, {ID: boss, Name: "boss"}},
	})
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = w.Close() })
	return w
}

func look(t *testing.T) *looking {
	t.Helper()
	ctx, cancel := context.WithTimeout(t.Context(), 2*time.Minute)
	t.Cleanup(cancel)
	w := supervisedYard(t)
	l := &looking{T: t, space: w, ctx: ctx, journal: filepath.Join(t.TempDir(), "journal.db")}
	l.served = serveAt(t, w, l.journal, overSocket, "HEFT_SUPERVISORS="+boss, "HEFT_ZONE=America/Denver")
	return l
}

func (l *looking) until(what string, cond func() bool) {
	l.Helper()
	if err := l.space.Await(l.ctx, cond); err != nil {
		l.Fatalf("%s: %v; the program says:\n%s", what, err, l.err.String())
	}
}

func (l *looking) asks(user, text string) standin.Message {
	l.Helper()
	m, err := l.space.Reply(l.ctx, l.space.Say(standin.Yard, user, l.space.Mention()+" "+text))
	if err != nil {
		l.Fatal(err)
	}
	return m
}

// presses uses the button with a label under an answer, until it shows what
// is wanted.
func (l *looking) presses(user string, answer standin.Message, label, want string) {
	l.Helper()
	now := func() standin.Message {
		for _, m := range l.space.Messages(answer.Channel) {
			if m.TS == answer.TS {
				return m
			}
		}
		return standin.Message{}
	}
	for _, b := range now().Blocks {
		for _, e := range b.Elements {
			if e.Text == nil || e.Text.Text != label {
				continue
			}
			if _, err := l.space.Press(standin.Press{User: user, Channel: answer.Channel, TS: answer.TS, Action: e.ActionID}); err != nil {
				l.Fatal(err)
			}
			l.until(label, func() bool { return strings.Contains(now().Shown(), want) })
			return
		}
	}
	l.Fatalf("no button %q under %q", label, now().Shown())
}

// sent is the file that a button of the supervisor's home tab sends.
func (l *looking) sent(label string) string {
	l.Helper()
	home := l.space.Snapshot().Homes[boss]
	_, before := counted(l.space.Messages(bossDM))
	for _, b := range home.Blocks {
		for _, e := range b.Elements {
			if e.Text == nil || e.Text.Text != label {
				continue
			}
			if _, err := l.space.Press(standin.Press{User: boss, View: home.ID, Block: b.ID, Action: e.ActionID}); err != nil {
				l.Fatal(err)
			}
			l.until(label, func() bool { _, n := counted(l.space.Messages(bossDM)); return n == before+1 })
			m := l.space.Messages(bossDM)
			return string(m[len(m)-1].Files[0].Content)
		}
	}
	l.Fatalf("no button %q", label)
	return ""
}

// logs runs heft log on the journal that the program left.
func (l *looking) logs(args ...string) (string, error) {
	cmd := exec.CommandContext(l.ctx, program(l.T), append([]string{"log", "--journal", l.journal, "--zone", "America/Denver"}, args...)...)
	out, err := cmd.CombinedOutput()
	return string(out), err
}

// Whose day it is reads it in their language, and what was only looked at
// another way stands on no sheet as a question; scripts read all of it.
func TestTheSupervisorsDay(t *testing.T) {
	l := look(t)
	answer := l.asks("U0GROUND01", "14 in red oak limb 22 ft, hitched at 35 ft")
	l.presses(boss, answer, "Show the working", "Calculator")
	l.presses("U0GROUND01", answer, "In metric", "35.6 cm")
	l.presses("U0GROUND01", answer, "If it is 40.6 cm", "40.6 cm butt") // at 35.6 cm it already says what 40.6 would weigh
	l.asks(boss, "rama de roble rojo 14 pulgadas, 22 pies")
	l.space.OpenHome(boss)
	l.until("the home tab", func() bool { return l.space.Snapshot().Homes[boss].Hash != "" })
	page, table := l.sent("Hoja del día"), l.sent("CSV")
	l.stop(t)

	english, err := l.logs("--format", "html") // as many questions in either
	if err != nil {
		t.Fatal(english, err)
	}
	spanish, err := l.logs("--format", "html", "--language", "es")
	if err != nil || spanish == english {
		t.Fatal(spanish, err)
	}
	for name, c := range map[string]struct {
		page string
		want []string
	}{
		"sent":    {page, []string{`<html lang="es">`, "<b>3</b> preguntas", "Se leyó: roble rojo, rama, diámetro en la base 14 in, largo 22 ft, altura del amarre 35 ft"}},
		"spanish": {spanish, []string{`<html lang="es">`, "<b>3</b> preguntas", "Se leyó: roble rojo, rama, diámetro en la base 14 pulgadas, largo 22 pies"}},
		"english": {english, []string{`<html lang="en">`, "<b>3</b> questions", "Read as: red oak, limb, butt diameter 14 in, length 22 ft</p>"}},
	} {
		for _, want := range append(c.want, "(UTC-0") {
			if !strings.Contains(c.page, want) {
				t.Errorf("%s: the page lacks %q:\n%s", name, want, c.page)
			}
		}
		if n := strings.Count(c.page, `class="answer given"`); n != 1 || strings.Contains(c.page, "show the numbers") {
			t.Errorf("%s: %d answers are struck through:\n%s", name, n, c.page)
		}
	}
	l.reads(table)
	whole, err := l.logs("--format", "csv")
	if err != nil {
		t.Fatal(whole, err)
	}
	l.reads(whole)
	for _, args := range [][]string{{"--language", "tlh"}, {"--format", "csv", "--language", "es"}, {"--format", "json", "--language", "en"}} {
		if out, err := l.logs(args...); err == nil || !strings.Contains(out, "--language") {
			t.Errorf("%v: %v, %s", args, err, out)
		}
	}
}

// reads finds five rows: two that were views, and one that changed the answer.
func (l *looking) reads(table string) {
	l.Helper()
	rows, err := csv.NewReader(strings.NewReader(table)).ReadAll()
	if err != nil || len(rows) != 6 {
		l.Fatalf("%d rows, %v:\n%s", len(rows), err, table)
	}
	column := map[string]int{}
	for i, name := range rows[0] {
		column[name] = i
	}
	of := func(row int, name string) string { return rows[row][column[name]] }
	asked := of(1, "words")
	for row, c := range []struct{ viewOf, changedFrom string }{{}, {of(1, "id"), ""}, {of(1, "id"), ""}, {"", asked}, {}} {
		if of(row+1, "view_of") != c.viewOf || of(row+1, "changed_from") != c.changedFrom {
			l.Errorf("row %d: %q, want %+v", row+1, rows[row+1], c)
		}
	}
}

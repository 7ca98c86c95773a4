package journal

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"path/filepath"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"heft/bot"
)

// noon is when the first question of most tests was asked.
var noon = time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC)

// question is an entry with every field set, n microseconds after noon.
func question(n int) bot.Entry {
	return bot.Entry{
		ID:        fmt.Sprintf("Ev%06d", n),
		Asked:     noon.Add(time.Duration(n) * time.Microsecond),
		Workspace: "T-ridge",
		Channel:   "C-north-crew",
		Thread:    "1764072000.000100",
		User:      "U-ana",
		Words:     "14 in red oak limb 22 ft, hitched at 35 ft",
		Status:    bot.Answered,
		Intent:    "lower",
		Question:  json.RawMessage(`{"species":"Quercus rubra","length_m":6.7056}`),
		Result:    json.RawMessage(`{"status":"answered","cautions":["ask first"]}`),
		Reply:     "Plan on 640 kg.\nConfirm on site.",
		PlanKg:    640.25,
		Calc:      "3",
		Schema:    bot.SchemaVersion,
	}
}

func newPath(t testing.TB) string {
	t.Helper()
	return filepath.Join(t.TempDir(), "crew", "journal.db")
}

// mustOpen opens a journal that the test closes.
func mustOpen(t testing.TB, path string) *Journal {
	t.Helper()
	return mustOpenLag(t, path, lag)
}

func mustOpenLag(t testing.TB, path string, lag time.Duration) *Journal {
	t.Helper()
	j, err := open(t.Context(), path, lag)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		if err := j.Close(); err != nil {
			t.Errorf("close: %v", err)
		}
	})
	return j
}

func mustAppend(t testing.TB, j *Journal, es ...bot.Entry) {
	t.Helper()
	for _, e := range es {
		if err := j.Append(t.Context(), e); err != nil {
			t.Fatalf("append %s: %v", e.ID, err)
		}
	}
}

func mustFind(t testing.TB, j interface {
	Find(context.Context, string, string) (bot.Entry, error)
}, e bot.Entry) bot.Entry {
	t.Helper()
	got, err := j.Find(t.Context(), e.Workspace, e.ID)
	if err != nil {
		t.Fatalf("find %s: %v", e.ID, err)
	}
	return got
}

func ids(es []bot.Entry) (out []string) {
	for _, e := range es {
		out = append(out, e.ID)
	}
	return out
}

func TestEveryFieldComesBack(t *testing.T) {
	posted := noon.Add(time.Second)
	odd := question(2)
	odd.Words = "zwölf Zoll \x00 \xff '; DROP TABLE question; -- 🌳"
	bare := bot.Entry{ID: "Ev-bare", Asked: noon}
	early := question(3)
	early.Asked = time.Time{}
	done := question(4)
	done.Delivered, done.Failure = &posted, "the second try failed"

	j := mustOpen(t, newPath(t))
	for _, want := range []bot.Entry{question(1), odd, bare, early, done} {
		mustAppend(t, j, want)
		if diff := cmp.Diff(want, mustFind(t, j, want)); diff != "" {
			t.Errorf("%s (-appended +found):\n%s", want.ID, diff)
		}
	}
}

func TestTimesAreKeptToTheMicrosecondInUTC(t *testing.T) {
	e := question(1)
	e.Asked = time.Date(2026, 11, 25, 23, 30, 0, 123456789, time.FixedZone("", 3600))
	j := mustOpen(t, newPath(t))
	mustAppend(t, j, e)
	want := time.Date(2026, 11, 25, 22, 30, 0, 123456000, time.UTC)
	if got := mustFind(t, j, e).Asked; got != want {
		t.Errorf("asked %v, want %v", got, want)
	}
}

func TestAnEventIsLoggedOnce(t *testing.T) {
	j := mustOpen(t, newPath(t))
	first := question(1)
	mustAppend(t, j, first)
	again := first
	again.Words = "something else"
	if err := j.Append(t.Context(), again); !errors.Is(err, bot.ErrLogged) {
		t.Fatalf("append again: %v, want %v", err, bot.ErrLogged)
	}
	if got := mustFind(t, j, first).Words; got != first.Words {
		t.Errorf("the second delivery wrote over the first: %q", got)
	}
	elsewhere := first
	elsewhere.Workspace = "T-valley"
	mustAppend(t, j, elsewhere)
}

func TestAnUnknownEventIsNotLogged(t *testing.T) {
	j := mustOpen(t, newPath(t))
	mustAppend(t, j, question(1))
	for _, at := range [][2]string{{"T-ridge", "Ev-none"}, {"T-valley", question(1).ID}} {
		if _, err := j.Find(t.Context(), at[0], at[1]); !errors.Is(err, bot.ErrNotLogged) {
			t.Errorf("find %v: %v, want %v", at, err, bot.ErrNotLogged)
		}
	}
}

func TestBetweenTakesTheStartAndLeavesTheEnd(t *testing.T) {
	from, to := noon, noon.Add(24*time.Hour)
	j := mustOpen(t, newPath(t))
	for id, at := range map[string]time.Time{
		"before":    from.Add(-time.Microsecond),
		"at-start":  from,
		"last":      to.Add(-time.Microsecond),
		"at-end":    to,
		"elsewhere": from.Add(time.Hour).In(time.FixedZone("", -8*3600)),
	} {
		e := question(0)
		e.ID, e.Asked = id, at
		mustAppend(t, j, e)
	}
	got, err := j.Between(t.Context(), from, to)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff([]string{"at-start", "elsewhere", "last"}, ids(got)); diff != "" {
		t.Error(diff)
	}
}

func TestQuestionsOfOneMomentStayInOrder(t *testing.T) {
	j := mustOpen(t, newPath(t))
	want := []string{"c", "a", "b"}
	for _, id := range want {
		e := question(0)
		e.ID = id
		mustAppend(t, j, e)
	}
	got, err := j.Between(t.Context(), noon, noon.Add(time.Microsecond))
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(want, ids(got)); diff != "" {
		t.Error(diff)
	}
}

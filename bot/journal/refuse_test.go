package journal

import (
	"context"
	"errors"
	"math"
	"strings"
	"testing"

	"heft/bot"
)

// pragma sets or asks the writer's connection.
func pragma(t testing.TB, j *Journal, text string) (got string) {
	t.Helper()
	if err := j.w.conn.QueryRowContext(t.Context(), "PRAGMA "+text).Scan(&got); err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	return got
}

// long is an entry that needs pages of its own.
func long(n int) bot.Entry {
	e := question(n)
	e.Words = strings.Repeat("red oak ", 8192)
	return e
}

func TestAFullDiskFailsTheEntryAndNoOther(t *testing.T) {
	j := mustOpen(t, newPath(t))
	mustAppend(t, j, question(1))
	pragma(t, j, "max_page_count = "+pragma(t, j, "page_count"))
	if err := j.Append(t.Context(), long(2)); err == nil || !strings.Contains(err.Error(), "the disk is full") {
		t.Fatalf("append to a full disk: %v", err)
	}
	if _, err := j.Find(t.Context(), "T-ridge", long(2).ID); !errors.Is(err, bot.ErrNotLogged) {
		t.Fatalf("find what was refused: %v", err)
	}
	mustFind(t, j, question(1))
	pragma(t, j, "max_page_count = 100000")
	mustAppend(t, j, long(2), question(3))
}

func TestALostDeliveryIsReportedOnce(t *testing.T) {
	j := mustOpen(t, newPath(t))
	e := question(1)
	mustAppend(t, j, e)
	pragma(t, j, "max_page_count = "+pragma(t, j, "page_count"))
	lost := bot.Delivery{Workspace: e.Workspace, ID: e.ID, Failure: strings.Repeat("timeout ", 8192)}
	if err := j.Deliver(t.Context(), lost); err != nil {
		t.Fatalf("a note waits for nobody: %v", err)
	}
	mustFind(t, j, e) // the note has been tried
	kept := bot.Delivery{Workspace: e.Workspace, ID: e.ID, At: noon}
	err := j.Deliver(t.Context(), kept)
	if err == nil || !strings.Contains(err.Error(), "earlier delivery") || !strings.Contains(err.Error(), "the disk is full") {
		t.Errorf("the delivery after the lost one: %v", err)
	}
	if got := mustFind(t, j, e); got.Delivered == nil {
		t.Error("the delivery after the lost one is lost too")
	}
	if err := j.Deliver(t.Context(), kept); err != nil {
		t.Errorf("reported twice: %v", err)
	}
}

func TestALostDeliveryIsReportedByClose(t *testing.T) {
	j, err := Open(t.Context(), newPath(t))
	if err != nil {
		t.Fatal(err)
	}
	e := question(1)
	mustAppend(t, j, e)
	pragma(t, j, "max_page_count = "+pragma(t, j, "page_count"))
	lost := bot.Delivery{Workspace: e.Workspace, ID: e.ID, Failure: strings.Repeat("timeout ", 8192)}
	if err := j.Deliver(t.Context(), lost); err != nil {
		t.Fatal(err)
	}
	if err := j.Close(); err == nil || !strings.Contains(err.Error(), "the disk is full") {
		t.Errorf("close: %v", err)
	}
}

func TestAnotherProgramsLockIsNamed(t *testing.T) {
	path := newPath(t)
	j := mustOpen(t, path)
	pragma(t, j, "busy_timeout = 1")
	free := lock(t, path)
	if err := j.Append(t.Context(), question(1)); err == nil || !strings.Contains(err.Error(), "another program holds the journal") {
		t.Errorf("append: %v", err)
	}
	free()
	mustAppend(t, j, question(1))
}

func TestAnEntryOutOfBoundsIsRefused(t *testing.T) {
	j := mustOpen(t, newPath(t))
	for name, spoil := range map[string]func(*bot.Entry){
		"no id":             func(e *bot.Entry) { e.ID = "" },
		"no number":         func(e *bot.Entry) { e.PlanKg = math.NaN() },
		"an endless weight": func(e *bot.Entry) { e.PlanKg = math.Inf(1) },
		"a negative weight": func(e *bot.Entry) { e.PlanKg = -1 },
	} {
		e := question(1)
		spoil(&e)
		if err := j.Append(t.Context(), e); err == nil || !strings.Contains(err.Error(), "lacks what the journal asks") {
			t.Errorf("%s: %v", name, err)
		}
	}
	mustAppend(t, j, question(1))
}

func TestAClosedJournalTakesNothing(t *testing.T) {
	j, err := Open(t.Context(), newPath(t))
	if err != nil {
		t.Fatal(err)
	}
	for range 2 {
		if err := j.Close(); err != nil {
			t.Fatal(err)
		}
	}
	ctx := t.Context()
	_, find := j.Find(ctx, "T-ridge", "Ev1")
	_, between := j.Between(ctx, noon, noon)
	_, undelivered := j.Undelivered(ctx, noon)
	for name, err := range map[string]error{
		"append":  j.Append(ctx, question(1)),
		"deliver": j.Deliver(ctx, bot.Delivery{}),
		"find":    find, "between": between, "undelivered": undelivered,
	} {
		if !errors.Is(err, ErrClosed) {
			t.Errorf("%s: %v, want %v", name, err, ErrClosed)
		}
	}
}

func TestACancelledCallerIsLetGo(t *testing.T) {
	path := newPath(t)
	j := mustOpen(t, path)
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	if err := j.Append(ctx, question(1)); !errors.Is(err, context.Canceled) {
		t.Errorf("append: %v", err)
	}
	if err := j.Deliver(ctx, bot.Delivery{}); !errors.Is(err, context.Canceled) {
		t.Errorf("deliver: %v", err)
	}
	if _, err := j.Between(ctx, noon, noon); !errors.Is(err, context.Canceled) {
		t.Errorf("between: %v", err)
	}

	free := lock(t, path) // the writer cannot get on
	ctx, cancel = context.WithCancel(t.Context())
	left := make(chan error)
	go func() { left <- j.Append(ctx, question(2)) }()
	cancel()
	if err := <-left; !errors.Is(err, context.Canceled) {
		t.Errorf("append behind a lock: %v", err)
	}
	free()
	mustAppend(t, j, question(3))
}

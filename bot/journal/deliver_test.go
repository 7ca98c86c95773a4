package journal

import (
	"sync/atomic"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"heft/bot"
)

// note records that the reply to an entry was posted.
func note(t testing.TB, j *Journal, e bot.Entry) {
	t.Helper()
	if err := j.Deliver(t.Context(), bot.Delivery{Workspace: e.Workspace, ID: e.ID, At: noon}); err != nil {
		t.Fatal(err)
	}
}

func TestADeliveryRidesWithTheNextEntry(t *testing.T) {
	path := newPath(t)
	j := mustOpenLag(t, path, time.Hour)
	mustAppend(t, j, question(1))
	var commits atomic.Int64
	onCommit(t, j, func() { commits.Add(1) })
	note(t, j, question(1))
	mustAppend(t, j, question(2))
	if got := delivered(t, path); got != 1 {
		t.Errorf("%d deliveries on disk when the entry after it is", got)
	}
	if n := commits.Load(); n != 1 {
		t.Errorf("%d commits for both", n)
	}
}

func TestADeliveryAloneReachesTheDisk(t *testing.T) {
	path := newPath(t)
	j := mustOpenLag(t, path, time.Millisecond)
	mustAppend(t, j, question(1))
	committed := make(chan struct{}, 8)
	onCommit(t, j, func() { committed <- struct{}{} })
	note(t, j, question(1))
	<-committed // with nothing else to commit
	mustAppend(t, j, question(2))
	if got := delivered(t, path); got != 1 {
		t.Errorf("%d deliveries on disk", got)
	}
}

func TestCloseWritesTheDeliveries(t *testing.T) {
	path := newPath(t)
	j := mustOpenLag(t, path, time.Hour)
	mustAppend(t, j, question(1))
	note(t, j, question(1))
	if err := j.Close(); err != nil {
		t.Fatal(err)
	}
	if got := delivered(t, path); got != 1 {
		t.Errorf("%d deliveries on disk", got)
	}
}

func TestAReadSeesTheDeliveriesBeforeIt(t *testing.T) {
	j := mustOpenLag(t, newPath(t), time.Hour)
	mustAppend(t, j, question(1))
	note(t, j, question(1))
	if got := mustFind(t, j, question(1)); got.Delivered == nil {
		t.Error("it finds an entry from before the delivery")
	}
	if es, err := j.Undelivered(t.Context(), noon); err != nil || len(es) != 0 {
		t.Errorf("undelivered: %v, %v", ids(es), err)
	}
}

// delivered counts the delivered entries as another program sees them.
func delivered(t testing.TB, path string) (n int) {
	t.Helper()
	row := other(t, path).QueryRowContext(t.Context(), `SELECT count(*) FROM question WHERE delivered IS NOT NULL`)
	if err := row.Scan(&n); err != nil {
		t.Fatal(err)
	}
	return n
}

func TestDeliveries(t *testing.T) {
	j := mustOpen(t, newPath(t))
	old, posted, failed, retried, waits := question(0), question(1), question(2), question(3), question(4)
	old.Asked = noon.Add(-time.Hour)
	mustAppend(t, j, waits, retried, failed, posted, old)
	at := noon.Add(3 * time.Second)
	note := func(e bot.Entry, failure string) {
		t.Helper()
		d := bot.Delivery{Workspace: e.Workspace, ID: e.ID, At: at, Failure: failure}
		if err := j.Deliver(t.Context(), d); err != nil {
			t.Fatal(err)
		}
	}
	note(posted, "")
	note(failed, "channel_not_found")
	note(retried, "rate limited")
	note(retried, "")
	note(bot.Entry{ID: "Ev-never-logged"}, "")

	got, err := j.Undelivered(t.Context(), noon)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff([]string{failed.ID, waits.ID}, ids(got)); diff != "" {
		t.Errorf("undelivered: %s", diff)
	}
	failed.Failure, retried.Delivered = "channel_not_found", &at
	for _, want := range []bot.Entry{failed, retried} {
		if diff := cmp.Diff(want, mustFind(t, j, want)); diff != "" {
			t.Errorf("%s: %s", want.ID, diff)
		}
	}
}

func TestAPostedReplyStaysPosted(t *testing.T) {
	j := mustOpen(t, newPath(t))
	e := question(1)
	mustAppend(t, j, e)
	for i, failure := range []string{"", "", "a late failure"} {
		at := noon.Add(time.Duration(i+1) * time.Second)
		d := bot.Delivery{Workspace: e.Workspace, ID: e.ID, At: at, Failure: failure}
		if err := j.Deliver(t.Context(), d); err != nil {
			t.Fatal(err)
		}
	}
	first := noon.Add(time.Second)
	e.Delivered, e.Failure = &first, "a late failure"
	if diff := cmp.Diff(e, mustFind(t, j, e)); diff != "" {
		t.Error(diff)
	}
}

package journal

import (
	"context"
	"database/sql"
	"errors"
	"math"
	"sync"
	"sync/atomic"
	"testing"

	"modernc.org/sqlite"

	"heft/bot"
)

// lock takes the file's write lock on another connection, as another program
// might, and returns what gives it back.
func lock(t testing.TB, path string) (free func()) {
	t.Helper()
	conn := other(t, path)
	if _, err := conn.ExecContext(t.Context(), `BEGIN IMMEDIATE`); err != nil {
		t.Fatal(err)
	}
	return func() {
		if _, err := conn.ExecContext(t.Context(), `ROLLBACK`); err != nil {
			t.Error(err)
		}
	}
}

// other is a plain connection to the same file.
func other(t testing.TB, path string) *sql.Conn {
	t.Helper()
	db, err := sql.Open("sqlite", path)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = db.Close() })
	conn, err := db.Conn(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = conn.Close() })
	return conn
}

// onCommit has f called with each commit of the journal's writer.
func onCommit(t testing.TB, j *Journal, f func()) {
	t.Helper()
	err := j.w.conn.Raw(func(c any) error {
		c.(sqlite.HookRegisterer).RegisterCommitHook(func() int32 { f(); return 0 })
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
}

// line queues appends behind a lock and returns what became of each once the
// lock is gone: the writer finds them waiting together.
func line(t testing.TB, j *Journal, path string, es []bot.Entry) []error {
	t.Helper()
	free := lock(t, path)
	var requests []*request
	for _, e := range es {
		r := &request{ctx: t.Context(), args: values(e), done: make(chan error, 1)}
		requests = append(requests, r)
		if err := j.w.enqueue(t.Context(), r); err != nil {
			t.Fatal(err)
		}
	}
	free()
	errs := make([]error, len(requests))
	for i, r := range requests {
		errs[i] = <-r.done
	}
	return errs
}

func TestThoseWhoWaitShareACommit(t *testing.T) {
	path := newPath(t)
	j := mustOpen(t, path)
	var commits atomic.Int64
	onCommit(t, j, func() { commits.Add(1) })
	var es []bot.Entry
	for i := range 64 {
		es = append(es, question(i))
	}
	if err := errors.Join(line(t, j, path, es)...); err != nil {
		t.Fatal(err)
	}
	// One for those whom the writer took before it met the lock, one for the
	// rest.
	if n := commits.Load(); n < 1 || n > 2 {
		t.Errorf("%d commits for 64 entries", n)
	}
	got, err := j.Between(t.Context(), noon, noon.AddDate(0, 0, 1))
	if err != nil || len(got) != 64 {
		t.Errorf("%d entries, error %v", len(got), err)
	}
}

func TestADuplicateLeavesItsNeighboursAlone(t *testing.T) {
	path := newPath(t)
	j := mustOpen(t, path)
	mustAppend(t, j, question(2))
	errs := line(t, j, path, []bot.Entry{question(1), question(2), question(3), question(3), question(4)})
	for i, want := range []error{nil, bot.ErrLogged, nil, bot.ErrLogged, nil} {
		if !errors.Is(errs[i], want) {
			t.Errorf("entry %d: %v, want %v", i, errs[i], want)
		}
	}
	for _, n := range []int{1, 2, 3, 4} {
		mustFind(t, j, question(n))
	}
}

func TestARefusedEntryLeavesItsNeighboursAlone(t *testing.T) {
	path := newPath(t)
	j := mustOpen(t, path)
	bad := question(2)
	bad.PlanKg = math.NaN()
	errs := line(t, j, path, []bot.Entry{question(1), bad, question(1), question(3)})
	for i, sound := range []bool{true, false, false, true} {
		if (errs[i] == nil) != sound {
			t.Errorf("entry %d: %v", i, errs[i])
		}
	}
	if !errors.Is(errs[2], bot.ErrLogged) {
		t.Errorf("the duplicate: %v, want %v", errs[2], bot.ErrLogged)
	}
	mustFind(t, j, question(1))
	mustFind(t, j, question(3))
}

func TestACallerWhoLeftIsPassedOver(t *testing.T) {
	path := newPath(t)
	j := mustOpen(t, path)
	free := lock(t, path)
	ctx, cancel := context.WithCancel(t.Context())
	first := &request{ctx: t.Context(), args: values(question(1)), done: make(chan error, 1)}
	gone := &request{ctx: ctx, args: values(question(2)), done: make(chan error, 1)}
	for _, r := range []*request{first, gone} {
		if err := j.w.enqueue(t.Context(), r); err != nil {
			t.Fatal(err)
		}
	}
	cancel()
	free()
	if err := <-first.done; err != nil {
		t.Fatal(err)
	}
	if err := <-gone.done; !errors.Is(err, context.Canceled) {
		t.Errorf("the one who left: %v", err)
	}
	if _, err := j.Find(t.Context(), "T-ridge", question(2).ID); !errors.Is(err, bot.ErrNotLogged) {
		t.Errorf("it was written all the same: %v", err)
	}
}

func TestCloseUnderLoadLosesNothing(t *testing.T) {
	path := newPath(t)
	j, err := Open(t.Context(), path)
	if err != nil {
		t.Fatal(err)
	}
	var (
		wg             sync.WaitGroup
		logged, posted sync.Map
		next           atomic.Int64
		full           = make(chan struct{})
	)
	for range 16 {
		wg.Go(func() {
			for {
				n := int(next.Add(1))
				if n == 200 {
					close(full)
				}
				e := question(n)
				err := j.Append(t.Context(), e)
				if errors.Is(err, ErrClosed) {
					return
				} else if err != nil {
					t.Error(err)
					return
				}
				logged.Store(e.ID, true)
				if j.Deliver(t.Context(), bot.Delivery{Workspace: e.Workspace, ID: e.ID, At: noon}) == nil {
					posted.Store(e.ID, true)
				}
			}
		})
	}
	<-full
	if err := j.Close(); err != nil {
		t.Error(err)
	}
	wg.Wait()
	found := map[string]bool{} // and whether it was delivered
	es, err := mustOpen(t, path).Between(t.Context(), noon, noon.AddDate(0, 0, 1))
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range es {
		found[e.ID] = e.Delivered != nil
	}
	logged.Range(func(id, _ any) bool {
		if _, ok := found[id.(string)]; !ok {
			t.Errorf("%s was acknowledged and is lost", id)
		}
		return true
	})
	posted.Range(func(id, _ any) bool {
		if !found[id.(string)] {
			t.Errorf("%s was noted as delivered and is not", id)
		}
		return true
	})
	if len(found) < 100 {
		t.Errorf("only %d entries: the test saw no load", len(found))
	}
}

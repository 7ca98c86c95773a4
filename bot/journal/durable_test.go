package journal

import (
	"bufio"
	"context"
	"fmt"
	"os"
	"os/exec"
	"slices"
	"sync/atomic"
	"testing"
	"time"

	"heft/bot"
)

// bg outlives every test: what a child process does ends with the process.
var bg = context.Background()

// Set for a run of this test binary that only writes to a journal.
const (
	childEnv = "HEFT_JOURNAL_CHILD"
	pathEnv  = "HEFT_JOURNAL_PATH"
)

func TestMain(m *testing.M) {
	work, ok := map[string]func(*Journal) error{"endless": endless, "leave": leave}[os.Getenv(childEnv)]
	if !ok {
		os.Exit(m.Run())
	}
	j, err := Open(bg, os.Getenv(pathEnv))
	if err == nil {
		err = work(j)
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
	os.Exit(0) // the journal stays open: nothing is tidied up
}

// endless appends until it is killed and prints each id once it is safe.
func endless(j *Journal) error {
	var next atomic.Int64
	failed := make(chan error)
	for range 8 {
		go func() {
			for {
				e := question(int(next.Add(1)))
				if err := j.Append(bg, e); err != nil {
					failed <- err
				}
				fmt.Println(e.ID)
			}
		}()
	}
	return <-failed
}

const folded, loose = 12, 8

// leave appends entries, folds them into the file, and leaves some more in
// the write-ahead log alone.
func leave(j *Journal) error {
	for n := range folded + loose {
		if n == folded {
			if _, err := j.w.conn.ExecContext(bg, `PRAGMA wal_checkpoint(TRUNCATE)`); err != nil {
				return err
			}
		}
		if err := j.Append(bg, question(n)); err != nil {
			return err
		}
	}
	return nil
}

func child(t *testing.T, work, path string) *exec.Cmd {
	t.Helper()
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.CommandContext(t.Context(), self)
	cmd.Env = append(os.Environ(), childEnv+"="+work, pathEnv+"="+path)
	cmd.Stderr = os.Stderr
	return cmd
}

func TestAnAcknowledgedEntryIsThereForOthers(t *testing.T) {
	path := newPath(t)
	j := mustOpen(t, path)
	for n := range 20 {
		e := question(n)
		mustAppend(t, j, e)
		r, err := OpenRead(t.Context(), path)
		if err != nil {
			t.Fatal(err)
		}
		mustFind(t, r, e)
		if err := r.Close(); err != nil {
			t.Fatal(err)
		}
	}
}

func TestAKilledProgramKeepsWhatItAcknowledged(t *testing.T) {
	path := newPath(t)
	cmd := child(t, "endless", path)
	out, err := cmd.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	lines := bufio.NewScanner(out)
	var safe []string
	for len(safe) < 500 && lines.Scan() {
		safe = append(safe, lines.Text())
	}
	lookBeside(t, path, safe)
	if err := cmd.Process.Kill(); err != nil {
		t.Fatal(err)
	}
	for lines.Scan() {
		safe = append(safe, lines.Text())
	}
	if err := cmd.Wait(); err == nil {
		t.Fatal("the writer ended by itself")
	}
	j := mustOpen(t, path)
	for _, id := range safe {
		mustFind(t, j, bot.Entry{Workspace: "T-ridge", ID: id})
	}
	if err := quickCheck(t.Context(), j.db); err != nil {
		t.Error(err)
	}
	mustAppend(t, j, bot.Entry{ID: "Ev-after"})
}

// lookBeside reads the journal while another program writes it.
func lookBeside(t *testing.T, path string, safe []string) {
	t.Helper()
	r, err := OpenRead(t.Context(), path)
	if err != nil {
		t.Fatal(err)
	}
	es, err := r.Between(t.Context(), noon, noon.AddDate(0, 0, 1))
	if err != nil {
		t.Fatal(err)
	}
	if err := r.Close(); err != nil {
		t.Error(err)
	}
	seen := ids(es)
	slices.Sort(seen)
	for _, id := range safe {
		if _, ok := slices.BinarySearch(seen, id); !ok {
			t.Errorf("%s was acknowledged and a reader beside does not see it", id)
		}
	}
}

func TestAReaderDoesNotHoldTheWriterUp(t *testing.T) {
	path := newPath(t)
	j := mustOpen(t, path)
	mustAppend(t, j, question(1), question(2))
	r, err := OpenRead(t.Context(), path)
	if err != nil {
		t.Fatal(err)
	}
	defer r.Close()
	rows, err := r.between.QueryContext(t.Context(), 0, noon.AddDate(1, 0, 0).UnixMicro())
	if err != nil {
		t.Fatal(err)
	}
	defer rows.Close()
	if !rows.Next() {
		t.Fatal("no row")
	}
	pragma(t, j, "busy_timeout = 0") // whoever meets a lock fails at once
	mustAppend(t, j, question(3))

	free := lock(t, path)
	defer free()
	if es, err := r.Between(t.Context(), noon, noon.Add(time.Hour)); err != nil || len(es) != 3 {
		t.Errorf("behind the writer's lock: %v, %v", ids(es), err)
	}
}

package journal

import (
	"context"
	"database/sql"
	"errors"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/adrg/xdg"
	"github.com/google/go-cmp/cmp"
)

// versionOne makes a journal as the first schema had it, with one row.
func versionOne(t *testing.T) (path string) {
	t.Helper()
	path = newPath(t)
	if err := create(path); err != nil {
		t.Fatal(err)
	}
	db, err := connect(path, "_journal_mode=WAL")
	if err != nil {
		t.Fatal(err)
	}
	defer db.Close()
	steps, err := provider(db)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := steps.UpTo(t.Context(), 1); err != nil {
		t.Fatal(err)
	}
	_, err = db.ExecContext(t.Context(), `INSERT INTO question
		(workspace, event_id, asked, channel, thread, asker, words, status, intent, question,
		 result, reply, plan_kg, calc, schema, delivered, failure)
		VALUES ('T-ridge', 'Ev000007', 1795608000000007, 'C-north-crew', '1764072000.000100', 'U-ana',
		 '14 in red oak limb 22 ft, hitched at 35 ft', 'answered', 'lower',
		 '{"species":"Quercus rubra","length_m":6.7056}', '{"status":"answered","cautions":["ask first"]}',
		 'Plan on 640 kg.' || char(10) || 'Confirm on site.', 640.25, '3', 1, NULL, '')`)
	if err != nil {
		t.Fatal(err)
	}
	return path
}

func TestAnOlderJournalIsBroughtUpToDate(t *testing.T) {
	path := versionOne(t)
	if r, err := OpenRead(t.Context(), path); !errors.Is(err, errOlder) {
		t.Errorf("read it as it was: %v, %v, want %v", r, err, errOlder)
	}
	j := mustOpen(t, path)
	// 2026-11-25 12:00 UTC is 1795608000 seconds after 1970 (date -u -d).
	if diff := cmp.Diff(question(7), mustFind(t, j, question(7))); diff != "" {
		t.Errorf("the row of the first schema (-want +found):\n%s", diff)
	}
	mustAppend(t, j, question(8))
	if !planned(t, j, betweenSQL, "question_asked") {
		t.Error("the day is not read by its index")
	}
}

// planned says whether SQLite means to use the index for the query.
func planned(t *testing.T, j *Journal, query, index string) bool {
	t.Helper()
	rows, err := j.db.QueryContext(t.Context(), "EXPLAIN QUERY PLAN "+query, 0, 1)
	if err != nil {
		t.Fatal(err)
	}
	defer rows.Close()
	var plan []string
	for rows.Next() {
		var id, parent, unused int
		var detail string
		if err := rows.Scan(&id, &parent, &unused, &detail); err != nil {
			t.Fatal(err)
		}
		plan = append(plan, detail)
	}
	whole := slices.ContainsFunc(plan, func(step string) bool { return strings.HasPrefix(step, "SCAN") })
	return !whole && strings.Contains(plan[0], "USING INDEX "+index)
}

func TestANewerJournalIsLeftAlone(t *testing.T) {
	path := newPath(t)
	mustAppend(t, mustOpen(t, path), question(1))
	conn := other(t, path)
	_, err := conn.ExecContext(t.Context(), `INSERT INTO goose_db_version (version_id, is_applied) VALUES (9999, 1)`)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := Open(t.Context(), path); !errors.Is(err, errNewer) {
		t.Errorf("open: %v, want %v", err, errNewer)
	}
	if _, err := OpenRead(t.Context(), path); !errors.Is(err, errNewer) {
		t.Errorf("open to read: %v, want %v", err, errNewer)
	}
}

func TestProgramsThatStartTogetherShareANewJournal(t *testing.T) {
	path := newPath(t)
	const many = 8
	errs := make(chan error)
	for n := range many {
		go func() {
			j, err := Open(t.Context(), path)
			if err == nil {
				err = errors.Join(j.Append(t.Context(), question(n)), j.Close())
			}
			errs <- err
		}()
	}
	for range many {
		if err := <-errs; err != nil {
			t.Error(err)
		}
	}
	es, err := mustOpen(t, path).Between(t.Context(), noon, noon.AddDate(0, 0, 1))
	if err != nil || len(es) != many {
		t.Errorf("%d entries, error %v", len(es), err)
	}
}

func TestMigratingPrintsNothing(t *testing.T) {
	out, in, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	stdout, stderr := os.Stdout, os.Stderr
	os.Stdout, os.Stderr = in, in
	j, err := Open(t.Context(), newPath(t))
	os.Stdout, os.Stderr = stdout, stderr
	if err != nil {
		t.Fatal(err)
	}
	if err := errors.Join(j.Close(), in.Close()); err != nil {
		t.Fatal(err)
	}
	if printed, err := io.ReadAll(out); err != nil || len(printed) != 0 {
		t.Errorf("printed %q, error %v", printed, err)
	}
}

func TestAPathIsTakenLiterally(t *testing.T) {
	path := filepath.Join(t.TempDir(), "crew ü?mode=ro#2%41&_query_only=1", "a+b.db")
	mustAppend(t, mustOpen(t, path), question(1))
	if _, err := os.Stat(path); err != nil {
		t.Error(err)
	}
}

func TestTheConnectionsAreSetForSafety(t *testing.T) {
	j := mustOpen(t, newPath(t))
	for name, want := range map[string]string{
		"journal_mode": "wal",
		"synchronous":  "2", // FULL
		"foreign_keys": "1",
		"busy_timeout": "5000",
	} {
		if got := pragma(t, j, name); got != want {
			t.Errorf("writer: %s is %s, want %s", name, got, want)
		}
	}
	if _, err := j.db.ExecContext(t.Context(), `DELETE FROM question`); err == nil {
		t.Error("a reader's connection may write")
	}
	if err := quickCheck(t.Context(), j.db); err != nil {
		t.Error(err)
	}
}

// quickCheck has SQLite look the whole file over.
func quickCheck(ctx context.Context, db *sql.DB) error {
	var said string
	if err := db.QueryRowContext(ctx, `PRAGMA integrity_check`).Scan(&said); err != nil {
		return err
	}
	if said != "ok" {
		return errors.New(said)
	}
	return nil
}

func TestDefaultPathIsInTheStateFolder(t *testing.T) {
	t.Cleanup(xdg.Reload) // after the environment is as it was
	state := t.TempDir()
	t.Setenv("XDG_STATE_HOME", state)
	xdg.Reload()
	if got, want := DefaultPath(), filepath.Join(state, "heft", "journal.db"); got != want {
		t.Errorf("default path %s, want %s", got, want)
	}
}

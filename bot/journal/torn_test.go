package journal

import (
	"encoding/binary"
	"os"
	"path/filepath"
	"slices"
	"testing"
	"time"
)

// left returns a journal's file and its write-ahead log as a program left
// them that did not close it.
func left(t *testing.T) (file, log []byte) {
	t.Helper()
	path := newPath(t)
	if out, err := child(t, "leave", path).Output(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	file, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	log, err = os.ReadFile(path + "-wal")
	if err != nil {
		t.Fatal(err)
	}
	return file, log
}

// A write-ahead log is a header of 32 bytes and frames of 24 bytes and a
// page; the second big-endian word of a frame is not zero where the frame
// ends a commit (SQLite file format, 4.1, from memory).
const walHeader, walFrame = 32, 24 + 4096

// commits returns where in the log each commit ends.
func commits(log []byte) (ends []int) {
	for at := walHeader; at+walFrame <= len(log); at += walFrame {
		if binary.BigEndian.Uint32(log[at+4:]) != 0 {
			ends = append(ends, at+walFrame)
		}
	}
	return ends
}

// survivors opens a journal of the two parts and returns how many of the
// entries of leave it holds; they have to be the first.
func survivors(t *testing.T, file, log []byte) int {
	t.Helper()
	path := filepath.Join(t.TempDir(), "journal.db")
	write(t, path, string(file))
	write(t, path+"-wal", string(log))
	j, err := Open(t.Context(), path)
	if err != nil {
		t.Fatal(err)
	}
	defer j.Close()
	es, err := j.Between(t.Context(), noon, noon.Add(time.Hour))
	if err != nil {
		t.Fatal(err)
	}
	for n, e := range es {
		if e.ID != question(n).ID {
			t.Fatalf("entry %d is %s", n, e.ID)
		}
	}
	mustAppend(t, j, question(999))
	return len(es)
}

func TestATornLogLosesOnlyItsTail(t *testing.T) {
	file, log := left(t)
	ends := commits(log)
	if len(ends) != loose {
		t.Fatalf("%d commits in the log, want %d", len(ends), loose)
	}
	cuts := []int{0, 1, walHeader - 1, walHeader, walHeader + 1, walHeader + 24, len(log)}
	for _, end := range ends {
		cuts = append(cuts, end-walFrame+7, end-1, end, end+1, end+2000)
	}
	for _, cut := range cuts {
		cut = min(cut, len(log))
		whole := 0
		for whole < len(ends) && ends[whole] <= cut {
			whole++
		}
		if got := survivors(t, file, log[:cut]); got != folded+whole {
			t.Errorf("log cut at %d of %d: %d entries, want %d", cut, len(log), got, folded+whole)
		}
	}
}

func TestADamagedLogLosesOnlyWhatFollows(t *testing.T) {
	file, log := left(t)
	for n, end := range commits(log) {
		bad := slices.Clone(log)
		bad[end-100] ^= 0x40
		if got := survivors(t, file, bad); got != folded+n {
			t.Errorf("commit %d damaged: %d entries, want %d", n, got, folded+n)
		}
	}
}

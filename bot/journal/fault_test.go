package journal

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func write(t *testing.T, path, content string) string {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(path, []byte(content), 0o600); err != nil {
		t.Fatal(err)
	}
	return path
}

func TestAJournalThatCannotBeOpenedSaysWhy(t *testing.T) {
	for _, c := range []struct {
		name string
		path func(*testing.T) string
		want string
	}{
		{"a file where its folder should be", func(t *testing.T) string {
			return filepath.Join(write(t, newPath(t), ""), "journal.db")
		}, "not a directory"},
		{"a folder in its place", func(t *testing.T) string { return t.TempDir() }, "it is a folder"},
		{"a place that takes no files", func(*testing.T) string { return "/proc/self/journal.db" }, "no such file"},
		{"a name that no file may have", func(t *testing.T) string { return newPath(t) + "\x00" }, "invalid argument"},
		{"other content", func(t *testing.T) string {
			return write(t, newPath(t), strings.Repeat("Saturday: two red oaks. ", 400))
		}, "the file is no journal, or is damaged"},
		{"a damaged header", func(t *testing.T) string {
			return damage(t, 0, 100)
		}, "the file is no journal, or is damaged"},
		{"a damaged first page", func(t *testing.T) string {
			return damage(t, 100, 4096)
		}, "the file is damaged"},
	} {
		t.Run(c.name, func(t *testing.T) {
			path := c.path(t)
			j, err := Open(t.Context(), path)
			if err == nil {
				_ = j.Close()
				t.Fatal("it opened")
			}
			if !strings.Contains(err.Error(), c.want) || !strings.Contains(err.Error(), path) {
				t.Errorf("error %q, want the path and %q", err, c.want)
			}
		})
	}
}

// damage writes over a part of a sound journal.
func damage(t *testing.T, from, to int) string {
	t.Helper()
	path := newPath(t)
	j := mustOpen(t, path)
	mustAppend(t, j, question(1))
	if err := j.Close(); err != nil {
		t.Fatal(err)
	}
	content, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	for i := from; i < to; i++ {
		content[i] = 0xa5
	}
	return write(t, path, string(content))
}

func TestAJournalThatCannotBeReadSaysWhy(t *testing.T) {
	for _, c := range []struct {
		name, want string
		path       func(*testing.T) string
	}{
		{"missing", "there is none yet", func(t *testing.T) string { return newPath(t) }},
		{"empty", "it holds no journal", func(t *testing.T) string { return write(t, newPath(t), "") }},
		{"other content", "the file is no journal", func(t *testing.T) string {
			return write(t, newPath(t), strings.Repeat("not this one ", 400))
		}},
		{"a folder", "it is a folder", func(t *testing.T) string { return t.TempDir() }},
	} {
		t.Run(c.name, func(t *testing.T) {
			path := c.path(t)
			r, err := OpenRead(t.Context(), path)
			if err == nil {
				_ = r.Close()
				t.Fatal("it opened")
			}
			if !strings.Contains(err.Error(), c.want) || !strings.Contains(err.Error(), path) {
				t.Errorf("error %q, want the path and %q", err, c.want)
			}
			if _, err := os.Stat(path + "-wal"); err == nil {
				t.Error("looking left a file behind")
			}
		})
	}
}

func TestLookingMakesNoFolder(t *testing.T) {
	path := newPath(t)
	if r, err := OpenRead(t.Context(), path); err == nil {
		_ = r.Close()
		t.Fatal("it opened")
	}
	if _, err := os.Stat(filepath.Dir(path)); !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("its folder: %v", err)
	}
}

//go:build unix

package journal

import (
	"io/fs"
	"os"
	"path/filepath"
	"testing"
)

func TestOnlyTheOwnerMayReadANewJournal(t *testing.T) {
	path := newPath(t)
	mustAppend(t, mustOpen(t, path), question(1))
	for name, want := range map[string]fs.FileMode{
		filepath.Dir(path): 0o700,
		path:               0o600,
		path + "-wal":      0o600,
	} {
		info, err := os.Stat(name)
		if err != nil {
			t.Fatal(err)
		}
		if got := info.Mode().Perm(); got != want {
			t.Errorf("%s: mode %o, want %o", name, got, want)
		}
	}
}

package journal

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"io/fs"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"time"

	"github.com/adrg/xdg"
	"modernc.org/sqlite"
)

// DefaultPath is where the journal lies unless somebody says otherwise.
func DefaultPath() string {
	return filepath.Join(xdg.StateHome, "heft", "journal.db")
}

// Open opens the journal, makes it where there is none, and brings an older
// one up to date. Only the owner of a new file may read it: it holds what
// people said.
func Open(ctx context.Context, path string) (*Journal, error) {
	j, err := open(ctx, path, lag)
	if err != nil {
		return nil, fmt.Errorf("open the journal %s: %w", path, plain(err))
	}
	return j, nil
}

func open(ctx context.Context, path string, lag time.Duration) (*Journal, error) {
	if err := create(path); err != nil {
		return nil, err
	}
	// The library's default also waits for the file's time stamps, which no
	// entry needs; SQLite as distributions build it does not.
	if _, err := sqlite.Fdatasync(true); err != nil && !errors.Is(err, sqlite.ErrFdatasyncUnavailable) {
		return nil, err
	}
	// NORMAL does for the migrations: the first entry's commit, which is FULL,
	// puts all that stands before it in the log on disk too.
	db, err := connect(path, "_journal_mode=WAL&_synchronous=NORMAL&_foreign_keys=1&_txlock=immediate")
	if err != nil {
		return nil, err
	}
	db.SetMaxOpenConns(1)
	if err := migrate(ctx, db); err != nil {
		return nil, errors.Join(err, db.Close())
	}
	w, err := newWriter(ctx, db, lag)
	if err != nil {
		return nil, err
	}
	r, err := openRead(ctx, path)
	if err != nil {
		w.stop()
		return nil, errors.Join(err, w.release())
	}
	r.settle = w.settle
	return &Journal{Reader: r, w: w}, nil
}

// create makes the folder and an empty file, unless they are there. It never
// opens a file that exists: closing it again would drop the locks that other
// connections of this process hold on it.
func create(path string) error {
	if err := os.MkdirAll(filepath.Dir(path), 0o700); err != nil {
		return err
	}
	if info, err := os.Stat(path); err == nil && info.IsDir() {
		return errFolder
	}
	f, err := os.OpenFile(path, os.O_CREATE|os.O_EXCL|os.O_WRONLY, 0o600)
	if errors.Is(err, fs.ErrExist) {
		return nil
	}
	if err != nil {
		return err
	}
	return f.Close()
}

// pageMemory is how much of the file a connection keeps in memory, in KiB. A
// commit of 64 entries changes less than half of it.
const pageMemory = 1000

// connect names the file as a URI, so that no character of its path can pass
// for an option.
func connect(path, options string) (*sql.DB, error) {
	abs, err := filepath.Abs(path)
	if err != nil {
		return nil, err
	}
	slashed := filepath.ToSlash(abs)
	if !strings.HasPrefix(slashed, "/") {
		slashed = "/" + slashed // a drive letter
	}
	uri := url.URL{Scheme: "file", Path: slashed, RawQuery: fmt.Sprintf("_busy_timeout=5000&_error_rc=1&_pragma=cache_size(-%d)&", pageMemory) + options}
	return sql.Open("sqlite", uri.String())
}

package journal

import (
	"errors"
	"fmt"

	"modernc.org/sqlite"
	lib "modernc.org/sqlite/lib"
)

// ErrClosed says that the journal was closed.
var ErrClosed = errors.New("the journal is closed")

var errFolder = errors.New("it is a folder")

// faults says in plain words what the driver's codes mean to the person who
// keeps the machine.
var faults = map[int]string{
	lib.SQLITE_BUSY:       "another program holds the journal",
	lib.SQLITE_CANTOPEN:   "the file cannot be opened",
	lib.SQLITE_CONSTRAINT: "the entry lacks what the journal asks of every entry",
	lib.SQLITE_CORRUPT:    "the file is damaged",
	lib.SQLITE_FULL:       "the disk is full",
	lib.SQLITE_IOERR:      "the disk cannot be read or written",
	lib.SQLITE_NOTADB:     "the file is no journal, or is damaged",
	lib.SQLITE_PERM:       "the file may not be opened",
	lib.SQLITE_READONLY:   "the file may not be written",
}

// plain puts the fault before the driver's own words.
func plain(err error) error {
	var fault *sqlite.Error
	if !errors.As(err, &fault) {
		return err
	}
	words, ok := faults[fault.Code()&0xff]
	if !ok {
		return err
	}
	return fmt.Errorf("%s: %w", words, err)
}

package journal

import (
	"context"
	"database/sql"
	"embed"
	"errors"
	"fmt"
	"io/fs"

	"github.com/pressly/goose/v3"
)

//go:embed migrations/*.sql
var files embed.FS

var (
	errNewer = errors.New("a newer heft wrote it: update this one")
	errOlder = errors.New("an older heft wrote it: let heft write to it once, then look again")
	errNone  = errors.New("it holds no journal")
)

// attempts is how often a migration is tried: two programs that start on one
// new file get in each other's way once, and then find the work done.
const attempts = 4

// migrate brings the file up to this program's schema.
func migrate(ctx context.Context, db *sql.DB) error {
	steps, err := provider(db)
	if err != nil {
		return err
	}
	want := newest(steps)
	for range attempts {
		var got int64
		got, err = version(ctx, db)
		switch {
		case err != nil:
			continue
		case got > want:
			return errNewer
		case got == want:
			return nil
		}
		_, err = steps.Up(ctx)
	}
	return err
}

// provider knows the steps.
func provider(db *sql.DB) (*goose.Provider, error) {
	dir, err := fs.Sub(files, "migrations")
	if err != nil {
		return nil, err
	}
	return goose.NewProvider(goose.DialectSQLite3, db, dir, goose.WithDisableGlobalRegistry(true))
}

func newest(steps *goose.Provider) int64 {
	all := steps.ListSources()
	return all[len(all)-1].Version
}

// version is the schema the file is at, 0 where it holds none.
func version(ctx context.Context, db *sql.DB) (int64, error) {
	var tables int
	err := db.QueryRowContext(ctx, `SELECT count(*) FROM sqlite_schema WHERE name = ?`, goose.DefaultTablename).Scan(&tables)
	if err != nil || tables == 0 {
		return 0, err
	}
	var v sql.NullInt64
	err = db.QueryRowContext(ctx, `SELECT max(version_id) FROM `+goose.DefaultTablename).Scan(&v)
	return v.Int64, err
}

// readable says whether the file is at the schema that this program reads.
func readable(ctx context.Context, db *sql.DB) error {
	steps, err := provider(db)
	if err != nil {
		return err
	}
	got, err := version(ctx, db)
	switch want := newest(steps); {
	case err != nil:
		return err
	case got == 0:
		return errNone
	case got < want:
		return fmt.Errorf("%w (schema %d of %d)", errOlder, got, want)
	case got > want:
		return errNewer
	}
	return nil
}

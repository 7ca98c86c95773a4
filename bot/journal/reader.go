package journal

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"time"

	"heft/bot"
)

// readers bounds the connections that read at one time.
const readers = 2

// Reader looks things up in a journal, beside whoever writes it.
type Reader struct {
	db                   *sql.DB
	find, job, about     *sql.Stmt
	conversation         *sql.Stmt
	between, undelivered *sql.Stmt
	settle               func(context.Context) error // has what was noted written first
}

// OpenRead opens a journal that exists, to look and not to write.
func OpenRead(ctx context.Context, path string) (*Reader, error) {
	r, err := openRead(ctx, path)
	if err != nil {
		return nil, fmt.Errorf("read the journal %s: %w", path, plain(err))
	}
	return r, nil
}

func openRead(ctx context.Context, path string) (*Reader, error) {
	info, err := os.Stat(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, errors.New("there is none yet: nothing was asked")
	case err != nil:
		return nil, err
	case info.IsDir():
		return nil, errFolder
	}
	db, err := connect(path, "mode=ro")
	if err != nil {
		return nil, err
	}
	db.SetMaxOpenConns(readers)
	r := &Reader{db: db, settle: func(context.Context) error { return nil }}
	if err := r.prepare(ctx); err != nil {
		return nil, errors.Join(err, r.Close())
	}
	return r, nil
}

func (r *Reader) prepare(ctx context.Context) error {
	if err := readable(ctx, r.db); err != nil {
		return err
	}
	for _, p := range []struct {
		into *(*sql.Stmt)
		text string
	}{
		{&r.find, findSQL}, {&r.job, jobSQL}, {&r.about, aboutSQL}, {&r.conversation, conversationSQL},
		{&r.between, betweenSQL}, {&r.undelivered, undeliveredSQL},
	} {
		stmt, err := r.db.PrepareContext(ctx, p.text)
		if err != nil {
			return err
		}
		*p.into = stmt
	}
	return nil
}

// Close lets go of the file.
func (r *Reader) Close() error {
	var errs []error
	for _, s := range []*sql.Stmt{r.find, r.job, r.about, r.conversation, r.between, r.undelivered} {
		if s != nil {
			errs = append(errs, s.Close())
		}
	}
	return errors.Join(append(errs, r.db.Close())...)
}

// Find returns one entry, or bot.ErrNotLogged.
func (r *Reader) Find(ctx context.Context, workspace, id string) (bot.Entry, error) {
	return r.one(ctx, r.find, workspace, id)
}

// Job returns the last entry that set, showed or cleared a channel's job, or
// bot.ErrNotLogged.
func (r *Reader) Job(ctx context.Context, workspace, channel string) (bot.Entry, error) {
	return r.one(ctx, r.job, workspace, channel)
}

// About returns the last entry, asked since then, that a message of a channel
// asks or shows the answer to, or bot.ErrNotLogged.
func (r *Reader) About(ctx context.Context, workspace, channel, message string, since time.Time) (bot.Entry, error) {
	return r.one(ctx, r.about, since.UnixMicro(), workspace, channel, message)
}

func (r *Reader) one(ctx context.Context, stmt *sql.Stmt, args ...any) (bot.Entry, error) {
	if err := r.settle(ctx); err != nil {
		return bot.Entry{}, err
	}
	e, err := scan(stmt.QueryRowContext(ctx, args...))
	switch {
	case errors.Is(err, sql.ErrNoRows):
		return bot.Entry{}, bot.ErrNotLogged
	case err != nil:
		return bot.Entry{}, fmt.Errorf("look in the journal: %w", plain(err))
	}
	return e, nil
}

// Conversation returns the entries of an event's conversation asked since
// then, oldest first.
func (r *Reader) Conversation(ctx context.Context, ev bot.Event, since time.Time) ([]bot.Entry, error) {
	return r.list(ctx, r.conversation, since.UnixMicro(), ev.Workspace, ev.Channel, ev.Thread, ev.Direct)
}

// Between returns the entries asked from the first time up to, not at, the
// second, oldest first.
func (r *Reader) Between(ctx context.Context, from, to time.Time) ([]bot.Entry, error) {
	return r.list(ctx, r.between, from.UnixMicro(), to.UnixMicro())
}

// Undelivered returns the entries asked since then whose reply is not known
// to have been posted, oldest first.
func (r *Reader) Undelivered(ctx context.Context, since time.Time) ([]bot.Entry, error) {
	return r.list(ctx, r.undelivered, since.UnixMicro())
}

func (r *Reader) list(ctx context.Context, stmt *sql.Stmt, args ...any) (es []bot.Entry, err error) {
	if err := r.settle(ctx); err != nil {
		return nil, err
	}
	rows, err := stmt.QueryContext(ctx, args...)
	if err != nil {
		return nil, fmt.Errorf("look in the journal: %w", plain(err))
	}
	defer rows.Close()
	for rows.Next() {
		e, err := scan(rows)
		if err != nil {
			return nil, fmt.Errorf("read an entry of the journal: %w", plain(err))
		}
		es = append(es, e)
	}
	if err := rows.Err(); err != nil {
		return nil, fmt.Errorf("look in the journal: %w", plain(err))
	}
	return es, nil
}

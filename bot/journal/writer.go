package journal

import (
	"context"
	"database/sql"
	"errors"
	"fmt"
	"sync"
	"sync/atomic"
	"time"

	"heft/bot"
)

const (
	waiting = 256                    // requests that may wait for the writer
	most    = 256                    // requests in one commit
	lag     = 100 * time.Millisecond // how long a note may wait for a commit to ride with

	// How many pages the write-ahead log gathers before they go into the file:
	// 16 MB. The more, the fewer times a page of an index is written there.
	logPages = 4000
)

// request is one change that waits to be committed; without arguments it only
// waits for those before it.
type request struct {
	ctx    context.Context
	args   []any
	update bool       // a note on an entry that is there
	stands bool       // a confirmation of one
	done   chan error // nil where nobody waits
	err    error
}

// writer is the only one that changes the file: a goroutine with a connection
// of its own.
type writer struct {
	db                      *sql.DB
	conn                    *sql.Conn
	begin, commit, rollback *sql.Stmt
	insert, deliver         *sql.Stmt
	confirm                 *sql.Stmt
	lag                     time.Duration

	mu     sync.RWMutex // held to queue, so that nothing is queued behind close
	closed bool
	queue  chan *request
	gone   chan struct{}

	noted  atomic.Int64 // notes not yet committed
	missed atomic.Pointer[error]
}

func newWriter(ctx context.Context, db *sql.DB, lag time.Duration) (*writer, error) {
	conn, err := db.Conn(ctx)
	if err != nil {
		return nil, err
	}
	w := &writer{
		db: db, conn: conn, lag: lag,
		queue: make(chan *request, waiting), gone: make(chan struct{}),
	}
	if err := w.prepare(ctx); err != nil {
		return nil, errors.Join(err, w.release())
	}
	go w.run()
	return w, nil
}

func (w *writer) prepare(ctx context.Context) error {
	for _, pragma := range []string{`synchronous = FULL`, fmt.Sprintf(`wal_autocheckpoint = %d`, logPages)} {
		if _, err := w.conn.ExecContext(ctx, `PRAGMA `+pragma); err != nil {
			return err
		}
	}
	for _, p := range []struct {
		into *(*sql.Stmt)
		text string
	}{
		{&w.begin, `BEGIN IMMEDIATE`}, {&w.commit, `COMMIT`}, {&w.rollback, `ROLLBACK`},
		{&w.insert, insertSQL}, {&w.deliver, deliverSQL}, {&w.confirm, confirmSQL},
	} {
		stmt, err := w.conn.PrepareContext(ctx, p.text)
		if err != nil {
			return err
		}
		*p.into = stmt
	}
	return nil
}

// wait queues a request and returns what became of it.
func (w *writer) wait(ctx context.Context, r *request) error {
	r.ctx, r.done = ctx, make(chan error, 1)
	if err := w.enqueue(ctx, r); err != nil {
		return err
	}
	select {
	case err := <-r.done:
		return err
	case <-ctx.Done():
		return writing(ctx.Err())
	}
}

func (w *writer) enqueue(ctx context.Context, r *request) error {
	w.mu.RLock()
	defer w.mu.RUnlock()
	if w.closed {
		return ErrClosed
	}
	if err := ctx.Err(); err != nil {
		return writing(err)
	}
	select {
	case w.queue <- r:
		return nil
	case <-ctx.Done():
		return writing(ctx.Err())
	}
}

// note queues what became of a reply, for nobody to wait on.
func (w *writer) note(ctx context.Context, d bot.Delivery) error {
	var at any
	if d.Failure == "" {
		at = d.At.UnixMicro()
	}
	w.noted.Add(1)
	err := w.enqueue(ctx, &request{
		ctx: context.Background(), update: true,
		args: []any{at, d.Failure, d.Posted, d.Workspace, d.ID},
	})
	if err != nil {
		w.noted.Add(-1)
		return err
	}
	return w.takeMissed()
}

// settle returns when the notes taken before it are in the file.
func (w *writer) settle(ctx context.Context) error {
	w.mu.RLock()
	closed := w.closed
	w.mu.RUnlock()
	switch {
	case closed:
		return ErrClosed
	case w.noted.Load() == 0:
		return nil
	}
	return w.wait(ctx, &request{})
}

// takeMissed returns, once, why a note was not written.
func (w *writer) takeMissed() error {
	err := w.missed.Swap(nil)
	if err == nil {
		return nil
	}
	return fmt.Errorf("an earlier delivery was not recorded: %w", *err)
}

// stop has all that is queued written, and nothing more.
func (w *writer) stop() {
	w.mu.Lock()
	w.closed = true
	close(w.queue)
	w.mu.Unlock()
	<-w.gone
}

// release lets go of the file. The statements go first: the connection would
// stay open under them.
func (w *writer) release() error {
	var errs []error
	for _, s := range []*sql.Stmt{w.begin, w.commit, w.rollback, w.insert, w.deliver, w.confirm} {
		if s != nil {
			errs = append(errs, s.Close())
		}
	}
	return errors.Join(append(errs, w.conn.Close(), w.db.Close())...)
}

func writing(err error) error {
	return fmt.Errorf("write to the journal: %w", plain(err))
}

package journal

import (
	"context"
	"runtime"
	"time"

	"heft/bot"
)

// run commits what is queued until the queue is closed and empty.
func (w *writer) run() {
	defer close(w.gone)
	for more := true; more; {
		var batch []*request
		batch, more = w.next()
		if len(batch) > 0 {
			w.write(batch)
		}
	}
}

// next waits until something has to be committed, and returns it with all
// that can ride along.
func (w *writer) next() (batch []*request, more bool) {
	var due <-chan time.Time
	for {
		select {
		case r, ok := <-w.queue:
			if !ok {
				return batch, false
			}
			batch = append(batch, r)
			if r.done == nil && len(batch) < most {
				if due == nil {
					due = time.After(w.lag)
				}
				continue
			}
		case <-due:
		}
		// Those whom the last commit let go may be on their way back here.
		runtime.Gosched()
		return w.gather(batch), true
	}
}

// gather adds what is queued already.
func (w *writer) gather(batch []*request) []*request {
	for len(batch) < most {
		select {
		case r, ok := <-w.queue:
			if !ok {
				return batch
			}
			batch = append(batch, r)
		default:
			return batch
		}
	}
	return batch
}

// write commits a batch and tells those who wait. Where one entry spoils it,
// each is committed alone, so that none fails for its neighbour.
func (w *writer) write(batch []*request) {
	spoilt, err := w.together(batch)
	if spoilt && len(batch) > 1 {
		for i := range batch {
			w.write(batch[i : i+1])
		}
		return
	}
	for _, r := range batch {
		if err != nil {
			r.err = writing(err)
		}
		w.tell(r)
	}
}

func (w *writer) tell(r *request) {
	if r.update {
		w.noted.Add(-1)
	}
	switch {
	case r.done != nil:
		r.done <- r.err
	case r.err != nil:
		w.missed.Store(&r.err)
	}
}

// together commits a batch in one transaction, or none of it. Spoilt means
// that a single change was refused.
func (w *writer) together(batch []*request) (spoilt bool, err error) {
	ctx := context.Background() // a caller who leaves must not spoil the others' commit
	defer func() {
		if err != nil {
			// SQLite has often rolled back by itself, and then refuses this.
			_, _ = w.rollback.ExecContext(ctx)
		}
	}()
	if _, err := w.begin.ExecContext(ctx); err != nil {
		return false, err
	}
	for _, r := range batch {
		if err := w.apply(ctx, r); err != nil {
			return true, err
		}
	}
	_, err = w.commit.ExecContext(ctx)
	return false, err
}

// apply makes one change; what concerns its caller alone stays in the request.
func (w *writer) apply(ctx context.Context, r *request) error {
	if r.err = r.ctx.Err(); r.err != nil || r.args == nil {
		return nil
	}
	if r.update {
		_, err := w.deliver.ExecContext(ctx, r.args...)
		return err
	}
	insert, there := w.insert, bot.ErrLogged
	if r.stands {
		insert, there = w.confirm, bot.ErrConfirmed
	}
	res, err := insert.ExecContext(ctx, r.args...)
	if err != nil {
		return err
	}
	n, err := res.RowsAffected()
	if n == 0 {
		r.err = there
	}
	return err
}

package journal

import (
	"context"
	"errors"
	"sync"

	"heft/bot"
)

// Journal is a journal open for writing; it implements bot.Journal.
type Journal struct {
	*Reader
	w     *writer
	once  sync.Once
	ended error
}

var _ bot.Journal = (*Journal)(nil)

// Append puts the entry on disk before it returns. It fails with
// bot.ErrLogged where the workspace's event is there already. A cancelled
// Append may still have put its entry there.
func (j *Journal) Append(ctx context.Context, e bot.Entry) error {
	return j.w.wait(ctx, &request{args: values(e)})
}

// Deliver notes what became of a reply and does not wait for the disk: the
// note goes there with the next commit, soon in any case, and before Close
// returns. Whatever is read from this journal has it at once. Where a note
// could not be written, the next Deliver or Close says so. A note on an event
// that the journal does not hold is dropped.
func (j *Journal) Deliver(ctx context.Context, d bot.Delivery) error {
	return j.w.note(ctx, d)
}

// Confirm puts it on disk, before it returns, that somebody stands by an
// answer. It fails with bot.ErrConfirmed where somebody does already, and
// with bot.ErrNotLogged where there is no such answer.
func (j *Journal) Confirm(ctx context.Context, c bot.Confirmation) error {
	if _, err := j.Find(ctx, c.Workspace, c.ID); err != nil {
		return err
	}
	return j.w.wait(ctx, &request{stands: true, args: []any{c.User, c.At.UnixMicro(), c.Note, c.Workspace, c.ID}})
}

// Close writes what is waiting and lets go of the file. Nothing can be
// appended or read afterwards. The writer's connection goes last, so that it
// folds the write-ahead log into the file.
func (j *Journal) Close() error {
	j.once.Do(func() {
		j.w.stop()
		j.ended = errors.Join(j.w.takeMissed(), j.Reader.Close(), j.w.release())
	})
	return j.ended
}

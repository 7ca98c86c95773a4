package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"sync/atomic"
	"time"

	"golang.org/x/sync/errgroup"

	"heft/bot"
	"heft/bot/journal"
)

const appendLimit = 2 * time.Minute

// rows counts what was appended to a journal, and how fast in each turn.
type rows struct {
	count     int
	perSecond []float64
}

// append has 64 writers append so many rows, each waiting until its row is on
// disk.
func (r *rows) append(ctx context.Context, j *journal.Journal, entries []bot.Entry, n int) error {
	ctx, cancel := context.WithTimeout(ctx, appendLimit)
	defer cancel()
	var taken atomic.Int64
	began := time.Now()
	group, ctx := errgroup.WithContext(ctx)
	for range inFlight {
		group.Go(func() error {
			for {
				i := int(taken.Add(1)) - 1
				if i >= n {
					return nil
				}
				if err := j.Append(ctx, numbered(entries, r.count+i)); err != nil {
					return err
				}
			}
		})
	}
	err := group.Wait()
	r.perSecond = append(r.perSecond, float64(n)/time.Since(began).Seconds())
	r.count += n
	return err
}

// numbered is one of the entries as if its question had been asked anew.
func numbered(entries []bot.Entry, n int) bot.Entry {
	e := entries[n%len(entries)]
	e.ID = fmt.Sprintf("Ev%010d", n)
	return e
}

// entriesOf are what the journal is given for the questions.
func entriesOf(desk *bot.Desk) ([]bot.Entry, error) {
	list := make([]bot.Entry, len(questions))
	for i, text := range questions {
		if _, list[i], _ = desk.Answer(asked(text), bot.Turn{}); list[i].Status != bot.Answered {
			return nil, fmt.Errorf("%q is not answered: %s", text, list[i].Reply)
		}
	}
	return list, nil
}

// commitSize is how much the journal writes to its log for one entry, on the
// average of several.
func commitSize(ctx context.Context, dir string, entries []bot.Entry) (size int, err error) {
	const several = 50
	path := filepath.Join(dir, "commit.db")
	j, err := journal.Open(ctx, path)
	if err != nil {
		return 0, err
	}
	defer func() { err = errors.Join(err, j.Close()) }()
	var before int64
	for i := range several + 1 {
		if err := j.Append(ctx, numbered(entries, i)); err != nil {
			return 0, err
		}
		log, err := os.Stat(path + "-wal")
		if err != nil {
			return 0, err
		}
		if i == 0 {
			before = log.Size()
		}
		size = int(log.Size()-before) / several
	}
	if size <= 0 {
		return 0, errors.New("the journal's log did not grow with its entries")
	}
	return size, nil
}

// audit stops Heft in order and looks whether its journal holds the answer to
// every question it was asked: nothing else would be worth measuring.
func (b *bench) audit(ctx context.Context, c *crew) (err error) {
	w := c[heftBot]
	c[heftBot] = nil
	if err := w.stop(); err != nil {
		return err
	}
	j, err := journal.OpenRead(ctx, w.journal)
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, j.Close()) }()
	entries, err := j.Between(ctx, time.Time{}, time.Now())
	if err != nil {
		return err
	}
	answered := 0
	for _, e := range entries {
		if e.Status == bot.Answered && e.Delivered != nil && e.Failure == "" {
			answered++
		}
	}
	if answered != w.asked {
		return fmt.Errorf("the journal holds %d answers that were posted, of %d questions", answered, w.asked)
	}
	return nil
}

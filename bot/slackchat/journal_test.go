package slackchat_test

import (
	"context"
	"slices"
	"sync"
	"time"

	"heft/bot"
)

// journal is a bot.Journal that forgets everything with the process.
type journal struct {
	changed func()
	mu      sync.Mutex
	entries []bot.Entry
	// before runs at the start of every Append, and may fail it.
	before func(bot.Entry) error
	// unreadable makes Find fail.
	unreadable error
	// dayless makes Between fail.
	dayless error
}

func (j *journal) at(workspace, id string) int {
	return slices.IndexFunc(j.entries, func(e bot.Entry) bool { return e.Workspace == workspace && e.ID == id })
}

func (j *journal) Append(ctx context.Context, e bot.Entry) error {
	if j.before != nil {
		if err := j.before(e); err != nil {
			return err
		}
	}
	if err := ctx.Err(); err != nil {
		return err
	}
	j.mu.Lock()
	defer j.mu.Unlock()
	if j.at(e.Workspace, e.ID) >= 0 {
		return bot.ErrLogged
	}
	j.entries = append(j.entries, e)
	return nil
}

func (j *journal) Deliver(ctx context.Context, d bot.Delivery) error {
	defer j.changed()
	if err := ctx.Err(); err != nil {
		return err
	}
	j.mu.Lock()
	defer j.mu.Unlock()
	i := j.at(d.Workspace, d.ID)
	if i < 0 {
		return bot.ErrNotLogged
	}
	if d.Posted != "" {
		j.entries[i].Posted = d.Posted
	}
	if j.entries[i].Failure = d.Failure; d.Failure == "" {
		j.entries[i].Delivered = &d.At
	}
	return nil
}

func (j *journal) Conversation(_ context.Context, ev bot.Event, since time.Time) ([]bot.Entry, error) {
	j.mu.Lock()
	defer j.mu.Unlock()
	var out []bot.Entry
	for _, e := range j.entries {
		if e.Workspace == ev.Workspace && e.Channel == ev.Channel && (e.Thread == ev.Thread || ev.Direct) && !e.Asked.Before(since) {
			out = append(out, e)
		}
	}
	return out, nil
}

func (j *journal) Job(_ context.Context, workspace, channel string) (bot.Entry, error) {
	j.mu.Lock()
	defer j.mu.Unlock()
	for _, e := range slices.Backward(j.entries) {
		if e.Workspace == workspace && e.Channel == channel && e.Intent == "job" && e.Status == bot.Answered {
			return e, nil
		}
	}
	return bot.Entry{}, bot.ErrNotLogged
}

func (j *journal) About(_ context.Context, workspace, channel, message string, since time.Time) (bot.Entry, error) {
	j.mu.Lock()
	defer j.mu.Unlock()
	for _, e := range slices.Backward(j.entries) {
		if e.Workspace == workspace && e.Channel == channel && (e.Message == message || e.Posted == message) && !e.Asked.Before(since) {
			return e, nil
		}
	}
	return bot.Entry{}, bot.ErrNotLogged
}

func (j *journal) Confirm(_ context.Context, c bot.Confirmation) error {
	j.mu.Lock()
	defer j.mu.Unlock()
	for i, e := range j.entries {
		if e.Workspace == c.Workspace && e.ID == c.ID {
			if e.Confirmed != nil {
				return bot.ErrConfirmed
			}
			j.entries[i].Confirmed = &c
			return nil
		}
	}
	return bot.ErrNotLogged
}

func (j *journal) Find(_ context.Context, workspace, id string) (bot.Entry, error) {
	j.mu.Lock()
	defer j.mu.Unlock()
	if j.unreadable != nil {
		return bot.Entry{}, j.unreadable
	}
	if i := j.at(workspace, id); i >= 0 {
		return j.entries[i], nil
	}
	return bot.Entry{}, bot.ErrNotLogged
}

func (j *journal) Between(_ context.Context, from, to time.Time) ([]bot.Entry, error) {
	return j.where(func(e bot.Entry) bool { return !e.Asked.Before(from) && e.Asked.Before(to) }), j.dayless
}

func (j *journal) Undelivered(_ context.Context, since time.Time) ([]bot.Entry, error) {
	return j.where(func(e bot.Entry) bool { return e.Delivered == nil && !e.Asked.Before(since) }), nil
}

func (j *journal) where(keep func(bot.Entry) bool) []bot.Entry {
	j.mu.Lock()
	defer j.mu.Unlock()
	return slices.DeleteFunc(slices.Clone(j.entries), func(e bot.Entry) bool { return !keep(e) })
}

// all are the entries, oldest first.
func (j *journal) all() []bot.Entry { return j.where(func(bot.Entry) bool { return true }) }

// of returns the entry of an event.
func (j *journal) of(id string) (bot.Entry, bool) {
	found := j.where(func(e bot.Entry) bool { return e.ID == id })
	if len(found) == 0 {
		return bot.Entry{}, false
	}
	return found[0], true
}

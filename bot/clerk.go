package bot

import (
	"context"
	"errors"
	"fmt"
	"log/slog"
	"runtime/debug"
	"time"
)

// Keys of the structured log.
const (
	KeyEvent  = "event"
	KeyErr    = "err"
	KeyStatus = "status"
)

// ErrRepeated says that the event was taken before and its reply is out, or
// on its way: there is nothing left to do.
var ErrRepeated = errors.New("the event was taken before")

// Memory is what is remembered between events, and may be lost: the journal
// is the record.
type Memory interface {
	// First says whether the id is new, and takes it.
	First(id string) bool
	// Forget gives an id back, so that a later delivery is first again.
	Forget(id string)
	// Recall returns the last turn of a conversation.
	Recall(conversation string) (Turn, bool)
	// Remember keeps the last turn of a conversation.
	Remember(conversation string, t Turn)
	// Job returns what holds for a channel.
	Job(channel string) (Job, bool)
	// KeepJob keeps what holds for a channel.
	KeepJob(channel string, j Job)
}

// Clerk takes events from a transport, has the desk answer them and writes
// each to the journal before its reply may leave.
type Clerk struct {
	Desk    *Desk
	Journal Journal
	Memory  Memory
	Log     *slog.Logger
	// Supervisors are the users who may confirm any answer and see the day.
	Supervisors []string
}

// Take answers one event. The reply it returns may be posted: its entry is
// on disk, or the journal has failed and the reply says so and holds no
// figure. ErrRepeated means that nothing is to be posted.
func (c *Clerk) Take(ctx context.Context, ev Event) (Reply, error) {
	key := ev.Workspace + "/" + ev.ID
	if !c.Memory.First(key) {
		return Reply{}, ErrRepeated
	}
	ev, before, err := c.recall(ctx, ev)
	if err != nil {
		return c.notLogged(ctx, ev, speaker{}, err), nil
	}
	reply, entry, turn := c.answer(ctx, ev, before)
	if ev.Day = c.dayFor(ctx, ev, entry); ev.Day != nil {
		reply, entry, turn = c.answer(ctx, ev, before)
	}
	err = c.Journal.Append(ctx, entry)
	switch {
	case errors.Is(err, ErrLogged):
		return c.again(ctx, ev)
	case err != nil:
		return c.notLogged(ctx, ev, reply.voice, err), nil
	}
	c.remember(ev, entry, c.retold(ctx, ev, turn))
	return reply, nil
}

// notLogged gives the event back, so that a later delivery is first again.
func (c *Clerk) notLogged(ctx context.Context, ev Event, voice speaker, err error) Reply {
	c.Memory.Forget(ev.Workspace + "/" + ev.ID)
	c.Log.ErrorContext(ctx, "the journal is out", KeyEvent, ev.ID, KeyErr, err)
	return unlogged(voice)
}

// answer keeps a fault of ours from taking the program, and the question,
// with it.
func (c *Clerk) answer(ctx context.Context, ev Event, before Turn) (reply Reply, entry Entry, turn Turn) {
	defer func() {
		if fault := recover(); fault != nil {
			c.Log.ErrorContext(ctx, "the desk failed", KeyEvent, ev.ID, KeyErr, fault, "stack", string(debug.Stack()))
			a := answer{voice: speaker{language: before.language}}
			a.refuse(a.voice.word("I failed on that one, so no figures. Ask the qualified arborist, and tell whoever runs me."))
			reply = a.reply()
			entry, turn = entryOf(ev, a, reply), Turn{language: before.language}
		}
	}()
	return c.Desk.Answer(ev, before)
}

// again handles an event that an earlier run logged: its reply is posted only
// where that run did not get so far.
func (c *Clerk) again(ctx context.Context, ev Event) (Reply, error) {
	old, err := c.Journal.Find(ctx, ev.Workspace, ev.ID)
	if err != nil {
		c.Memory.Forget(ev.Workspace + "/" + ev.ID) // the next delivery tries again
		return Reply{}, fmt.Errorf("look for the earlier entry: %w", err)
	}
	if old.Delivered != nil {
		return Reply{}, ErrRepeated
	}
	return Late(old, ev.At), nil
}

// Delivered records what became of the reply to an event, and which message
// shows it.
func (c *Clerk) Delivered(ctx context.Context, ev Event, at time.Time, failure error) {
	d := Delivery{Workspace: ev.Workspace, ID: ev.ID, At: at, Posted: ev.Shown}
	if failure != nil {
		d.Failure = failure.Error()
	}
	if err := c.Journal.Deliver(ctx, d); err != nil && !errors.Is(err, ErrNotLogged) {
		c.Log.ErrorContext(ctx, "the delivery was not recorded", KeyEvent, ev.ID, KeyErr, err)
	}
}

// Unlogged answers without a journal. Only a terminal uses it, where the
// asker has been told that nothing is kept.
type Unlogged struct {
	Desk   *Desk
	Memory Memory
}

// Take answers one event.
func (u *Unlogged) Take(_ context.Context, ev Event) (Reply, error) {
	var before Turn
	if !ev.Alone {
		before, _ = u.Memory.Recall(ev.Conversation())
		ev.Job, _ = u.Memory.Job(ev.place())
	}
	reply, entry, turn := u.Desk.Answer(ev, before)
	u.Memory.Remember(ev.Conversation(), turn)
	if entry.setsJob() {
		u.Memory.KeepJob(ev.place(), JobOf(entry))
	}
	return reply, nil
}

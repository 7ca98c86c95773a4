package bot

import (
	"context"
	"errors"
	"time"
)

// talkFor is how far back a message may lean on its conversation: a working
// day.
const talkFor = 12 * time.Hour

// recall finds what an event may lean on: the last turn of its conversation
// and the job of its channel. What memory does not hold, because the program
// has started anew, is built again from the journal.
func (c *Clerk) recall(ctx context.Context, ev Event) (Event, Turn, error) {
	if ev.Alone {
		return ev, Turn{}, nil
	}
	job, err := c.jobOf(ctx, ev)
	if err != nil {
		return ev, Turn{}, err
	}
	ev.Job = job
	ev.Language = c.languageUnder(ctx, ev)
	ev.Bound = len(c.Supervisors) > 0 && !c.Supervises(ev.User)
	if ev.Opens {
		return ev, Turn{}, nil
	}
	if ev.was != nil {
		turn, err := c.beforeEdit(ctx, ev)
		return ev, turn, err
	}
	if turn, ok := c.Memory.Recall(ev.Conversation()); ok {
		return ev, turn, nil
	}
	said, err := c.Journal.Conversation(ctx, ev, ev.At.Add(-talkFor))
	if err != nil {
		return ev, Turn{}, err
	}
	return ev, c.rebuilt(ctx, ev, said), nil
}

// languageUnder is the language of the answer whose button was pressed: the
// button's own words are English under every answer.
func (c *Clerk) languageUnder(ctx context.Context, ev Event) string {
	if _, pressed := (Entry{ID: ev.ID}).pressed(); !pressed {
		return ""
	}
	e, standing := c.Standing(ctx, ev)
	if !standing {
		return ""
	}
	return marksOf(e.Result).Language
}

// pressedIn is the language that a press was answered in; empty for what
// somebody typed.
func pressedIn(e Entry) string {
	if _, pressed := e.pressed(); !pressed {
		return ""
	}
	return marksOf(e.Result).Language
}

// jobOf is what holds for the event's channel.
func (c *Clerk) jobOf(ctx context.Context, ev Event) (Job, error) {
	if job, ok := c.Memory.Job(ev.place()); ok {
		return job, nil
	}
	e, err := c.Journal.Job(ctx, ev.Workspace, ev.Channel)
	if err != nil && !errors.Is(err, ErrNotLogged) {
		return Job{}, err
	}
	job := JobOf(e)
	c.Memory.KeepJob(ev.place(), job)
	return job, nil
}

// place names the channel that a job holds for.
func (e Event) place() string { return e.Workspace + "/" + e.Channel }

// remember keeps what an answered event has established.
func (c *Clerk) remember(ev Event, e Entry, t Turn) {
	c.Memory.Remember(ev.Conversation(), t)
	if e.setsJob() {
		c.Memory.KeepJob(ev.place(), JobOf(e))
	}
}

// rebuilt goes through a conversation again, for the turn it ended with. The
// desk reads no clock and does no I/O, so the same words give the same turn.
// Words that the desk fails on are none to lean on.
func (c *Clerk) rebuilt(ctx context.Context, ev Event, said []Entry) (t Turn) {
	defer func() {
		if fault := recover(); fault != nil {
			c.Log.ErrorContext(ctx, "a conversation was not rebuilt", KeyEvent, ev.ID, KeyErr, fault)
			t = Turn{}
		}
	}()
	for _, e := range lastWording(said) {
		_, _, t = c.Desk.Answer(Event{ID: e.ID, Channel: e.Channel, Text: e.Words, At: e.Asked, Job: ev.Job, Language: pressedIn(e)}, t)
	}
	return t
}

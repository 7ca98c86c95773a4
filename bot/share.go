package bot

import (
	"context"
	"errors"
)

// ErrShared says that an answer was shared already.
var ErrShared = errors.New("the answer is shared already")

// Shareable finds the private question that an event wants to share. It fails
// with ErrNotYours unless the same person asked it in the same channel, and
// with ErrShared where the event was taken before.
func (c *Clerk) Shareable(ctx context.Context, ev Event, id string) (Entry, error) {
	e, err := c.Journal.Find(ctx, ev.Workspace, id)
	switch {
	case err != nil:
		return Entry{}, err
	case e.User != ev.User || e.Channel != ev.Channel:
		return Entry{}, ErrNotYours
	}
	switch _, err := c.Journal.Find(ctx, ev.Workspace, ev.ID); {
	case err == nil:
		return e, ErrShared
	case !errors.Is(err, ErrNotLogged):
		return e, err
	}
	return e, nil
}

// ForAll says whether the reply concerns a whole channel: what was kept for
// it, or what is.
func (r Reply) ForAll() bool { return r.status == Answered && r.marks.Intent == "job" }

// Share is the button that shows a private answer to the channel.
func (v Voice) Share() string { return v.s.word("Share to the channel") }

// Asks are the words of a question that somebody shares.
func (v Voice) Asks(e Entry) string { return v.s.say("%s asks: %s", "@"+e.User, quote(e.Words)) }

// Unshared says to one person why an answer was not shared.
func (v Voice) Unshared(err error, outside bool, command string) string {
	switch {
	case outside:
		return v.Invite(command)
	case errors.Is(err, ErrShared):
		return v.s.word("That is in the channel already.")
	case errors.Is(err, ErrNotYours):
		return v.s.word("Only whoever asked can share that.")
	}
	return v.s.word("I cannot share that just now. Ask in the channel.")
}

// Invite says how the bot comes into a channel, and how to ask without it.
func (v Voice) Invite(command string) string {
	return v.s.say("I am not in that channel, so I answer here. To have me there, open the channel, mention me and choose to invite me. %s works anywhere.", command)
}

// Greeting are three lines for a channel that the bot was put into.
func (v Voice) Greeting() string {
	return v.s.word("Mention me with a piece, like “14 in red oak limb, 22 ft, hitched at 35 ft”: I say the weight, the wraps and the loads.") + "\n" +
		v.s.word("Tell me the job once, like “job: limit 600 lb, 3 people, arborist @name”: it holds for every question here.") + "\n" +
		v.s.word(reminder)
}

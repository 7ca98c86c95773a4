package slackchat

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"time"
	"unicode/utf8"

	"github.com/slack-go/slack"
	"github.com/slack-go/slack/slackutilsx"

	"heft/bot"
)

// maxText is the longest text the platform takes whole, in characters
// (platform documentation, chat.postMessage). What it would cut off is the
// end, where the reminder stands.
const maxText = 40_000

// recordTimeout bounds the writing down of what became of a reply.
const recordTimeout = 5 * time.Second

// answer posts a reply in its thread, records what became of it and says
// whether it is there.
func (c *Chat) answer(ctx context.Context, q *asked, reply bot.Reply) bool {
	stamp, err := c.show(ctx, *q, reply)
	if err = hide(err); err == nil {
		q.ev.Shown = stamp
	}
	ev := q.ev
	if err != nil {
		c.log.ErrorContext(ctx, "the reply was not posted", bot.KeyEvent, ev.ID, bot.KeyErr, err)
	}
	// Recorded even where the shutdown cut the posting short.
	ctx, cancel := context.WithTimeout(context.WithoutCancel(ctx), recordTimeout)
	defer cancel()
	c.clerk.Delivered(ctx, ev, c.cfg.Now(), err)
	return err == nil
}

// show puts a reply where the one before it stands or else into its thread,
// and returns the stamp of the message that shows it.
func (c *Chat) show(ctx context.Context, q asked, reply bot.Reply) (string, error) {
	ev, with := q.ev, slack.MsgOptionBlocks(blocks(reply, q.ev.ID, false)...)
	if q.private {
		return "", c.respond(ctx, q, reply)
	}
	if ev.Shown != "" && length(reply.Text()) <= maxUpdate {
		stamp, err := c.send(ctx, ev.Channel, reply.Text(), with, slack.MsgOptionUpdate(ev.Shown))
		if answer, ok := errors.AsType[slack.SlackErrorResponse](err); !ok || !slices.Contains(fixed, answer.Err) {
			return stamp, err
		}
	}
	stamp, err := c.send(ctx, ev.Channel, reply.Text(), with, slack.MsgOptionTS(ev.Thread))
	if outside(err) && ev.User != "" {
		return "", c.uninvited(ctx, q, reply)
	}
	return stamp, err
}

// maxUpdate is the longest text that an edited message takes (platform
// documentation, chat.update, errors: msg_too_long; the number is from
// memory).
const maxUpdate = 4_000

// fixed are the codes for a message that cannot be edited any more: what
// would stand there is posted anew (platform documentation, chat.update,
// errors).
var fixed = []string{"message_not_found", "cant_update_message", "edit_window_closed", "msg_too_long"}

// length counts characters as the platform does.
func length(text string) int { return utf8.RuneCountInString(slackutilsx.EscapeMessage(text)) }

// send posts text, or edits what is posted, trying again where that may help.
func (c *Chat) send(ctx context.Context, channel, text string, with ...slack.MsgOption) (stamp string, err error) {
	if n := length(text); n > maxText {
		return "", fmt.Errorf("the reply has %d characters, more than the %d a message may have", n, maxText)
	}
	err = c.persist(ctx, channel, func() error {
		_, at, err := c.api.PostMessageContext(ctx, channel, append(options(text), with...)...)
		if err == nil && at == "" {
			return errNoReason
		}
		stamp = at
		return err
	})
	return stamp, err
}

// recent is how far back a restart looks for replies that nobody saw: past
// it the crew has long decided.
const recent = 10 * time.Minute

// Recover posts, marked as late, the replies that the journal holds from the
// last ten minutes and that are not known to have been posted. It is called
// before Run, so that a retry of the same event finds its reply posted. A
// crash between a post and its record can make a reply come twice, never not
// at all.
func (c *Chat) Recover(ctx context.Context, now time.Time) error {
	self, err := c.identify(ctx)
	if err != nil {
		return err
	}
	entries, err := c.clerk.Journal.Undelivered(ctx, now.Add(-recent))
	if err != nil {
		return fmt.Errorf("look for replies that were not posted: %w", err)
	}
	// The crew's next questions do not wait for ever behind the last ones.
	limit, cancel := context.WithTimeout(ctx, patience)
	defer cancel()
	for _, e := range entries {
		if limit.Err() != nil {
			break
		}
		if e.Workspace != self.team || e.Channel == "" || e.Thread == "" {
			continue
		}
		ev := bot.Event{ID: e.ID, Workspace: e.Workspace, Channel: e.Channel, Thread: e.Thread, User: e.User, At: now, Shown: e.Posted}
		late := bot.Late(e, now)
		if q := (asked{ev: ev}); c.answer(limit, &q, late) && late.OverLimit() {
			c.raise(limit, q.ev, late)
		}
	}
	return ctx.Err()
}

// Trying again.
const (
	maxTries  = 5
	firstWait = 250 * time.Millisecond
	maxWait   = 5 * time.Second
	// patience is how long a reply is worth posting.
	patience = 2 * time.Minute
)

// persist makes a call until it succeeds, until trying again is no use, or
// until patience runs out. A channel told to slow down has one call at a
// time from then on, so that what was said first is seen first.
func (c *Chat) persist(ctx context.Context, channel string, call func() error) (err error) {
	leave := func() {}
	defer func() { leave() }()
	slow := c.limited.slow(channel)
	if slow {
		if leave, err = c.join(ctx, channel); err != nil {
			return err
		}
	}
	var waited time.Duration
	for try := 1; ; {
		if err = call(); err == nil {
			return nil
		}
		wait, limited := rateLimited(err)
		if !limited {
			if wait = min(firstWait<<(try-1), maxWait); final(err) || try == maxTries {
				return err
			}
			try++
		}
		if waited += wait; waited > patience {
			return err
		}
		if limited && !slow {
			if leave, err = c.join(ctx, channel); err != nil {
				return err
			}
			slow = true
		}
		if stopped := c.pause(ctx, wait); stopped != nil {
			return errors.Join(err, stopped)
		}
	}
}

// join waits for a turn in a channel that was told to slow down.
func (c *Chat) join(ctx context.Context, channel string) (func(), error) {
	ctx, cancel := context.WithTimeout(ctx, patience)
	defer cancel()
	leave, err := c.limited.join(ctx, channel)
	if err != nil {
		return func() {}, fmt.Errorf("wait for a turn to post: %w", err)
	}
	return leave, nil
}

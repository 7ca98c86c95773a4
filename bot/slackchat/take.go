package slackchat

import (
	"context"
	"errors"

	"heft/bot"
)

// asked is a question on its way, and what is to become of its answer.
type asked struct {
	ev     bot.Event
	edited bool   // its message asked something else before
	seen   string // the mark of the picture that hangs there already
	// respond is where the person who acts is spoken to alone; a private
	// answer goes nowhere else, and may replace what they acted on.
	respond           string
	private, replaces bool
	raised            bool // the answer before it was over the limit already
}

func (c *Chat) asking(q asked) task {
	q.ev.Reached, q.ev.At = c.cfg.Now(), q.ev.At.In(c.cfg.Zone)
	return task{lane: q.ev.Conversation(), keeps: true, do: func(ctx context.Context, d delivery) { c.take(ctx, d, q) }}
}

// take has the clerk answer, then acknowledges, then leaves the reply to the
// conversation's posting lane: a post that has to wait keeps no
// acknowledgement waiting.
func (c *Chat) take(ctx context.Context, d delivery, q asked) {
	done := c.working(ctx, q.ev)
	reply, err := c.ask(ctx, &q)
	if ctx.Err() != nil || err != nil {
		defer c.release()
		defer done()
	}
	switch {
	case ctx.Err() != nil: // dropped half-way, so it comes again
		d.leave()
	case errors.Is(err, bot.ErrRepeated):
		d.take(ctx)
	case err != nil:
		d.leave()
		c.log.ErrorContext(ctx, "the event was not taken", bot.KeyEvent, q.ev.ID, bot.KeyErr, err)
	default:
		d.take(ctx)
		c.posting.add(q.ev.Conversation(), func() {
			there := c.answer(ctx, &q, reply)
			done()
			tell := there && reply.OverLimit() && !q.raised
			draw := there && !q.private && c.pictured(reply) && (q.seen == "" || q.seen != mark(reply))
			if !tell && !draw {
				c.release()
				return
			}
			c.drawing.add(q.ev.Conversation(), func() {
				defer c.release()
				if tell {
					c.raise(ctx, q.ev, reply)
				}
				if draw {
					c.illustrate(ctx, q.ev, reply)
				}
			})
		})
	}
}

// ask has the clerk answer, an edited question in the place of its earlier
// wording.
func (c *Chat) ask(ctx context.Context, q *asked) (reply bot.Reply, err error) {
	if q.edited {
		if q.ev, err = c.clerk.Edited(ctx, q.ev); err != nil {
			return bot.Reply{}, err
		}
	}
	if standing, ok := c.clerk.Standing(ctx, q.ev); ok {
		q.raised = standing.OverLimit()
		if standing.Confirmed != nil {
			q.ev.Shown = "" // what somebody stands by stays as it is
		}
	}
	reply, err = c.clerk.Take(ctx, q.ev)
	if reply.Unlogged() && !q.edited {
		q.ev.Shown = "" // the answer that is there still holds
	}
	return reply, err
}

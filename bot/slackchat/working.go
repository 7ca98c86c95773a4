package slackchat

import (
	"context"
	"time"

	"github.com/slack-go/slack"

	"heft/bot"
)

// The sign that a question is being worked on, and how long an answer may
// take without it.
const (
	sign      = "hourglass_flowing_sand"
	signAfter = time.Second
)

// after calls a function in a while, unless it is stopped before that.
func after(d time.Duration, f func()) (stop func() bool) { return time.AfterFunc(d, f).Stop }

// working puts a sign under a question whose answer takes long. What it
// returns takes the sign away again.
func (c *Chat) working(ctx context.Context, ev bot.Event) (done func()) {
	if ev.Message == "" {
		return func() {}
	}
	message := slack.NewRefToMessage(ev.Channel, ev.Message)
	put := make(chan struct{})
	stop := c.after(signAfter, func() {
		defer close(put)
		c.noting(ctx, "put", c.api.AddReactionContext(ctx, sign, message))
	})
	return func() {
		if stop() {
			return
		}
		<-put
		c.noting(ctx, "taken away", c.api.RemoveReactionContext(ctx, sign, message))
	}
}

// noting logs a sign that was not put or not taken away: it is only a sign.
func (c *Chat) noting(ctx context.Context, what string, err error) {
	if err != nil {
		c.log.DebugContext(ctx, "the sign of work was not "+what, bot.KeyErr, hide(err))
	}
}

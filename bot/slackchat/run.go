package slackchat

import (
	"context"
	"sync"
	"time"

	"github.com/slack-go/slack"
	"github.com/slack-go/slack/slackevents"
	"github.com/slack-go/slack/socketmode"

	"heft/bot"
)

// Keys of the structured log.
const (
	keyKind    = "kind"
	keyAttempt = "attempt"
	keyReason  = "reason"
	keyAt      = "at"
	keyStatus  = "status"
	keyTeam    = "team"
)

// Run answers until the context ends, and then returns nil once everything
// in hand is answered and acknowledged. Any other end is an error for whoever
// runs the bot. It runs once.
func (c *Chat) Run(ctx context.Context) error {
	self, err := c.identify(ctx)
	switch {
	case ctx.Err() != nil:
		return nil
	case err != nil:
		return err
	}
	day, over := context.WithCancel(ctx)
	var telling sync.WaitGroup
	defer telling.Wait()
	defer over()
	telling.Go(func() { c.summaries(day, self) })
	if c.cfg.AppToken == "" {
		return c.answerRequests(ctx, self)
	}
	// The socket and the work outlive the context: both are needed to finish
	// what is in hand.
	live, hangUp := context.WithCancel(context.WithoutCancel(ctx))
	work, drop := context.WithCancel(live)
	ended := make(chan error, 1)
	go func() {
		ended <- c.socket.RunContext(live)
		close(ended)
	}()
	err = c.intake(ctx, work, self, ended)
	c.log.InfoContext(ctx, "finishing what is in hand")
	c.finish(drop)
	hangUp()
	<-ended
	return err
}

// intake takes events off the socket until the context or the socket ends.
func (c *Chat) intake(ctx, work context.Context, self identity, ended <-chan error) error {
	for {
		select {
		case <-ctx.Done():
			return nil
		case err := <-ended:
			return explain(AppTokenVar, err)
		case ev := <-c.socket.Events:
			if err := c.handle(ctx, work, self, ev); err != nil {
				return err
			}
		}
	}
}

// handle sorts what the library sends. What it cannot read is logged and left
// unacknowledged.
func (c *Chat) handle(ctx, work context.Context, self identity, ev socketmode.Event) error {
	switch data := ev.Data.(type) {
	case slackevents.EventsAPIEvent, slack.InteractionCallback, slack.SlashCommand:
		c.receive(ctx, work, self, c.enveloped(ev.Request), data)
	case *slack.ConnectionErrorEvent:
		c.log.WarnContext(ctx, "no connection to the workspace", keyAttempt, data.Attempt, bot.KeyErr, data.ErrorObj)
		if refused(data.ErrorObj) {
			return explain(AppTokenVar, data.ErrorObj)
		}
	case *socketmode.ErrorBadMessage:
		c.log.WarnContext(ctx, "a message nobody here understands", bot.KeyErr, data.Cause)
	case *socketmode.ErrorWriteFailed:
		c.log.WarnContext(ctx, "an acknowledgement did not go out", bot.KeyErr, data.Cause)
	default:
		c.log.DebugContext(ctx, "socket", keyKind, string(ev.Type))
	}
	return nil
}

func (c *Chat) release() { <-c.slots }

// finish waits for what is in hand and for its acknowledgements. When the
// grace is over it drops the rest, which is recorded as not posted.
func (c *Chat) finish(drop context.CancelFunc) {
	defer drop()
	done := make(chan struct{})
	go func() {
		c.taking.wait()
		c.posting.wait()
		c.drawing.wait()
		close(done)
	}()
	grace := time.NewTimer(c.cfg.Grace)
	defer grace.Stop()
	for {
		select {
		case <-done:
			c.sent.drain(drainTimeout)
			return
		case <-grace.C:
			drop() // first: who reads the line may count on it
			c.log.Warn("the shutdown does not wait any longer")
		case <-c.socket.Events:
			// Read so that the library goes on sending acknowledgements; not
			// acknowledged, so it comes again.
		}
	}
}

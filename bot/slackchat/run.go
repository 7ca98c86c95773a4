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

// socketLine is the socket while it is open, or being opened.
type socketLine struct {
	live   context.Context
	hangUp context.CancelFunc
	ended  chan error // how it ended; closed then
}

// Connect finds out who the bot is and begins to open its socket, while
// whatever Run needs besides is still being made. What the socket brings waits
// for Run. An error is for whoever set the variables.
func (c *Chat) Connect(ctx context.Context) error {
	if _, err := c.identify(ctx); err != nil {
		return err
	}
	if c.cfg.AppToken != "" {
		c.dial(ctx)
	}
	return nil
}

// dial opens the socket in the background. It outlives the context: it is
// needed to finish what is in hand.
func (c *Chat) dial(ctx context.Context) {
	l := &socketLine{ended: make(chan error, 1)}
	l.live, l.hangUp = context.WithCancel(context.WithoutCancel(ctx))
	go func() {
		l.ended <- c.socket.RunContext(l.live)
		close(l.ended)
	}()
	c.line = l
}

// HangUp closes the socket, where Connect opened it and Run did not close it.
func (c *Chat) HangUp() {
	if c.line != nil {
		c.line.hangUp()
		<-c.line.ended
	}
}

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
	if c.line == nil {
		c.dial(ctx)
	}
	defer c.HangUp()
	work, drop := context.WithCancel(c.line.live)
	err = c.intake(ctx, work, self, c.line.ended)
	c.log.InfoContext(ctx, "finishing what is in hand")
	c.finish(drop)
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

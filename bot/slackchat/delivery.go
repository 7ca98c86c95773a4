package slackchat

import (
	"context"

	"github.com/slack-go/slack"
	"github.com/slack-go/slack/slackevents"
	"github.com/slack-go/slack/socketmode"

	"heft/bot"
)

// delivery is one thing that the platform tells, whichever way it came.
type delivery struct {
	id     string // of this try alone
	again  int    // how often it was tried before
	reason string // why it comes again
	// take tells the platform that it is ours now.
	take func(context.Context)
	// leave tells it that it is not, so that it comes again.
	leave func()
}

// already is a delivery that was taken before the work on it is done: what a
// person does is not told twice, and they wait for its acknowledgement.
var already = delivery{take: func(context.Context) {}, leave: func() {}}

// enveloped is a delivery off the socket: what is not acknowledged comes
// again.
func (c *Chat) enveloped(req *socketmode.Request) delivery {
	return delivery{
		id: req.EnvelopeID, again: req.RetryAttempt, reason: req.RetryReason,
		take:  func(ctx context.Context) { c.acknowledge(ctx, req.EnvelopeID) },
		leave: func() {},
	}
}

// acknowledge tells the platform that the event is ours now. The library only
// queues it, and with no socket its queue fills up: hence the limit.
func (c *Chat) acknowledge(ctx context.Context, envelope string) {
	ctx, cancel := context.WithTimeout(ctx, ackTimeout)
	defer cancel()
	if err := c.socket.AckCtx(ctx, envelope, nil); err != nil {
		c.log.WarnContext(ctx, "an acknowledgement did not go out", bot.KeyErr, err)
		return
	}
	c.sent.expect()
}

// receive gives what was delivered to its lane, waiting for a free slot. It
// is the one way in, for the socket and for request URLs.
func (c *Chat) receive(ctx, work context.Context, self identity, d delivery, data any) {
	if d.again > 0 {
		c.log.InfoContext(ctx, "delivered again", keyAttempt, d.again, keyReason, d.reason)
	}
	select {
	case c.slots <- struct{}{}:
	case <-ctx.Done():
		d.leave()
		return
	}
	t := c.task(self, data)
	if t.do == nil {
		t.do = func(ctx context.Context, d delivery) { d.take(ctx) }
	}
	if t.lane == "" {
		t.lane = d.id
	}
	c.taking.add(t.lane, func() {
		if !t.keeps {
			defer c.release()
		}
		t.do(work, d)
	})
}

// task is what is to be done about a delivery.
type task struct {
	lane  string // tasks of one lane are done one after the other
	do    func(context.Context, delivery)
	keeps bool // it keeps its slot, and gives it back by itself
}

// task sorts a delivery. What is not for the bot is only taken off the
// platform's hands.
func (c *Chat) task(self identity, data any) task {
	switch data := data.(type) {
	case slackevents.EventsAPIEvent:
		if q, ours := question(data, self); ours {
			return c.asking(q)
		}
		return c.news(self, data)
	case slack.InteractionCallback:
		switch {
		case data.Type == slack.InteractionTypeBlockActions && len(data.ActionCallback.BlockActions) == 1:
			return c.pressed(self, data)
		case data.Type == slack.InteractionTypeViewSubmission && data.View.CallbackID == formConfirm:
			return c.confirmed(self, data)
		case data.Type == slack.InteractionTypeMessageAction:
			return c.workedOut(self, data)
		}
	case slack.SlashCommand:
		return c.commanded(self, data)
	}
	return task{}
}

// news is what is to be done about what happens in the workspace besides
// questions.
func (c *Chat) news(self identity, outer slackevents.EventsAPIEvent) task {
	callback, ok := outer.Data.(*slackevents.EventsAPICallbackEvent)
	if !ok {
		return task{}
	}
	switch data := outer.InnerEvent.Data.(type) {
	case *slackevents.AppHomeOpenedEvent:
		return c.opened(self, data)
	case *slackevents.AppUninstalledEvent, *slackevents.TokensRevokedEvent:
		return c.takenOut(data)
	case *slackevents.MemberJoinedChannelEvent:
		return c.joined(self, data, callback.EventID)
	}
	return task{}
}

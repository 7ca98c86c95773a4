package slackchat

import (
	"context"
	"errors"
	"strings"

	"github.com/slack-go/slack"
	"github.com/slack-go/slack/slackevents"

	"heft/bot"
)

// The command, and the entry in the menu of a message, as the manifest names
// them.
const (
	command  = "/heft"
	shortcut = "work_out"
)

// commanded is a question asked in private: its answer is for the asker
// alone, who may share it. Each stands by itself.
func (c *Chat) commanded(self identity, data slack.SlashCommand) task {
	if data.Command != command || data.TriggerID == "" || data.UserID == "" || data.ResponseURL == "" {
		return task{}
	}
	return c.asking(asked{respond: data.ResponseURL, private: true, ev: bot.Event{
		ID: "command/" + data.TriggerID, Workspace: self.team, Channel: data.ChannelID, User: data.UserID,
		Text: typed(data.Text, self.user), At: c.cfg.Now(), Opens: true,
	}})
}

// workedOut is a question that stands in somebody's message, chosen from its
// menu: the answer goes into that message's thread.
func (c *Chat) workedOut(self identity, data slack.InteractionCallback) task {
	m := data.Message
	at := or(m.Timestamp, data.MessageTs)
	if data.CallbackID != shortcut || at == "" || data.Channel.ID == "" || data.User.ID == "" {
		return task{}
	}
	ev := bot.Event{
		ID: strings.Join([]string{"shortcut", at, data.User.ID, data.ActionTs}, "/"), Workspace: self.team,
		Channel: data.Channel.ID, Thread: or(m.ThreadTimestamp, at), User: data.User.ID,
		Text: typed(m.Text, self.user), At: moment(data.ActionTs, int(c.cfg.Now().Unix())), Direct: strings.HasPrefix(data.Channel.ID, "D"),
	}
	ev.Opens = ev.Thread == at && !ev.Direct
	return c.asking(asked{ev: ev, respond: data.ResponseURL})
}

// respond shows a reply to the person who acts, or in the place of what they
// acted on. What holds for the channel is said to the channel.
func (c *Chat) respond(ctx context.Context, q asked, reply bot.Reply) error {
	kind := slack.ResponseTypeEphemeral
	if reply.ForAll() {
		kind = slack.ResponseTypeInChannel
	}
	with := []slack.MsgOption{
		slack.MsgOptionText(reply.Text(), true), slack.MsgOptionBlocks(blocks(reply, q.ev.ID, true)...),
		slack.MsgOptionResponseURL(q.respond, kind),
	}
	if q.replaces && !reply.ForAll() {
		with = append(with, slack.MsgOptionReplaceOriginal(q.respond))
	}
	return c.persist(ctx, "", func() error {
		_, _, err := c.api.PostMessageContext(ctx, q.ev.Channel, with...)
		return err
	})
}

// outside are the codes for a channel that the bot was not invited to
// (platform documentation, chat.postMessage, errors).
func outside(err error) bool {
	answer, ok := errors.AsType[slack.SlackErrorResponse](err)
	return ok && (answer.Err == "not_in_channel" || answer.Err == "channel_not_found")
}

// uninvited tells the asker, in private, the answer that cannot be posted
// where it was asked, and how the bot is invited there.
func (c *Chat) uninvited(ctx context.Context, q asked, reply bot.Reply) error {
	invite := reply.Voice().Invite(command)
	if q.respond != "" {
		c.tell(ctx, q, invite)
		return c.respond(ctx, q, reply)
	}
	if _, err := c.send(ctx, q.ev.User, invite); err != nil {
		return err
	}
	_, err := c.send(ctx, q.ev.User, reply.Text(), slack.MsgOptionBlocks(blocks(reply, "", false)...))
	return err
}

// tell says a sentence to the person who acts.
func (c *Chat) tell(ctx context.Context, q asked, text string) {
	err := c.persist(ctx, "", func() error {
		_, _, err := c.api.PostMessageContext(ctx, q.ev.Channel, slack.MsgOptionText(text, true),
			slack.MsgOptionBlocks(slack.NewSectionBlock(plain(text), nil, nil)), slack.MsgOptionResponseURL(q.respond, slack.ResponseTypeEphemeral))
		return err
	})
	if err != nil {
		c.log.WarnContext(ctx, "a person was not told", bot.KeyEvent, q.ev.ID, bot.KeyErr, hide(err))
	}
}

// sharing puts a private question and its answer into the channel: the words
// first, the answer in their thread, like any other. Only whoever asked can,
// and once.
func (c *Chat) sharing(self identity, data slack.InteractionCallback, act *slack.BlockAction) task {
	channel, id := or(data.Container.ChannelID, data.Channel.ID), act.Value
	q := asked{respond: data.ResponseURL, ev: bot.Event{
		ID: "share/" + id, Workspace: self.team, Channel: channel, User: data.User.ID,
		At: moment(act.ActionTs, int(c.cfg.Now().Unix())), Opens: true,
	}}
	return task{lane: q.ev.ID, keeps: true, do: func(ctx context.Context, d delivery) {
		d.take(ctx)
		e, err := c.clerk.Shareable(ctx, q.ev, id)
		if err == nil {
			q.ev.Text = e.Words
			q.ev.Thread, err = c.send(ctx, channel, e.Voice().Asks(e), slack.MsgOptionBlocks(slack.NewContextBlock("", naming(e.Voice().Asks(e), e.User))))
		}
		if err != nil {
			defer c.release()
			c.tell(ctx, q, e.Voice().Unshared(err, outside(err), command))
			return
		}
		c.take(ctx, already, q)
	}}
}

// joined greets a channel that the bot was put into.
func (c *Chat) joined(self identity, data *slackevents.MemberJoinedChannelEvent, id string) task {
	if data.User != self.user || id == "" {
		return task{}
	}
	return task{do: func(ctx context.Context, d delivery) {
		if !c.clerk.Memory.First(self.team + "/" + id) {
			d.take(ctx)
			return
		}
		d.take(ctx)
		if _, err := c.send(ctx, data.Channel, bot.VoiceOf("").Greeting()); err != nil {
			c.log.WarnContext(ctx, "the channel was not greeted", bot.KeyEvent, id, bot.KeyErr, hide(err))
		}
	}}
}

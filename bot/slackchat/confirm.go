package slackchat

import (
	"context"
	"encoding/json"
	"errors"
	"strings"
	"time"

	"github.com/slack-go/slack"

	"heft/bot"
)

// formConfirm names the form that asks for a note, and noteInput its input.
const (
	formConfirm = "confirm"
	noteInput   = "note"
	maxTyping   = 500
)

// standing is what a form remembers of the answer it is about. It comes back
// from the person's own program, so all in it is checked again.
type standing struct{ ID, Channel, Message, Thread string }

// confirming opens the form for whoever may confirm, and tells everybody
// else so, in private.
func (c *Chat) confirming(self identity, data slack.InteractionCallback, act *slack.BlockAction) task {
	to := standing{act.Value, or(data.Container.ChannelID, data.Channel.ID), data.Container.MessageTs, data.Container.ThreadTs}
	return task{lane: formConfirm + to.Message, do: func(ctx context.Context, d delivery) {
		e, err := c.clerk.MayConfirm(ctx, self.team, to.Channel, to.ID, data.User.ID)
		d.take(ctx)
		if err != nil {
			c.decline(ctx, to, data.User.ID, e, err)
			return
		}
		if _, err := c.api.OpenViewContext(ctx, data.TriggerID, confirmForm(e, to)); err != nil {
			c.log.WarnContext(ctx, "the form was not opened", bot.KeyEvent, to.ID, bot.KeyErr, hide(err))
		}
	}}
}

// decline says to one person why nothing was confirmed.
func (c *Chat) decline(ctx context.Context, to standing, user string, e bot.Entry, why error) {
	c.log.InfoContext(ctx, "not confirmed", bot.KeyEvent, to.ID, bot.KeyErr, why)
	text, other := e.Voice().Declined(why, e), ""
	if e.Confirmed != nil {
		other = e.Confirmed.User
	}
	var reserved *bot.Reserved
	if errors.As(why, &reserved) {
		text, other = byID(text, reserved)
	}
	c.whisper(ctx, to, user, text, other)
}

// confirmForm asks for a note.
func confirmForm(e bot.Entry, to standing) slack.ModalViewRequest {
	title, note, submit, cancel := e.Voice().ConfirmForm()
	kept, _ := json.Marshal(to) // strings: it cannot fail
	input := slack.NewPlainTextInputBlockElement(nil, noteInput)
	input.Multiline, input.MaxLength = true, maxTyping
	asks := slack.NewInputBlock(noteInput, plain(note), nil, input)
	asks.Optional = true
	return slack.ModalViewRequest{
		Type: slack.VTModal, CallbackID: formConfirm, PrivateMetadata: string(kept),
		Title: label(title), Submit: label(submit), Close: label(cancel),
		Blocks: slack.Blocks{BlockSet: []slack.Block{slack.NewSectionBlock(plain(bot.Kept(e, time.UTC).Headline()), nil, nil), asks}},
	}
}

// maxTitle is the longest title or button of a form (platform documentation,
// views, view objects).
const maxTitle = 24

func label(text string) *slack.TextBlockObject {
	return slack.NewTextBlockObject(slack.PlainTextType, clipped(text, maxTitle), false, false)
}

// confirmed writes a confirmation down, whatever the form says checked again,
// and shows it on the answer.
func (c *Chat) confirmed(self identity, data slack.InteractionCallback) task {
	var to standing
	if json.Unmarshal([]byte(data.View.PrivateMetadata), &to) != nil {
		return task{}
	}
	by := bot.Confirmation{Workspace: self.team, ID: to.ID, User: data.User.ID, At: c.cfg.Now()}
	if data.View.State != nil {
		by.Note = data.View.State.Values[noteInput][noteInput].Value
	}
	return task{lane: formConfirm + to.Message, do: func(ctx context.Context, d delivery) {
		e, err := c.clerk.Confirm(ctx, to.Channel, by)
		d.take(ctx) // the form closes; what went wrong is said in private
		if err != nil {
			c.decline(ctx, to, by.User, e, err)
			return
		}
		kept := bot.Kept(e, c.cfg.Zone)
		_, err = c.show(ctx, asked{ev: bot.Event{ID: e.ID, Channel: e.Channel, Thread: e.Thread, Shown: or(e.Posted, to.Message)}}, kept)
		if err != nil {
			c.log.ErrorContext(ctx, "the confirmation was not shown", bot.KeyEvent, e.ID, bot.KeyErr, hide(err))
		}
	}}
}

// whisper shows text to one person where they acted. It may name another.
func (c *Chat) whisper(ctx context.Context, at standing, user, text, other string) {
	said := plain(text)
	if other != "" {
		said = naming(text, other)
	}
	with := []slack.MsgOption{slack.MsgOptionBlocks(slack.NewSectionBlock(said, nil, nil)), slack.MsgOptionPostEphemeral(user)}
	if at.Thread != "" {
		with = append(with, slack.MsgOptionTS(at.Thread))
	}
	if _, err := c.send(ctx, at.Channel, text, with...); err != nil {
		c.log.WarnContext(ctx, "a person was not told", bot.KeyErr, hide(err))
	}
}

// raise tells every supervisor of an answer over the limit, once, with the
// way to it.
func (c *Chat) raise(ctx context.Context, ev bot.Event, reply bot.Reply) {
	text := reply.Voice().Raised(reply)
	out := []slack.Block{slack.NewSectionBlock(plain(text), nil, nil)}
	if link := c.link(ev.Channel, ev.Shown, ev.Thread); link != "" {
		out = append(out, slack.NewActionBlock("", linked(reply.Voice(), link)))
		text += "\n" + link
	}
	for _, user := range c.clerk.Supervisors {
		if _, err := c.send(ctx, user, text, slack.MsgOptionBlocks(out...)); err != nil {
			c.log.ErrorContext(ctx, "a supervisor was not told", bot.KeyEvent, ev.ID, bot.KeyErr, hide(err))
		}
	}
}

// linked is a button that leads to a message.
func linked(v bot.Voice, link string) *slack.ButtonBlockElement {
	b := slack.NewButtonBlockElement("open/0", "", plain(v.OpenThread()))
	b.URL = link
	return b
}

// link is the address of a message in a thread, empty where there is none. It
// is put together as the platform does it (platform documentation,
// chat.getPermalink, the example answers), which spares a call for each.
func (c *Chat) link(channel, message, thread string) string {
	c.mu.Lock()
	base := c.self.url
	c.mu.Unlock()
	if base == "" || message == "" {
		return ""
	}
	link := base + "archives/" + channel + "/p" + strings.ReplaceAll(message, ".", "")
	if thread != "" && thread != message {
		link += "?" + "thread_ts=" + thread + "&cid=" + channel
	}
	return link
}

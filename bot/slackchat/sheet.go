package slackchat

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"time"

	"github.com/slack-go/slack"

	"heft/bot"
)

// The formats in which a supervisor can have a day: a page to print, and a
// table to work with.
const (
	SheetPage  = "html"
	SheetTable = "csv"
)

// sheetTime is how long a day's file may take before its supervisor is told
// that it does not come.
const sheetTime = time.Minute

// wanted is what a button of a day's file stands for. It comes back from the
// person's own program, so all in it is checked again.
type wanted struct{ Day, Format string }

// sheets are the buttons that have the shown day sent as a file, if there is
// anybody to write it.
func (c *Chat) sheets(v bot.Voice, d bot.Day) []slack.Block {
	if c.cfg.Sheet == nil {
		return nil
	}
	in := func(format, label string) bot.Choice {
		value, _ := json.Marshal(wanted{d.Next(0).Day, format}) // strings: it cannot fail
		return bot.Choice{Label: label, Message: string(value)}
	}
	return row(rowSheet, "", []bot.Choice{in(SheetPage, v.DaySheet()), in(SheetTable, v.CSV())})
}

// sheeted sends a supervisor the file of a day. Whether they supervise is
// looked up now, whatever their program shows them; anybody else gets no more
// than their own home tab, as it is now.
func (c *Chat) sheeted(self identity, data slack.InteractionCallback, act *slack.BlockAction) task {
	var w wanted
	user := data.User.ID
	if c.cfg.Sheet == nil || user == "" || json.Unmarshal([]byte(act.Value), &w) != nil || w.Format != SheetPage && w.Format != SheetTable {
		return task{}
	}
	return task{lane: rowSheet + "/" + user, do: func(ctx context.Context, d delivery) {
		d.take(ctx)
		now := c.cfg.Now().In(c.cfg.Zone)
		v := c.clerk.VoiceFor(ctx, self.team, user, now)
		day, err := c.clerk.Day(ctx, self.team, user, bot.Look{Day: w.Day}, now)
		switch {
		case errors.Is(err, bot.ErrNotYours):
			c.publish(ctx, self, user, bot.Look{})
		case err != nil:
			c.log.ErrorContext(ctx, "the day was not read", bot.KeyErr, err)
			c.inform(ctx, user, v.NoDay())
		default:
			day.Voice = v
			c.handOut(ctx, user, v, day, w.Format)
		}
	}}
}

// handOut says which day it is and puts the file below that. Where it does
// not come, the words say so instead. They go first because only the answer
// to them tells where a person is written to: a file takes no person's id
// (platform documentation, files.completeUploadExternal, channel_id).
func (c *Chat) handOut(ctx context.Context, user string, v bot.Voice, day bot.Day, format string) {
	limit, cancel := context.WithTimeout(ctx, sheetTime)
	defer cancel()
	title := v.SheetTitle(day)
	var channel, stamp string
	err := c.persist(limit, user, func() (err error) {
		channel, stamp, err = c.api.PostMessageContext(limit, user, options(title)...)
		if err == nil && (channel == "" || stamp == "") {
			err = errNoReason // and a file that names no channel is seen by nobody
		}
		return err
	})
	if err != nil {
		c.log.WarnContext(ctx, "the day's file was not announced", bot.KeyErr, hide(err))
		return
	}
	name, data, err := c.written(day, format)
	if err == nil {
		err = c.share(limit, bot.Event{Channel: channel}, upload{name: name, title: title, data: data})
	}
	if err != nil {
		c.log.WarnContext(ctx, "the day's file was not sent", bot.KeyErr, hide(err))
		c.inform(ctx, channel, v.NoSheet(day), slack.MsgOptionUpdate(stamp))
	}
}

// inform tells a person something in their direct message.
func (c *Chat) inform(ctx context.Context, to, text string, with ...slack.MsgOption) {
	if _, err := c.send(ctx, to, text, with...); err != nil {
		c.log.WarnContext(ctx, "a person was not told", bot.KeyErr, hide(err))
	}
}

// written is a day as a file. A fault of the writer takes nothing else with
// it.
func (c *Chat) written(day bot.Day, format string) (name string, data []byte, err error) {
	defer func() {
		if fault := recover(); fault != nil {
			err = fmt.Errorf("the writer failed: %v", fault)
		}
	}()
	return c.cfg.Sheet(day, format)
}

package slackchat

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"strings"

	"github.com/slack-go/slack"
	"github.com/slack-go/slack/slackevents"

	"heft/bot"
)

// Rows of a home tab, by the beginning of their blocks' ids.
const (
	rowHome    = "home"
	rowSheet   = "sheet"
	rowExample = "example"
)

// How much of a day is shown: a home tab takes 100 blocks (platform
// documentation, Block Kit, blocks).
const (
	maxGroups = 10
	maxAsked  = 30
)

// opened shows a person their home tab.
func (c *Chat) opened(self identity, data *slackevents.AppHomeOpenedEvent) task {
	if data.Tab != "home" || data.User == "" {
		return task{}
	}
	return c.homely(self, data.User, bot.Look{})
}

// looked shows a person another part of the day.
func (c *Chat) looked(self identity, data slack.InteractionCallback, act *slack.BlockAction) task {
	var l bot.Look
	if json.Unmarshal([]byte(act.Value), &l) != nil || data.User.ID == "" {
		return task{}
	}
	return c.homely(self, data.User.ID, l)
}

// homely publishes a home tab, in its turn.
func (c *Chat) homely(self identity, user string, l bot.Look) task {
	return task{lane: rowHome + "/" + user, do: func(ctx context.Context, d delivery) {
		d.take(ctx)
		c.publish(ctx, self, user, l)
	}}
}

// publish shows a person their home tab. Whether they supervise is looked up
// each time, whatever their program asks for.
func (c *Chat) publish(ctx context.Context, self identity, user string, l bot.Look) {
	shown := c.home(ctx, self, user, l)
	err := c.persist(ctx, "", func() error {
		_, err := c.api.PublishViewContext(ctx, slack.PublishViewContextRequest{
			UserID: user, View: slack.HomeTabViewRequest{Type: slack.VTHomeTab, Blocks: slack.Blocks{BlockSet: shown}},
		})
		return err
	})
	if err != nil {
		c.log.WarnContext(ctx, "the home tab was not shown", bot.KeyErr, hide(err))
	}
}

// home is what a person sees: supervisors the day, everybody else how to ask.
func (c *Chat) home(ctx context.Context, self identity, user string, l bot.Look) []slack.Block {
	now := c.cfg.Now().In(c.cfg.Zone)
	v := c.clerk.VoiceFor(ctx, self.team, user, now)
	d, err := c.clerk.Day(ctx, self.team, user, l, now)
	switch {
	case errors.Is(err, bot.ErrNotYours):
		return append([]slack.Block{slack.NewSectionBlock(plain(v.HowToAsk()), nil, nil)}, row(rowExample, "", v.Examples())...)
	case err != nil:
		c.log.ErrorContext(ctx, "the day was not read", bot.KeyErr, err)
		return []slack.Block{slack.NewSectionBlock(plain(v.NoDay()), nil, nil)}
	}
	out := []slack.Block{slack.NewHeaderBlock(plain(v.DayTitle(d)))}
	out = append(out, narrowing(v, d)...)
	out = append(out, c.sheets(v, d)...)
	channels, people := d.Worst()
	out = append(out, c.groups(v, channels, func(g bot.Group) (string, bot.Look) {
		l := d.Look
		l.Channel = g.Name
		return v.OnlyChannel(), l
	})...)
	if len(people) > 1 {
		out = append(out, slack.NewHeaderBlock(plain(v.People())))
		out = append(out, c.groups(v, people, func(g bot.Group) (string, bot.Look) {
			l := d.Look
			l.Person = g.Name
			return v.OnlyPerson(), l
		})...)
	}
	return append(out, c.rows(v, d)...)
}

// narrowing are the buttons that lead to other days and narrow this one down.
func narrowing(v bot.Voice, d bot.Day) []slack.Block {
	days := []bot.Choice{looking(v.DayBefore(), d.Next(-1)), looking(v.DayAfter(), d.Next(1))}
	if all := (bot.Look{Day: d.Look.Day}); d.Look != all {
		days = append(days, looking(v.ShowAll(), all))
	}
	var flags []bot.Choice
	for _, f := range bot.Flags {
		l := d.Look
		l.Flag = f
		flags = append(flags, looking(v.Flag(f), l))
	}
	return append(row(rowHome, "days", days), row(rowHome, "flags", flags)...)
}

// looking is a button that shows another part of the day.
func looking(label string, l bot.Look) bot.Choice {
	value, _ := json.Marshal(l) // strings: it cannot fail
	return bot.Choice{Label: label, Message: string(value)}
}

// groups are channels or people with what they asked, each with a button that
// shows it alone, if there is one. The platform writes their names.
func (c *Chat) groups(v bot.Voice, groups []bot.Group, only func(bot.Group) (string, bot.Look)) []slack.Block {
	var out []slack.Block
	for i, g := range groups[:min(len(groups), maxGroups)] {
		name := slack.NewTextBlockObject(slack.MarkdownType, named(g), false, true)
		if g.Direct {
			name = plain(v.DirectMessage())
		}
		s := slack.NewSectionBlock(name, []*slack.TextBlockObject{plain(v.GroupLine(g))}, nil)
		if only != nil {
			label, l := only(g)
			b := looking(label, l)
			s.Accessory = slack.NewAccessory(slack.NewButtonBlockElement(rowHome+"/only", b.Message, plain(b.Label)))
			s.BlockID = fmt.Sprintf("%s/%s/%d", rowHome, g.Name, i)
		}
		out = append(out, s)
	}
	return out
}

// named is a channel or a person as the platform names them.
func named(g bot.Group) string {
	if strings.HasPrefix(g.Name, "U") || strings.HasPrefix(g.Name, "W") {
		return "<@" + g.Name + ">"
	}
	return "<#" + g.Name + ">"
}

// rows are the questions of a day, newest first, each with the way to its
// thread.
func (c *Chat) rows(v bot.Voice, d bot.Day) []slack.Block {
	var out []slack.Block
	for _, a := range d.Asked[:min(len(d.Asked), maxAsked)] {
		s := slack.NewSectionBlock(plain(v.AskedLine(a, c.cfg.Zone)), nil, nil)
		if link := c.link(a.Channel, or(a.Posted, a.Message), a.Thread); link != "" && a.Thread != "" {
			s.Accessory = slack.NewAccessory(linked(v, link))
		}
		by := []slack.MixedElement{slack.NewTextBlockObject(slack.MarkdownType, "<@"+a.User+">", false, true)}
		if line := v.FlagLine(a); line != "" {
			by = append(by, plain(line))
		}
		out = append(out, s, slack.NewContextBlock("", by...))
	}
	if left := len(d.Asked) - maxAsked; left > 0 {
		out = append(out, slack.NewContextBlock("", plain(v.More(left))))
	}
	return out
}

// example asks an example in the person's own conversation with the bot.
func (c *Chat) example(self identity, data slack.InteractionCallback, act *slack.BlockAction) task {
	q := asked{ev: bot.Event{
		ID: strings.Join([]string{"example", data.User.ID, act.ActionTs}, "/"), Workspace: self.team,
		User: data.User.ID, Text: act.Value, At: moment(act.ActionTs, int(c.cfg.Now().Unix())), Direct: true,
	}}
	return task{lane: q.ev.ID, keeps: true, do: func(ctx context.Context, d delivery) {
		d.take(ctx)
		err := c.persist(ctx, "", func() (err error) {
			q.ev.Channel, q.ev.Thread, err = c.api.PostMessageContext(ctx, q.ev.User, options(q.ev.Text)...)
			return err
		})
		if err != nil {
			defer c.release()
			c.log.WarnContext(ctx, "the example was not asked", bot.KeyEvent, q.ev.ID, bot.KeyErr, hide(err))
			return
		}
		c.take(ctx, already, q)
	}}
}

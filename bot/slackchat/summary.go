package slackchat

import (
	"context"
	"fmt"
	"strings"
	"time"

	"github.com/slack-go/slack"

	"heft/bot"
)

// ClockForm is how the time of the summary is told.
const ClockForm = "15:04"

// longest bounds a wait, so that a machine that slept, or whose clock was put
// right, is not late by as much.
const longest = time.Minute

// until waits for a time by the clock of the crew.
func (c *Chat) until(ctx context.Context, at time.Time) error {
	for {
		left := at.Sub(c.cfg.Now())
		if left <= 0 {
			return nil
		}
		if err := pause(ctx, min(left, longest)); err != nil {
			return err
		}
	}
}

// summaries tells every supervisor at a set time what was asked that day.
func (c *Chat) summaries(ctx context.Context, self identity) {
	at, err := time.Parse(ClockForm, c.cfg.Summary)
	if err != nil || len(c.clerk.Supervisors) == 0 {
		return // no time was set: check has refused any other
	}
	for last := c.cfg.Now(); ; {
		next := following(last.In(c.cfg.Zone), at)
		if c.wait(ctx, next) != nil {
			return
		}
		c.summarise(ctx, self, next)
		last = next
	}
}

// following is the next time after now at which the clock shows at.
func following(now, at time.Time) time.Time {
	for day := 0; ; day++ {
		next := time.Date(now.Year(), now.Month(), now.Day()+day, at.Hour(), at.Minute(), 0, 0, now.Location())
		if next.After(now) {
			return next
		}
	}
}

// summarise tells every supervisor of the day until now.
func (c *Chat) summarise(ctx context.Context, self identity, now time.Time) {
	d, err := c.clerk.Today(ctx, self.team, now)
	if err != nil {
		c.log.ErrorContext(ctx, "the day was not read", bot.KeyErr, err)
		return
	}
	for _, user := range c.clerk.Supervisors {
		v := c.clerk.VoiceFor(ctx, self.team, user, now)
		channels, _ := d.Worst()
		text := []string{v.DayTitle(d)}
		for _, g := range channels {
			text = append(text, v.GroupLine(g))
		}
		out := append([]slack.Block{slack.NewHeaderBlock(plain(v.DayTitle(d)))}, c.groups(v, channels, nil)...)
		if _, err := c.send(ctx, user, strings.Join(text, "\n"), slack.MsgOptionBlocks(out...)); err != nil {
			c.log.ErrorContext(ctx, "a supervisor was not told of the day", bot.KeyErr, hide(err))
		}
	}
}

// checkSummary wants a time of day, or none.
func (c Config) checkSummary() error {
	if c.Summary == "" {
		return nil
	}
	if _, err := time.Parse(ClockForm, c.Summary); err != nil {
		return fmt.Errorf("the time of the summary is like 17:00, not %q", c.Summary)
	}
	return nil
}

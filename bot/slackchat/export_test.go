package slackchat

import (
	"context"
	"time"

	"heft/bot"
)

// Typed is what a test of the markup looks at.
var Typed = typed

// What the manifest has to call the same.
const (
	Command    = command
	ShortcutID = shortcut
)

// SetPause replaces the waiting between tries.
func SetPause(c *Chat, f func(context.Context, time.Duration) error) { c.pause = f }

// SetAfter replaces the waiting before a sign of work is put.
func SetAfter(c *Chat, f func(time.Duration, func()) func() bool) { c.after = f }

// SetWait replaces the waiting for the time of the summary.
func SetWait(c *Chat, f func(context.Context, time.Time) error) { c.wait = f }

// Following is the next time at which the clock shows another.
var Following = following

// SetSlowest replaces the longest that a request may take.
func SetSlowest(c *Chat, d time.Duration) { c.slowest = d }

// Answer posts a reply as if it answered the event.
func Answer(ctx context.Context, c *Chat, ev bot.Event, reply bot.Reply) bool {
	return c.answer(ctx, &asked{ev: ev}, reply)
}

// Queued is how many posts a slow channel has, the one under way included.
func Queued(c *Chat, channel string) int {
	c.limited.mu.Lock()
	defer c.limited.mu.Unlock()
	if q := c.limited.of[channel]; q != nil {
		return q.n
	}
	return 0
}

package slackchat

import (
	"context"
	"time"
)

// Typed is what a test of the markup looks at.
var Typed = typed

// SetPause replaces the waiting between tries.
func SetPause(c *Chat, f func(context.Context, time.Duration) error) { c.pause = f }

// Queued is how many posts a slow channel has, the one under way included.
func Queued(c *Chat, channel string) int {
	c.limited.mu.Lock()
	defer c.limited.mu.Unlock()
	if q := c.limited.of[channel]; q != nil {
		return q.n
	}
	return 0
}

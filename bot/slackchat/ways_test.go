package slackchat_test

import (
	"testing"

	"heft/bot/slackchat"
)

// way is how the workspace speaks to the bot: socketed or requested.
type way func(*slackchat.Config)

// bothWays runs a test over the socket and over request URLs, side by side. A
// test that runs over one alone says why, or has that one as its subject.
func bothWays(t *testing.T, test func(t *testing.T, via way)) {
	t.Helper()
	for name, via := range map[string]way{"socket": socketed, "requests": requested} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			test(t, via)
		})
	}
}

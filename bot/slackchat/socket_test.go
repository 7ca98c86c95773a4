package slackchat_test

import (
	"testing"

	"heft/bot/slackchat"
	"heft/bot/standin"
)

// socketed has the bot open a socket, which is what prepare does unasked.
func socketed(*slackchat.Config) {}

func TestSocketIsRenewed(t *testing.T) {
	for _, reason := range []string{"warning", "refresh_requested"} {
		t.Run(reason, func(t *testing.T) {
			r := prepare(t, standin.Options{}).run()
			r.answered(r.ask(standin.Yard, question))
			r.Disconnect(reason)
			r.answered(r.ask(standin.Yard, question)) // into the gap
			r.await(func() bool { return r.Sockets() == 1 })
			r.answered(r.ask(standin.Yard, question))
			if n := len(r.Calls("apps.connections.open")); n < 2 {
				t.Errorf("%d sockets opened", n)
			}
		})
	}
}

func TestErrorsForWhoeverOpensASocket(t *testing.T) {
	told(t, socketed, []mistake{
		{"strange app token", func(c *slackchat.Config) { c.AppToken = "xapp-" + "9-stranger" }, standin.Fault{}, []string{"SLACK_APP_TOKEN", "invalid_auth"}},
		{"app token without its scope", nil, standin.Fault{Method: "apps.connections.open", Error: "missing_scope", Times: 9}, []string{"SLACK_APP_TOKEN", "scope"}},
		{"no socket at the address", nil, standin.Fault{Method: "apps.connections.open", Status: 404}, []string{"SLACK_API_URL"}},
	})
}

package slackchat_test

import (
	"context"
	"errors"
	"fmt"
	"log/slog"
	"strings"
	"testing"
	"time"

	"heft/bot"
	"heft/bot/slackchat"
	"heft/bot/standin"
)

// clean fails the test where a text shows a token or a ticket.
func clean(t *testing.T, w *standin.Workspace, where, text string) {
	t.Helper()
	for _, s := range []string{w.BotToken(), w.AppToken(), w.BotToken()[5:], w.AppToken()[5:], w.SigningSecret(), "ticket-"} {
		if strings.Contains(text, s) {
			t.Errorf("%s shows %q:\n%s", where, s, text)
		}
	}
}

// With everything logged, the library's own lines too, and a workspace that
// throws the tokens back at the bot.
func TestTokensStayOutOfLogsAndJournal(t *testing.T) { bothWays(t, tokensStayOutOfLogsAndJournal) }

func tokensStayOutOfLogsAndJournal(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via)
	slackchat.SetPause(r.chat, (&waits{}).pause)
	r.run()
	r.answered(r.ask(standin.Yard, question))
	r.Fail(standin.Fault{Method: "chat.postMessage", Error: "bad token " + r.BotToken()})
	failed := r.ask(standin.Mill, question)
	e := r.settled(failed)
	r.Send(map[string]any{"type": "echo " + r.BotToken() + " " + r.AppToken()})
	r.await(func() bool { return strings.Contains(r.logs.text(), "nobody here understands") })
	r.Disconnect("refresh_requested") // its socket, where it has one
	r.answered(r.ask(standin.Yard, "my token is "+r.BotToken()))
	r.halt()
	clean(t, r.Workspace, "the journal", e.Failure)
	clean(t, r.Workspace, "the log", r.logs.text())
	if !strings.Contains(r.logs.text(), "Sending request") || !strings.Contains(r.logs.text(), "[hidden]") {
		t.Error("the library's own log was to be in this")
	}
}

type holder struct{ Token *string }

func TestMaskedLog(t *testing.T) {
	w, err := standin.Start(standin.Options{})
	if err != nil {
		t.Fatal(err)
	}
	defer w.Close()
	token, app := w.BotToken(), w.AppToken()
	for name, h := range map[string]func(*logs) slog.Handler{
		"text": func(l *logs) slog.Handler { return slog.NewTextHandler(l, nil) },
		"json": func(l *logs) slog.Handler { return slog.NewJSONHandler(l, nil) },
	} {
		l := &logs{}
		log := slog.New(slackchat.Masked(h(l)))
		log.With("with", token).WithGroup("g").Info("said "+token,
			"s", app, token, "key", slog.Group("deep", "er", slog.GroupValue(slog.String("est", token))),
			"err", fmt.Errorf("open: %w", errors.New(app)), "bytes", []byte(token), "list", []string{token},
			"held", holder{&token}, "n", 7, "url", "wss://x.example/link/?ticket=ticket-1&app_id=A1",
			"when", time.Duration(3))
		clean(t, w, name, l.text())
		if !strings.Contains(l.text(), "7") || !strings.Contains(l.text(), "app_id=A1") {
			t.Errorf("%s covered too much: %s", name, l.text())
		}
	}
}

// mistake is something that keeps the bot from running.
type mistake struct {
	name   string
	change func(*slackchat.Config)
	fault  standin.Fault
	want   []string // of what whoever runs it is told
}

func TestErrorsForWhoeverRunsIt(t *testing.T) { bothWays(t, errorsForWhoeverRunsIt) }

func errorsForWhoeverRunsIt(t *testing.T, via way) {
	stranger := "xoxb-" + "9-9-stranger"
	told(t, via, []mistake{
		{"strange bot token", func(c *slackchat.Config) { c.BotToken = stranger }, standin.Fault{}, []string{"SLACK_BOT_TOKEN", "invalid_auth"}},
		{"other kind of token", nil, standin.Fault{Method: "auth.test", Error: "not_allowed_token_type"}, []string{"SLACK_BOT_TOKEN", "exchanged"}},
		{"no such address", func(c *slackchat.Config) { c.APIURL = strings.TrimSuffix(c.APIURL, "api/") + "nowhere/" }, standin.Fault{}, []string{"SLACK_API_URL"}},
		{"never up", nil, standin.Fault{Method: "auth.test", Status: 503, Times: 9}, []string{"503"}},
	})
}

// told makes each mistake and sees that it is said, without a token.
func told(t *testing.T, via way, mistakes []mistake) {
	t.Helper()
	for _, c := range mistakes {
		t.Run(c.name, func(t *testing.T) {
			r := prepare(t, standin.Options{}, via, func(cfg *slackchat.Config) {
				if c.change != nil {
					c.change(cfg)
				}
			})
			slackchat.SetPause(r.chat, (&waits{}).pause)
			if c.fault.Method != "" {
				r.Fail(c.fault)
			}
			err := r.chat.Run(t.Context())
			if err == nil {
				t.Fatal("it ran all the same")
			}
			for _, want := range c.want {
				if !strings.Contains(err.Error(), want) {
					t.Errorf("%q does not say %s", err, want)
				}
			}
			clean(t, r.Workspace, "the error", err.Error())
			if strings.Contains(err.Error()+r.logs.text(), "stranger") {
				t.Errorf("the token shows: %v", err)
			}
		})
	}
}

// The workspace's first troubles pass before the bot gives up.
func TestStartOutlastsABadMoment(t *testing.T) { bothWays(t, startOutlastsABadMoment) }

func startOutlastsABadMoment(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via)
	slackchat.SetPause(r.chat, (&waits{}).pause)
	r.Fail(standin.Fault{Method: "auth.test", Status: 503, Times: 2})
	r.run()
	r.answered(r.ask(standin.Yard, question))
}

func TestConfigIsChecked(t *testing.T) {
	good := slackchat.Config{BotToken: "xoxb-" + "1-2-abc", AppToken: "xapp-" + "1-A-1-abc"}
	for _, c := range []struct {
		name   string
		change func(*slackchat.Config)
		want   string
	}{
		{"as it should be", func(*slackchat.Config) {}, ""},
		{"no bot token", func(c *slackchat.Config) { c.BotToken = "" }, "SLACK_BOT_TOKEN is not set"},
		{"no app token", func(c *slackchat.Config) { c.AppToken = "" }, "neither SLACK_APP_TOKEN nor SLACK_SIGNING_SECRET is set"},
		{"exchanged", func(c *slackchat.Config) { c.BotToken, c.AppToken = c.AppToken, c.BotToken }, "SLACK_BOT_TOKEN must begin"},
		{"quoted", func(c *slackchat.Config) { c.AppToken += `"` }, "SLACK_APP_TOKEN holds characters"},
		{"line end", func(c *slackchat.Config) { c.BotToken += "\n" }, "SLACK_BOT_TOKEN holds characters"},
		{"address without slash", func(c *slackchat.Config) { c.APIURL = "https://a.example/api" }, "SLACK_API_URL must end"},
		{"no address", func(c *slackchat.Config) { c.APIURL = "a.example/" }, "SLACK_API_URL is no web address"},
		{"in the open", func(c *slackchat.Config) { c.APIURL = "http://a.example/api/" }, "SLACK_API_URL must begin with https"},
		{"on this machine", func(c *slackchat.Config) { c.APIURL = "http://[::1]:1/api/" }, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			cfg := good
			c.change(&cfg)
			_, err := slackchat.New(cfg, &bot.Clerk{}, slog.New(slog.DiscardHandler))
			switch {
			case c.want == "" && err != nil:
				t.Error(err)
			case c.want != "" && (err == nil || !strings.Contains(err.Error(), c.want)):
				t.Errorf("%v, want %q", err, c.want)
			case err != nil && strings.Contains(err.Error(), "abc"):
				t.Errorf("the token shows: %v", err)
			}
		})
	}
}

func TestRunEndsWithItsContext(t *testing.T) { bothWays(t, runEndsWithItsContext) }

func runEndsWithItsContext(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via)
	ctx, cancel := context.WithCancel(t.Context())
	cancel()
	if err := r.chat.Run(ctx); err != nil {
		t.Errorf("stopped before it knew its own name: %v", err)
	}
}

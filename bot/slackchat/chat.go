package slackchat

import (
	"context"
	"log/slog"
	"net/http"
	"sync"
	"time"

	"github.com/gorilla/websocket"
	"github.com/slack-go/slack"
	"github.com/slack-go/slack/socketmode"

	"heft/bot"
)

// Chat is the bot in one workspace.
type Chat struct {
	cfg    Config
	clerk  *bot.Clerk
	log    *slog.Logger
	api    *slack.Client
	socket *socketmode.Client
	line   *socketLine // nil before it is opened
	sent   *frames     // acknowledgements written

	slots   chan struct{} // one for each event in hand
	taking  lanes
	posting lanes
	drawing lanes         // the pictures, so that no words wait behind one
	easel   chan struct{} // bounds those drawn side by side
	limited queues
	pause   func(context.Context, time.Duration) error
	after   func(time.Duration, func()) (stop func() bool)
	slowest time.Duration // that a request may take
	wait    func(context.Context, time.Time) error
	gone    func() // the workspace took the bot out; nil where it is the only one

	mu   sync.Mutex
	self identity
}

// identity is who the bot is in its workspace.
type identity struct {
	user, team string
	url        string // of the workspace, with a slash at its end
}

// Limits of one connection.
const (
	maxFrame     = 1 << 20 // bytes of one message on the socket; real ones have a few thousand
	writeBuffer  = 32 << 10
	handshake    = 30 * time.Second
	ackTimeout   = 5 * time.Second // past 3 s the platform tries again anyway
	drainTimeout = 2 * time.Second
)

// New prepares a transport; it reaches no network. An error is for whoever
// set the variables.
func New(cfg Config, clerk *bot.Clerk, log *slog.Logger) (*Chat, error) {
	cfg = cfg.withDefaults()
	if err := cfg.check(); err != nil {
		return nil, err
	}
	log = slog.New(Masked(log.Handler()))
	c := &Chat{
		cfg: cfg, clerk: clerk, log: log, sent: newFrames(),
		slots: make(chan struct{}, cfg.Workers), easel: make(chan struct{}, easels), pause: pause, after: after, slowest: slowest,
	}
	c.wait = c.until
	c.api = slack.New(cfg.BotToken, c.apiOptions()...)
	c.socket = socketmode.New(c.api,
		socketmode.OptionReadLimit(maxFrame),
		socketmode.OptionLog(library{log}),
		socketmode.OptionDebug(debugging(log)),
		socketmode.OptionDialer(&websocket.Dialer{
			Proxy: http.ProxyFromEnvironment, HandshakeTimeout: handshake,
			WriteBufferSize: writeBuffer, WriteBufferPool: c.sent,
		}),
	)
	return c, nil
}

func (c *Chat) apiOptions() []slack.Option {
	options := []slack.Option{
		slack.OptionAppLevelToken(c.cfg.AppToken),
		slack.OptionHTTPClient(httpClient(c.cfg.Workers)),
		slack.OptionLog(library{c.log}),
		slack.OptionDebug(debugging(c.log)),
	}
	if c.cfg.APIURL != "" {
		options = append(options, slack.OptionAPIURL(c.cfg.APIURL))
	}
	return options
}

// pause waits, or returns early with the context's error.
func pause(ctx context.Context, d time.Duration) error {
	t := time.NewTimer(d)
	defer t.Stop()
	select {
	case <-t.C:
		return nil
	case <-ctx.Done():
		return ctx.Err()
	}
}

// identify asks once who the bot is, with an error for whoever set the
// variables.
func (c *Chat) identify(ctx context.Context) (identity, error) {
	self, err := c.identified(ctx)
	if err != nil {
		return identity{}, explain(BotTokenVar, err)
	}
	return self, nil
}

func (c *Chat) identified(ctx context.Context) (identity, error) {
	c.mu.Lock()
	defer c.mu.Unlock()
	if c.self != (identity{}) {
		return c.self, nil
	}
	err := c.persist(ctx, "", func() error {
		who, err := c.api.AuthTestContext(ctx)
		if err == nil && (who.UserID == "" || who.TeamID == "") {
			err = errNoReason
		}
		if err == nil {
			c.self = identity{user: who.UserID, team: who.TeamID, url: who.URL}
		}
		return err
	})
	return c.self, err
}

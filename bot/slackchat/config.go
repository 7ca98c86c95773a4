package slackchat

import (
	"errors"
	"fmt"
	"net"
	"net/url"
	"strings"
	"time"

	"heft/bot"
)

// The environment variables that errors speak of.
const (
	BotTokenVar = "SLACK_BOT_TOKEN"
	AppTokenVar = "SLACK_APP_TOKEN"
	SecretVar   = "SLACK_SIGNING_SECRET"
	APIURLVar   = "SLACK_API_URL"
)

// Config is what the transport needs to know.
type Config struct {
	BotToken string // with it the bot posts
	AppToken string // with it the app opens its socket
	// SigningSecret proves requests; without an AppToken they are how the
	// workspace speaks, and Listen is where.
	SigningSecret, Listen string
	APIURL                string // another workspace than the platform's; ends in a slash
	// Picture draws what a reply shows, as a PNG; nil posts no pictures.
	Picture func(bot.Scene) ([]byte, error)
	// Sheet writes a day out as a file, in the format SheetPage or SheetTable;
	// nil hands none out.
	Sheet func(d bot.Day, format string) (name string, data []byte, err error)
	// Zone is where the crew's clock hangs; nil is this machine's.
	Zone *time.Location
	// Summary is when the supervisors are told of the day, like 17:00; empty
	// for never.
	Summary string
	// Now is the clock; nil is time.Now.
	Now func() time.Time
	// Workers is the most events in hand at any time; 0 is taken as 256.
	// What comes beyond waits on the socket.
	Workers int
	// Grace is how long a shutdown waits for what is in hand; 0 is taken
	// as 20 s.
	Grace time.Duration
}

func (c Config) withDefaults() Config {
	if c.Workers <= 0 {
		c.Workers = 256
	}
	if c.Grace <= 0 {
		c.Grace = 20 * time.Second
	}
	if c.Now == nil {
		c.Now = time.Now
	}
	if c.Zone == nil {
		c.Zone = time.Local
	}
	return c
}

// check finds what is wrong before anything is sent. It never repeats what a
// variable holds.
func (c Config) check() error {
	return errors.Join(
		checkToken(BotTokenVar, c.BotToken, "xoxb-", "the bot token from the app's page on installing it"),
		c.checkWayIn(),
		checkURL(c.APIURL),
		c.checkSummary(),
	)
}

// checkWayIn wants one of the two ways in which a workspace speaks: a socket,
// or signed requests.
func (c Config) checkWayIn() error {
	switch {
	case c.AppToken != "":
		return checkToken(AppTokenVar, c.AppToken, "xapp-", "the app-level token with connections:write")
	case c.SigningSecret == "":
		return fmt.Errorf("neither %s nor %s is set: the first holds the app-level token with connections:write, "+
			"for a socket; the second the signing secret from the app's page, for requests", AppTokenVar, SecretVar)
	case len(c.SigningSecret) < minSecret || strings.Trim(c.SigningSecret, alnum) != "":
		return fmt.Errorf("%s holds no signing secret: copy it anew, without spaces or quotes", SecretVar)
	case c.Listen == "":
		return errors.New("no address to listen on for the workspace's requests")
	}
	return nil
}

// The shape of a signing secret: 32 hexadecimal digits as handed out (from
// memory), and nothing much shorter.
const (
	minSecret = 16
	alnum     = "0123456789abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ"
)

func checkToken(name, token, prefix, what string) error {
	switch {
	case token == "":
		return fmt.Errorf("%s is not set: it holds %s", name, what)
	case !strings.HasPrefix(token, prefix):
		return fmt.Errorf("%s must begin with %s: it holds %s", name, prefix, what)
	case len(token) != len(secret.FindString(token)):
		return fmt.Errorf("%s holds characters that are in no token: copy it anew, without spaces or quotes", name)
	}
	return nil
}

// checkURL refuses an address at which the tokens would travel in the open.
func checkURL(raw string) error {
	if raw == "" {
		return nil
	}
	u, err := url.Parse(raw)
	if err != nil || u.Host == "" {
		return fmt.Errorf("%s is no web address", APIURLVar)
	}
	if !strings.HasSuffix(u.Path, "/") {
		return fmt.Errorf("%s must end in a slash", APIURLVar)
	}
	if u.Scheme != "https" && !loopback(u.Hostname()) {
		return fmt.Errorf("%s must begin with https://, unless it is on this machine", APIURLVar)
	}
	return nil
}

func loopback(host string) bool {
	return host == "localhost" || net.ParseIP(host).IsLoopback()
}

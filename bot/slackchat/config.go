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
	APIURLVar   = "SLACK_API_URL"
)

// Config is what the transport needs to know.
type Config struct {
	BotToken string // with it the bot posts
	AppToken string // with it the app opens its socket
	APIURL   string // another workspace than the platform's; ends in a slash
	// Picture draws what a reply shows, as a PNG; nil posts no pictures.
	Picture func(bot.Scene) ([]byte, error)
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
	return c
}

// check finds what is wrong before anything is sent. It never repeats what a
// variable holds.
func (c Config) check() error {
	return errors.Join(
		checkToken(BotTokenVar, c.BotToken, "xoxb-", "the bot token from the app's page on installing it"),
		checkToken(AppTokenVar, c.AppToken, "xapp-", "the app-level token with connections:write"),
		checkURL(c.APIURL),
	)
}

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

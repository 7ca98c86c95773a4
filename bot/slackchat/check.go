package slackchat

import (
	"context"
	"errors"
	"fmt"
	"log/slog"
	"net/http"
	"slices"
	"strings"
	"time"
)

// Scopes are what the bot token must have been granted; the app's manifest
// says what each is for.
var Scopes = []string{
	"app_mentions:read", "channels:read", "chat:write", "commands", "files:write", "im:history", "reactions:write",
}

// Finding is one thing that was looked at before serving.
type Finding struct {
	What string
	Err  error  // what is missing or wrong; nil where nothing is
	Note string // what was found
}

// Look finds out whether the bot could serve a workspace with a
// configuration, without taking or posting anything.
func Look(ctx context.Context, cfg Config, log *slog.Logger) []Finding {
	cfg = cfg.withDefaults()
	if err := cfg.check(); err != nil {
		return unjoined("settings", err)
	}
	c, err := New(cfg, nil, log)
	if err != nil {
		return unjoined("settings", err)
	}
	who, err := c.api.AuthTestContext(ctx)
	if err == nil && (who.UserID == "" || who.TeamID == "") {
		err = errNoReason
	}
	if err != nil {
		return append([]Finding{{What: "bot token", Err: explain(BotTokenVar, err)}}, c.lookAtWayIn(ctx))
	}
	return []Finding{
		{What: "bot token", Note: fmt.Sprintf("%s in %s", who.User, who.Team)},
		lookAtScopes(who.Header), c.lookAtWayIn(ctx), lookAtClock(who.Header, cfg.Now()),
	}
}

// unjoined are several errors, each by itself.
func unjoined(what string, err error) []Finding {
	var all []Finding
	if many, ok := err.(interface{ Unwrap() []error }); ok {
		for _, e := range many.Unwrap() {
			all = append(all, Finding{What: what, Err: e})
		}
		return all
	}
	return []Finding{{What: what, Err: err}}
}

// lookAtScopes compares what the token was granted, which the workspace says
// with every answer (platform documentation, OAuth scopes, X-OAuth-Scopes).
func lookAtScopes(h http.Header) Finding {
	said := h.Get("X-OAuth-Scopes")
	if said == "" {
		return Finding{What: "scopes", Note: "the workspace does not say which were granted: not checked"}
	}
	granted := strings.FieldsFunc(said, func(r rune) bool { return r == ',' || r == ' ' })
	var lacks, more []string
	for _, s := range Scopes {
		if !slices.Contains(granted, s) {
			lacks = append(lacks, s)
		}
	}
	for _, s := range granted {
		if !slices.Contains(Scopes, s) {
			more = append(more, s)
		}
	}
	if len(lacks) > 0 {
		return Finding{What: "scopes", Err: fmt.Errorf("the token lacks %s: install the app anew from the manifest", strings.Join(lacks, ", "))}
	}
	if len(more) > 0 {
		return Finding{What: "scopes", Note: "all that are needed, and more than that: " + strings.Join(more, ", ")}
	}
	return Finding{What: "scopes", Note: "all that are needed"}
}

// lookAtWayIn tries the socket, or says where requests are taken.
func (c *Chat) lookAtWayIn(ctx context.Context) Finding {
	if c.cfg.AppToken == "" {
		return Finding{What: "way in", Note: "signed requests, on " + c.cfg.Listen}
	}
	_, address, err := c.api.StartSocketModeContext(ctx)
	if err == nil && address == "" {
		err = errNoReason
	}
	if err != nil {
		return Finding{What: "way in", Err: explain(AppTokenVar, err)}
	}
	return Finding{What: "way in", Note: "a socket"}
}

// maxSkew is how far this machine's clock may be off: past five minutes
// requests are refused, and well before that a question is taken for an old
// one.
const maxSkew = time.Minute

// lookAtClock compares this machine's clock with the workspace's.
func lookAtClock(h http.Header, now time.Time) Finding {
	theirs, err := http.ParseTime(h.Get("Date"))
	if err != nil {
		return Finding{What: "clock", Note: "the workspace does not tell the time: not checked"}
	}
	off := now.Sub(theirs).Round(time.Minute)
	if now.Sub(theirs).Abs() > maxSkew {
		return Finding{What: "clock", Err: errors.New("this machine's clock is off by " + off.String() + ": have it set by the network")}
	}
	return Finding{What: "clock", Note: "right"}
}

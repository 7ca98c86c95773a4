package main

import (
	"context"
	"errors"
	"fmt"
	"log/slog"
	"strings"
	"unicode"

	"golang.org/x/sync/errgroup"

	"heft/bot"
	"heft/bot/journal"
	"heft/bot/picture"
	"heft/bot/seen"
	"heft/bot/slackchat"
)

type serve struct {
	Listen string `default:"127.0.0.1:8421" placeholder:"HOST:PORT" help:"Where the workspace's requests are taken, with a signing secret instead of an app-level token."`
}

// Run answers in the team workspace until it is told to stop.
func (o *serve) Run(ctx context.Context, s *session) (err error) {
	var desk *bot.Desk
	var ready errgroup.Group // both take their time, and neither needs the other
	ready.Go(func() (err error) { desk, err = bot.NewDesk(); return err })
	j, err := journal.Open(ctx, s.path())
	if failed := ready.Wait(); failed != nil && err == nil {
		return errors.Join(failed, j.Close())
	}
	if err != nil {
		return err
	}
	defer func() {
		if failed := j.Close(); failed != nil {
			err = errors.Join(err, fmt.Errorf("close the journal: %w", failed))
		}
	}()
	log := slog.New(slackchat.Masked(s.log.Handler()))
	clerk := &bot.Clerk{Desk: desk, Journal: j, Memory: seen.New(), Log: log, Supervisors: named(s.env("HEFT_SUPERVISORS"))}
	chat, err := slackchat.New(slackchat.Config{
		BotToken: s.env(slackchat.BotTokenVar),
		AppToken: s.env(slackchat.AppTokenVar),
		APIURL:   s.env(slackchat.APIURLVar),
		Picture:  picture.PNG,
		Now:      s.now,

		SigningSecret: s.env(slackchat.SecretVar),
		Listen:        o.Listen,
	}, clerk, log)
	if err != nil {
		return err
	}
	if err := chat.Recover(ctx, s.now()); err != nil {
		return err
	}
	return chat.Run(ctx)
}

// named reads a list of people's ids, parted by commas.
func named(list string) []string {
	return strings.FieldsFunc(list, func(r rune) bool { return r == ',' || unicode.IsSpace(r) })
}
